/** The lesson player: one step beside the stage, which follows it. Every step has its address. */
import { type KeyboardEvent, lazy, Suspense, useEffect, useRef } from 'react';
import type { Lesson, LessonStep } from '../../../core/lessons';
import { createLessonCommands, createQuizCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { Signal } from '../common/Signal';
import { AskItem } from '../learn/AskItem';
import { Rich } from '../learn/Said';
import { useTeller } from '../learn/teller';
import { bySeverity, signalOf } from '../teardown/cautions';
import { TaskBox } from './TaskBox';
import { useGiven } from './use-given';
import { useReader } from './use-reader';
import { type OpenTopic, useTopic } from './use-topic';

/** Studies come when a step shows one. */
const StudyHere = lazy(() => import('./StudyHere'));

interface Props {
  readonly topic: string;
  /** From the address; undefined: where the person left off. */
  readonly stepId: string | undefined;
}

export function LessonPlayer({ topic, stepId }: Props) {
  const { t } = useSpeech();
  const commands = useCommands();
  const lessons = usePlaceCommands(createLessonCommands);
  const { open, failed } = useTopic(topic);
  const at = open?.lesson.steps.findIndex((step) => step.id === stepId) ?? -1;
  const loaded = open !== null;
  useEffect(() => {
    if (!loaded) return;
    const now = lessons.open(topic, stepId ?? null);
    // No step in the address, or one that is gone: to where the person left off.
    if (now?.at != null && now.at !== stepId) commands.go('lessons', topic, now.at);
  }, [loaded, topic, stepId, lessons, commands]);
  if (failed) return <p className="panel-body">{t('lessons.unknown')}</p>;
  if (open === null || at < 0) return <p className="panel-body faint">{t('lessons.loading')}</p>;
  return <Step key={`${topic}/${stepId}`} open={open} topic={topic} at={at} />;
}

const isTyped = (target: EventTarget): boolean =>
  target instanceof HTMLElement && target.closest('input, select, textarea') !== null;

function Step({
  open,
  topic,
  at,
}: {
  readonly open: OpenTopic;
  readonly topic: string;
  readonly at: number;
}) {
  const { t } = useSpeech();
  const commands = useCommands();
  const lessons = usePlaceCommands(createLessonCommands);
  const { lesson } = open;
  const step = lesson.steps[at]!;
  const ready = useApp((s) => s.document !== null);
  const progress = useApp((s) => s.lessons.progress[topic]);
  const packaged = useApp((s) => s.school !== null);
  const heading = useRef<HTMLHeadingElement>(null);
  const last = at === lesson.steps.length - 1;
  const count = lesson.steps.length;
  useEffect(() => {
    if (ready) lessons.setStage(step.stage, step.task?.type !== 'find');
  }, [ready, step, lessons]);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.closest('.side-panel-body, .sheet-body, .place-body, aside')?.scrollTo?.({ top: 0 });
    commands.announce('lessons.at-step', { step: at + 1, count, title: step.title });
  }, [step, at, count, commands]);
  const onKey = (event: KeyboardEvent): void => {
    if (isTyped(event.target) || event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'ArrowRight' && !last) lessons.next(topic);
    else if (event.key === 'ArrowLeft' && at > 0) lessons.previous(topic);
    else return;
    event.preventDefault();
  };
  return (
    <article className="panel-body lesson" onKeyDown={onKey} data-step={step.id}>
      <header className="lesson-head">
        <button type="button" className="link small" onClick={() => commands.go('lessons')}>
          {t(packaged ? 'school.home' : 'lessons.all')}
        </button>
        <p className="small faint">{lesson.title}</p>
        <progress value={at + 1} max={count} aria-label={t('lessons.step-of', { step: at + 1, count })} />
        <Outline lesson={lesson} at={at} done={progress?.done ?? []} />
      </header>
      <h2 ref={heading} tabIndex={-1}>
        {step.title}
      </h2>
      {bySeverity(step.cautions).map((caution) => (
        <Signal key={caution} word={signalOf(caution)}>
          <p>{t(`caution.${caution}`)}</p>
        </Signal>
      ))}
      <Rich rich={step.text} />
      <StepTools step={step} />
      {(step.stage.joint ?? step.stage.slope) !== undefined && (
        <Suspense fallback={null}>
          <StudyHere step={step} />
        </Suspense>
      )}
      <TaskBox
        topic={topic}
        step={step}
        wasDone={progress?.tasks.includes(step.id) ?? false}
        item={step.task?.type === 'predict' ? open.item(step.task.item) : null}
      />
      <Check topic={topic} step={step} open={open} />
      <nav className="lesson-nav" aria-label={lesson.title}>
        <button type="button" className="button" disabled={at === 0} onClick={() => lessons.previous(topic)}>
          <span>{t('lessons.previous')}</span>
        </button>
        <span className="small mono" aria-hidden="true">
          {at + 1} / {count}
        </span>
        <button
          type="button"
          className="button act"
          onClick={() => (last ? lessons.finish(topic) : lessons.next(topic))}
        >
          <span>{t(last ? 'lessons.finish' : 'lessons.next')}</span>
        </button>
      </nav>
    </article>
  );
}

function Outline(props: { readonly lesson: Lesson; readonly at: number; readonly done: readonly string[] }) {
  const { lesson, at, done } = props;
  const { t } = useSpeech();
  const commands = useCommands();
  return (
    <details className="lesson-outline">
      <summary>
        {`${t('lessons.outline')} – ${t('lessons.step-of', { step: at + 1, count: lesson.steps.length })}`}
      </summary>
      <ol>
        {lesson.steps.map((step, i) => (
          <li key={step.id}>
            <button
              type="button"
              className="link"
              aria-current={i === at ? 'step' : undefined}
              onClick={() => commands.go('lessons', lesson.id, step.id)}
            >
              {step.title}
            </button>
            {done.includes(step.id) && <span className="small faint"> ✓ {t('lessons.done')}</span>}
          </li>
        ))}
      </ol>
    </details>
  );
}

function StepTools({ step }: { readonly step: LessonStep }) {
  const teller = useTeller();
  const { t, language } = teller.speech;
  const lessons = usePlaceCommands(createLessonCommands);
  const reader = useReader(step.id);
  const say = (): void => {
    const cautions = step.cautions.map((caution) => t(`caution.${caution}`));
    const task = step.taskText === null ? [] : [teller.rich(step.taskText)];
    reader.start([step.title, ...cautions, teller.rich(step.text), ...task].join('. '), language);
  };
  return (
    <div className="buttons">
      {reader.can && (
        <button
          type="button"
          className="button narrow"
          onClick={() => (reader.reading ? reader.stop() : say())}
        >
          <Icon name={reader.reading ? 'pause' : 'play'} />
          <span>{t(reader.reading ? 'lessons.stop-reading' : 'lessons.read-aloud')}</span>
        </button>
      )}
      <button
        type="button"
        className="button narrow"
        onClick={() => lessons.setStage(step.stage, step.task?.type !== 'find')}
      >
        <span>{t('lessons.reset-stage')}</span>
      </button>
    </div>
  );
}

/** The question at the end of a step. */
function Check(props: { readonly topic: string; readonly step: LessonStep; readonly open: OpenTopic }) {
  const { topic, step, open } = props;
  const { t } = useSpeech();
  const quiz = usePlaceCommands(createQuizCommands);
  const [given, setGiven] = useGiven(`${topic}/${step.id}/check`);
  const item = step.check === null ? null : open.item(step.check);
  if (item === null) return null;
  return (
    <section className="lesson-task" aria-label={t('lessons.check')}>
      <h3>{t('lessons.check')}</h3>
      <AskItem
        item={item}
        given={given}
        tells
        headingLevel={3}
        onGiven={(next) => {
          setGiven(next);
          quiz.answerInLesson(item, next);
        }}
      />
    </section>
  );
}
