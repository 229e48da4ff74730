/** The stage lent to a place: a step's or question's setting put on it, and the person's own stage given back afterwards. */
import { kindSolids } from '../core/document';
import { findUnit, isPresent } from '../core/machine';
import { partsNamed, type StageSetting } from '../core/quiz';
import { exciterStudy, GROUNDS, OWN_CHOICE, rollerBasis, SOILS, vibrationStudy } from '../core/studies';
import type { Commands } from './commands';
import type { AppState } from './state';
import type { AppStore } from './store';
import { shakeOf } from './studies/shake';
import { INITIAL_STUDIES, type StudiesState, type StudyStage } from './studies/state';
import { requestFrame, transient } from './transient';

const KEPT = [
  'exciter',
  'studies',
  'views',
  'selectedPart',
  'hiddenParts',
  'ghostedParts',
  'isolatedParts',
  'showContext',
  'optionsOn',
  'balloons',
  'explode',
  'section',
  'spinning',
  'teardown',
  'panel',
] as const satisfies readonly (keyof AppState)[];
type Stage = Pick<AppState, (typeof KEPT)[number]>;

const before = new WeakMap<AppStore, { readonly document: AppState['document']; readonly stage: Stage }>();

/** Remembers the person's own stage once, until it is given back. */
export function keepStage(store: AppStore): void {
  if (before.has(store)) return;
  const state = store.getState();
  const stage = Object.fromEntries(KEPT.map((key) => [key, state[key]])) as unknown as Stage;
  before.set(store, { document: state.document, stage });
}

/** Gives the person's own stage back, if the same machine is still there; what is kept over reloads with it. */
export function giveStageBack(store: AppStore, commands: Pick<Commands, 'setExciter'>): void {
  const kept = before.get(store);
  before.delete(store);
  const { document, cameraWish } = store.getState();
  if (kept === undefined || kept.document !== document) return;
  transient.explode = kept.stage.explode;
  transient.sectionOffset_m = kept.stage.section.offset_m;
  store.setState({
    ...kept.stage,
    teardown: { ...kept.stage.teardown, playing: false },
    cameraWish: { view: 'home', partId: null, serial: cameraWish.serial + 1 },
  });
  // A slider moved in a lesson was kept as the person's own; now their own is kept again.
  commands.setExciter({});
  requestFrame();
}

/**
 * Sets the stage; what the setting leaves out is as in the assembled home view. Nothing without a machine.
 * @param selects false where a part is to be found: what stands out is then not yet chosen
 */
export function applyStage(store: AppStore, setting: StageSetting, selects = true): void {
  const { document, cameraWish, exciter, studies } = store.getState();
  if (document === null) return;
  keepStage(store);
  const { machine, teardown } = document;
  const parts = (refs: readonly string[] | undefined): ReadonlySet<string> =>
    new Set((refs ?? []).flatMap((ref) => partsNamed(machine, ref)));
  const highlit = parts(setting.highlight);
  const ghosted = new Set(parts(setting.ghost));
  // What stands out does so because all else steps back; where only some parts are shown there is no need.
  if (highlit.size > 0 && setting.only === undefined && setting.ghost === undefined)
    for (const part of machine.parts) if (!highlit.has(part.id)) ghosted.add(part.id);
  const optionsOn: Record<string, boolean> = {};
  for (const [id, option] of Object.entries(machine.options))
    optionsOn[id] = setting.options?.[id] ?? option.on;
  const unit = setting.taken_off === undefined ? undefined : findUnit(machine, setting.taken_off);
  const step = unit === undefined ? -1 : stepThatTakes(teardown.steps, unit.id);
  const explode = setting.explode ?? 0;
  const cut = setting.cut;
  const own = setting.exciter;
  transient.explode = explode;
  transient.sectionOffset_m = cut?.offset_m ?? 0;
  const first = [...highlit].find((id) =>
    isPresent(
      machine.parts.find((p) => p.id === id)!,
      optionsOn,
      true,
    ),
  );
  const framed = setting.camera?.part === undefined ? [] : partsNamed(machine, setting.camera.part);
  store.setState({
    selectedPart: selects ? (first ?? null) : null,
    hiddenParts: parts(setting.hide),
    ghostedParts: ghosted,
    isolatedParts: setting.only === undefined ? null : parts(setting.only),
    showContext: (setting.whole_machine ?? false) || setting.joint !== undefined,
    optionsOn,
    balloons: setting.labels ?? false,
    explode,
    section: { on: cut !== undefined, axis: cut?.axis ?? 'z', offset_m: cut?.offset_m ?? 0 },
    spinning: setting.spin !== undefined,
    teardown: { open: step >= 0, step, playing: false, reverse: false },
    exciter: {
      direction: own?.direction ?? setting.spin ?? exciter.direction,
      frequencyHigh_Hz: own?.frequency_high_Hz ?? null,
      frequencyLow_Hz: own?.frequency_low_Hz ?? null,
      fill: own?.fill ?? null,
      bafflePsi_deg: own?.baffle_psi_deg ?? null,
      baffleOn: own?.baffle_on ?? true,
    },
    studies: studiesOf(setting, studies, document),
    views: { ...store.getState().views, show: null, cut: false },
    cameraWish: {
      view: setting.camera?.view ?? 'home',
      partId: framed[0] ?? null,
      serial: cameraWish.serial + 1,
    },
  });
  requestFrame();
}

/** What drum and frame do on a ground; null where the machine has no isolators or no known unbalance. */
function shaking(
  { soil, direction }: NonNullable<StageSetting['shake']>,
  document: NonNullable<AppState['document']>,
): StudyStage | null {
  const { machine, masses, fit } = document;
  const solids = kindSolids(document);
  const basis = rollerBasis(machine, solids, masses);
  const half = exciterStudy(machine, solids, masses, OWN_CHOICE, fit)?.[direction];
  const ground = SOILS.find(({ id }) => id === soil);
  if (basis === null || ground === undefined || half === undefined || half.value === null) return null;
  const study = vibrationStudy(basis, {
    unbalance_kgm: half.value.U_kgm,
    frequency_Hz: half.frequency_Hz,
    soil_stiffness_N_m: ground.stiffness_N_m,
    soil_damping_Ns_m: ground.damping_Ns_m,
    hardness_IRHD: basis.isolation.hardness_IRHD,
  });
  return study === null ? null : shakeOf(study).stage;
}

/** Studies with what a setting says of joint, sides, slope and shaking; the person's own settings of the others stay. */
function studiesOf(
  { joint, sides, slope, shake }: StageSetting,
  studies: StudiesState,
  document: NonNullable<AppState['document']>,
): StudiesState {
  const bent = { steering_deg: joint?.steering_deg ?? 0, oscillation_deg: joint?.oscillation_deg ?? 0 };
  const ground = GROUNDS.find(({ id }) => id === slope?.ground);
  const own = INITIAL_STUDIES['two-speed'];
  return {
    ...studies,
    stage:
      joint !== undefined
        ? { kind: 'joint', ...bent }
        : shake !== undefined
          ? shaking(shake, document)
          : sides === true
            ? { kind: 'sides' }
            : null,
    identify: joint === undefined ? studies.identify : bent,
    'two-speed':
      slope === undefined
        ? studies['two-speed']
        : {
            ...own,
            ...(ground && {
              ground: ground.id,
              drum_adhesion: ground.drum,
              axle_adhesion: ground.tyre,
              rolling_resistance_N_per_N: ground.rolling_resistance,
            }),
            grade_percent: slope.grade_percent ?? own.grade_percent,
            drum_range: slope.drum_range ?? own.drum_range,
            axle_range: slope.axle_range ?? own.axle_range,
          },
  };
}

/** Number of the step that takes a unit off for good; -1: none does. */
export function stepThatTakes(
  steps: readonly { readonly kind: string; readonly unitIds: readonly string[]; readonly index: number }[],
  unitId: string,
): number {
  const step = steps.find(
    (each) => (each.kind === 'remove' || each.kind === 'bench') && each.unitIds.includes(unitId),
  );
  return step?.index ?? -1;
}
