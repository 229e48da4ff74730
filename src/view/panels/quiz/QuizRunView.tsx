/** A run of questions, one at a time: practice and review tell after each, a test at its end. */
import { useEffect, useRef, useState } from 'react';
import { createQuizCommands, type QuizRun } from '../../../store';
import { useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { AskItem } from '../learn/AskItem';

export function QuizRunView({ run }: { readonly run: QuizRun }) {
  const { t } = useSpeech();
  const quiz = usePlaceCommands(createQuizCommands);
  const top = useRef<HTMLParagraphElement>(null);
  const item = run.items[run.at]!;
  const last = run.at === run.items.length - 1;
  const open = run.given.filter((given) => given === null).length;
  const first = useRef(true);
  useEffect(() => {
    top.current?.closest('.side-panel-body, .sheet-body, .place-body, aside')?.scrollTo?.({ top: 0 });
    if (!first.current) top.current?.focus({ preventScroll: true });
    first.current = false;
  }, [run.at]);
  return (
    <div className="panel-body quiz-run">
      <header className="quiz-head">
        <p ref={top} tabIndex={-1} className="field-name">
          {t('quiz.question-of', { at: run.at + 1, count: run.items.length })}
        </p>
        {run.endsAt_ms !== null && <TimeLeft endsAt_ms={run.endsAt_ms} />}
        <progress value={run.at + (run.phase === 'told' ? 1 : 0)} max={run.items.length} aria-hidden="true" />
      </header>
      <AskItem
        key={item.id}
        item={item}
        given={run.given[run.at] ?? null}
        tells={run.mode !== 'test'}
        verb={run.mode === 'test' ? 'keep' : 'answer'}
        onGiven={({ answer, certainty }) => quiz.answer(answer, certainty)}
      />
      {run.mode === 'test' && <JumpList run={run} />}
      <div className="buttons quiz-nav">
        {run.phase === 'told' && (
          <button
            type="button"
            className="button act"
            onClick={() => (last ? quiz.finish() : quiz.ask(run.at + 1))}
          >
            {t(last ? 'quiz.results' : 'quiz.next')}
          </button>
        )}
        {run.mode === 'test' && (
          <button type="button" className="button" onClick={() => quiz.finish()}>
            {open === 0 ? t('quiz.hand-in') : t('quiz.hand-in-open', { open })}
          </button>
        )}
        <button
          type="button"
          className="button plain"
          onClick={() => (run.mode !== 'test' && open < run.items.length ? quiz.finish() : quiz.leave())}
        >
          {t('quiz.leave')}
        </button>
      </div>
    </div>
  );
}

const SECOND_ms = 1000;

/** Whole minutes are spoken seldom; the clock itself is quiet, so that it does not talk over the question. */
function TimeLeft({ endsAt_ms }: { readonly endsAt_ms: number }) {
  const { t } = useSpeech();
  const commands = useCommands();
  const quiz = usePlaceCommands(createQuizCommands);
  const [left_s, setLeft] = useState(() => Math.ceil((endsAt_ms - Date.now()) / SECOND_ms));
  useEffect(() => {
    const tick = setInterval(() => setLeft(Math.ceil((endsAt_ms - Date.now()) / SECOND_ms)), SECOND_ms / 2);
    return () => clearInterval(tick);
  }, [endsAt_ms]);
  useEffect(() => {
    if (left_s > 0) return;
    commands.announce('quiz.time-up');
    quiz.finish();
  }, [left_s, commands, quiz]);
  const shown = Math.max(0, left_s);
  const time = `${Math.floor(shown / 60)}:${String(shown % 60).padStart(2, '0')}`;
  return <p className="mono">{t('quiz.time-left', { time })}</p>;
}

function JumpList({ run }: { readonly run: QuizRun }) {
  const { t } = useSpeech();
  const quiz = usePlaceCommands(createQuizCommands);
  return (
    <nav aria-label={t('quiz.jump')} className="buttons quiz-jump">
      {run.items.map((item, i) => {
        const answered = run.given[i] !== null;
        return (
          <button
            key={item.id}
            type="button"
            className="button narrow"
            aria-current={i === run.at ? 'step' : undefined}
            aria-label={t('quiz.jump-to', { at: i + 1, state: t(answered ? 'quiz.answered' : 'quiz.open') })}
            onClick={() => quiz.ask(i)}
          >
            {i + 1}
            {answered ? ' ✓' : ''}
          </button>
        );
      })}
    </nav>
  );
}
