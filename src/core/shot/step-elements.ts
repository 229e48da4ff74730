/**
 * Discrete elements with tangential history: the reference for the position-based step.
 *
 * Linear spring and dashpot along the normal, never pulling; a tangential spring that remembers the slip since the
 * contact began and gives way at Coulomb's limit (Cundall and Strack 1979). Leapfrog; the housing's kick is shared
 * with the position-based step.
 */
import { P, V, massOf } from './balls';
import { dampingRatio } from './contact-damping';
import { drift, kick } from './housing-frame';
import { buildNeighbours } from './neighbours';
import { elementStep, elementStiffness } from './time-step';
import { wallDistance } from './walls';
import type { World } from './world';

export interface Elements {
  /** Step in s, normal stiffness in N/m, damping ratio. */
  readonly step_s: number;
  readonly stiffness_N_m: number;
  readonly damping_ratio: number;
  /** Slip of each listed contact since it began, m, x y z. */
  ballSlip: Float64Array;
  wallSlip: Float64Array;
  readonly force: Float64Array;
}

/** Tangential over normal stiffness; 2/7 gives both the same period for a sphere. */
const TANGENTIAL = 2 / 7;

/** Elements whose overlap under `layers` layers at `acceleration` (m/s2) stays within tolerance x diameter. */
export function createElements(
  world: World,
  bound: {
    readonly tolerance: number;
    readonly diameter_m: number;
    readonly acceleration: number;
    readonly layers: number;
  },
): Elements {
  const { balls } = world;
  let mass = 0;
  for (let i = 0; i < balls.count; i++) mass += massOf(balls, i) / balls.count;
  const { tolerance, diameter_m: d, acceleration: a, layers } = bound;
  return {
    step_s: elementStep(tolerance, d, a, layers),
    stiffness_N_m: elementStiffness(tolerance, d, a, layers, mass),
    damping_ratio: dampingRatio(world.restitution),
    ballSlip: new Float64Array(world.neighbours.partner.length * 3),
    wallSlip: new Float64Array(world.neighbours.wallPartner.length * 3),
    force: new Float64Array(balls.count * 6),
  };
}

const normal = new Float64Array(4);

/** One step of `h` seconds, at most `elements.step_s`. */
export function stepElements(world: World, elements: Elements, h: number): void {
  const nb = world.neighbours;
  elements.force.fill(0);
  if (nb.slack_m > 0) {
    ballForces(world, elements, h);
    wallForces(world, elements, h);
  }
  const { motion: v, count } = world.balls;
  const { force } = elements;
  for (let i = 0; i < count; i++) {
    const q = i * V;
    const f = i * 6;
    for (let k = 0; k < 3; k++) {
      v[q + k]! += h * force[f + k]! * v[q + 6]!;
      v[q + 3 + k]! += h * force[f + 3 + k]! * v[q + 7]!;
    }
  }
  const fastest = kick(world, h);
  if (nb.moved_m + fastest * h > nb.slack_m) renew(world, elements);
  drift(world, h);
  world.time_s += h;
}

/** Makes the neighbour lists anew and carries the slips over. */
function renew(world: World, elements: Elements): void {
  const { neighbours: nb, balls } = world;
  const known = nb.slack_m > 0;
  const first = nb.first.slice();
  const partner = nb.partner.slice();
  const wallFirst = nb.wallFirst.slice();
  const wallPartner = nb.wallPartner.slice();
  const rank = new Int32Array(balls.count);
  for (let row = 0; row < balls.count; row++) rank[nb.order[row]!] = row;
  buildNeighbours(nb, balls, world.walls, world.period_m);

  const oldBall = elements.ballSlip;
  const oldWall = elements.wallSlip;
  const ballSlip = new Float64Array(nb.partner.length * 3);
  const wallSlip = new Float64Array(nb.wallPartner.length * 3);
  elements.ballSlip = ballSlip;
  elements.wallSlip = wallSlip;
  if (!known) return;
  const find = (starts: Int32Array, list: Int32Array, row: number, wanted: number): number => {
    for (let k = starts[row]!; k < starts[row + 1]!; k++) if (list[k] === wanted) return k;
    return -1;
  };
  for (let row = 0; row < balls.count; row++) {
    const i = nb.order[row]!;
    for (let k = nb.first[row]!; k < nb.first[row + 1]!; k++) {
      const j = nb.partner[k]!;
      const same = find(first, partner, rank[i]!, j);
      const from = same >= 0 ? same : find(first, partner, rank[j]!, i);
      // Slip of i against j; the pair may have stood the other way round.
      const sign = same >= 0 ? 1 : -1;
      if (from >= 0) for (let c = 0; c < 3; c++) ballSlip[3 * k + c] = sign * oldBall[3 * from + c]!;
    }
    for (let k = nb.wallFirst[row]!; k < nb.wallFirst[row + 1]!; k++) {
      const from = find(wallFirst, wallPartner, row, nb.wallPartner[k]!);
      if (from >= 0) for (let c = 0; c < 3; c++) wallSlip[3 * k + c] = oldWall[3 * from + c]!;
    }
  }
}

/** Scratch of one contact: slip velocity in, force out. */
const tangent = new Float64Array(3);

/** Lets the slip at `s` grow by the velocity in `tangent`, and writes the friction force there. */
function friction(slip: Float64Array, s: number, h: number, kt: number, ct: number, limit: number): void {
  const nx = normal[0]!,
    ny = normal[1]!,
    nz = normal[2]!;
  let sx = slip[s]! + h * tangent[0]!;
  let sy = slip[s + 1]! + h * tangent[1]!;
  let sz = slip[s + 2]! + h * tangent[2]!;
  const along = sx * nx + sy * ny + sz * nz;
  sx -= along * nx;
  sy -= along * ny;
  sz -= along * nz;
  let fx = -kt * sx - ct * tangent[0]!;
  let fy = -kt * sy - ct * tangent[1]!;
  let fz = -kt * sz - ct * tangent[2]!;
  const size = Math.sqrt(fx * fx + fy * fy + fz * fz);
  if (size > limit) {
    const keep = limit / size;
    fx *= keep;
    fy *= keep;
    fz *= keep;
    // A sliding contact holds no more slip than its friction can carry.
    sx *= keep;
    sy *= keep;
    sz *= keep;
  }
  slip[s] = sx;
  slip[s + 1] = sy;
  slip[s + 2] = sz;
  tangent[0] = fx;
  tangent[1] = fy;
  tangent[2] = fz;
}

function ballForces(world: World, elements: Elements, h: number): void {
  const { balls, neighbours, friction_ball: mu, period_m: period } = world;
  const { position: p, motion: v, count } = balls;
  const { first, partner, order } = neighbours;
  const { force, ballSlip: slip, stiffness_N_m: k, damping_ratio: zeta } = elements;
  const half = period > 0 ? 0.5 * period : Infinity;
  for (let row = 0; row < count; row++) {
    const i = order[row]!;
    const o = i * P;
    const q = i * V;
    for (let c = first[row]!; c < first[row + 1]!; c++) {
      const j = partner[c]!;
      const oj = j * P;
      const qj = j * V;
      const dx = p[o]! - p[oj]!;
      const dy = p[o + 1]! - p[oj + 1]!;
      let dz = p[o + 2]! - p[oj + 2]!;
      if (dz > half) dz -= period;
      else if (dz < -half) dz += period;
      const reach = p[o + 3]! + p[oj + 3]!;
      const d2 = dx * dx + dy * dy + dz * dz;
      if (d2 >= reach * reach) {
        slip[3 * c] = slip[3 * c + 1] = slip[3 * c + 2] = 0;
        continue;
      }
      const d = Math.sqrt(d2);
      const nx = dx / d,
        ny = dy / d,
        nz = dz / d;
      const ux = v[q]! - v[qj]!;
      const uy = v[q + 1]! - v[qj + 1]!;
      const uz = v[q + 2]! - v[qj + 2]!;
      const un = ux * nx + uy * ny + uz * nz;
      const m = 1 / (v[q + 6]! + v[qj + 6]!);
      const fn = Math.max(0, k * (reach - d) - 2 * zeta * Math.sqrt(k * m) * un);
      // Arms from the centres to one common contact point, so that angular momentum is kept.
      const ai = p[o + 3]! + 0.5 * (d - reach);
      const aj = d - ai;
      const wx = ai * v[q + 3]! + aj * v[qj + 3]!;
      const wy = ai * v[q + 4]! + aj * v[qj + 4]!;
      const wz = ai * v[q + 5]! + aj * v[qj + 5]!;
      tangent[0] = ux - un * nx - (wy * nz - wz * ny);
      tangent[1] = uy - un * ny - (wz * nx - wx * nz);
      tangent[2] = uz - un * nz - (wx * ny - wy * nx);
      normal[0] = nx;
      normal[1] = ny;
      normal[2] = nz;
      const kt = TANGENTIAL * k;
      friction(slip, 3 * c, h, kt, 2 * zeta * Math.sqrt(kt * m * TANGENTIAL), mu * fn);
      const fx = fn * nx + tangent[0],
        fy = fn * ny + tangent[1],
        fz = fn * nz + tangent[2];
      const tx = ny * fz - nz * fy;
      const ty = nz * fx - nx * fz;
      const tz = nx * fy - ny * fx;
      const f = i * 6;
      const g = j * 6;
      force[f]! += fx;
      force[f + 1]! += fy;
      force[f + 2]! += fz;
      force[f + 3]! -= ai * tx;
      force[f + 4]! -= ai * ty;
      force[f + 5]! -= ai * tz;
      force[g]! -= fx;
      force[g + 1]! -= fy;
      force[g + 2]! -= fz;
      force[g + 3]! -= aj * tx;
      force[g + 4]! -= aj * ty;
      force[g + 5]! -= aj * tz;
    }
  }
}

function wallForces(world: World, elements: Elements, h: number): void {
  const { balls, walls, neighbours, friction_wall: mu } = world;
  const { position: p, motion: v, count } = balls;
  const { wallFirst, wallPartner } = neighbours;
  const { force, wallSlip: slip, stiffness_N_m: k, damping_ratio: zeta } = elements;
  for (let i = 0; i < count; i++) {
    const o = i * P;
    const q = i * V;
    for (let c = wallFirst[i]!; c < wallFirst[i + 1]!; c++) {
      wallDistance(walls, wallPartner[c]!, p, o, normal);
      const d = normal[3]!;
      const overlap = p[o + 3]! - d;
      if (overlap <= 0) {
        slip[3 * c] = slip[3 * c + 1] = slip[3 * c + 2] = 0;
        continue;
      }
      const nx = normal[0]!,
        ny = normal[1]!,
        nz = normal[2]!;
      const un = v[q]! * nx + v[q + 1]! * ny + v[q + 2]! * nz;
      const m = 1 / v[q + 6]!;
      const fn = Math.max(0, k * overlap - 2 * zeta * Math.sqrt(k * m) * un);
      const wx = d * v[q + 3]!,
        wy = d * v[q + 4]!,
        wz = d * v[q + 5]!;
      tangent[0] = v[q]! - un * nx - (wy * nz - wz * ny);
      tangent[1] = v[q + 1]! - un * ny - (wz * nx - wx * nz);
      tangent[2] = v[q + 2]! - un * nz - (wx * ny - wy * nx);
      const kt = TANGENTIAL * k;
      friction(slip, 3 * c, h, kt, 2 * zeta * Math.sqrt(kt * m * TANGENTIAL), mu * fn);
      const fx = fn * nx + tangent[0]!,
        fy = fn * ny + tangent[1]!,
        fz = fn * nz + tangent[2]!;
      const f = i * 6;
      force[f]! += fx;
      force[f + 1]! += fy;
      force[f + 2]! += fz;
      force[f + 3]! -= d * (ny * fz - nz * fy);
      force[f + 4]! -= d * (nz * fx - nx * fz);
      force[f + 5]! -= d * (nx * fy - ny * fx);
    }
  }
}
