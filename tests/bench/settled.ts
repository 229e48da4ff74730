/** Settling the shot by a look-up against counting square cells of half a millimetre, the plain way to the same numbers. */
import { buildSettledChamber } from '../../src/core/mechanics';
import { median_ms, type Measure } from './row';

const chamber = { radius_m: 0.11, eccentricity_m: 0.046, chord_x_m: null };
const baffle = {
  psi_deg: 66,
  beta_deg: 4,
  leg1_m: 0.09,
  leg2_m: 0.02,
  side: 1,
  pocket_side: 1,
  half_thickness_m: 0.004,
} as const;
const CELL_M = 0.0005;
const AREA_M2 = 0.01178;

function cells(): number {
  const found: number[] = [];
  for (let x = -0.07; x < 0.16; x += CELL_M)
    for (let y = -0.115; y < 0.115; y += CELL_M)
      if (Math.hypot(x - chamber.eccentricity_m, y) < chamber.radius_m) found.push(Math.hypot(x, y));
  found.sort((a, b) => b - a);
  return found[Math.floor(AREA_M2 / CELL_M ** 2)]!;
}

export const measure: Measure = () => {
  const settled = buildSettledChamber(chamber, baffle);
  return [
    {
      name: 'settle the shot for one fill',
      unit: 'ms',
      ours: median_ms(200, () => void settled.settle(AREA_M2, 'low')),
      baseline: 'sorting square cells of 0.5 mm',
      baseline_value: median_ms(5, () => void cells()),
      more_is_better: false,
    },
  ];
};
