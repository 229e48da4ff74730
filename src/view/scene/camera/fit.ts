/** The nearest camera along a given direction that sees all points: exact for the perspective, centred on the stage. */
import { Vector3 } from 'three';

export interface CameraPlace {
  readonly position: Vector3;
  readonly target: Vector3;
}

/** Part of the stage that stays free at each edge, as a share of its width or height. */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const X = new Vector3();
const Y = new Vector3();
const Z = new Vector3();
const up = new Vector3();

/**
 * Camera that looks along `-towardsEye` and holds all points (x y z, x y z ...) between the margins. For a direction all four
 * sides of the view are planes, and each asks that the eye lie far enough back: the largest demand wins.
 */
export function fitCamera(
  points: ArrayLike<number>,
  towardsEye: Vector3,
  fov_deg: number,
  aspect: number,
  margins: Margins,
  least_m = 0.25,
): CameraPlace {
  Z.copy(towardsEye).normalize();
  up.set(0, Math.abs(Z.y) > 0.999 ? 0 : 1, Math.abs(Z.y) > 0.999 ? -Math.sign(Z.y) : 0);
  X.crossVectors(up, Z).normalize();
  Y.crossVectors(Z, X);
  const tall = Math.tan((fov_deg * Math.PI) / 360);
  const wide = tall * aspect;
  // Half-openings of the view left free, to each side of the middle.
  const l = wide * (1 - 2 * margins.left);
  const r = wide * (1 - 2 * margins.right);
  const b = tall * (1 - 2 * margins.bottom);
  const t = tall * (1 - 2 * margins.top);
  let right = -Infinity;
  let left = -Infinity;
  let top = -Infinity;
  let bottom = -Infinity;
  let nearest = -Infinity;
  let farthest = Infinity;
  for (let i = 0; i + 2 < points.length; i += 3) {
    const px = points[i]!, py = points[i + 1]!, pz = points[i + 2]!; // prettier-ignore
    const x = X.x * px + X.y * py + X.z * pz;
    const y = Y.x * px + Y.y * py + Y.z * pz;
    const z = Z.x * px + Z.y * py + Z.z * pz;
    // Eye at (ex, ey, ez): x - ex <= r (ez - z) and so on.
    right = Math.max(right, x + r * z);
    left = Math.max(left, -x + l * z);
    top = Math.max(top, y + t * z);
    bottom = Math.max(bottom, -y + b * z);
    nearest = Math.max(nearest, z);
    farthest = Math.min(farthest, z);
  }
  if (nearest === -Infinity) return { position: Z.clone().multiplyScalar(5), target: new Vector3() };
  const ez = Math.max((right + left) / (r + l), (top + bottom) / (t + b), nearest + least_m);
  // Between the two sides' demands there is room in the direction that does not rule: its middle.
  const ex = (right - r * ez + l * ez - left) / 2;
  const ey = (top - t * ez + b * ez - bottom) / 2;
  const middle = (nearest + farthest) / 2;
  const at = (x: number, y: number, z: number): Vector3 =>
    new Vector3().addScaledVector(X, x).addScaledVector(Y, y).addScaledVector(Z, z);
  return { position: at(ex, ey, ez), target: at(ex, ey, Math.min(middle, ez - least_m / 2)) };
}
