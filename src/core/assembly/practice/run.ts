/**
 * A run of practice: a pure reducer over the blocking graph. Every legal order is accepted, subassemblies that leave
 * as one included; what is refused says what stands in the way.
 */
import { message, type Message } from '../../kernel';
import { type Bits, hasBit, members, sameBits } from '../bits';
import type { Step } from '../types';
import type { PracticeBench } from './bench';
import { holdingFor } from './holding';
import { assemblyOf, bodiesOf, isParted, type Position, putOn, takenOff } from './position';
import { putFrom } from './put-together';
import { isOff, takeFrom } from './take-apart';
import type { Outcome, PracticeGoal, PracticeMode, PracticeMove, PracticeState } from './types';

export function startPractice(bench: PracticeBench, mode: PracticeMode, goal: PracticeGoal): PracticeState {
  return {
    machineId: bench.machine.id,
    modelHash: bench.modelHash,
    mode,
    goal,
    moves: [],
    wrong: [],
    hints: [],
    undone: 0,
    elapsed_s: 0,
  };
}

/** What a run's moves have led to. */
export interface Standing {
  readonly position: Position;
  /** Steps off the machine so far, for what must be held: made, or taken as made where the run begins apart. */
  readonly gone: readonly Step[];
}

interface Walk extends Standing {
  readonly moves: readonly PracticeMove[];
}

const walks = new WeakMap<PracticeBench, Map<string, Walk>>();
/** Where a run stands after a move; a move is made once, after what came before it. */
const after = new WeakMap<PracticeMove, Standing>();

const assembled = (bench: PracticeBench): Standing => ({
  position: { main: bench.all, pieces: [] },
  gone: [],
});

/** The moves of the least plan, one after the other, from assembled to the goal. */
export function leastWalk(bench: PracticeBench, goal: PracticeGoal): Walk {
  const kept = walks.get(bench) ?? new Map<string, Walk>();
  walks.set(bench, kept);
  const key = goal.kind === 'all' ? '' : goal.unitId;
  const known = kept.get(key);
  if (known !== undefined) return known;
  let { position, gone } = assembled(bench);
  const moves: PracticeMove[] = [];
  for (const step of bench.plan(goal).steps) {
    if (step.kind !== 'remove' && step.kind !== 'bench') continue;
    for (const id of step.unitIds) {
      const u = bench.bodyOf(id);
      const inPlace = step.kind === 'remove' ? hasBit(position.main, u) : !isOff(bench, position, u);
      if (u < 0 || !inPlace) continue;
      const taking = takeFrom(bench, position, u);
      if (!('move' in taking)) continue;
      moves.push(taking.move);
      position = takenOff(bench, position, taking.move);
      if (taking.step.kind === 'remove') gone = [...gone, taking.step];
    }
  }
  const walk = { position, gone, moves };
  kept.set(key, walk);
  return walk;
}

/** Where a run stands. */
export function standingOf(bench: PracticeBench, { mode, goal, moves }: PracticeState): Standing {
  let from = moves.length;
  while (from > 0 && !after.has(moves[from - 1]!)) from--;
  let standing =
    from > 0
      ? after.get(moves[from - 1]!)!
      : mode === 'take-apart'
        ? assembled(bench)
        : leastWalk(bench, goal);
  for (const move of moves.slice(from)) {
    standing = advance(bench, mode, standing, move);
    after.set(move, standing);
  }
  return standing;
}

function advance(
  bench: PracticeBench,
  mode: PracticeMode,
  { position, gone }: Standing,
  move: PracticeMove,
): Standing {
  if (mode === 'put-together') {
    const next = putOn(bench, position, move);
    return {
      position: next,
      gone: gone.filter((s) => s.unitIds.some((id) => !hasBit(next.main, Math.max(0, bench.bodyOf(id))))),
    };
  }
  const taking = takeFrom(bench, position, bench.bodyOf(move.lead));
  const steps = 'move' in taking && taking.step.kind === 'remove' ? [...gone, taking.step] : gone;
  return { position: takenOff(bench, position, move), gone: steps };
}

/** Tries a unit (or the unit that a part belongs to): the move that follows, or why it cannot be now. */
export function tryUnit(
  bench: PracticeBench,
  state: PracticeState,
  unitId: string,
): { readonly state: PracticeState; readonly outcome: Outcome } {
  const u = bench.bodyOf(unitId);
  const outcome: Outcome =
    u < 0
      ? {
          kind: 'refused',
          reason: message('practice.why.no-way', { part: unitId }),
          blockers: [],
          counts: false,
        }
      : state.mode === 'take-apart'
        ? tryOff(bench, state, u)
        : tryOn(bench, state, u);
  if (outcome.kind === 'legal')
    return { state: { ...state, moves: [...state.moves, outcome.move] }, outcome };
  // The same try again, with nothing changed, is no second mistake.
  const made = state.moves.length;
  const lead = bench.graph.bodies[u]?.id ?? unitId;
  const again = state.wrong.some((w) => w.unitId === lead && w.after === made);
  if (!outcome.counts || again) return { state, outcome };
  return {
    state: { ...state, wrong: [...state.wrong, { unitId: lead, reason: outcome.reason, after: made }] },
    outcome,
  };
}

function tryOff(bench: PracticeBench, state: PracticeState, u: number): Outcome {
  const { position, gone } = standingOf(bench, state);
  const id = bench.graph.bodies[u]!.id;
  if (isOff(bench, position, u))
    return {
      kind: 'refused',
      reason: message('practice.why.off', { part: id }),
      blockers: [],
      counts: false,
    };
  const taking = takeFrom(bench, position, u);
  if (!('move' in taking)) return refused(bench, taking.reason, taking.by, u !== bench.base);
  const holding = taking.step.kind === 'remove' ? holdingFor(bench, gone, taking.step) : null;
  const next = takenOff(bench, position, taking.move);
  return {
    kind: 'legal',
    move: taking.move,
    step: holding?.step ?? taking.step,
    before: holding?.before ?? [],
    after: holding?.after ?? [],
    note: taking.note,
    done: goalReached(bench, state, next),
  };
}

function tryOn(bench: PracticeBench, state: PracticeState, u: number): Outcome {
  const { position, gone } = standingOf(bench, state);
  const id = bench.graph.bodies[u]!.id;
  if (hasBit(position.main, u))
    return { kind: 'refused', reason: message('practice.why.in', { part: id }), blockers: [], counts: false };
  const putting = putFrom(bench, benchGroups(bench, state.goal), position, u);
  if (!('move' in putting)) return refused(bench, putting.reason, putting.by, true);
  const next = putOn(bench, position, putting.move);
  // What would be held before it comes off is held until it is in and fast.
  const others = gone.filter((s) => !s.unitIds.some((unit) => putting.off.unitIds.includes(unit)));
  const holding = putting.off.kind === 'remove' ? holdingFor(bench, others, putting.off) : null;
  return {
    kind: 'legal',
    move: putting.move,
    step: { ...putting.step, supports: holding?.step.supports ?? [] },
    before: (holding?.before ?? []).filter((s) => s.kind === 'support'),
    after: [],
    note: putting.note,
    done: goalReached(bench, state, next),
  };
}

function refused(bench: PracticeBench, reason: Message, by: readonly number[], counts: boolean): Outcome {
  return { kind: 'refused', reason, blockers: by.map((v) => bench.graph.bodies[v]!.id), counts };
}

function goalReached(bench: PracticeBench, { mode, goal }: PracticeState, position: Position): boolean {
  if (mode === 'put-together') return sameBits(position.main, bench.all);
  if (goal.kind === 'unit') return isOff(bench, position, bench.bodyOf(goal.unitId));
  const { stayIds, stuckIds } = bench.plan(goal);
  const stay = new Set([...stayIds, ...stuckIds].map((id) => bench.bodyOf(id)));
  return members(position.main).every((u) => stay.has(u)) && position.pieces.every((p) => isParted(bench, p));
}

/** Whether the goal is reached. */
export const isDone = (bench: PracticeBench, state: PracticeState): boolean =>
  goalReached(bench, state, standingOf(bench, state).position);

/** Takes the last move back: what came off goes on again, what went in comes out. */
export function undoMove(state: PracticeState): PracticeState {
  if (state.moves.length === 0) return state;
  return { ...state, moves: state.moves.slice(0, -1), undone: state.undone + 1 };
}

/** Time spent so far, measured outside. */
export const withTime = (state: PracticeState, elapsed_s: number): PracticeState => ({ ...state, elapsed_s });

/** What a try on a body gives, nothing recorded. */
export function answerOf(bench: PracticeBench, state: PracticeState, position: Position, u: number) {
  return state.mode === 'take-apart'
    ? takeFrom(bench, position, u)
    : putFrom(bench, benchGroups(bench, state.goal), position, u);
}

/** Subassemblies that the least plan takes out as one. */
const benchGroups = (bench: PracticeBench, goal: PracticeGoal): Bits[] =>
  leastWalk(bench, goal)
    .moves.filter((m) => m.together)
    .map((m) => bodiesOf(bench, m.bodies));

/** Units that may be taken off (or put in) at this moment: every one of them is a right answer. */
export function legalNow(bench: PracticeBench, state: PracticeState): string[] {
  const { position } = standingOf(bench, state);
  return openBodies(bench, state)
    .filter((u) => 'move' in answerOf(bench, state, position, u))
    .map((u) => bench.graph.bodies[u]!.id);
}

/** Bodies that are still to be tried: on (or on the bench as one) when taking apart, off when putting together. */
export function openBodies(bench: PracticeBench, state: PracticeState): number[] {
  const { position } = standingOf(bench, state);
  return members(bench.all).filter((u) =>
    state.mode === 'take-apart' ? u !== bench.base && !isOff(bench, position, u) : !hasBit(position.main, u),
  );
}

/** Of the open bodies, the assembly that each is in: null is the machine, else the heaviest of its piece. */
export function placeOf(bench: PracticeBench, state: PracticeState, u: number): string | null {
  const { position } = standingOf(bench, state);
  const from = assemblyOf(position, u);
  if (from === position.main) return null;
  const { bodies } = bench.graph;
  const list = members(from);
  return bodies[list.reduce((best, v) => (bodies[v]!.mass_kg > bodies[best]!.mass_kg ? v : best), list[0]!)]!
    .id;
}
