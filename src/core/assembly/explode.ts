/**
 * Exploded view from the plan: every step lays its parts down along the direction in which they left, the earlier
 * off the further out, subassemblies first as wholes and then inside. After Li, Agrawala, Curless and Salesin,
 * Automated generation of interactive 3D exploded view diagrams, ACM Transactions on Graphics 27 (2008): offsets
 * follow the blocking order along each direction, so that no part passes through another on the way.
 */
import { add, dot, scale, type Vec3, ZERO } from '../kernel';
import type { Machine } from '../machine';
import { extentAlong, type Hull, isNested, partHulls, shareLane } from './lanes';
import type { Explode, LaidDown, Plan, Step } from './types';
import { buildWorld, type Masses, type Solids } from './world';

/** Wanted extent along x, in drum widths; gaps shrink towards their least where it is passed. */
const SPREAD_WANTED = 3;
const GAP_LEAST_M = 0.02;
const GAP_MOST_M = 0.12;
/** A part that nothing drives further out still shows that it is off. */
const OFFSET_LEAST_M = 0.12;
/** Share of the thinner neighbour's length that a gap takes. */
const GAP_SHARE = 0.5;
/** Share of s in which the groups part; the rest is for what is inside them. */
const GROUPS_UNTIL = 0.65;

export function buildExplode(machine: Machine, solids: Solids, masses: Masses, plan: Plan): Explode {
  const hulls = partHulls(buildWorld(machine, solids, masses));
  let best = layOut(machine, plan, hulls, 1);
  const wanted = SPREAD_WANTED * machine.drumWidth_m;
  for (const squeeze of [0.6, 0.3]) {
    if (spreadOf(hulls, best) <= wanted) break;
    best = layOut(machine, plan, hulls, squeeze);
  }
  return finish(machine, plan, hulls, best);
}

/** A set of parts that move by one shift. */
interface Bundle {
  readonly step: number;
  readonly bench: boolean;
  readonly parts: readonly number[];
  readonly direction: Vec3;
  /** Shift of the legs before the last where these run another way (out of a hole, then aside). */
  readonly before: Vec3;
}

function bundlesOf(machine: Machine, plan: Plan): Bundle[] {
  const number = new Map(machine.parts.map((p, i) => [p.id, i]));
  const partsOf = new Map(machine.units.map((u) => [u.id, u.partIds.map((id) => number.get(id)!)]));
  return plan.steps.flatMap((step) => {
    if (step.kind !== 'remove' && step.kind !== 'bench') return [];
    const parts = step.unitIds.flatMap((id) => partsOf.get(id) ?? []);
    const byDirection = new Map<string, { direction: Vec3; before: Vec3; parts: number[] }>();
    for (const part of parts) {
      const { direction, before } = leaving(step, machine.parts[part]!.id);
      const key = [...direction, ...before].map((x) => x.toFixed(3)).join();
      const known = byDirection.get(key) ?? { direction, before, parts: [] };
      known.parts.push(part);
      byDirection.set(key, known);
    }
    return [...byDirection.values()].map((b) => ({ step: step.index, bench: step.kind === 'bench', ...b }));
  });
}

/** Direction of a part's last leg, and the shift of those before it that run another way. */
function leaving(step: Step, partId: string): { direction: Vec3; before: Vec3 } {
  const legs = step.partLegs[partId] ?? step.legs;
  const direction = legs[legs.length - 1]?.direction ?? [1, 0, 0];
  const before = legs
    .slice(0, -1)
    .filter((leg) => !parallel(leg.direction, direction))
    .reduce<Vec3>((sum, leg) => add(sum, scale(leg.direction, leg.distance_m)), ZERO);
  return { direction, before };
}

/** Shifts by bundle: from the last step back to the first, each just far enough beyond what lies in its lane. */
function layOut(machine: Machine, plan: Plan, hulls: readonly (Hull | null)[], squeeze: number): LaidDown[] {
  const bundles = bundlesOf(machine, plan);
  const count = machine.parts.length;
  /** Shift of each part inside its subassembly, known once its bench steps are laid out. */
  const inner: Vec3[] = new Array<Vec3>(count).fill(ZERO);
  /** Shift of each part in all. */
  const laid: Vec3[] = new Array<Vec3>(count).fill(ZERO);
  const out = new Map<Bundle, Vec3>();

  const place = (bundle: Bundle, others: readonly number[], shiftOf: (p: number) => Vec3): Vec3 => {
    const { direction } = bundle;
    let distance = OFFSET_LEAST_M;
    for (const p of bundle.parts) {
      const mine = hulls[p];
      if (mine === null || mine === undefined) continue;
      const own = extentAlong(mine, direction);
      const ownShift = dot(inner[p]!, direction);
      for (const q of others) {
        const other = hulls[q];
        if (other === null || other === undefined) continue;
        const nested = isNested(mine, other, direction);
        if (!nested && !shareLane(mine, other, direction)) continue;
        const its = extentAlong(other, direction);
        const itsShift = dot(shiftOf(q), direction);
        const thin = Math.min(own[1] - own[0], its[1] - its[0]);
        if (nested) {
          // Inside a thin ring it is still seen; inside a long one it would be hidden.
          const long = its[1] - its[0] > 0.4 * (own[1] - own[0]);
          if (!long) continue;
        }
        const gap = Math.max(GAP_LEAST_M, Math.min(GAP_MOST_M, GAP_SHARE * thin) * squeeze);
        distance = Math.max(distance, its[1] + itsShift - (own[0] + ownShift) + gap);
      }
    }
    return add(bundle.before, scale(direction, distance));
  };

  // Bench steps from the innermost subassembly outwards: a later bench step of the same parts is deeper inside.
  const bench = bundles.filter((b) => b.bench);
  for (let i = bench.length - 1; i >= 0; i--) {
    const bundle = bench[i]!;
    const step = plan.steps[bundle.step]!;
    const from = new Set(step.fromIds);
    const others = machine.parts.flatMap((p, q) => (from.has(p.unit) ? [q] : []));
    const shift = place(bundle, others, (q) => inner[q]!);
    out.set(bundle, shift);
    for (const p of bundle.parts) inner[p] = add(inner[p]!, shift);
  }
  const top = bundles.filter((b) => !b.bench);
  const moving = new Set(top.flatMap((b) => b.parts));
  const placed = machine.parts.flatMap((_, p) => (moving.has(p) ? [] : [p]));
  for (let i = top.length - 1; i >= 0; i--) {
    const bundle = top[i]!;
    const shift = place(bundle, placed, (q) => laid[q]!);
    out.set(bundle, shift);
    for (const p of bundle.parts) laid[p] = add(inner[p]!, shift);
    placed.push(...bundle.parts);
  }
  return bundles.map((b) => ({ step: b.step, parts: b.parts, offset_m: out.get(b)! }));
}

function spreadOf(hulls: readonly (Hull | null)[], laid: readonly LaidDown[]): number {
  const shift = new Float64Array(hulls.length);
  for (const { parts, offset_m } of laid) for (const p of parts) shift[p] = shift[p]! + offset_m[0];
  let low = Infinity;
  let high = -Infinity;
  hulls.forEach((hull, p) => {
    if (hull === null) return;
    low = Math.min(low, hull.bounds[0]! + shift[p]!);
    high = Math.max(high, hull.bounds[1]! + shift[p]!);
  });
  return high > low ? high - low : 0;
}

function finish(
  machine: Machine,
  plan: Plan,
  hulls: readonly (Hull | null)[],
  laidDown: readonly LaidDown[],
): Explode {
  const partCount = machine.parts.length;
  const groupOffsets = new Float32Array(partCount * 3);
  const innerOffsets = new Float32Array(partCount * 3);
  const windows = new Float32Array(partCount * 4);
  const phases = phasesOf(plan, laidDown, hulls);
  const phaseCount = Math.max(1, ...phases.map((p) => p + 1));
  const hasInner = laidDown.some(
    ({ step, parts }) =>
      plan.steps[step]?.kind === 'bench' ||
      parts.some((p) => leaving(plan.steps[step]!, machine.parts[p]!.id).before !== ZERO),
  );
  const until = hasInner ? GROUPS_UNTIL : 1;
  for (let p = 0; p < partCount; p++) windows.set([0, until, until, 1], p * 4);
  laidDown.forEach(({ step, parts, offset_m }, i) => {
    const bench = plan.steps[step]?.kind === 'bench';
    const into = bench ? innerOffsets : groupOffsets;
    for (const p of parts) {
      for (let k = 0; k < 3; k++) into[p * 3 + k] = into[p * 3 + k]! + offset_m[k]!;
      const { before } = leaving(plan.steps[step]!, machine.parts[p]!.id);
      if (!bench && before !== ZERO)
        // Out of its hole first, aside when all else has parted.
        for (let k = 0; k < 3; k++) {
          groupOffsets[p * 3 + k] = groupOffsets[p * 3 + k]! - offset_m[k]! + before[k]!;
          innerOffsets[p * 3 + k] = innerOffsets[p * 3 + k]! + offset_m[k]! - before[k]!;
        }
      if (!bench)
        windows.set([(until * phases[i]!) / phaseCount, (until * (phases[i]! + 1)) / phaseCount], p * 4);
    }
  });
  return { partCount, groupOffsets, innerOffsets, windows, laidDown, spread_m: spreadOf(hulls, laidDown) };
}

/**
 * Phases of the groups' motion: all at once where they move along one line; a group whose swept box meets that of
 * an earlier one with another direction waits until that one is out.
 */
function phasesOf(plan: Plan, laidDown: readonly LaidDown[], hulls: readonly (Hull | null)[]): number[] {
  const swept = laidDown.map(({ parts, offset_m }) => {
    const box = [Infinity, -Infinity, Infinity, -Infinity, Infinity, -Infinity];
    for (const p of parts) {
      const hull = hulls[p];
      if (hull === null || hull === undefined) continue;
      for (let k = 0; k < 3; k++) {
        box[2 * k] = Math.min(box[2 * k]!, hull.bounds[2 * k]! + Math.min(0, offset_m[k]!));
        box[2 * k + 1] = Math.max(box[2 * k + 1]!, hull.bounds[2 * k + 1]! + Math.max(0, offset_m[k]!));
      }
    }
    return box;
  });
  const phases: number[] = [];
  laidDown.forEach(({ step, offset_m }, i) => {
    let phase = 0;
    if (plan.steps[step]?.kind !== 'bench')
      for (let j = 0; j < i; j++) {
        if (plan.steps[laidDown[j]!.step]?.kind === 'bench') continue;
        const a = swept[i]!;
        const b = swept[j]!;
        const meet = [0, 1, 2].every((k) => a[2 * k]! < b[2 * k + 1]! && b[2 * k]! < a[2 * k + 1]!);
        if (meet) phase = Math.max(phase, phases[j]! + (parallel(offset_m, laidDown[j]!.offset_m) ? 0 : 1));
      }
    phases.push(phase);
  });
  return phases;
}

function parallel(a: Vec3, b: Vec3): boolean {
  const l = Math.hypot(...a) * Math.hypot(...b);
  return l === 0 || Math.abs(dot(a, b)) > 0.999 * l;
}

/**
 * Offsets of all parts for the slider at `s` (0 assembled, 1 fully apart), written into `out`: dx dy dz a part, in
 * metres in the machine's frame. Does not allocate.
 */
export function explodeOffsetsAt(explode: Explode, s: number, out: Float32Array): void {
  const { partCount, groupOffsets, innerOffsets, windows } = explode;
  for (let p = 0; p < partCount; p++) {
    const g = ramp(s, windows[p * 4]!, windows[p * 4 + 1]!);
    const i = ramp(s, windows[p * 4 + 2]!, windows[p * 4 + 3]!);
    for (let k = 0; k < 3; k++) out[p * 3 + k] = g * groupOffsets[p * 3 + k]! + i * innerOffsets[p * 3 + k]!;
  }
}

const ramp = (s: number, from: number, to: number): number =>
  s <= from ? 0 : s >= to ? 1 : (s - from) / (to - from);
