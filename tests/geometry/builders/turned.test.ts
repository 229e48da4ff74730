import { describe, expect, it } from 'vitest';
import { bounds, built, faults, volume_m3 } from './built';

const ring = (inner: number, outer: number, length: number) => Math.PI * (outer ** 2 - inner ** 2) * length;

describe('turned parts', () => {
  it('have the volume of their stations, holes and slots', () => {
    const solid = built({
      builder: 'turned',
      stations: [
        { from_x_m: 0, to_x_m: 0.03, inner_m: 0.1, outer_m: 0.3 },
        { from_x_m: 0.03, to_x_m: 0.1, inner_m: 0.1, outer_m: 0.15 },
      ],
      holes: [
        { diameter_m: 0.02, count: 12, radius_m: 0.25, start_deg: 15 },
        { diameter_m: 0.012, radius_m: 0.2, angles_deg: [0, 100], from_x_m: 0.01, to_x_m: 0.031 },
        { diameter_m: 0.02, count: 1, radius_m: 0.2, start_deg: 180, slot_m: 0.03, slot_along: 'y' },
      ],
    });
    expect(faults(solid)).toEqual([]);
    const holes =
      12 * ring(0, 0.01, 0.03) + 2 * ring(0, 0.006, 0.02) + (ring(0, 0.01, 0.03) + 0.02 * 0.03 * 0.03);
    const wanted = ring(0.1, 0.3, 0.03) + ring(0.1, 0.15, 0.07) - holes;
    expect(volume_m3(solid) / wanted).toBeCloseTo(1, 4);
  });

  it('chamfer free edges alone: a step inwards keeps its corner', () => {
    const stations = [
      { from_x_m: 0, to_x_m: 0.05, inner_m: 0, outer_m: 0.2 },
      { from_x_m: 0.05, to_x_m: 0.1, inner_m: 0, outer_m: 0.1 },
    ];
    const plain = volume_m3(built({ builder: 'turned', stations }));
    const cut = volume_m3(built({ builder: 'turned', stations, chamfer_m: 0.004 }));
    // Three free edges (both of the wide station, the end of the narrow one); a chamfer c at radius r takes the
    // triangle c^2/2 round a circle of radius r - c/3 (Pappus).
    const chamfer = (r: number) => 2 * Math.PI * (r - 0.004 / 3) * (0.004 ** 2 / 2);
    expect((plain - cut) / (2 * chamfer(0.2) + chamfer(0.1))).toBeCloseTo(1, 2);
  });

  it('carry bosses, keyways and drillings', () => {
    const stations = [{ from_x_m: 0, to_x_m: 0.02, inner_m: 0, outer_m: 0.3 }];
    const boss = [{ from_x_m: 0.02, to_x_m: 0.06, inner_m: 0.02, outer_m: 0.04 }];
    const bossed = built({
      builder: 'turned',
      stations,
      bosses: { stations: boss, count: 4, radius_m: 0.2, start_deg: 45 },
      drillings: [{ diameter_m: 0.01, from_m: [-0.01, 0, 0], to_m: [0.03, 0, 0] }],
      keyways: [{ from_x_m: -0.01, to_x_m: 0.03, width_m: 0.02, floor_m: 0.29, angle_deg: 90 }],
    });
    expect(faults(bossed)).toEqual([]);
    const segment = 0.3 * Math.asin(0.01 / 0.3) * 0.3 - 0.01 * Math.sqrt(0.3 ** 2 - 0.01 ** 2);
    const keyway = (segment + 0.02 * (Math.sqrt(0.3 ** 2 - 0.01 ** 2) - 0.29)) * 0.02;
    const wanted = ring(0, 0.3, 0.02) + 4 * ring(0.02, 0.04, 0.04) - ring(0, 0.005, 0.02) - keyway;
    expect(volume_m3(bossed) / wanted).toBeCloseTo(1, 4);
    expect(bounds(bossed).high[0]).toBeCloseTo(0.06, 6);
  });
});
