/** Runs of practice as records: JSON by run; what does not read back as itself is left out. */
import { type PracticeGoal, type PracticeScore, savePractice } from '../../core/assembly';
import { type KeptRun, PRACTICE_AIDS, type PracticeRun, type PracticeTask } from './state';

export const PRACTICE_RECORDS = 'practice';
const VERSION = 1;

export function keptOf(
  { id, task, started_ms, bench, state, score }: PracticeRun,
  saved_ms: number,
  leastMoves: number,
): KeptRun {
  return {
    id,
    task,
    machineId: bench.machine.id,
    started_ms,
    saved_ms,
    moves: state.moves.length,
    leastMoves,
    elapsed_s: state.elapsed_s,
    score,
    run: savePractice(state),
  };
}

export const writeKept = (kept: KeptRun): string => JSON.stringify({ version: VERSION, ...kept });

const isObject = (x: unknown): x is Readonly<Record<string, unknown>> => typeof x === 'object' && x !== null;
const isCount = (x: unknown): x is number => typeof x === 'number' && Number.isFinite(x) && x >= 0;

export function readKept(text: string): KeptRun | null {
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isObject(found) || found['version'] !== VERSION) return null;
  const { id, task, machineId, started_ms, saved_ms, moves, leastMoves, elapsed_s, score, run } = found;
  if (typeof id !== 'string' || typeof machineId !== 'string' || typeof run !== 'string') return null;
  if (!isCount(started_ms) || !isCount(saved_ms) || !isCount(moves) || !isCount(leastMoves)) return null;
  if (!isCount(elapsed_s) || !isTask(task) || !(score === null || isScore(score))) return null;
  return { id, task, machineId, started_ms, saved_ms, moves, leastMoves, elapsed_s, score, run };
}

const isGoal = (x: unknown): x is PracticeGoal =>
  isObject(x) && (x['kind'] === 'all' || (x['kind'] === 'unit' && typeof x['unitId'] === 'string'));

const isTask = (x: unknown): x is PracticeTask =>
  isObject(x) &&
  (x['mode'] === 'take-apart' || x['mode'] === 'put-together') &&
  PRACTICE_AIDS.some((aid) => aid === x['aid']) &&
  isGoal(x['goal']);

const SCORED = ['wrong', 'hints', 'extra', 'fiveMinutes', 'lost', 'moves', 'leastMoves'] as const;
const isScore = (x: unknown): x is PracticeScore => isObject(x) && SCORED.every((key) => isCount(x[key]));
