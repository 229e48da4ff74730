import { describe, expect, it } from 'vitest';
import { buildKind, loadSolidKernel, meshIntegrals } from '../../../src/core/geometry';
import { builderParams, type ExciterHousingParams, type Kind } from '../../../src/core/machine';
import { built, faults } from './built';

const STEEL = 7850;
const kernel = await loadSolidKernel();

const housing = builderParams.parse({
  builder: 'exciter-housing',
  chamber: { radius_m: 0.11, eccentricity_m: 0.046, from_x_m: 0, to_x_m: 1.05 },
  shell_m: 0.008,
  end_plate: { radius_m: 0.118, thickness_m: 0.025 },
  baffle: {
    psi_deg: 66,
    beta_deg: 4,
    leg1_m: 0.09,
    leg2_m: 0.02,
    side: 1,
    pocket_side: 1,
    half_thickness_m: 0.004,
  },
  left_shaft: [{ from_x_m: -0.1, to_x_m: -0.025, inner_m: 0, outer_m: 0.05 }],
  right_shaft: [{ from_x_m: 1.075, to_x_m: 1.2, inner_m: 0, outer_m: 0.05 }],
  trim_bar: { angle_deg: 187, arm_m: 0.11, radial_m: 0.05, tangential_m: 0.064, from_x_m: 0, to_x_m: 1.05 },
  webs: { x_m: [0.2, 0.8], thickness_m: 0.012, width_m: 0.05 },
}) as ExciterHousingParams;

/** Mass and moment about the shaft axis in the body frame (+x down, +y to the front). */
function steel(name: string) {
  const found = built(housing).bodies.find((b) => b.name === name)!;
  const { volume_m3, centroid_m } = meshIntegrals(found.solid);
  const mass_kg = volume_m3 * STEEL;
  return { mass_kg, moment: [-mass_kg * centroid_m[1], -mass_kg * centroid_m[2]] as const };
}

describe('exciter housing', () => {
  it('is sound and its bodies do not share space', () => {
    const solid = built(housing);
    expect(faults(solid)).toEqual([]);
  });

  it('weighs what its shell, end plates and baffle weigh by formula', () => {
    const shell = steel('shell');
    const shellMass = Math.PI * (0.118 ** 2 - 0.11 ** 2) * 1.05 * STEEL;
    expect(shell.mass_kg).toBeCloseTo(shellMass, 2);
    expect(shell.moment[0]).toBeCloseTo(shellMass * 0.046, 3);
    expect(shell.moment[1]).toBeCloseTo(0, 5);
    const plate = steel('end-plate-left');
    expect(plate.mass_kg).toBeCloseTo(Math.PI * 0.118 ** 2 * 0.025 * STEEL, 3);
  });

  it('has its baffle where the body frame says: 7.25 kg with moment (0.51, 0.37) kg m', () => {
    // Legs of 90 and 20 mm by 8 mm, mitred: the centre lines' length times thickness.
    const { mass_kg, moment } = steel('baffle');
    expect(mass_kg).toBeCloseTo(0.11 * 0.008 * 1.05 * STEEL, 1);
    expect(moment[0]).toBeCloseTo(0.51, 2);
    expect(moment[1]).toBeCloseTo(0.37, 1);
  });

  it('has the trim bar on the light side at its arm', () => {
    const { mass_kg, moment } = steel('trim-bar');
    const arm = Math.hypot(...moment) / mass_kg;
    expect(arm).toBeCloseTo(0.11, 3);
    expect((Math.atan2(moment[1], moment[0]) * 180) / Math.PI + 360).toBeCloseTo(187, 1);
  });
});

describe('shot at rest', () => {
  const kind = (params: Kind['params']): Kind => ({
    item: 1,
    material: 'steel',
    finish: 'shot',
    family: 'exciter',
    params,
  });
  const shot = (mass_kg: number) =>
    buildKind(kernel, kind({ builder: 'shot', housing: 'housing', gap_m: 0.0002 }), {
      kinds: { housing: kind(housing) },
      operation: { shot_mass_kg: mass_kg, shot_density_kg_m3: STEEL, shot_packing: 0.62 } as never,
    });

  it('fills its bulk volume from the bottom, with a level top', () => {
    const solid = shot(60.2);
    expect(faults(solid)).toEqual([]);
    const { volume_m3, centroid_m } = meshIntegrals(solid.bodies[0]!.solid);
    expect(volume_m3).toBeCloseTo(60.2 / (STEEL * 0.62), 5);
    expect(centroid_m[1]).toBeLessThan(-0.046);
    const ys = [...solid.bodies[0]!.solid.positions].filter((_, i) => i % 3 === 1);
    expect(Math.min(...ys)).toBeCloseTo(-0.046 - 0.11, 2);
  });

  it('does not fit when there is more of it than room', () => {
    expect(() => shot(250)).toThrow(/does not fit/);
  });
});
