/** A drag on the screen as a way in space: along it the part goes on, across it it stays, end-on it goes by up and down. */
import fc from 'fast-check';
import { PerspectiveCamera, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import type { Timeline } from '../../src/core/assembly';
import type { Vec3 } from '../../src/core/kernel';
import { handPath, placeOn, playedAt, straightPath } from '../../src/view/scene/practice/hand-path';
import { handView, pulledTo, screenWay } from '../../src/view/scene/practice/screen-pull';

const WIDTH = 900;
const HEIGHT = 700;

function viewFrom(eye: Vec3, at: Vec3 = [0, 0, 0]) {
  const camera = new PerspectiveCamera(27, WIDTH / HEIGHT, 0.1, 60);
  camera.position.set(...eye);
  camera.lookAt(...at);
  camera.updateProjectionMatrix();
  return handView(camera, WIDTH, HEIGHT);
}

/** First 0.2 m along x while it unscrews, then a rest, then 0.4 m along y. Another part stands still. */
const twoLegs = {
  partCount: 2,
  stepEnd_s: Float64Array.from([1, 3]),
  firstKey: Uint32Array.from([0, 2, 2]),
  keyTimes: Float64Array.from([0, 1, 2, 3]),
  keyOffsets: Float32Array.from([0, 0, 0, 0, 0.2, 0, 0, 6, 0.2, 0, 0, 6, 0.2, 0.4, 0, 6]),
} as unknown as Timeline;

const unit = fc
  .tuple(fc.double({ min: -1, max: 1, noNaN: true }), fc.double({ min: 0, max: 6.28, noNaN: true }))
  .map(([y, turn]): Vec3 => {
    const r = Math.sqrt(1 - y * y);
    return [r * Math.cos(turn), y, r * Math.sin(turn)];
  });
/** Eyes that are not above or below, where the sense of up is lost. */
const eyes = unit.filter(([, y]) => Math.abs(y) < 0.95).map(([x, y, z]): Vec3 => [5 * x, 5 * y, 5 * z]);
const runs = { numRuns: 60, seed: 20 };

describe('the way of a part as a line', () => {
  it('has both legs, their corner, and the moment of play of each length', () => {
    const path = handPath({ timeline: twoLegs, reverse: false }, 0);
    expect(path.length_m).toBeCloseTo(0.6, 6);
    expect(placeOn(path, 0.1).direction).toEqual([1, 0, 0]);
    expect(placeOn(path, 0.3).direction[1]).toBeCloseTo(1, 6);
    expect(placeOn(path, 0.3).offset[1]).toBeCloseTo(0.1, 6);
    // Clamped at its ends.
    expect(placeOn(path, -1).offset).toEqual([0, 0, 0]);
    expect(placeOn(path, 9).offset[1]).toBeCloseTo(0.4, 6);
    expect(playedAt(path, 0)).toBe(0);
    expect(playedAt(path, 0.1)).toBeCloseTo(0.5, 6);
    expect(playedAt(path, 0.4)).toBeCloseTo(2.5, 6);
    expect(playedAt(path, 9)).toBeCloseTo(3, 6);
    expect(handPath({ timeline: twoLegs, reverse: false }, 1).length_m).toBe(0);
  });

  it('runs backwards where a part is put on', () => {
    const path = handPath({ timeline: twoLegs, reverse: true }, 0);
    expect(placeOn(path, 0).offset[1]).toBeCloseTo(0.4, 6);
    expect(placeOn(path, 0.1).direction[1]).toBeCloseTo(-1, 6);
    expect(placeOn(path, 0.6).offset[0]).toBeCloseTo(0, 6);
    expect(playedAt(path, 0.2)).toBeCloseTo(0.5, 6);
  });

  it('plays forward as the length grows, and plays the eased motion at that length', () => {
    const path = handPath({ timeline: twoLegs, reverse: false }, 0);
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.199, noNaN: true }), (s) => {
        const t = playedAt(path, s);
        expect(0.2 * t * t * (3 - 2 * t)).toBeCloseTo(s, 6);
        expect(playedAt(path, s + 1e-3)).toBeGreaterThan(t);
      }),
      runs,
    );
  });
});

describe('a drag', () => {
  it('moves the part on along its way on the screen, the farther the more, and is under the finger', () => {
    fc.assert(
      fc.property(unit, eyes, fc.integer({ min: 4, max: 120 }), (direction, eye, px) => {
        const view = viewFrom(eye);
        const way = screenWay(view, [0, 0, 0], direction);
        const path = straightPath(direction);
        const go = (far: number) => pulledTo(path, 0, [0, 0, 0], [way.x * far, way.y * far], view);
        expect(go(px)).toBeGreaterThan(0);
        expect(go(px + 3)).toBeGreaterThan(go(px));
        expect(go(-px)).toBeLessThan(0);
      }),
      runs,
    );
    const view = viewFrom([0, 0, 5]);
    const path = { length_m: 2, stretches: [{ ...straightPath([1, 0, 0]).stretches[0]!, length_m: 2 }] };
    const s = pulledTo(path, 0, [0, 0, 0], [100, 0], view);
    expect(view.screen([s, 0, 0])[0] - view.screen([0, 0, 0])[0]).toBeCloseTo(100, 3);
  });

  it('across its way moves nothing', () => {
    fc.assert(
      fc.property(unit, eyes, fc.integer({ min: -90, max: 90 }), (direction, eye, px) => {
        const view = viewFrom(eye);
        const way = screenWay(view, [0, 0, 0], direction);
        const s = pulledTo(straightPath(direction), 0, [0, 0, 0], [-way.y * px, way.x * px], view);
        expect(Math.abs(s)).toBeLessThan(1e-9);
      }),
      runs,
    );
  });

  it('follows a way that bends, round its corner and back', () => {
    const view = viewFrom([0, 0, 5]);
    const path = handPath({ timeline: twoLegs, reverse: false }, 0);
    const perMetre = view.perMetre([0, 0, 0]);
    const out = pulledTo(path, 0, [0, 0, 0], [0.2 * perMetre + 0.01, 0], view);
    expect(out).toBeCloseTo(0.2, 3);
    // Further to the side nothing more comes of it; up it goes on, and all the way back.
    expect(pulledTo(path, out, [0, 0, 0], [80, 0], view)).toBeCloseTo(0.2, 3);
    const up = pulledTo(path, out, [0, 0, 0], [0, -0.3 * perMetre], view);
    expect(up).toBeCloseTo(0.5, 2);
    expect(pulledTo(path, up, [0, 0, 0], [0, 0.1 * perMetre], view)).toBeCloseTo(0.4, 2);
  });

  it('keeps what went beyond the end in mind', () => {
    const view = viewFrom([0, 0, 5]);
    const path = handPath({ timeline: twoLegs, reverse: false }, 0);
    const before = pulledTo(path, 0, [0, 0, 0], [-50, 0], view);
    expect(before).toBeLessThan(0);
    expect(placeOn(path, before).offset).toEqual([0, 0, 0]);
    expect(pulledTo(path, before, [0, 0, 0], [50, 0], view)).toBeCloseTo(0, 9);
  });

  it('goes by down and up where the way is seen from its end', () => {
    const view = viewFrom([0, 0, 5]);
    expect(screenWay(view, [0, 0, 0], [0, 0, 1])).toMatchObject({ endOn: true, x: 0, y: 1 });
    expect(screenWay(view, [0, 0, 0], [0, 0, -1])).toMatchObject({ endOn: true, x: 0, y: -1 });
    expect(screenWay(view, [0, 0, 0], [1, 0, 0]).endOn).toBe(false);
    const s = pulledTo(straightPath([0, 0, 1]), 0, [0, 0, 0], [0, 60], view);
    expect(s * view.perMetre([0, 0, 0])).toBeGreaterThan(50);
  });

  it('never runs away where the way is seen nearly from its end', () => {
    const view = viewFrom([0, 0, 5]);
    fc.assert(
      fc.property(fc.double({ min: 0, max: Math.PI / 2, noNaN: true }), (tilt) => {
        const direction: Vec3 = [Math.sin(tilt), 0, Math.cos(tilt)];
        const way = screenWay(view, new Vector3().toArray(), direction);
        expect(way.perPixel_m * view.perMetre([0, 0, 0])).toBeLessThanOrEqual(2.5 + 1e-9);
      }),
      runs,
    );
  });
});
