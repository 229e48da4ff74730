/**
 * Position-based dynamics with small steps (one Gauss-Seidel sweep a step; Macklin et al. 2019, "Small steps in
 * physics simulation"), written at the velocity level.
 *
 * A step: kick; one sweep that projects the predicted positions out of each other; drift; one sweep that gives
 * the touched contacts their rebound and takes back the speed that the push out of an old overlap gave. The
 * projection is applied as the impulse that makes the predicted gap zero, along the normal at the start of the step
 * and at one common point of both balls, so that linear and angular momentum are kept to rounding. Friction acts
 * in both sweeps before positions move, so that a ball held by friction does not creep.
 */
import { P, V } from './balls';
import { drift, kick } from './housing-frame';
import { buildNeighbours } from './neighbours';
import { wallDistance } from './walls';
import type { World } from './world';

/** Contacts that the first sweep touched: ball, partner (or -1 - wall), approach speed before it, its impulse. */
export interface Touched {
  count: number;
  a: Int32Array;
  b: Int32Array;
  approach: Float64Array;
  impulse: Float64Array;
  /** Velocities after the kick, before any contact. */
  readonly before: Float64Array;
}

export const createTouched = (balls: number): Touched => ({
  count: 0,
  a: new Int32Array(balls * 8 + 16),
  b: new Int32Array(balls * 8 + 16),
  approach: new Float64Array(balls * 8 + 16),
  impulse: new Float64Array(balls * 8 + 16),
  before: new Float64Array(balls * V),
});

/** An overlap deeper than this share of a radius is pushed out over several steps. */
const DEEPEST_PUSH = 0.2;
/** Contacts that meet slower than this many kicks rest and do not rebound. */
const RESTING_KICKS = 2;

/** One wall contact: normal, distance of the centre, impulse along the normal, greatest friction impulse. */
const contact = new Float64Array(6);

/** One step of `h` seconds; `acceleration` (m/s2) is the greatest body force, below which contacts count as resting. */
export function stepPositions(world: World, touched: Touched, h: number, acceleration: number): void {
  const fastest = kick(world, h);
  const nb = world.neighbours;
  if (nb.moved_m + fastest * h > nb.slack_m) buildNeighbours(nb, world.balls, world.walls, world.period_m);
  touched.before.set(world.balls.motion);
  const most = nb.first[world.balls.count]! + nb.wallFirst[world.balls.count]!;
  if (touched.a.length < most) grow(touched, 2 * most);
  touched.count = 0;
  projectBalls(world, touched, h);
  projectWalls(world, touched, h);
  drift(world, h);
  rebound(world, touched, RESTING_KICKS * acceleration * h);
  world.time_s += h;
}

function grow(touched: Touched, size: number): void {
  touched.a = new Int32Array(size);
  touched.b = new Int32Array(size);
  touched.approach = new Float64Array(size);
  touched.impulse = new Float64Array(size);
}

function projectBalls(world: World, touched: Touched, h: number): void {
  const { balls, neighbours, friction_ball: mu, period_m: period } = world;
  const { position: p, motion: v, count } = balls;
  const { first, partner, order } = neighbours;
  const { a, b, approach, impulse, before } = touched;
  const half = period > 0 ? 0.5 * period : Infinity;
  const rate = 1 / h;
  let n = touched.count;
  for (let row = 0; row < count; row++) {
    const end = first[row + 1]!;
    let k = first[row]!;
    if (k === end) continue;
    const i = order[row]!;
    const o = i * P;
    const q = i * V;
    const x = p[o]!,
      y = p[o + 1]!,
      z = p[o + 2]!,
      ri = p[o + 3]!;
    const mi = v[q + 6]!,
      ii = v[q + 7]!;
    let vx = v[q]!,
      vy = v[q + 1]!,
      vz = v[q + 2]!;
    let sx = v[q + 3]!,
      sy = v[q + 4]!,
      sz = v[q + 5]!;
    for (; k < end; k++) {
      const j = partner[k]!;
      const oj = j * P;
      const dx = x - p[oj]!;
      const dy = y - p[oj + 1]!;
      let dz = z - p[oj + 2]!;
      if (dz > half) dz -= period;
      else if (dz < -half) dz += period;
      const reach = ri + p[oj + 3]!;
      const qj = j * V;
      const ux = vx - v[qj]!;
      const uy = vy - v[qj + 1]!;
      const uz = vz - v[qj + 2]!;
      const d2 = dx * dx + dy * dy + dz * dz;
      const closing = ux * dx + uy * dy + uz * dz;
      // Cheap test without a root: d + h u.n >= reach when d^2 + 2 h u.d >= reach^2.
      if (d2 + 2 * h * closing >= reach * reach) continue;
      const d = Math.sqrt(d2);
      const inv = 1 / d;
      const nx = dx * inv,
        ny = dy * inv,
        nz = dz * inv;
      const un = closing * inv;
      let gap = d - reach;
      if (gap < -DEEPEST_PUSH * ri) gap = -DEEPEST_PUSH * ri;
      const mj = v[qj + 6]!;
      const J = (-gap * rate - un) / (mi + mj);
      if (J <= 0) continue;
      const ij = v[qj + 7]!;
      // Arms from the centres to one common contact point.
      const ai = ri + 0.5 * (d - reach);
      const aj = d - ai;
      const wx = ai * sx + aj * v[qj + 3]!;
      const wy = ai * sy + aj * v[qj + 4]!;
      const wz = ai * sz + aj * v[qj + 5]!;
      const tx = ux - un * nx - (wy * nz - wz * ny);
      const ty = uy - un * ny - (wz * nx - wx * nz);
      const tz = uz - un * nz - (wx * ny - wy * nx);
      const slip = Math.sqrt(tx * tx + ty * ty + tz * tz);
      let f = 1 / (mi + mj + ai * ai * ii + aj * aj * ij);
      if (mu * J < f * slip) f = (mu * J) / slip;
      const Jx = J * nx - f * tx;
      const Jy = J * ny - f * ty;
      const Jz = J * nz - f * tz;
      vx += Jx * mi;
      vy += Jy * mi;
      vz += Jz * mi;
      v[qj]! -= Jx * mj;
      v[qj + 1]! -= Jy * mj;
      v[qj + 2]! -= Jz * mj;
      // Torque of the friction: -arm n x J on both.
      const cx = ny * Jz - nz * Jy;
      const cy = nz * Jx - nx * Jz;
      const cz = nx * Jy - ny * Jx;
      const ti = ai * ii;
      const tj = aj * ij;
      sx -= ti * cx;
      sy -= ti * cy;
      sz -= ti * cz;
      v[qj + 3]! -= tj * cx;
      v[qj + 4]! -= tj * cy;
      v[qj + 5]! -= tj * cz;
      a[n] = i;
      b[n] = j;
      approach[n] =
        (before[q]! - before[qj]!) * nx +
        (before[q + 1]! - before[qj + 1]!) * ny +
        (before[q + 2]! - before[qj + 2]!) * nz;
      impulse[n] = J;
      n++;
    }
    v[q] = vx;
    v[q + 1] = vy;
    v[q + 2] = vz;
    v[q + 3] = sx;
    v[q + 4] = sy;
    v[q + 5] = sz;
  }
  touched.count = n;
}

function projectWalls(world: World, touched: Touched, h: number): void {
  const { balls, walls, neighbours, friction_wall: mu } = world;
  const { position: p, motion: v, count } = balls;
  const { wallFirst, wallPartner } = neighbours;
  const { a, b, approach, impulse, before } = touched;
  let n = touched.count;
  for (let i = 0; i < count; i++) {
    const end = wallFirst[i + 1]!;
    for (let k = wallFirst[i]!; k < end; k++) {
      const o = i * P;
      const q = i * V;
      const wall = wallPartner[k]!;
      wallDistance(walls, wall, p, o, contact);
      const nx = contact[0]!,
        ny = contact[1]!,
        nz = contact[2]!,
        d = contact[3]!;
      const r = p[o + 3]!;
      let gap = d - r;
      const un = v[q]! * nx + v[q + 1]! * ny + v[q + 2]! * nz;
      if (gap + h * un >= 0) continue;
      if (gap < -DEEPEST_PUSH * r) gap = -DEEPEST_PUSH * r;
      const J = (-gap / h - un) / v[q + 6]!;
      if (J <= 0) continue;
      contact[4] = J;
      contact[5] = mu * J;
      push(v, q);
      a[n] = i;
      b[n] = -1 - wall;
      approach[n] = before[q]! * nx + before[q + 1]! * ny + before[q + 2]! * nz;
      impulse[n] = J;
      n++;
    }
  }
  touched.count = n;
}

/** Gives ball `q` the impulse of `contact` and friction at the contact point. */
function push(v: Float64Array, q: number): void {
  const nx = contact[0]!,
    ny = contact[1]!,
    nz = contact[2]!,
    d = contact[3]!,
    J = contact[4]!,
    grip = contact[5]!;
  const un = v[q]! * nx + v[q + 1]! * ny + v[q + 2]! * nz;
  const m = v[q + 6]!;
  const inertia = v[q + 7]!;
  const sx = d * v[q + 3]!,
    sy = d * v[q + 4]!,
    sz = d * v[q + 5]!;
  const tx = v[q]! - un * nx - (sy * nz - sz * ny);
  const ty = v[q + 1]! - un * ny - (sz * nx - sx * nz);
  const tz = v[q + 2]! - un * nz - (sx * ny - sy * nx);
  const slip = Math.sqrt(tx * tx + ty * ty + tz * tz);
  let f = 1 / (m + d * d * inertia);
  if (grip < f * slip) f = grip > 0 ? grip / slip : 0;
  const Jx = J * nx - f * tx;
  const Jy = J * ny - f * ty;
  const Jz = J * nz - f * tz;
  v[q]! += Jx * m;
  v[q + 1]! += Jy * m;
  v[q + 2]! += Jz * m;
  const t = d * inertia;
  v[q + 3]! -= t * (ny * Jz - nz * Jy);
  v[q + 4]! -= t * (nz * Jx - nx * Jz);
  v[q + 5]! -= t * (nx * Jy - ny * Jx);
}

/**
 * Brings each touched contact to its speed after contact: e times the approach speed when it met faster than
 * `resting`, else no approach. What the first sweep gave may be taken back, never more: contacts do not pull.
 */
function rebound(world: World, touched: Touched, resting: number): void {
  const { balls, walls, friction_ball, friction_wall, period_m: period, restitution } = world;
  const { position: p, motion: v } = balls;
  const { a, b, approach, impulse, count } = touched;
  const half = period > 0 ? 0.5 * period : Infinity;
  for (let c = 0; c < count; c++) {
    const i = a[c]!;
    const j = b[c]!;
    const o = i * P;
    const q = i * V;
    const met = approach[c]!;
    const wanted = met < -resting ? -restitution * met : met > 0 ? met : 0;
    if (j < 0) {
      wallDistance(walls, -1 - j, p, o, contact);
      const nx = contact[0]!,
        ny = contact[1]!,
        nz = contact[2]!;
      const un = v[q]! * nx + v[q + 1]! * ny + v[q + 2]! * nz;
      let J = (wanted - un) / v[q + 6]!;
      if (J < -impulse[c]!) J = -impulse[c]!;
      contact[4] = J;
      contact[5] = friction_wall * J;
      push(v, q);
      continue;
    }
    const oj = j * P;
    const qj = j * V;
    const dx = p[o]! - p[oj]!;
    const dy = p[o + 1]! - p[oj + 1]!;
    let dz = p[o + 2]! - p[oj + 2]!;
    if (dz > half) dz -= period;
    else if (dz < -half) dz += period;
    const d = Math.sqrt(dx * dx + dy * dy + dz * dz);
    const inv = 1 / d;
    const nx = dx * inv,
      ny = dy * inv,
      nz = dz * inv;
    const ux = v[q]! - v[qj]!;
    const uy = v[q + 1]! - v[qj + 1]!;
    const uz = v[q + 2]! - v[qj + 2]!;
    const un = ux * nx + uy * ny + uz * nz;
    const mi = v[q + 6]!,
      mj = v[qj + 6]!;
    let J = (wanted - un) / (mi + mj);
    if (J < -impulse[c]!) J = -impulse[c]!;
    let Jx = J * nx,
      Jy = J * ny,
      Jz = J * nz;
    if (J > 0 && friction_ball > 0) {
      const ai = p[o + 3]! + 0.5 * (d - p[o + 3]! - p[oj + 3]!);
      const aj = d - ai;
      const ii = v[q + 7]!,
        ij = v[qj + 7]!;
      const wx = ai * v[q + 3]! + aj * v[qj + 3]!;
      const wy = ai * v[q + 4]! + aj * v[qj + 4]!;
      const wz = ai * v[q + 5]! + aj * v[qj + 5]!;
      const tx = ux - un * nx - (wy * nz - wz * ny);
      const ty = uy - un * ny - (wz * nx - wx * nz);
      const tz = uz - un * nz - (wx * ny - wy * nx);
      const slip = Math.sqrt(tx * tx + ty * ty + tz * tz);
      let f = 1 / (mi + mj + ai * ai * ii + aj * aj * ij);
      if (friction_ball * J < f * slip) f = (friction_ball * J) / slip;
      Jx -= f * tx;
      Jy -= f * ty;
      Jz -= f * tz;
      const cx = ny * Jz - nz * Jy;
      const cy = nz * Jx - nx * Jz;
      const cz = nx * Jy - ny * Jx;
      v[q + 3]! -= ai * ii * cx;
      v[q + 4]! -= ai * ii * cy;
      v[q + 5]! -= ai * ii * cz;
      v[qj + 3]! -= aj * ij * cx;
      v[qj + 4]! -= aj * ij * cy;
      v[qj + 5]! -= aj * ij * cz;
    }
    v[q]! += Jx * mi;
    v[q + 1]! += Jy * mi;
    v[q + 2]! += Jz * mi;
    v[qj]! -= Jx * mj;
    v[qj + 1]! -= Jy * mj;
    v[qj + 2]! -= Jz * mj;
  }
}
