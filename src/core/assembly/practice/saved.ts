/** A run kept as text and taken up again: refused with its reason when it does not fit the machine of now. */
import { fail, message, type Message, ok, printFound, type Result } from '../../kernel';
import type { PracticeBench } from './bench';
import { startPractice, tryUnit } from './run';
import type { HintLevel, PracticeMove, PracticeState } from './types';

export const PRACTICE_SCHEMA = 1;

export const savePractice = (state: PracticeState): string =>
  JSON.stringify({ schema_version: PRACTICE_SCHEMA, state });

const refuse = (path: string, expected: Message, found: unknown): Result<PracticeState> =>
  fail([{ path, expected, found: printFound(found) }]);

/** Reads a kept run. Its moves are tried again one by one, so that what comes back can be gone on with. */
export function resumePractice(bench: PracticeBench, text: string): Result<PracticeState> {
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return refuse('(whole file)', message('practice.saved.broken'), text);
  }
  const { schema_version, state } = (file ?? {}) as { schema_version?: unknown; state?: unknown };
  if (schema_version !== PRACTICE_SCHEMA)
    return refuse(
      'schema_version',
      message('practice.saved.schema', { found: printFound(schema_version) }),
      schema_version,
    );
  if (!isState(state)) return refuse('state', message('practice.saved.broken'), state);
  if (state.machineId !== bench.machine.id)
    return refuse(
      'state.machineId',
      message('practice.saved.machine', { found: state.machineId }),
      state.machineId,
    );
  if (state.modelHash !== bench.modelHash)
    return refuse('state.modelHash', message('practice.saved.model'), state.modelHash);
  if (state.goal.kind === 'unit' && bench.bodyOf(state.goal.unitId) < 0)
    return refuse('state.goal', message('practice.saved.broken'), state.goal);
  let run = startPractice(bench, state.mode, state.goal);
  for (const [i, move] of state.moves.entries()) {
    const next = tryUnit(bench, run, move.lead);
    const same =
      next.outcome.kind === 'legal' &&
      [...next.outcome.move.bodies].sort().join() === [...move.bodies].sort().join();
    if (!same)
      return refuse(`state.moves[${i}]`, message('practice.saved.moves', { move: i + 1 }), move.lead);
    run = next.state;
  }
  const { wrong, hints, undone, elapsed_s } = state;
  return ok({ ...run, wrong, hints, undone, elapsed_s });
}

const isRecord = (x: unknown): x is Record<string, unknown> => typeof x === 'object' && x !== null;
const isText = (x: unknown): x is string => typeof x === 'string';
const isCount = (x: unknown): x is number => typeof x === 'number' && Number.isFinite(x) && x >= 0;
const listOf = (x: unknown, is: (item: Record<string, unknown>) => boolean): boolean =>
  Array.isArray(x) && x.every((item) => isRecord(item) && is(item));

function isState(x: unknown): x is PracticeState {
  if (!isRecord(x) || !isRecord(x['goal'])) return false;
  const { goal } = x;
  return (
    isText(x['machineId']) &&
    isText(x['modelHash']) &&
    (x['mode'] === 'take-apart' || x['mode'] === 'put-together') &&
    (goal['kind'] === 'all' || (goal['kind'] === 'unit' && isText(goal['unitId']))) &&
    listOf(x['moves'], (m) => isMove(m)) &&
    listOf(
      x['wrong'],
      (w) =>
        isText(w['unitId']) && isCount(w['after']) && isRecord(w['reason']) && isText(w['reason']['key']),
    ) &&
    listOf(
      x['hints'],
      (h) => isText(h['unitId']) && isCount(h['after']) && [1, 2, 3].includes(h['level'] as HintLevel),
    ) &&
    isCount(x['undone']) &&
    isCount(x['elapsed_s'])
  );
}

const isMove = (m: Record<string, unknown>): m is Record<string, unknown> & PracticeMove =>
  isText(m['lead']) && Array.isArray(m['bodies']) && m['bodies'].every(isText);
