import { describe, expect, it } from 'vitest';
import { type KindSolid, loadSolidKernel, withSolids } from '../../../src/core/geometry';
import { bounds, built, faults, triangles } from './built';
import { pieces } from './components';

const kernel = await loadSolidKernel();

/** Greatest volume that two bodies of a kind share. */
function shared_m3(solid: KindSolid): number {
  return withSolids(kernel, (s) => {
    const bodies = solid.bodies.map((b) => s.fromMesh(b.solid));
    let most = 0;
    bodies.forEach((a, i) => {
      for (const b of bodies.slice(i + 1)) most = Math.max(most, s.intersect(a, b).volume());
    });
    return most;
  });
}

const named = (solid: KindSolid, name: string) => solid.bodies.find((b) => b.name === name)!;

describe('spherical roller bearing', () => {
  const solid = built({
    builder: 'spherical-roller-bearing',
    bore_m: 0.1,
    outside_m: 0.215,
    width_m: 0.073,
    sphere_m: 0.0935,
    rollers_per_row: 16,
    roller_diameter_m: 0.027,
    roller_length_m: 0.028,
    contact_deg: 11.5,
    cage_material: 'brass',
  });

  it('is sound, lean, and its bodies turn free of each other', () => {
    expect(faults(solid)).toEqual([]);
    expect(triangles(solid)).toBeLessThanOrEqual(8500);
    expect(shared_m3(solid)).toBeLessThan(1e-10);
  });

  it('has two rows of rollers that can be counted, and one cage', () => {
    expect(pieces(named(solid, 'rollers').solid)).toBe(32);
    expect(pieces(named(solid, 'cage').solid)).toBe(1);
    expect(named(solid, 'rollers').section).toBe('whole');
    expect(named(solid, 'cage').material).toBe('brass');
  });

  it('keeps its boundary dimensions', () => {
    const { low, high } = bounds(solid);
    expect(high[0]! - low[0]!).toBeCloseTo(0.073, 6);
    expect(high[1]).toBeCloseTo(0.1075, 3);
  });
});

describe('tapered roller bearing', () => {
  const solid = built({
    builder: 'tapered-roller-bearing',
    bore_m: 0.13,
    outside_m: 0.2,
    width_m: 0.045,
    cone_width_m: 0.045,
    cup_width_m: 0.034,
    rollers: 26,
    roller_diameter_m: 0.017,
    roller_length_m: 0.032,
    contact_deg: 15.5,
    pitch_radius_m: 0.0825,
    pitch_x_m: 0.0235,
  });

  it('is sound and its bodies turn free of each other', () => {
    expect(faults(solid)).toEqual([]);
    expect(triangles(solid)).toBeLessThanOrEqual(6000);
    expect(shared_m3(solid)).toBeLessThan(1e-10);
  });

  it('has all its rollers between cup and cone, with the large ends at x = 0', () => {
    const rollers = named(solid, 'rollers').solid;
    expect(pieces(rollers)).toBe(26);
    const reach = (from: number, to: number): number => {
      let most = 0;
      for (let v = 0; v < rollers.positions.length; v += 3) {
        const [x, y, z] = rollers.positions.slice(v, v + 3);
        if (x! >= from && x! <= to) most = Math.max(most, Math.hypot(y!, z!));
      }
      return most;
    };
    expect(reach(0, 0.012)).toBeGreaterThan(reach(0.035, 0.045) + 0.005);
  });

  it('stays inside its width and diameters', () => {
    const { low, high } = bounds(solid);
    expect(low[0]).toBeGreaterThanOrEqual(-1e-6);
    expect(high[0]).toBeLessThanOrEqual(0.045 + 1e-6);
    expect(high[1]).toBeCloseTo(0.1, 3);
  });
});
