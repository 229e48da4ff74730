/**
 * Vectors and poses. Frame of a machine: x to the machine's right along the drum, y up, z to the rear,
 * right-handed, origin on the drum axis at mid-width; lengths in metres.
 */
export type Vec3 = readonly [number, number, number];

export const ZERO: Vec3 = [0, 0, 0];
export const X_AXIS: Vec3 = [1, 0, 0];
export const Y_AXIS: Vec3 = [0, 1, 0];
export const Z_AXIS: Vec3 = [0, 0, 1];

export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const sub = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a: Vec3, s: number): Vec3 => [a[0] * s, a[1] * s, a[2] * s];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length = (a: Vec3): number => Math.hypot(a[0], a[1], a[2]);

/** Unit vector along `a`; the zero vector stays zero. */
export function normalize(a: Vec3): Vec3 {
  const l = length(a);
  return l === 0 ? ZERO : scale(a, 1 / l);
}

/**
 * A rigid pose: rotation as a unit quaternion [x, y, z, w], then translation in metres.
 * Maps a point of the part's own frame into the frame of the machine.
 */
export interface Pose {
  readonly position_m: Vec3;
  readonly rotation: readonly [number, number, number, number];
}

export const IDENTITY_POSE: Pose = { position_m: ZERO, rotation: [0, 0, 0, 1] };

/** Quaternion of a turn by `angle_rad` about the unit `axis` (right-hand rule). */
export function quatFromAxisAngle(axis: Vec3, angle_rad: number): Pose['rotation'] {
  const s = Math.sin(angle_rad / 2);
  return [axis[0] * s, axis[1] * s, axis[2] * s, Math.cos(angle_rad / 2)];
}

/** Quaternion of turns about x, then y, then z of the fixed frame, in radians. */
export function quatFromEulerXYZ(x_rad: number, y_rad: number, z_rad: number): Pose['rotation'] {
  return quatMultiply(
    quatFromAxisAngle(Z_AXIS, z_rad),
    quatMultiply(quatFromAxisAngle(Y_AXIS, y_rad), quatFromAxisAngle(X_AXIS, x_rad)),
  );
}

/** Product a b: first b, then a. */
export function quatMultiply(a: Pose['rotation'], b: Pose['rotation']): Pose['rotation'] {
  const [ax, ay, az, aw] = a;
  const [bx, by, bz, bw] = b;
  return [
    aw * bx + ax * bw + ay * bz - az * by,
    aw * by - ax * bz + ay * bw + az * bx,
    aw * bz + ax * by - ay * bx + az * bw,
    aw * bw - ax * bx - ay * by - az * bz,
  ];
}

/** Turns a vector by a unit quaternion. */
export function rotate(q: Pose['rotation'], v: Vec3): Vec3 {
  const u: Vec3 = [q[0], q[1], q[2]];
  const t = scale(cross(u, v), 2);
  return add(add(v, scale(t, q[3])), cross(u, t));
}

/** Maps a point of the part's frame into the frame that the pose stands in. */
export const transformPoint = (pose: Pose, p: Vec3): Vec3 => add(rotate(pose.rotation, p), pose.position_m);

/** The pose that does `inner` first and then `outer`. */
export const composePoses = (outer: Pose, inner: Pose): Pose => ({
  rotation: quatMultiply(outer.rotation, inner.rotation),
  position_m: transformPoint(outer, inner.position_m),
});

/** The pose that undoes `pose`. */
export function invertPose(pose: Pose): Pose {
  const [x, y, z, w] = pose.rotation;
  const back: Pose['rotation'] = [-x, -y, -z, w];
  return { rotation: back, position_m: rotate(back, scale(pose.position_m, -1)) };
}
