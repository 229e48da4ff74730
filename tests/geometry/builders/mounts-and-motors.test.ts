import { describe, expect, it } from 'vitest';
import { loadSolidKernel, withSolids } from '../../../src/core/geometry';
import { bounds, built, faults, volume_m3, volumes_m3 } from './built';

const kernel = await loadSolidKernel();

describe('isolator', () => {
  const solid = built({
    builder: 'isolator',
    rubber_diameter_m: 0.15,
    rubber_length_m: 0.066,
    waist_m: 0,
    plate_thickness_m: 0.012,
    plate_diameter_m: 0.158,
    ears: { count: 4, radius_m: 0.092, start_deg: 45, hole_diameter_m: 0.0155, ear_radius_m: 0.016 },
    insert: { thread_diameter_m: 0.02, depth_m: 0.035, outside_m: 0.038, length_m: 0.042 },
    plate_material: 'steel',
  });

  it('is sound, as long as its plates and rubber, with the bush standing in the rubber', () => {
    expect(faults(solid)).toEqual([]);
    const { low, high } = bounds(solid);
    expect(high[0]! - low[0]!).toBeCloseTo(0.09, 6);
    const rubber = volumes_m3(solid)[1]!;
    const wanted = Math.PI * (0.075 ** 2 * 0.066 - 0.019 ** 2 * (0.042 - 0.012));
    expect(rubber / wanted).toBeCloseTo(1, 4);
  });
});

describe('splined parts', () => {
  const motor = built({
    builder: 'axial-motor',
    pilot: { radius_m: 0.0635, inner_m: 0.034, length_m: 0.0127, groove_m: 0.0603, groove_width_m: 0.0045 },
    flange: { radius_m: 0.105, thickness_m: 0.022, boss_m: 0.024 },
    flange_holes: { diameter_m: 0.0135, count: 4, radius_m: 0.081, start_deg: 45 },
    body: { radius_m: 0.068, to_x_m: 0.22, cover_radius_m: 0.064, cover_from_x_m: 0.17 },
    shaft: { teeth: 16, root_m: 0.0149, tip_m: 0.0169, from_x_m: -0.056 },
    ports: [{ diameter_m: 0.027, places_m: [[0, 0.034], [0, -0.034]], from_x_m: 0.202, to_x_m: 0.221 }], // prettier-ignore
  });
  const sleeve = (phase: 'meshed' | 'plain') =>
    built({
      builder: 'coupling-shaft',
      chamfer_m: 0.001,
      stations: [{ from_x_m: -0.2, to_x_m: -0.06, inner_m: 0, outer_m: 0.024 }],
      male: { teeth: 24, root_m: 0.0218, tip_m: 0.0239, from_x_m: -0.2, to_x_m: -0.15 },
      female: { teeth: phase === 'meshed' ? 16 : 15, root_m: 0.0151, tip_m: 0.0171, from_x_m: -0.06, to_x_m: -0.002, outer_m: 0.031 }, // prettier-ignore
    });
  const shared = (phase: 'meshed' | 'plain'): number =>
    withSolids(kernel, (s) => {
      const a = s.union(motor.bodies.map((b) => s.fromMesh(b.solid)));
      return s.intersect(a, s.fromMesh(sleeve(phase).bodies[0]!.solid)).volume();
    });

  it('are sound and mesh without touching when their teeth agree', () => {
    expect(faults(motor)).toEqual([]);
    expect(faults(sleeve('meshed'))).toEqual([]);
    expect(shared('meshed')).toBeLessThan(1e-10);
    expect(shared('plain')).toBeGreaterThan(1e-7);
  });
});

describe('low-speed motor', () => {
  it('is sound and lies between its end face and the output flange', () => {
    const solid = built({
      builder: 'radial-piston-motor',
      output: { radius_m: 0.305, thickness_m: 0.025, boss_m: 0.125, boss_length_m: 0.015 },
      body: { radius_m: 0.184, to_x_m: -0.275, lobes: 8, lobe_depth_m: 0.02 },
      mount: { radius_m: 0.25, from_x_m: -0.235, to_x_m: -0.21 },
      cover: { radius_m: 0.15, length_m: 0.03 },
      output_holes: [{ diameter_m: 0.022, count: 10, radius_m: 0.277, start_deg: 0 }],
      mount_holes: [{ diameter_m: 0.022, count: 8, radius_m: 0.225, start_deg: 22.5 }],
      ports: [{ diameter_m: 0.033, places_m: [[0, 0.08]], from_x_m: -0.276, to_x_m: -0.253 }],
    });
    expect(faults(solid)).toEqual([]);
    const { low, high } = bounds(solid);
    expect(low[0]).toBeCloseTo(-0.275, 6);
    expect(high[0]).toBeCloseTo(0, 6);
  });
});

describe('seals, washer and tube', () => {
  it('are sound', () => {
    const seal = { builder: 'lip-seal', shaft_radius_m: 0.05, outer_radius_m: 0.065, width_m: 0.012, case_material: 'steel' }; // prettier-ignore
    for (const dirt_lip of [true, false]) expect(faults(built({ ...seal, dirt_lip }))).toEqual([]);
    const washer = built({
      builder: 'lock-washer',
      inner_m: 0.065,
      outer_m: 0.08,
      thickness_m: 0.003,
      tongue: { width_m: 0.0095, to_radius_m: 0.0605, angle_deg: 0 },
      tab: { width_m: 0.01, length_m: 0.006, angle_deg: 90 },
    });
    expect(faults(washer)).toEqual([]);
    expect(bounds(washer).low[0]).toBeCloseTo(-0.006, 6);
  });

  it('an O-ring squeezed to its groove fills 83 percent of it (a regular octagon drawn to the rectangle)', () => {
    const ring = built({ builder: 'o-ring', inner_m: 0.1182, outer_m: 0.122, width_m: 0.0046 });
    expect(faults(ring)).toEqual([]);
    const groove = Math.PI * (0.122 ** 2 - 0.1182 ** 2) * 0.0046;
    expect(volume_m3(ring) / groove).toBeCloseTo(2 * (Math.SQRT2 - 1), 2);
  });

  it('a bent tube has the volume of its wall along the mitred centre line', () => {
    const tube = built({
      builder: 'bent-tube',
      path_m: [[0, 0, 0], [0, -0.4, 0], [0.1, -0.4, 0]], // prettier-ignore
      outside_m: 0.025,
      wall_m: 0.003,
    });
    expect(faults(tube)).toEqual([]);
    expect(volume_m3(tube) / (Math.PI * (0.0125 ** 2 - 0.0095 ** 2) * 0.5)).toBeCloseTo(1, 3);
  });
});
