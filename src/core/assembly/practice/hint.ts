/** Hints in three steps: where, what kind, which part. All three speak of one move of the least plan from here. */
import { type Message, message } from '../../kernel';
import { hasBit } from '../bits';
import type { PracticeBench } from './bench';
import { assemblyOf, isParted } from './position';
import { answerOf, leastWalk, legalNow, standingOf } from './run';
import { isOff } from './take-apart';
import type { HintLevel, PracticeState } from './types';

export interface Hint {
  readonly unitId: string;
  readonly level: HintLevel;
  readonly text: Message;
}

/** Share of the half width beyond which a part counts as of the left or the right side. */
const SIDE_SHARE = 0.5;

/** The unit that the least plan would move next; null when nothing can be moved. */
export function nextUnit(bench: PracticeBench, state: PracticeState): string | null {
  const { position } = standingOf(bench, state);
  const { moves } = leastWalk(bench, state.goal);
  const { bodies } = bench.graph;
  if (state.mode === 'take-apart') {
    const goal = state.goal.kind === 'unit' ? bench.bodyOf(state.goal.unitId) : -1;
    for (const move of moves) {
      const u = bench.bodyOf(move.lead);
      if (isOff(bench, position, u)) continue;
      // On the bench only what the goal is in has to come apart.
      const from = assemblyOf(position, u);
      if (goal >= 0 && from !== position.main && !hasBit(from, goal)) continue;
      if ('move' in answerOf(bench, state, position, u)) return bodies[u]!.id;
    }
  } else
    for (const move of [...moves].reverse()) {
      const u = bench.bodyOf(move.lead);
      if (hasBit(position.main, u)) continue;
      if ('move' in answerOf(bench, state, position, u)) return bodies[u]!.id;
    }
  return legalNow(bench, state)[0] ?? null;
}

/** One step more of the hint for the next move; null when there is nothing to hint at. */
export function askHint(
  bench: PracticeBench,
  state: PracticeState,
): { readonly state: PracticeState; readonly hint: Hint } | null {
  const after = state.moves.length;
  const given = state.hints.filter((h) => h.after === after);
  const unitId = given[0]?.unitId ?? nextUnit(bench, state);
  if (unitId === null) return null;
  const level = Math.min(3, given.length + 1) as HintLevel;
  const hint = { unitId, level, text: hintText(bench, state, unitId, level) };
  if (given.length >= 3) return { state, hint };
  return { state: { ...state, hints: [...state.hints, { unitId, level, after }] }, hint };
}

function hintText(bench: PracticeBench, state: PracticeState, unitId: string, level: HintLevel): Message {
  if (level === 3) return message('practice.hint.part', { part: unitId });
  const u = bench.bodyOf(unitId);
  if (level === 1)
    return message('practice.hint.region', {
      region: message(`practice.region.${regionOf(bench, state, u)}`),
    });
  return message('practice.hint.kind', { kind: message(`practice.kind.${kindOf(bench, u)}`) });
}

export type Region = 'bench' | 'right' | 'left' | 'front' | 'rear' | 'middle';

function regionOf(bench: PracticeBench, state: PracticeState, u: number): Region {
  const { position } = standingOf(bench, state);
  const from = assemblyOf(position, u);
  if (from !== position.main && !isParted(bench, from)) return 'bench';
  const [x, , z] = bench.graph.bodies[u]!.centre_m;
  const { drumWidth_m, drumRadius_m } = bench.machine;
  if (x > (SIDE_SHARE * drumWidth_m) / 2) return 'right';
  if (x < (-SIDE_SHARE * drumWidth_m) / 2) return 'left';
  if (z < -drumRadius_m) return 'front';
  return z > drumRadius_m ? 'rear' : 'middle';
}

export type HintKind = 'hose' | 'fastener' | 'seal' | 'heavy' | 'part';

/** Above this a part needs lifting gear (common practice for one person). */
const HEAVY_KG = 25;

function kindOf({ graph }: PracticeBench, u: number): HintKind {
  const body = graph.bodies[u]!;
  if (body.hose) return 'hose';
  if (body.fastener) return 'fastener';
  if (body.seal) return 'seal';
  return body.mass_kg > HEAVY_KG ? 'heavy' : 'part';
}
