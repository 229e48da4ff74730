/** What the runs of the loose shot need of a machine: its own run, and the moments that go with each setting. */
import { kindSolids, type MachineDocument } from '../core/document';
import { panic } from '../core/kernel';
import { buildSettledChamber, exciterState } from '../core/mechanics';
import type { Direction, ShotParameters } from '../core/shot';
import {
  type BaffleState,
  type ExciterBasis,
  exciterBasis,
  exciterHousing,
  exciterStudy,
  OWN_CHOICE,
  ownSetup,
  type Settled,
  settledMoment,
  shotParameters,
  type ShotSetup,
} from '../core/studies';
import type { ShotOutcome, ShotTake } from './shot';

export interface ShotBase {
  readonly document: MachineDocument;
  /** The part that is the housing, and all that is welded or shut in with it. */
  readonly housingPart: string;
  readonly unitParts: readonly string[];
  readonly basis: ExciterBasis;
  /** The machine as it is, in LOW. */
  readonly own: ShotSetup;
  /** First moment of all that turns with the housing but the shot, body frame, by state of the baffle. */
  readonly fixed_kgm: Readonly<Record<BaffleState, readonly [number, number]>>;
}

const known = new WeakMap<MachineDocument, { base: ShotBase | null }>();

/** The base of a machine, worked out once; null where it has no loose shot. */
export function shotBase(document: MachineDocument): ShotBase | null {
  const found = known.get(document) ?? { base: workOut(document) };
  known.set(document, found);
  return found.base;
}

function workOut(document: MachineDocument): ShotBase | null {
  const { machine, masses } = document;
  const solids = kindSolids(document);
  const basis = exciterBasis(machine, solids, masses);
  const choice = { ...OWN_CHOICE, baffleOn: false };
  const without = exciterStudy(machine, solids, masses, choice, document.fit);
  const own = ownSetup(machine);
  if (basis === null || without === null || own === null) return null;
  const [x, y] = basis.fixed_kgm;
  const off = without.high.housing_kgm;
  const inside = machine.parts.filter((p) => p.unit === basis.rest.exciter_part);
  return {
    document,
    basis,
    own,
    housingPart: exciterHousing(machine)?.part.id ?? '',
    unitParts: inside.map((p) => p.id),
    fixed_kgm: {
      fitted: basis.fixed_kgm,
      off,
      // The plate's own moment, seen in the mirror of the body's x axis.
      mirrored: [x, off[1] - (y - off[1])] as const,
    },
  };
}

/** Parameters of a run with the machine's geometry and shot. */
export function parametersOf(base: ShotBase, setup: ShotSetup): ShotParameters {
  return shotParameters(base.document.machine, setup) ?? panic('store/parametersOf', 'machine without shot');
}

/** Whether a recording is of the machine as built: every number alike but the seed. */
export const isOwnRun = (base: ShotBase, parameters: ShotParameters): boolean =>
  alike(
    parameters,
    parametersOf(base, { ...base.own, direction: parameters.direction, seed: parameters.seed }),
  );

function alike(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const keys = Object.keys({ ...a, ...b }) as (keyof typeof a)[];
  return keys.every((key) => alike(a[key], (b as typeof a)[key]));
}

/** U of shot and housing together for what was read off the balls, kg m, with its parts in the body frame. */
export function totalMoment(
  base: ShotBase,
  baffle: BaffleState,
  shot_kgm: readonly [number, number],
): readonly [number, number] {
  const fixed = base.fixed_kgm[baffle];
  return [shot_kgm[0] + fixed[0], shot_kgm[1] + fixed[1]];
}

/** U of the same charge if it found its level like a liquid, kg m; null where no such level exists for the run. */
export function levelU_kgm(base: ShotBase, setup: ShotSetup): number | null {
  const { chamber, baffle, shot } = parametersOf(base, setup);
  // The closed form's LOW is the direction in which the pocket scoops: with a mirrored plate that is the other one.
  const scoops = (setup.direction === 'low') !== (setup.baffle === 'mirrored');
  const state = exciterState(buildSettledChamber(chamber, baffle), shot, {
    direction: scoops ? 'low' : 'high',
    speed_rpm: 60,
    fixed_kgm: base.fixed_kgm[setup.baffle],
    vibrating_mass_kg: null,
  });
  return state.U_kgm;
}

/** U that the machine's table of simulated runs tells for a setting, and its band; null where it tells nothing. */
export function settledU_kgm(
  base: ShotBase,
  setup: ShotSetup,
): { readonly U_kgm: number; readonly band_kgm: number } | null {
  // Every run of the table was made with gravity on.
  if (!setup.gravity) return null;
  const { chamber, baffle, shot, spin_up, friction } = parametersOf(base, setup);
  if (spin_up.kind === 'table') return null;
  const scoops = (setup.direction === 'low') !== (setup.baffle === 'mirrored');
  const told: Settled = settledMoment(base.document.fit, {
    chamber,
    baffle,
    shot,
    ball_diameter_m: shot.ball_diameter_m,
    size_spread: shot.size_spread,
    direction: scoops ? 'low' : 'high',
    spin_up,
    friction: friction.ball,
  });
  if (!told.known) return null;
  const U_kgm = Math.hypot(...totalMoment(base, setup.baffle, told.moment.shot_kgm));
  return { U_kgm, band_kgm: told.moment.band_kgm };
}

/** What came of a run at its end. */
export function outcomeOf(
  base: ShotBase,
  setup: ShotSetup,
  take: ShotTake,
  own: Readonly<Record<Direction, number | null>>,
  comparedWith: Direction,
): ShotOutcome {
  const last = take.readings[take.readings.length - 1]!;
  const U_kgm = Math.hypot(...totalMoment(base, setup.baffle, last.shot_kgm));
  const share = (of: number | null): number | null => (of === null || of === 0 ? null : U_kgm / of);
  return {
    captured: last.captured,
    U_kgm,
    shot_U_kgm: last.shot_U_kgm,
    ofOwnHigh: share(own.high),
    ofCompared: share(own[comparedWith]),
    level_U_kgm: levelU_kgm(base, setup),
    settled: settledU_kgm(base, setup),
  };
}
