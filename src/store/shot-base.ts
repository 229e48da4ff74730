/** What the runs of the loose shot need of a machine: its own run, and the moments that go with each setting. */
import type { MachineDocument } from '../core/document';
import { buildSettledChamber, exciterState } from '../core/mechanics';
import {
  type Baffle,
  DEFAULT_RUN,
  type Direction,
  fillOf,
  massOfFill,
  mirrorBaffle,
  type ShotParameters,
} from '../core/shot';
import { type ExciterBasis, exciterBasis, exciterStudy } from '../core/studies';
import { DEFAULT_EXCITER } from './state';
import type { BaffleState, ShotOutcome, ShotSetup, ShotTake } from './shot';

export interface ShotBase {
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
  const solids = Object.fromEntries(Object.entries(document.solids).map(([id, bodies]) => [id, { bodies }]));
  const basis = exciterBasis(machine, solids, masses);
  const without = exciterStudy(machine, solids, masses, { ...DEFAULT_EXCITER, baffleOn: false });
  if (basis === null || without === null) return null;
  const { rest } = basis;
  const [x, y] = basis.fixed_kgm;
  const off = without.high.housing_kgm;
  const inside = machine.parts.filter((p) => p.unit === rest.exciter_part);
  const housing = inside.find((p) => machine.kinds[p.kind]?.params.builder === 'exciter-housing');
  const base = {
    basis,
    housingPart: housing?.id ?? '',
    unitParts: inside.map((p) => p.id),
    fixed_kgm: {
      fitted: basis.fixed_kgm,
      off,
      // The plate's own moment, seen in the mirror of the body's x axis.
      mirrored: [x, off[1] - (y - off[1])] as const,
    },
  };
  const own: ShotSetup = {
    direction: 'low',
    fill: 0,
    spinUp: 'quadratic',
    spinUpTime_s: rest.soft_start_s,
    friction: rest.friction,
    baffle: 'fitted',
    gravity: true,
    seed: 1,
  };
  return { ...base, own: { ...own, fill: fillOf(basis.chamber, ownShot(basis)) } };
}

const ownShot = ({ rest, chamberLength_m }: ExciterBasis): ShotParameters['shot'] => ({
  mass_kg: rest.shot_mass_kg,
  length_m: chamberLength_m,
  density_kg_m3: rest.shot_density_kg_m3,
  packing: rest.shot_packing,
  ball_diameter_m: rest.ball_diameter_m,
  size_spread: 0.1,
});

/** Parameters of a run with the machine's geometry and shot. The spin-up runs to the machine's higher speed. */
export function parametersOf(base: ShotBase, setup: ShotSetup): ShotParameters {
  const { basis } = base;
  const { rest } = basis;
  const shot = ownShot(basis);
  const baffle: Record<BaffleState, Baffle | null> = {
    fitted: basis.baffle,
    mirrored: mirrorBaffle(basis.baffle),
    off: null,
  };
  return {
    ...DEFAULT_RUN,
    chamber: basis.chamber,
    baffle: baffle[setup.baffle],
    // The machine's own charge to the last bit, so that its run is that of its recording.
    shot:
      setup.fill === base.own.fill ? shot : { ...shot, mass_kg: massOfFill(basis.chamber, shot, setup.fill) },
    direction: setup.direction,
    spin_up: { kind: setup.spinUp, frequency_Hz: rest.frequency_high_Hz, time_s: setup.spinUpTime_s },
    friction: { ball: setup.friction, wall: setup.friction },
    gravity: setup.gravity,
    seed: setup.seed,
  };
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
  };
}
