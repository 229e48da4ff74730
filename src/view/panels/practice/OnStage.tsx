/** Over the stage: the unit in hand with its try, and why it cannot go, where the eye is. The panel says the same. */
import { createPortal } from 'react-dom';
import type { Machine } from '../../../core/machine';
import { createPracticeCommands, type PracticeRun } from '../../../store';
import { usePlaceCommands, useSpeech } from '../../bind';
import { answerText, bodyName } from './practice-words';

interface Props {
  readonly run: PracticeRun;
  readonly machine: Machine;
  readonly hand: string | null;
}

export function OnStage({ run, machine, hand }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const { tryUnit } = usePlaceCommands(createPracticeCommands);
  const sheet = window.document.querySelector('.stage-sheet');
  if (sheet === null || hand === null) return null;
  const { answer, pending } = run;
  const refused = answer.kind === 'refused' && run.bench.bodyOf(answer.unitId) === run.bench.bodyOf(hand);
  return createPortal(
    <div
      className="practice-on-stage"
      data-stage-obstacle
      role="group"
      aria-label={t('practice.stage.label')}
    >
      <p>
        {pending !== null
          ? t('practice.stage.confirm')
          : refused
            ? answerText(speech, machine, run)
            : bodyName(speech, machine, run.bench, hand)}
      </p>
      {pending === null && !refused && (
        <button type="button" className="button act" onClick={() => tryUnit(hand)}>
          {t(run.task.mode === 'take-apart' ? 'practice.off' : 'practice.on')}
        </button>
      )}
    </div>,
    sheet,
  );
}
