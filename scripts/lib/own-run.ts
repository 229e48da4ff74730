/** The run of the loose shot with a machine's own numbers: the one that ships with it. */
import { hashText } from '../../src/core/kernel';
import type { Machine } from '../../src/core/machine';
import { DEFAULT_RUN, type Direction, type ShotParameters } from '../../src/core/shot';

/** Parameters from the machine's exciter housing and operation; throws where the machine has no loose shot. */
export function ownRun(machine: Machine, direction: Direction): ShotParameters {
  const housing = Object.values(machine.kinds).find(
    (kind) => kind.params.builder === 'exciter-housing',
  )?.params;
  if (housing?.builder !== 'exciter-housing')
    throw new Error('scripts/ownRun: the machine has no exciter housing');
  const { operation } = machine;
  const { radius_m, eccentricity_m, from_x_m, to_x_m } = housing.chamber;
  return {
    ...DEFAULT_RUN,
    chamber: { radius_m, eccentricity_m, chord_x_m: null },
    baffle: housing.baffle,
    shot: {
      mass_kg: operation.shot_mass_kg,
      length_m: to_x_m - from_x_m,
      density_kg_m3: operation.shot_density_kg_m3,
      packing: operation.shot_packing,
      ball_diameter_m: operation.ball_diameter_m,
      size_spread: 0.1,
    },
    direction,
    spin_up: { kind: 'quadratic', frequency_Hz: operation.frequency_high_Hz, time_s: operation.soft_start_s },
    friction: { ball: operation.friction, wall: operation.friction },
  };
}

/** Tells whether a fit was made for this chamber, baffle and kind of shot. */
export const geometryHash = ({ chamber, baffle, shot }: ShotParameters): string => {
  const { ball_diameter_m, density_kg_m3, packing, size_spread } = shot;
  return hashText(JSON.stringify([chamber, baffle, ball_diameter_m, density_kg_m3, packing, size_spread]));
};
