import { describe, expect, it } from 'vitest';
import { bounds, built, faults, triangles, volume_m3 } from './built';

const hexagonArea = (corner: number): number => ((3 * Math.sqrt(3)) / 2) * corner ** 2;
const frustum = (a: number, b: number, h: number): number => (h / 3) * (a + b + Math.sqrt(a * b));
/** The bevelled hexagon as the builder has it: bevel 0.06 s high, corners 0.12 s further in at the end. */
function hexVolume(s: number, h: number): number {
  const corner = s / Math.sqrt(3);
  return (
    hexagonArea(corner) * (h - 0.06 * s) +
    frustum(hexagonArea(corner), hexagonArea(corner - 0.12 * s), 0.06 * s)
  );
}

describe('bolt', () => {
  const m24 = {
    builder: 'bolt',
    diameter_m: 0.024,
    length_m: 0.065,
    head: { form: 'hex', across_flats_m: 0.036, height_m: 0.015 },
  };

  it('has the volume of shank, chamfer and bevelled hexagon', () => {
    const bolt = built(m24);
    expect(faults(bolt)).toEqual([]);
    const r = 0.012;
    const shank =
      Math.PI * r ** 2 * (0.065 - 0.0024) + frustum(Math.PI * r ** 2, Math.PI * (r - 0.0024) ** 2, 0.0024);
    expect(volume_m3(bolt)).toBeCloseTo(shank + hexVolume(0.036, 0.015), 9);
  });

  it('stands with its seat at x = 0, shank to the left, head to the right', () => {
    const { low, high } = bounds(built(m24));
    expect(low[0]).toBeCloseTo(-0.065, 6);
    expect(high[0]).toBeCloseTo(0.015, 6);
    // A corner of the hexagon points up: half the width across corners.
    expect(high[1]).toBeCloseTo(0.036 / Math.sqrt(3), 6);
    expect(high[2]).toBeCloseTo(0.018, 6);
  });

  it('turns its hexagon by the phase', () => {
    const { high } = bounds(built({ ...m24, head: { ...m24.head }, hex_phase_deg: 30 }));
    expect(high[1]).toBeCloseTo(0.018, 6);
  });

  it('adds a hard washer under the head without moving the seat', () => {
    const washer = built({ ...m24, washer: { diameter_m: 0.044, thickness_m: 0.004 } });
    expect(faults(washer)).toEqual([]);
    const added = Math.PI * 0.022 ** 2 * 0.004;
    expect(volume_m3(washer) - volume_m3(built(m24))).toBeCloseTo(added, 9);
    expect(bounds(washer).high[0]).toBeCloseTo(0.019, 6);
  });

  it('stays lean: at most 150 triangles, 200 with a washer', () => {
    expect(triangles(built(m24))).toBeLessThanOrEqual(150);
    expect(
      triangles(built({ ...m24, washer: { diameter_m: 0.044, thickness_m: 0.004 } })),
    ).toBeLessThanOrEqual(200);
  });

  it('makes a socket head screw: rim less key', () => {
    const screw = built({
      builder: 'bolt',
      diameter_m: 0.014,
      length_m: 0.035,
      chamfer_m: 0,
      head: { form: 'socket', diameter_m: 0.021, height_m: 0.014, key_m: 0.012, key_depth_m: 0.007 },
    });
    expect(faults(screw)).toEqual([]);
    const rim = 0.0105;
    const edge = 0.08 * rim;
    const head =
      Math.PI * rim ** 2 * (0.014 - edge) + frustum(Math.PI * rim ** 2, Math.PI * (rim - edge) ** 2, edge);
    const key = hexagonArea(0.012 / Math.sqrt(3)) * 0.007;
    expect(volume_m3(screw)).toBeCloseTo(Math.PI * 0.007 ** 2 * 0.035 + head - key, 9);
    expect(triangles(screw)).toBeLessThanOrEqual(160);
  });

  it('makes a headless pin and a plug with a magnet hole', () => {
    const pin = built({
      builder: 'bolt',
      diameter_m: 0.016,
      length_m: 0.05,
      chamfer_m: 0,
      head: { form: 'none' },
    });
    expect(faults(pin)).toEqual([]);
    expect(volume_m3(pin)).toBeCloseTo(Math.PI * 0.008 ** 2 * 0.05, 9);
    const plug = built({
      builder: 'bolt',
      diameter_m: 0.033,
      length_m: 0.018,
      chamfer_m: 0,
      head: { form: 'hex', across_flats_m: 0.03, height_m: 0.018, collar_m: 0.042, collar_height_m: 0.004 },
      end_hole: { diameter_m: 0.012, depth_m: 0.01 },
    });
    expect(faults(plug)).toEqual([]);
    const hex = hexVolume(0.03, 0.016) - hexagonArea(0.03 / Math.sqrt(3)) * 0.002;
    const collar = Math.PI * 0.021 ** 2 * 0.004;
    const shank = Math.PI * (0.0165 ** 2 * 0.018 - 0.006 ** 2 * 0.01);
    expect(volume_m3(plug)).toBeCloseTo(shank + collar + hex, 9);
  });
});

describe('nut', () => {
  it('has the volume of its hexagon and washer less the bore', () => {
    const nut = built({ builder: 'nut', bore_m: 0.016, across_flats_m: 0.024, height_m: 0.013 });
    expect(faults(nut)).toEqual([]);
    expect(volume_m3(nut)).toBeCloseTo(hexVolume(0.024, 0.013) - Math.PI * 0.008 ** 2 * 0.013, 9);
    const both = built({
      builder: 'nut',
      bore_m: 0.016,
      across_flats_m: 0.024,
      height_m: 0.013,
      washer: { diameter_m: 0.03, thickness_m: 0.003 },
    });
    expect(faults(both)).toEqual([]);
    const washer = Math.PI * (0.015 ** 2 - 0.008 ** 2) * 0.003;
    expect(volume_m3(both) - volume_m3(nut)).toBeCloseTo(washer, 9);
    expect(bounds(both).low[0]).toBeCloseTo(0, 6);
  });
});
