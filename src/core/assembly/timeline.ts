/** A plan as motion: when each step plays, and where every part is at any moment. */
import { add, dot, length, scale, sub, type Vec3, ZERO } from '../kernel';
import type { Machine } from '../machine';
import type { Explode, Leg, Plan, Step, Timeline } from './types';
import { partAxis } from './world';

/** Seconds of play: a still step, the rest between two, least and most for a motion, metres a second of sliding. */
const STILL_S = 1.2;
const REST_S = 0.35;
const MOVE_LEAST_S = 0.9;
const MOVE_MOST_S = 2.8;
const SLIDE_M_S = 1.1;
/** Unscrewing is slowed to be seen: seconds for the engaged length, and at most this many turns are shown. */
const UNSCREW_S = 1;
const TURNS_SHOWN = 4;

interface Key {
  readonly from_s: number;
  readonly to_s: number;
  readonly start: Vec3;
  readonly end: Vec3;
  readonly turnStart: number;
  readonly turnEnd: number;
}

/** Builds the play of a plan; removed parts end where the exploded view lays them. */
export function buildTimeline(
  plan: Pick<Plan, 'steps'>,
  machine: Machine,
  explode: Pick<Explode, 'laidDown'>,
): Timeline {
  const partCount = machine.parts.length;
  const tracks: Key[][] = machine.parts.map(() => []);
  const at: Vec3[] = new Array<Vec3>(partCount).fill(ZERO);
  const turn = new Float64Array(partCount);
  const stepStart_s = new Float64Array(plan.steps.length);
  const stepEnd_s = new Float64Array(plan.steps.length);
  const leavesAt = new Int32Array(partCount).fill(-1);
  const laidBy = new Map<number, Map<number, Vec3>>();
  for (const { step, parts, offset_m } of explode.laidDown) {
    const map = laidBy.get(step) ?? new Map<number, Vec3>();
    for (const p of parts) map.set(p, offset_m);
    laidBy.set(step, map);
  }
  let now = 0;
  for (const step of plan.steps) {
    stepStart_s[step.index] = now;
    const laid = laidBy.get(step.index) ?? new Map<number, Vec3>();
    let last = now;
    for (const [part, offset] of laid) {
      let clock = now;
      const goal = add(at[part]!, offset);
      for (const piece of pathTo(step, machine.parts[part]!.id, offset)) {
        const end = add(at[part]!, piece.move);
        const out = piece.pitch_m === null ? 0 : turnsOut(machine, part, piece);
        tracks[part]!.push({
          from_s: clock,
          to_s: clock + piece.seconds,
          start: at[part]!,
          end,
          turnStart: turn[part]!,
          turnEnd: turn[part]! + out,
        });
        turn[part] = turn[part]! + out;
        at[part] = end;
        clock += piece.seconds;
      }
      at[part] = goal;
      leavesAt[part] = step.index;
      last = Math.max(last, clock);
    }
    if (laid.size === 0) last = now + STILL_S;
    stepEnd_s[step.index] = last;
    now = last + REST_S;
  }
  return pack(machine, tracks, {
    duration_s: plan.steps.length === 0 ? 0 : now,
    stepStart_s,
    stepEnd_s,
    leavesAt,
  });
}

interface Piece {
  readonly move: Vec3;
  readonly seconds: number;
  readonly pitch_m: number | null;
  readonly direction: Vec3;
}

/** The step's legs for one part, the last one bent so that the part ends at `offset` from where it was. */
function pathTo(step: Step, partId: string, offset: Vec3): Piece[] {
  const legs: readonly Leg[] = step.partLegs[partId] ?? step.legs;
  const pieces: Piece[] = [];
  let left = offset;
  legs.forEach((leg, i) => {
    const last = i === legs.length - 1;
    // A leg along the way to the lay-out place never overshoots it.
    const along = dot(left, leg.direction);
    const own = Math.min(leg.distance_m, Math.max(along, 0));
    const move = last ? left : scale(leg.direction, own);
    const distance = length(move);
    if (distance === 0) return;
    pieces.push({
      move,
      seconds:
        leg.kind === 'unscrew'
          ? UNSCREW_S
          : Math.min(MOVE_MOST_S, Math.max(MOVE_LEAST_S, distance / SLIDE_M_S)),
      pitch_m: leg.pitch_m ?? null,
      direction: leg.direction,
    });
    left = sub(left, move);
  });
  return pieces;
}

/** Angle of unscrewing about the part's own axis: a right-hand thread backs out counter-clockwise seen from outside. */
function turnsOut(machine: Machine, part: number, piece: Piece): number {
  const turns = Math.min(TURNS_SHOWN, length(piece.move) / (piece.pitch_m ?? 1));
  const sense = dot(partAxis(machine, part), piece.direction) >= 0 ? 1 : -1;
  return sense * turns * 2 * Math.PI;
}

function pack(
  machine: Machine,
  tracks: readonly Key[][],
  rest: Pick<Timeline, 'duration_s' | 'stepStart_s' | 'stepEnd_s' | 'leavesAt'>,
): Timeline {
  const partCount = tracks.length;
  const keyCount = tracks.reduce((sum, t) => sum + t.length, 0);
  const firstKey = new Uint32Array(partCount + 1);
  const keyTimes = new Float64Array(keyCount * 2);
  const keyOffsets = new Float32Array(keyCount * 8);
  const turnAxes = new Float32Array(partCount * 3);
  let k = 0;
  tracks.forEach((track, p) => {
    firstKey[p] = k;
    turnAxes.set(partAxis(machine, p), p * 3);
    for (const key of track) {
      keyTimes.set([key.from_s, key.to_s], k * 2);
      keyOffsets.set([...key.start, key.turnStart, ...key.end, key.turnEnd], k * 8);
      k++;
    }
  });
  firstKey[partCount] = k;
  return { ...rest, partCount, firstKey, keyTimes, keyOffsets, turnAxes };
}

/**
 * Where every part is at `t` seconds of play: dx dy dz in metres and a turn in radians about its turn axis, four
 * numbers a part, written into `out`. Before its first motion a part is at its seat, after its last at its lay-out
 * place. Does not allocate.
 */
export function poseOffsetsAt(timeline: Timeline, t: number, out: Float32Array): void {
  const { partCount, firstKey, keyTimes, keyOffsets } = timeline;
  for (let p = 0; p < partCount; p++) {
    const first = firstKey[p]!;
    const end = firstKey[p + 1]!;
    let k = first;
    while (k < end && keyTimes[k * 2]! <= t) k++;
    if (k === first) {
      out[p * 4] = out[p * 4 + 1] = out[p * 4 + 2] = out[p * 4 + 3] = 0;
      continue;
    }
    k--;
    const from = keyTimes[k * 2]!;
    const to = keyTimes[k * 2 + 1]!;
    const share = t >= to ? 1 : (t - from) / (to - from);
    const eased = share * share * (3 - 2 * share);
    for (let c = 0; c < 4; c++) {
      const a = keyOffsets[k * 8 + c]!;
      out[p * 4 + c] = a + eased * (keyOffsets[k * 8 + 4 + c]! - a);
    }
  }
}
