/** The runs of the loose shot that belong to a machine: its chamber, baffle, charge and spin-up as parameters. */
import { type ExciterHousingParams, findUnit, type Machine, type Part } from '../machine';
import {
  type Baffle,
  type Chamber,
  DEFAULT_RUN,
  type Direction,
  type FitGeometry,
  fillOf,
  massOfFill,
  mirrorBaffle,
  type Shot,
  type ShotParameters,
} from '../shot';

export type BaffleState = 'fitted' | 'mirrored' | 'off';
export type SpinUpKind = 'quadratic' | 'linear';

/** What a person sets for a run; everything else is the machine's own. */
export interface ShotSetup {
  readonly direction: Direction;
  /** Share of the chamber that the bulk of the shot fills. */
  readonly fill: number;
  readonly spinUp: SpinUpKind;
  /** Time to the higher of the machine's speeds. */
  readonly spinUpTime_s: number;
  /** Of ball on ball and ball on wall. */
  readonly friction: number;
  readonly baffle: BaffleState;
  readonly gravity: boolean;
  readonly seed: number;
}

export interface ExciterHousing {
  readonly part: Part;
  readonly params: ExciterHousingParams;
  /** Section of the chamber, body frame. */
  readonly chamber: Chamber;
  readonly chamberLength_m: number;
}

/** The housing of the machine's exciter; null where the machine has no exciter with loose shot. */
export function exciterHousing(machine: Machine): ExciterHousing | null {
  const { exciter_part, shot_part } = machine.operation;
  const unit = findUnit(machine, exciter_part);
  const part = machine.parts.find(
    (p) => p.unit === unit?.id && machine.kinds[p.kind]?.params.builder === 'exciter-housing',
  );
  const params = part && machine.kinds[part.kind]?.params;
  if (part === undefined || params?.builder !== 'exciter-housing' || shot_part === null) return null;
  const { radius_m, eccentricity_m, from_x_m, to_x_m } = params.chamber;
  return {
    part,
    params,
    chamber: { radius_m, eccentricity_m, chord_x_m: null },
    chamberLength_m: to_x_m - from_x_m,
  };
}

const ownShot = ({ operation }: Machine, { chamberLength_m }: ExciterHousing): Shot => ({
  mass_kg: operation.shot_mass_kg,
  length_m: chamberLength_m,
  density_kg_m3: operation.shot_density_kg_m3,
  packing: operation.shot_packing,
  ball_diameter_m: operation.ball_diameter_m,
  size_spread: 0.1,
});

/** The machine as it is, in LOW with the first seed; null where it has no exciter with loose shot. */
export function ownSetup(machine: Machine): ShotSetup | null {
  const housing = exciterHousing(machine);
  if (housing === null) return null;
  return {
    direction: 'low',
    fill: fillOf(housing.chamber, ownShot(machine, housing)),
    spinUp: 'quadratic',
    spinUpTime_s: machine.operation.soft_start_s,
    friction: machine.operation.friction,
    baffle: 'fitted',
    gravity: true,
    seed: 1,
  };
}

/**
 * Parameters of a run with the machine's geometry and kind of shot; null where it has no exciter with loose shot. The
 * spin-up leads to the machine's higher speed in either direction: the start is the same, and the shot is frozen long
 * before the speeds part.
 */
export function shotParameters(machine: Machine, setup: ShotSetup): ShotParameters | null {
  const housing = exciterHousing(machine);
  if (housing === null) return null;
  const { chamber, params } = housing;
  const shot = ownShot(machine, housing);
  const baffle: Record<BaffleState, Baffle | null> = {
    fitted: params.baffle,
    mirrored: mirrorBaffle(params.baffle),
    off: null,
  };
  // The machine's own charge to the last bit, so that its run is that of its recording.
  const own = setup.fill === fillOf(chamber, shot);
  return {
    ...DEFAULT_RUN,
    chamber,
    baffle: baffle[setup.baffle],
    shot: own ? shot : { ...shot, mass_kg: massOfFill(chamber, shot, setup.fill) },
    direction: setup.direction,
    spin_up: {
      kind: setup.spinUp,
      frequency_Hz: machine.operation.frequency_high_Hz,
      time_s: setup.spinUpTime_s,
    },
    friction: { ball: setup.friction, wall: setup.friction },
    gravity: setup.gravity,
    seed: setup.seed,
  };
}

/** Parameters of the run that ships with a machine; null where it has no exciter with loose shot. */
export function ownShotParameters(machine: Machine, direction: Direction): ShotParameters | null {
  const own = ownSetup(machine);
  return own === null ? null : shotParameters(machine, { ...own, direction });
}

/** The geometry that a fit made from runs with these parameters holds for; throws where there is no baffle. */
export function fitGeometryOf({ chamber, baffle, shot }: ShotParameters): FitGeometry {
  if (baffle === null) throw new Error('studies/fitGeometryOf: baffle, got null, wanted the plate as built');
  const { ball_diameter_m, size_spread } = shot;
  return { chamber, baffle, ball_diameter_m, size_spread };
}
