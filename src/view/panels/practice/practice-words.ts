/** What practice says: tasks, bodies, answers, times. */
import type { PracticeBench } from '../../../core/assembly';
import { type Machine, findPart } from '../../../core/machine';
import type { PracticeRun, PracticeTask } from '../../../store';
import type { Speech } from '../../bind';
import { inSentence, kindName, ordinalOf, sayAbout, unitName } from '../common/names';

/** Name of a body; one of several alike goes by the name of its kind. */
export function bodyName(speech: Speech, machine: Machine, bench: PracticeBench, unitId: string): string {
  const u = bench.bodyOf(unitId);
  const part = machine.parts[bench.graph.bodies[u]?.parts[0] ?? -1];
  const alone = bench.graph.bodies[u]?.parts.length === 1;
  return alone && part !== undefined && ordinalOf(machine, part.id) !== ''
    ? kindName(speech, machine, part.kind)
    : unitName(speech, machine, unitId);
}

export function taskText(speech: Speech, machine: Machine, { mode, goal }: PracticeTask): string {
  const { t } = speech;
  return t('practice.task-line', {
    mode: t(`practice.mode.${mode}`),
    goal:
      goal.kind === 'all'
        ? t('practice.goal-all-in')
        : t(`practice.goal-in.${mode}`, { part: inSentence(unitName(speech, machine, goal.unitId)) }),
  });
}

/** Several names in one breath, each once. */
export function namesText(
  speech: Speech,
  machine: Machine,
  bench: PracticeBench,
  ids: readonly string[],
): string {
  const names = [...new Set(ids.map((id) => bodyName(speech, machine, bench, id)))];
  const shown = names.slice(0, 4).map((name, i) => (i === 0 ? name : inSentence(name)));
  const list = new Intl.ListFormat(speech.language, { type: 'conjunction' });
  return names.length > 4
    ? speech.t('step.and-more', { name: shown[0]!, count: names.length - 1 })
    : list.format(shown);
}

export const minutesText = ({ t }: Speech, time_s: number): string =>
  t('practice.minutes', { minutes: Math.floor(time_s / 60) });

export const pointsText = ({ t }: Speech, lost: number): string =>
  lost === 0 ? t('practice.score-none') : t('practice.score-points', { count: lost });

/** The last answer in one breath. */
export function answerText(speech: Speech, machine: Machine, run: PracticeRun): string {
  const { t } = speech;
  const { answer, bench, task } = run;
  const apart = task.mode === 'take-apart';
  const names = (ids: readonly string[]): string => inSentence(namesText(speech, machine, bench, ids));
  switch (answer.kind) {
    case 'begun':
      return t(apart ? 'practice.answer-begun' : 'practice.answer-begun-together');
    case 'refused':
      return answer.reason === null ? t('practice.answer-exam') : sayAbout(speech, machine, answer.reason);
    case 'moved':
      return t(apart ? 'practice.answer-off' : 'practice.answer-on', { parts: names(answer.unitIds) });
    case 'back':
      return t(apart ? 'practice.answer-back-on' : 'practice.answer-back-off', {
        parts: names(answer.unitIds),
      });
    case 'hint':
      return sayAbout(speech, machine, answer.hint.text);
  }
}

/** Item number of a body's first part; null where its kind has none. */
export function itemOf(machine: Machine, bench: PracticeBench, unitId: string): number | null {
  const part = bench.graph.bodies[bench.bodyOf(unitId)]?.parts[0];
  const kind = part === undefined ? undefined : machine.parts[part]?.kind;
  return kind === undefined ? null : (machine.kinds[kind]?.item ?? null);
}

/** Body that a part belongs to, by id; null: none that practice moves. */
export function bodyOfPart(bench: PracticeBench, machine: Machine, partId: string | null): string | null {
  if (partId === null || findPart(machine, partId) === undefined) return null;
  return bench.graph.bodies[bench.bodyOf(partId)]?.id ?? null;
}
