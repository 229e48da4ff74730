/**
 * Running a session, made to be projected: the question, how many have answered (never who, never what before the
 * reveal), and what comes next.
 */
import { useEffect, useRef, useState } from 'react';
import type { HostPage, Move, QuestionPhase } from '../../../../core/classroom';
import { createClassCommands, type Theme } from '../../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../../bind';
import { Picture } from '../../learn/Picture';
import { Said } from '../../learn/Said';
import { useTeller } from '../../learn/teller';
import { PaperBody } from '../../quiz/PaperSheet';
import { Revealed } from '../Revealed';
import { HostHands } from './HostHands';
import { usePresenterKeys } from './use-presenter-keys';

/** What comes next in the usual course. */
const NEXT: Readonly<Record<QuestionPhase, Move>> = {
  waiting: 'open',
  open: 'close',
  closed: 'reveal',
  revealed: 'next',
  skipped: 'next',
};

export function HostRun({ page }: { readonly page: HostPage }) {
  const { t } = useSpeech();
  const teller = useTeller();
  const commands = useCommands();
  const room = usePlaceCommands(createClassCommands);
  const { view } = page;
  const { question, paused } = view;
  const [keys, setKeys] = useState(true);
  const move = (what: Move): void => room.order({ type: 'move', move: what });
  const phase = question?.phase ?? 'waiting';
  const last = question !== null && question.number === question.count - 1;
  const next: Move = paused ? 'resume' : last && NEXT[phase] === 'next' ? 'end' : NEXT[phase];
  usePresenterKeys(keys, {
    // The end of a session is never a slip of the thumb.
    next: () => next !== 'end' && move(next),
    back: () => move('back'),
    pause: () => move(paused ? 'resume' : 'pause'),
  });
  const spoken = useRef(phase);
  useEffect(() => {
    if (spoken.current !== phase) commands.announce(`class.host-said.${phase}`);
    spoken.current = phase;
  }, [phase, commands]);
  if (question === null || question.item === null) return null;
  const { item, shares } = question;
  return (
    <div className="class-run" data-phase={phase} data-paused={paused}>
      <div className="class-run-head">
        <p className="field-name">
          {[
            t('quiz.question-of', { at: question.number + 1, count: question.count }),
            t(paused ? 'class.phase.paused' : `class.phase.${phase}`),
          ].join(', ')}
        </p>
        <p className="class-count" role="status" aria-label={t('class.counts-name')}>
          <strong className="mono">{view.answered}</strong>{' '}
          {t('class.of-here', { here: view.seats.filter((each) => each.here).length })}
        </p>
      </div>
      {shares !== null ? (
        <Revealed item={item} shares={shares} />
      ) : (
        <>
          <div className="ask-prompt">
            <Said content={item.prompt} />
          </div>
          {item.picture !== undefined && <Picture picture={item.picture} />}
          <PaperBody item={item} teller={teller} />
        </>
      )}
      <div className="buttons class-moves no-print">
        <button type="button" className="button act" onClick={() => move(next)}>
          {t(`class.move.${next}`)}
        </button>
        {phase === 'closed' && !paused && (
          <button type="button" className="button" onClick={() => move('open')}>
            {t('class.move.open-again')}
          </button>
        )}
        <button
          type="button"
          className="button"
          disabled={question.number === 0 || phase === 'open'}
          onClick={() => move('back')}
        >
          {t('class.move.back')}
        </button>
        {phase !== 'revealed' && phase !== 'skipped' && (
          <button type="button" className="button" onClick={() => move('skip')}>
            {t('class.move.skip')}
          </button>
        )}
        {!paused && (
          <button type="button" className="button" onClick={() => move('pause')}>
            {t('class.move.pause')}
          </button>
        )}
        {next !== 'end' && <EndButton onEnd={() => move('end')} />}
      </div>
      {phase !== 'waiting' && phase !== 'skipped' && (
        <HostHands key={question.number} number={question.number} item={item} hands={view.hands} />
      )}
      <div className="class-present no-print">
        <ProjectionButtons />
        <label className="check">
          <input type="checkbox" checked={keys} onChange={(event) => setKeys(event.currentTarget.checked)} />
          <span>{t('class.keys')}</span>
        </label>
        <p className="small faint">{t('class.keys-about')}</p>
      </div>
    </div>
  );
}

/** Asks once more: a session that has ended takes no more answers. */
function EndButton({ onEnd }: { readonly onEnd: () => void }) {
  const { t } = useSpeech();
  const [asking, setAsking] = useState(false);
  if (!asking)
    return (
      <button type="button" className="button" onClick={() => setAsking(true)}>
        {t('class.move.end')}
      </button>
    );
  return (
    <>
      <button type="button" className="button" onClick={onEnd}>
        {t('class.end-sure')}
      </button>
      <button type="button" className="button plain" onClick={() => setAsking(false)}>
        {t('class.end-not')}
      </button>
    </>
  );
}

/** High contrast and large type for the back row, with the stage beside the question or without; then as before. */
function ProjectionButtons() {
  const { t } = useSpeech();
  const commands = useCommands();
  const theme = useApp((s) => s.settings.theme);
  const alone = useApp((s) => s.route.path[1] === 'wall');
  const before = useRef<Theme>(theme === 'projector' ? 'paper' : theme);
  if (theme !== 'projector')
    return (
      <button
        type="button"
        className="button"
        onClick={() => {
          before.current = theme;
          commands.change({ theme: 'projector' });
          commands.go('class', 'host', 'wall');
        }}
      >
        {t('class.projection')}
      </button>
    );
  return (
    <div className="buttons">
      <button
        type="button"
        className="button"
        onClick={() => (alone ? commands.go('class', 'host') : commands.go('class', 'host', 'wall'))}
      >
        {t(alone ? 'class.projection-stage' : 'class.projection-alone')}
      </button>
      <button
        type="button"
        className="button"
        onClick={() => {
          commands.change({ theme: before.current });
          commands.go('class', 'host');
        }}
      >
        {t('class.projection-end')}
      </button>
    </div>
  );
}
