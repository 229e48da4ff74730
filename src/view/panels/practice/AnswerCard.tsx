/** What the last try came to: why not, with what stands in the way; what came off, with what follows; a hint. */
import type { RefObject } from 'react';
import type { Machine } from '../../../core/machine';
import { createPracticeCommands, type PracticeRun } from '../../../store';
import { usePlaceCommands, useSpeech } from '../../bind';
import { inSentence, sayAbout, unitName } from '../common/names';
import { answerText, bodyName } from './practice-words';

interface Props {
  readonly run: PracticeRun;
  readonly machine: Machine;
  readonly box: RefObject<HTMLDivElement | null>;
}

/** Blockers offered by name: more than a few are no help. */
const NAMED = 3;

export function AnswerCard({ run, machine, box }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = usePlaceCommands(createPracticeCommands);
  const { answer, bench } = run;
  const blockers =
    answer.kind === 'refused'
      ? [...new Map(answer.blockers.map((id) => [bodyName(speech, machine, bench, id), id]))]
      : [];
  return (
    <div
      className={`practice-answer ${answer.kind}`}
      role="group"
      aria-label={t('practice.answer')}
      data-answer={answer.kind}
      ref={box}
      tabIndex={-1}
    >
      {answer.kind === 'hint' && (
        <p className="label">{t('practice.answer-hint', { level: answer.hint.level })}</p>
      )}
      <p className="practice-said">{answerText(speech, machine, run)}</p>
      {answer.kind === 'moved' && answer.note !== null && (
        <p className="small">{sayAbout(speech, machine, answer.note)}</p>
      )}
      {answer.kind === 'moved' &&
        answer.after.map((step, i) => (
          <p key={i} className="small">
            {t('practice.answer-runs', { what: unitName(speech, machine, step.unitIds[0] ?? '') })}
          </p>
        ))}
      {blockers.length > 0 && (
        <div className="practice-blockers">
          <span className="label">{t('practice.answer-blocks')}</span>
          {blockers.slice(0, NAMED).map(([name, id]) => (
            <button
              key={id}
              type="button"
              className="button"
              aria-label={t('practice.answer-show', { part: inSentence(name) })}
              onClick={() => commands.lookAtBlocker(id)}
            >
              {name}
            </button>
          ))}
        </div>
      )}
      {run.next !== null && (
        <p className="practice-next">
          {t('practice.next', { part: inSentence(bodyName(speech, machine, bench, run.next)) })}{' '}
          <button type="button" className="link" onClick={() => commands.take(run.next!)}>
            {t('practice.next-take')}
          </button>
        </p>
      )}
    </div>
  );
}
