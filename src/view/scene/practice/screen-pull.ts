/** What a drag on the screen means along a way in space: the part goes with the finger as far as the way allows. */
import { Matrix4, type PerspectiveCamera, Vector3 } from 'three';
import type { Vec3 } from '../../../core/kernel';
import { type HandPath, placeOn } from './hand-path';

/** How the stage shows the machine now. */
export interface HandView {
  /** Where a point is on the stage, CSS pixels, y down. */
  readonly screen: (at: Vec3) => readonly [number, number];
  /** Pixels of a metre that lies across the view at this point. */
  readonly perMetre: (at: Vec3) => number;
  /** Whether this direction comes towards the eye there. */
  readonly towards: (at: Vec3, direction: Vec3) => boolean;
}

export function handView(camera: PerspectiveCamera, width: number, height: number): HandView {
  camera.updateMatrixWorld();
  const through = new Matrix4().multiplyMatrices(camera.projectionMatrix, camera.matrixWorldInverse);
  const eye = camera.getWorldPosition(new Vector3());
  const ahead = camera.getWorldDirection(new Vector3());
  const focal = (camera.projectionMatrix.elements[5]! * height) / 2;
  const v = new Vector3();
  return {
    screen: (at) => {
      v.set(...at).applyMatrix4(through);
      return [((v.x + 1) / 2) * width, ((1 - v.y) / 2) * height];
    },
    perMetre: (at) => focal / Math.max(1e-3, v.set(...at).sub(eye).dot(ahead)), // prettier-ignore
    towards: (at, [x, y, z]) => {
      v.set(...at).sub(eye);
      return v.x * x + v.y * y + v.z * z < 0;
    },
  };
}

/** Below this share of its true length on the screen a way is seen from its end. */
const END_ON = 0.2;
/** A shortened way goes no faster than if it were seen at this share: else a hair of the drag is the whole of it. */
const SLOWEST = 0.4;
/** A long drag is followed in steps of so many pixels, so that it turns the corners of the way. */
const STEP_PX = 4;
const PROBE_M = 1e-3;

/** Unit vector on the screen along which a drag moves the part there, and metres of the way for a pixel of it. */
export interface ScreenWay {
  readonly x: number;
  readonly y: number;
  readonly perPixel_m: number;
  /** Seen from its end: what comes towards the eye is pulled down, what goes away from it is pushed up. */
  readonly endOn: boolean;
}

export function screenWay(view: HandView, at: Vec3, direction: Vec3): ScreenWay {
  const full = view.perMetre(at);
  const next: Vec3 = [
    at[0] + PROBE_M * direction[0],
    at[1] + PROBE_M * direction[1],
    at[2] + PROBE_M * direction[2],
  ];
  const [ax, ay] = view.screen(at);
  const [bx, by] = view.screen(next);
  const seen = Math.hypot(bx - ax, by - ay) / PROBE_M;
  if (seen < END_ON * full)
    return { x: 0, y: view.towards(at, direction) ? 1 : -1, perPixel_m: 1 / full, endOn: true };
  return {
    x: (bx - ax) / (seen * PROBE_M),
    y: (by - ay) / (seen * PROBE_M),
    perPixel_m: 1 / Math.max(seen, SLOWEST * full),
    endOn: false,
  };
}

/**
 * How far along the way the part is after a drag.
 * @param at_m where it was; below 0 and beyond the length of the way a drag goes on counting, so that a hand that went
 *   too far must come back first
 * @param grabbed the point under the hand with the part at the start of the way
 * @param dx, dy the drag, CSS pixels, y down
 */
export function pulledTo(
  path: HandPath,
  at_m: number,
  grabbed: Vec3,
  [dx, dy]: readonly [number, number],
  view: HandView,
): number {
  const steps = Math.max(1, Math.ceil(Math.hypot(dx, dy) / STEP_PX));
  const origin = placeOn(path, 0).offset;
  let s = at_m;
  for (let i = 0; i < steps; i++) {
    const { offset, direction } = placeOn(path, path.length_m === Infinity ? 0 : s);
    const at: Vec3 = [
      grabbed[0] + offset[0] - origin[0],
      grabbed[1] + offset[1] - origin[1],
      grabbed[2] + offset[2] - origin[2],
    ];
    const way = screenWay(view, at, direction);
    s += ((dx * way.x + dy * way.y) / steps) * way.perPixel_m;
  }
  return s;
}
