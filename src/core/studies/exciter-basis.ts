/**
 * What of the exciter does not change with the panel's settings, from the solids: the fixed moment of everything that
 * turns with the housing but the shot, where along the shaft it acts, the chamber and the shaking mass.
 *
 * Body frame of the housing: origin on the shaft axis, +x towards the chamber's centre, its axis out of the page along
 * machine +x. As assembled the heavy side hangs down: body +x is machine -y, body +y is machine -z.
 */
import { massOfParts, type KindMass, type KindSolid } from '../geometry';
import { defaultOptions, type ExciterHousingParams, isPresent, type Machine } from '../machine';
import type { BaffleSection, ChamberSection } from '../mechanics';
import { exciterHousing } from './shot-parameters';
import { vibratingMass } from './vibrating-mass';

export interface ExciterBasis {
  readonly housing: ExciterHousingParams;
  readonly chamber: ChamberSection;
  readonly baffle: BaffleSection;
  readonly chamberLength_m: number;
  /** Middle of the chamber along the shaft, machine x. */
  readonly chamberMiddle_m: number;
  /** First moment of the fixed parts about the shaft axis, body frame. */
  readonly fixed_kgm: readonly [number, number];
  /** The same weighted with machine x: where along the shaft it acts. */
  readonly fixedAxial_kgm2: readonly [number, number];
  readonly vibratingMass_kg: number;
  readonly steel_kg_m3: number;
  readonly rest: Machine['operation'];
}

type Masses = Readonly<Record<string, KindMass>>;
type Solids = Readonly<Record<string, KindSolid>>;

const known = new WeakMap<Machine, ExciterBasis | null>();

/** The basis of a machine with a shot exciter, worked out once; null where the machine has none. */
export function exciterBasis(machine: Machine, solids: Solids, masses: Masses): ExciterBasis | null {
  let basis = known.get(machine);
  if (basis === undefined) {
    basis = workOut(machine, solids, masses);
    known.set(machine, basis);
  }
  return basis;
}

function workOut(machine: Machine, solids: Solids, masses: Masses): ExciterBasis | null {
  const found = exciterHousing(machine);
  if (found === null) return null;
  const { part, params, chamber, chamberLength_m } = found;
  const options = defaultOptions(machine);
  const turning = machine.parts.filter(
    (p) => p.movesWith === 'exciter' && p.id !== machine.operation.shot_part && isPresent(p, options),
  );
  const {
    mass_kg: m,
    centre_m: c,
    second_kg_m2: s,
  } = massOfParts(
    machine,
    masses,
    turning.map((p) => p.id),
  );
  return {
    housing: params,
    chamber,
    baffle: params.baffle,
    chamberLength_m,
    chamberMiddle_m: part.pose.position_m[0] + (params.chamber.from_x_m + params.chamber.to_x_m) / 2,
    fixed_kgm: [-m * c[1], -m * c[2]],
    // Second moments are kept as xx, yy, zz, xy, xz, yz about the centre of mass.
    fixedAxial_kgm2: [-(s[3] + m * c[0] * c[1]), -(s[4] + m * c[0] * c[2])],
    vibratingMass_kg: vibratingMass(machine, solids, masses).mass_kg,
    steel_kg_m3: machine.materials['steel']?.density_kg_m3 ?? 7850,
    rest: machine.operation,
  };
}
