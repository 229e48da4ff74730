/**
 * Where practice lays what is off, and how one move gets there. Every part ends where the exploded view has it, seen
 * from the body that it was taken off: what lies in one lane then keeps its order, whatever the order of the moves.
 */
import { add, dot, length, scale, sub, type Vec3, ZERO } from '../../kernel';
import { reverseStep } from '../assembly-plan';
import { type Bits, copyBits, dropBits, isEmpty, members } from '../bits';
import { baseOf } from '../discover';
import { buildTimeline, poseOffsetsAt } from '../timeline';
import type { Explode, Leg, Step, Timeline } from '../types';
import type { PracticeBench } from './bench';
import { assemblyOf, bodiesOf, singlePieces } from './position';
import { leastWalk, standingOf } from './run';
import type { PracticeMove, PracticeState } from './types';

/** Four numbers a part, in the order of `machine.parts`: shift x y z from its seat in metres, turn in radians. */
export type Laid = Float32Array;

/** One move as motion. */
export interface Laying {
  readonly parts: readonly number[];
  readonly to: Laid;
  /** Where the moving parts are joined: the timeline's offsets count from here. */
  readonly seat: Laid;
  readonly timeline: Timeline;
  /** Played backwards: from laid down to joined. */
  readonly reverse: boolean;
}

/** A way out that bends by more than this from the way to where the part is to lie is carried there instead, cosine. */
const ALONG = 0.98;
/** A part that would lie nearer than this to where it was is moved clear instead, metres. */
const LEAST_M = 0.1;
/** What is carried is lifted by half the way across and this much at least, and by so many drum radii at most. */
const LIFT_LEAST_M = 0.3;
const LIFT_RADII = 2.2;

const UP: Vec3 = [0, 1, 0];

/** Full exploded offset of a body, of its first part. */
function apart({ graph }: PracticeBench, explode: Explode, u: number): Vec3 {
  const p = 3 * (graph.bodies[u]?.parts[0] ?? 0);
  return [0, 1, 2].map((k) => explode.groupOffsets[p + k]! + explode.innerOffsets[p + k]!) as unknown as Vec3;
}

const offsetOf = ({ graph }: PracticeBench, laid: Laid, u: number): Vec3 => {
  const p = 4 * (graph.bodies[u]?.parts[0] ?? 0);
  return [laid[p]!, laid[p + 1]!, laid[p + 2]!];
};

/** The heaviest stands for what moves as one. */
const heaviestOf = (bench: PracticeBench, set: Bits): number => baseOf(bench.graph, members(set));

/** Where everything lies when a run begins. */
export function startLaid(bench: PracticeBench, explode: Explode, state: PracticeState): Laid {
  const laid = new Float32Array(4 * bench.machine.parts.length);
  if (state.mode === 'take-apart') return laid;
  for (const piece of leastWalk(bench, state.goal).position.pieces) {
    const at = apart(bench, explode, heaviestOf(bench, piece));
    for (const u of members(piece)) for (const p of bench.graph.bodies[u]!.parts) laid.set(at, 4 * p);
  }
  return laid;
}

/**
 * The motion of a move.
 * @param state before it; @param step as the try gave it; @param from where everything lies before it
 */
export function layMove(
  bench: PracticeBench,
  explode: Explode,
  state: PracticeState,
  move: PracticeMove,
  step: Step,
  from: Laid,
): Laying {
  return state.mode === 'take-apart'
    ? layOff(bench, explode, state, move, step, from)
    : layOn(bench, state, move, step, from);
}

function layOff(
  bench: PracticeBench,
  explode: Explode,
  state: PracticeState,
  move: PracticeMove,
  step: Step,
  from: Laid,
): Laying {
  const { position } = standingOf(bench, state);
  const going = bodiesOf(bench, move.bodies);
  const source = assemblyOf(position, bench.bodyOf(move.lead));
  const rest = copyBits(source);
  dropBits(rest, going);
  const base = source === position.main || isEmpty(rest) ? bench.base : heaviestOf(bench, rest);
  const ground = sub(offsetOf(bench, from, base), apart(bench, explode, base));
  const shifts = new Map<number, Vec3>();
  const clear = clearOf(step.legs);
  for (const piece of move.together ? [going] : singlePieces(bench, going)) {
    const goal = add(ground, apart(bench, explode, heaviestOf(bench, piece)));
    for (const u of members(piece))
      for (const p of bench.graph.bodies[u]!.parts) {
        const shift = sub(goal, [from[4 * p]!, from[4 * p + 1]!, from[4 * p + 2]!]);
        shifts.set(p, length(shift) < LEAST_M ? clear : shift);
      }
  }
  const timeline = playOf(bench, step, shifts);
  return { parts: [...shifts.keys()], to: moved(from, timeline), seat: from, timeline, reverse: false };
}

function layOn(
  bench: PracticeBench,
  state: PracticeState,
  move: PracticeMove,
  step: Step,
  from: Laid,
): Laying {
  const { position } = standingOf(bench, state);
  const host = assemblyOf(position, bench.bodyOf(move.onto ?? ''));
  const at = host === position.main ? ZERO : offsetOf(bench, from, heaviestOf(bench, host));
  const to = from.slice();
  const shifts = new Map<number, Vec3>();
  for (const u of members(bodiesOf(bench, move.bodies)))
    for (const p of bench.graph.bodies[u]!.parts) {
      shifts.set(p, sub([from[4 * p]!, from[4 * p + 1]!, from[4 * p + 2]!], at));
      to.set([...at, 0], 4 * p);
    }
  const timeline = playOf(bench, reverseStep(step), shifts);
  return { parts: [...shifts.keys()], to, seat: to, timeline, reverse: true };
}

/** Out along its legs and on to where it is to lie; where that is another way, lifted and carried over. */
function playOf({ machine }: PracticeBench, step: Step, shifts: ReadonlyMap<number, Vec3>): Timeline {
  const straight: number[] = [];
  const bent: number[] = [];
  const legsOf = (p: number): readonly Leg[] => step.partLegs[machine.parts[p]!.id] ?? step.legs;
  for (const [p, shift] of shifts) (runsAlong(legsOf(p), shift) ? straight : bent).push(p);
  const steps: Step[] = [{ ...step, index: 0 }];
  const laidDown = straight.map((p) => ({ step: 0, parts: [p], offset_m: shifts.get(p)! }));
  if (bent.length > 0) {
    const slide = (index: number): Step => ({ ...step, index, partLegs: {}, legs: [] });
    steps.push(slide(1), slide(2), slide(3));
    for (const p of bent) {
      const out = legsOf(p).reduce((sum, l) => add(sum, scale(l.direction, l.distance_m)), ZERO);
      const rest = sub(shifts.get(p)!, out);
      const lift = Math.min(
        LIFT_LEAST_M + Math.hypot(rest[0], rest[2]) / 2,
        LIFT_RADII * machine.drumRadius_m,
      );
      const up = Math.max(lift, rest[1]);
      const pieces: readonly Vec3[] = [out, scale(UP, up), [rest[0], 0, rest[2]], scale(UP, rest[1] - up)];
      pieces.forEach((offset_m, index) => {
        if (length(offset_m) > 0) laidDown.push({ step: index, parts: [p], offset_m });
      });
    }
    // A slide without a leg of its own takes the way that it is laid down by.
    for (const index of [1, 2, 3])
      steps[index] = {
        ...steps[index]!,
        partLegs: Object.fromEntries(
          laidDown
            .filter((l) => l.step === index)
            .map((l) => {
              const distance_m = length(l.offset_m);
              const leg: Leg = { kind: 'slide', distance_m, direction: scale(l.offset_m, 1 / distance_m) };
              return [machine.parts[l.parts[0]!]!.id, [leg]];
            }),
        ),
      };
  }
  return buildTimeline({ steps }, machine, { laidDown });
}

/** Along all of its legs, and farther along the last where that is too near. */
function clearOf(legs: readonly Leg[]): Vec3 {
  const way = legs.reduce((sum, l) => add(sum, scale(l.direction, l.distance_m)), ZERO);
  const last = legs.at(-1)?.direction ?? UP;
  return length(way) < LEAST_M ? add(way, scale(last, LEAST_M)) : way;
}

/** Whether the way to where a part is to lie is the way that it leaves by. */
function runsAlong(legs: readonly Leg[], shift: Vec3): boolean {
  let left = shift;
  legs.slice(0, -1).forEach((leg) => {
    const own = Math.min(leg.distance_m, Math.max(dot(left, leg.direction), 0));
    left = sub(left, scale(leg.direction, own));
  });
  const last = legs.at(-1);
  return last !== undefined && dot(left, last.direction) >= ALONG * length(left);
}

/** Where parts are when a motion that starts at `from` has ended. */
function moved(from: Laid, timeline: Timeline): Laid {
  const out = new Float32Array(from.length);
  poseOffsetsAt(timeline, timeline.duration_s, out);
  for (let i = 0; i < out.length; i++) out[i] = from[i]! + out[i]!;
  return out;
}
