import { describe, expect, it } from 'vitest';
import { bounds, built, faults, triangles, volume_m3, volumes_m3 } from './built';

const near = (value: number, wanted: number, share = 0.002): void => {
  expect(Math.abs(value - wanted)).toBeLessThan(share * Math.abs(wanted));
};

describe('side plate', () => {
  const plate = {
    builder: 'side-plate',
    from_x_m: 1.115,
    to_x_m: 1.15,
    length_m: 2.5,
    height_m: 0.45,
    eye_radius_m: 0.48,
    opening_radius_m: 0.375,
    blend_m: 0.4,
    corner_radius_m: 0.05,
  };

  it('meets the area of arm, eye and blends found by fine integration', () => {
    const solid = built(plate);
    expect(faults(solid)).toEqual([]);
    const h = plate.height_m / 2;
    const cy = h + plate.blend_m;
    const cz = Math.sqrt((plate.eye_radius_m + plate.blend_m) ** 2 - cy ** 2);
    const touchZ = (cz * plate.eye_radius_m) / (plate.eye_radius_m + plate.blend_m);
    const top = (z: number): number =>
      z <= touchZ
        ? Math.sqrt(plate.eye_radius_m ** 2 - z * z)
        : z <= cz
          ? cy - Math.sqrt(plate.blend_m ** 2 - (cz - z) ** 2)
          : h;
    const steps = 20000;
    const end = plate.length_m / 2;
    let quarter = 0;
    for (let i = 0; i < steps; i++) quarter += top(((i + 0.5) * end) / steps) * (end / steps);
    const corners = (4 - Math.PI) * plate.corner_radius_m ** 2;
    const wanted = 4 * quarter - corners - Math.PI * plate.opening_radius_m ** 2;
    near(volume_m3(solid) / 0.035, wanted, 0.001);
  });

  it('is bored where it is told and refuses a blend that does not fit', () => {
    const hole = { diameter_m: 0.026, count: 12, radius_m: 0.43 };
    const bored = built({ ...plate, holes: [hole] });
    expect(faults(bored)).toEqual([]);
    expect(volume_m3(built(plate)) - volume_m3(bored)).toBeCloseTo(12 * Math.PI * 0.013 ** 2 * 0.035, 7);
    expect(() => built({ ...plate, blend_m: 4 })).toThrow(/blend/);
  });
});

describe('box section', () => {
  const beam = {
    builder: 'box-section',
    length_m: 2.23,
    height_m: 0.25,
    width_m: 0.25,
    wall_m: 0.016,
    end_plate_m: 0.03,
  };
  it('is hollow between its end plates, with holes through one wall or both ends', () => {
    const solid = built(beam);
    expect(faults(solid)).toEqual([]);
    const wanted = 0.25 ** 2 * 2.23 - 0.218 ** 2 * 2.17;
    expect(volume_m3(solid)).toBeCloseTo(wanted, 6);
    const bored = built({
      ...beam,
      end_holes: [{ diameter_m: 0.024, places_m: [[0.08, 0.08], [-0.08, 0]] }], // prettier-ignore
      side_holes: [{ face: '-z', diameter_m: 0.016, places_m: [[0.5, 0.05]] }],
    });
    expect(faults(bored)).toEqual([]);
    const holes = 4 * Math.PI * 0.012 ** 2 * 0.03 + Math.PI * 0.008 ** 2 * 0.016;
    expect(volume_m3(solid) - volume_m3(bored)).toBeCloseTo(holes, 7);
  });
});

describe('plate outline', () => {
  it('rounds its corners and joins its eyes', () => {
    const solid = built({
      builder: 'plate-outline',
      from_x_m: 0,
      to_x_m: 0.02,
      corners_m: [[0, 0], [0.2, 0], [0.2, 0.4], [0, 0.4]], // prettier-ignore
      corner_radius_m: 0.03,
      eyes: [{ at_m: [0.1, 0.6], radius_m: 0.05 }],
      holes: [{ diameter_m: 0.05, places_m: [[0.1, 0.2]] }],
    });
    expect(faults(solid)).toEqual([]);
    const area = 0.08 - (4 - Math.PI) * 0.03 ** 2 + Math.PI * 0.05 ** 2 - Math.PI * 0.025 ** 2;
    near(volume_m3(solid), area * 0.02, 0.003);
  });
});

describe('built-up part', () => {
  it('adds and cuts pieces along each axis', () => {
    const solid = built({
      builder: 'built-up',
      pieces: [
        { form: 'box', from_m: [-0.1, -0.1, -0.1], to_m: [0.1, 0.1, 0.1] },
        { form: 'cylinder', axis: 'y', at_m: [0.05, -0.05], radius_m: 0.03, from_m: 0.1, to_m: 0.2 },
        { form: 'prism', axis: 'z', corners_m: [[-0.1, 0.1], [-0.1, 0.2], [-0.05, 0.1]], from_m: 0, to_m: 0.05 }, // prettier-ignore
      ],
      cuts: [
        { form: 'slot', axis: 'y', ends_m: [[-0.05, 0], [-0.05, 0.04]], radius_m: 0.01, from_m: -0.2, to_m: 0.09 }, // prettier-ignore
        { form: 'cylinder', axis: 'z', at_m: [0.05, 0.02], radius_m: 0.02, from_m: -0.2, to_m: 0.2 },
      ],
    });
    expect(faults(solid)).toEqual([]);
    const slot = (Math.PI * 0.01 ** 2 + 0.04 * 0.02) * 0.19;
    const wanted =
      0.008 + Math.PI * 0.03 ** 2 * 0.1 + ((0.1 * 0.05) / 2) * 0.05 - slot - Math.PI * 0.02 ** 2 * 0.2;
    near(volume_m3(solid), wanted, 0.001);
    const { high, low } = bounds(solid);
    expect(high[1]).toBeCloseTo(0.2, 6);
    expect(low[0]).toBeCloseTo(-0.1, 6);
  });

  it('puts a piece where its two coordinates say, in the order x, y, z', () => {
    const at = (axis: string): readonly number[] => {
      const { low, high } = bounds(
        built({ builder: 'built-up', pieces: [{ form: 'cylinder', axis, at_m: [1, 2], radius_m: 0.1, from_m: 5, to_m: 6 }] }), // prettier-ignore
      );
      return low.map((l, i) => Math.round(((l + (high[i] ?? 0)) / 2) * 1e4) / 1e4);
    };
    expect(at('x')).toEqual([5.5, 1, 2]);
    expect(at('y')).toEqual([1, 5.5, 2]);
    expect(at('z')).toEqual([1, 2, 5.5]);
  });
});

describe('hydraulic cylinder', () => {
  it('is two sound bodies that do not meet, from eye to eye', () => {
    const solid = built({
      builder: 'hydraulic-cylinder',
      pin_to_pin_m: 0.7,
      barrel_outer_m: 0.09,
      barrel_length_m: 0.45,
      rod_m: 0.04,
      eye_radius_m: 0.045,
      eye_bore_radius_m: 0.02,
      eye_width_m: 0.05,
    });
    expect(faults(solid)).toEqual([]);
    expect(solid.bodies.map((b) => b.name)).toEqual(['barrel', 'rod']);
    const { low, high } = bounds(solid);
    near(low[0] ?? 0, -0.045, 0.02);
    near(high[0] ?? 0, 0.745, 0.002);
    // Rod: bar and piston and eye less what they share; the bar alone is a lower bound, the envelope an upper one.
    const rod = volumes_m3(solid)[1] ?? 0;
    expect(rod).toBeGreaterThan(Math.PI * 0.02 ** 2 * 0.45);
    expect(rod).toBeLessThan(Math.PI * 0.045 ** 2 * 0.7);
  });
});

describe('hose', () => {
  it('runs straight with the volume of a bar, and round a bend with that of its centre line', () => {
    const straight = built({
      builder: 'hose',
      points_m: [[0, 0, 0], [0.2, 0, 0], [1, 0, 0]], // prettier-ignore
      radius_m: 0.02,
      fitting: { radius_m: 0.025, length_m: 0.1 },
    });
    expect(faults(straight)).toEqual([]);
    const [bar = 0, end = 0] = volumes_m3(straight);
    near(bar, Math.PI * 0.02 ** 2 * 0.8, 1e-5);
    near(end, Math.PI * 0.025 ** 2 * 0.1, 1e-5);
    // A quarter circle of radius 0.5 m between straight ends, drawn through points of it.
    const points = [[0, -0.2, 0.5], ...Array.from({ length: 9 }, (_, i) => [0.5 - 0.5 * Math.cos((i * Math.PI) / 16), 0.5 * Math.sin((i * Math.PI) / 16), 0.5]), [0.7, 0.5, 0.5]]; // prettier-ignore
    const bend = built({
      builder: 'hose',
      points_m: points,
      radius_m: 0.02,
      fitting: { radius_m: 0.025, length_m: 0.1 },
    });
    expect(faults(bend)).toEqual([]);
    near(volumes_m3(bend)[0] ?? 0, Math.PI * 0.02 ** 2 * (0.2 + 0.25 * Math.PI), 0.01);
  });

  it('refuses an end stretch shorter than its fitting', () => {
    expect(() =>
      built({
        builder: 'hose',
        points_m: [[0, 0, 0], [0.05, 0, 0], [1, 0, 0]], // prettier-ignore
        radius_m: 0.02,
        fitting: { radius_m: 0.025, length_m: 0.1 },
      }),
    ).toThrow(/fitting/);
  });
});

describe('pad segment', () => {
  const segment = {
    builder: 'pad-segment',
    inner_m: 0.752,
    plate_m: 0.012,
    width_m: 2.12,
    arc_deg: 118,
    flange: {
      thickness_m: 0.02,
      height_m: 0.07,
      bolt_hole_m: 0.022,
      tapped_hole_m: 0.02,
      bolts_x_m: [-0.5, 0, 0.5],
      bolts_radius_m: 0.8,
    },
    pad: {
      reach_m: 0.875,
      foot_m: [0.13, 0.11],
      top_m: [0.09, 0.07],
      rows: [
        { x_m: -0.3, angles_deg: [-24, 0, 24] },
        { x_m: 0, angles_deg: [-12, 12] },
      ],
    },
  };
  it('is a shell with flanges and one tapered block a pad', () => {
    const solid = built(segment);
    expect(faults(solid)).toEqual([]);
    const without = built({ ...segment, pad: { ...segment.pad, rows: [{ x_m: -0.3, angles_deg: [-24] }] } });
    const [foot, top] = [0.13 * 0.11, 0.09 * 0.07];
    const sunk = 0.875 - 0.758;
    const frustum = (sunk / 6) * (foot + top + (0.13 + 0.09) * (0.11 + 0.07));
    // Four more pads; the plate hides about 6 mm of each foot.
    near((volume_m3(solid) - volume_m3(without)) / 4, frustum - 0.13 * 0.11 * 0.006, 0.03);
    expect(triangles(solid)).toBeLessThan(1500);
  });
  it('reaches exactly as far as it says on the middle of a pad', () => {
    const { high } = bounds(built(segment));
    expect(high[1]).toBeCloseTo(0.875, 5);
  });
});

describe('tyre', () => {
  it('is a sound tyre and rim, few triangles', () => {
    const solid = built({
      builder: 'tyre',
      outer_m: 0.76,
      rim_m: 0.33,
      width_m: 0.58,
      cleats: 14,
      cleat_height_m: 0.04,
    });
    expect(faults(solid)).toEqual([]);
    expect(triangles(solid)).toBeLessThan(2500);
    const { high } = bounds(solid);
    near(high[1] ?? 0, 0.76, 0.02);
  });
});
