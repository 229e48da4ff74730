/** The exciter of the demonstration roller, as its design sheet gives it. */
import type { BaffleSection, ChamberSection, ShotCharge } from '../../src/core/mechanics';

export const CHAMBER: ChamberSection = { radius_m: 0.11, eccentricity_m: 0.046, chord_x_m: null };
export const BAFFLE: BaffleSection = {
  psi_deg: 66,
  beta_deg: 4,
  leg1_m: 0.09,
  leg2_m: 0.02,
  side: 1,
  pocket_side: 1,
  half_thickness_m: 0.004,
};
export const SHOT: ShotCharge = { mass_kg: 60.2, packing: 0.62, length_m: 1.05, density_kg_m3: 7850 };

export const mirrored = (baffle: BaffleSection): BaffleSection => ({
  ...baffle,
  psi_deg: -baffle.psi_deg,
  beta_deg: -baffle.beta_deg,
  side: baffle.side === 1 ? -1 : 1,
  pocket_side: baffle.pocket_side === 1 ? -1 : 1,
});
