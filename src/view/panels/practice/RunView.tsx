/** A run under way: what is in hand, what the last try came to, what is still to be tried; at its end the score. */
import { useEffect, useRef } from 'react';
import type { Machine } from '../../../core/machine';
import { createPracticeCommands, type PracticeRun } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { AnswerCard } from './AnswerCard';
import { ConfirmCard } from './ConfirmCard';
import { HandCard } from './HandCard';
import { HeldAndGone } from './HeldAndGone';
import { OnStage } from './OnStage';
import { PartsToTry } from './PartsToTry';
import { answerText, bodyOfPart, minutesText, pointsText, taskText } from './practice-words';
import { ScoreView } from './ScoreView';

interface Props {
  readonly run: PracticeRun;
  readonly machine: Machine;
}

/** How often the time shown is read anew, ms. */
const TICK_MS = 10_000;

export function RunView({ run, machine }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = usePlaceCommands(createPracticeCommands);
  useTellings(run, machine);
  useClock();
  const hand = useApp((s) => bodyOfPart(run.bench, machine, s.selectedPart));
  // Another part in hand: what waited to be confirmed is put down.
  const waits =
    run.pending === null ? null : (run.bench.graph.bodies[run.bench.bodyOf(run.pending.unitId)]?.id ?? null);
  useEffect(() => {
    if (waits !== null && hand !== null && hand !== waits) commands.desist();
  }, [waits, hand, commands]);
  const answer = useRef<HTMLDivElement>(null);
  const serial = useRef(run.serial);
  // After a move its button is gone: the answer takes the focus, not the page.
  useEffect(() => {
    if (serial.current === run.serial) return;
    serial.current = run.serial;
    const lost = window.document.activeElement;
    if (run.answer.kind !== 'moved' && run.answer.kind !== 'back') return;
    if (lost === null || lost === window.document.body) answer.current?.focus({ preventScroll: true });
  }, [run]);
  // What was left for a pause begins again at the answer.
  const { paused } = run;
  const rested = useRef(paused);
  useEffect(() => {
    if (rested.current && !paused) answer.current?.focus();
    rested.current = paused;
  }, [paused]);
  // The panel was scrolled for the list of tasks; a run is read from its head.
  const head = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    head.current?.scrollIntoView?.({ block: 'nearest' });
  }, []);
  const done = run.score !== null;
  return (
    <>
      <p className="practice-task-line" ref={head}>
        <b>{taskText(speech, machine, run.task)}</b>{' '}
        <span className="small">({t(`practice.aid.${run.task.aid}`)})</span>
      </p>
      <Progress run={run} />
      {done ? (
        <ScoreView run={run} machine={machine} score={run.score} />
      ) : run.paused ? (
        <Paused />
      ) : (
        <>
          <div className="practice-now">
            {run.pending === null ? (
              <>
                <AnswerCard run={run} machine={machine} box={answer} />
                <HandCard run={run} machine={machine} hand={hand} />
              </>
            ) : (
              <ConfirmCard run={run} machine={machine} pending={run.pending} />
            )}
          </div>
          <div className="buttons practice-acts" role="group" aria-label={t('practice.title')}>
            {run.task.aid === 'free' && (
              <button type="button" className="button" onClick={() => commands.hint()}>
                {t(run.answer.kind === 'hint' ? 'practice.hint-more' : 'practice.hint')}
              </button>
            )}
            <button
              type="button"
              className="button"
              disabled={run.made.length === 0}
              onClick={() => commands.undo()}
            >
              {t('practice.undo')}
            </button>
            <button type="button" className="button" onClick={() => commands.pause(true)}>
              {t('practice.pause')}
            </button>
            <button type="button" className="button plain" onClick={() => commands.leave()}>
              {t('practice.leave')}
            </button>
          </div>
          <PartsToTry run={run} machine={machine} hand={hand} />
          <HeldAndGone run={run} machine={machine} />
          <OnStage run={run} machine={machine} hand={hand} />
        </>
      )}
    </>
  );
}

function Paused() {
  const { t } = useSpeech();
  const commands = usePlaceCommands(createPracticeCommands);
  const goOn = useRef<HTMLButtonElement>(null);
  useEffect(() => goOn.current?.focus(), []);
  return (
    <div className="practice-paused">
      <p>{t('practice.paused')}</p>
      <div className="buttons">
        <button type="button" className="button act" ref={goOn} onClick={() => commands.pause(false)}>
          {t('practice.go-on')}
        </button>
        <button type="button" className="button" onClick={() => commands.leave()}>
          {t('practice.leave')}
        </button>
        <button type="button" className="button plain" onClick={() => commands.end()}>
          {t('practice.end')}
        </button>
      </div>
    </div>
  );
}

function Progress({ run }: { readonly run: PracticeRun }) {
  const speech = useSpeech();
  const { t } = speech;
  const { moves, wrong, hints, elapsed_s } = run.state;
  const exam = run.task.aid === 'exam' && run.score === null;
  return (
    <dl className="practice-progress" aria-label={t('practice.progress')}>
      <div>
        <dt>{t('practice.count.moves')}</dt>
        <dd className="mono" data-count="moves">
          {moves.length}
        </dd>
      </div>
      {!exam && (
        <div>
          <dt>{t('practice.count.wrong')}</dt>
          <dd className="mono" data-count="wrong">
            {wrong.length}
          </dd>
        </div>
      )}
      {run.task.aid === 'free' && (
        <div>
          <dt>{t('practice.count.hints')}</dt>
          <dd className="mono" data-count="hints">
            {hints.length}
          </dd>
        </div>
      )}
      <div>
        <dt>{t('practice.count.time')}</dt>
        <dd className="mono">{minutesText(speech, elapsed_s)}</dd>
      </div>
    </dl>
  );
}

/** Speaks each answer politely. */
function useTellings(run: PracticeRun, machine: Machine): void {
  const speech = useSpeech();
  const commands = useCommands();
  const told = useRef(run.serial);
  useEffect(() => {
    if (told.current === run.serial) return;
    told.current = run.serial;
    const done =
      run.score === null
        ? ''
        : ` ${speech.t('practice.said-done', { points: pointsText(speech, run.score.lost) })}`;
    const text = answerText(speech, machine, run) + done;
    // After what the page says by itself of the part that is no longer chosen: the last word is heard.
    setTimeout(() => commands.announce('practice.said', { text }), 0);
  }, [run, machine, speech, commands]);
}

/** The clock goes on while the run is looked at, and stands while the page is hidden. */
function useClock(): void {
  const commands = usePlaceCommands(createPracticeCommands);
  useEffect(() => {
    const timer = setInterval(() => commands.tick(), TICK_MS);
    const look = (): void => commands.watch(window.document.visibilityState === 'visible');
    window.document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      window.document.removeEventListener('visibilitychange', look);
    };
  }, [commands]);
}
