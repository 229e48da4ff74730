import fc from 'fast-check';
import { PerspectiveCamera, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { fitCamera } from '../../src/view/scene/camera/fit';
import { viewDirection } from '../../src/view/scene/camera/views';

const margins = { left: 0.08, right: 0.08, top: 0.06, bottom: 0.06 };

/** Extremes of the points on the screen, -1 to 1. */
function extremes(points: readonly number[], direction: Vector3, aspect: number) {
  const camera = new PerspectiveCamera(27, aspect, 0.01, 100);
  const { position, target } = fitCamera(points, direction, 27, aspect, margins);
  camera.position.copy(position);
  camera.lookAt(target);
  camera.updateMatrixWorld();
  const box = { left: Infinity, right: -Infinity, bottom: Infinity, top: -Infinity };
  for (let i = 0; i < points.length; i += 3) {
    const p = new Vector3().fromArray(points, i).project(camera);
    box.left = Math.min(box.left, p.x);
    box.right = Math.max(box.right, p.x);
    box.bottom = Math.min(box.bottom, p.y);
    box.top = Math.max(box.top, p.y);
  }
  return box;
}

describe('framing', () => {
  const coordinate = fc.double({ min: -2, max: 2, noNaN: true });
  const cloud = fc.array(fc.tuple(coordinate, coordinate, coordinate), { minLength: 4, maxLength: 30 });

  it('holds all points between the margins, and touches one pair of them', () => {
    fc.assert(
      fc.property(cloud, fc.constantFrom(0.5, 0.75, 1.5, 2.2), (points, aspect) => {
        // Something of a size from every side: a speck is kept at the least distance instead.
        const flat = [...points.flat(), -0.8, -0.8, -0.8, 0.8, 0.8, 0.8, 0.8, -0.8, 0.8, -0.8, 0.8, -0.8];
        for (const view of ['home', 'front', 'right', 'top'] as const) {
          const box = extremes(flat, viewDirection(view, aspect, 0)!, aspect);
          expect(box.left).toBeGreaterThan(-0.84 - 1e-6);
          expect(box.right).toBeLessThan(0.84 + 1e-6);
          expect(box.bottom).toBeGreaterThan(-0.88 - 1e-6);
          expect(box.top).toBeLessThan(0.88 + 1e-6);
          const wide = box.left < -0.84 + 1e-4 && box.right > 0.84 - 1e-4;
          const tall = box.bottom < -0.88 + 1e-4 && box.top > 0.88 - 1e-4;
          expect(wide || tall).toBe(true);
        }
      }),
      { seed: 3, numRuns: 60 },
    );
  });

  it('looks from the right front at home: the eye stands at +x, +y, -z', () => {
    for (const aspect of [0.6, 1, 1.8]) {
      const d = viewDirection('home', aspect, 0)!;
      expect(d.x).toBeGreaterThan(0.3);
      expect(d.y).toBeGreaterThan(0.2);
      expect(d.z).toBeLessThan(-0.3);
    }
  });

  it('has nowhere to go without points and stays finite', () => {
    const { position } = fitCamera([], new Vector3(0, 0, 1), 27, 1, margins);
    expect(position.toArray().every(Number.isFinite)).toBe(true);
  });
});
