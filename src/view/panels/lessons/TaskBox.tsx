/** What a step asks to be done, with a way to do it from the keyboard and without the stage. */
import { useEffect, useState } from 'react';
import type { LessonStep, TaskEntry } from '../../../core/lessons';
import { type Item, partsNamed } from '../../../core/quiz';
import { createLessonCommands, createQuizCommands, selectValues } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { Segmented } from '../common/Segmented';
import { ExciterControls } from '../exciter/ExciterControls';
import { ExciterTable } from '../exciter/ExciterTable';
import { useExciterStudy } from '../exciter/use-exciter-study';
import '../exciter/exciter.css';
import { AskItem } from '../learn/AskItem';
import { Rich } from '../learn/Said';
import { TypedNumber } from '../learn/NumberField';
import { useTeller } from '../learn/teller';
import { useGiven } from './use-given';
import { useTaskMet } from './use-task';

interface Props {
  readonly topic: string;
  readonly step: LessonStep;
  /** Done before, as kept. */
  readonly wasDone: boolean;
  /** The item of a predict task. */
  readonly item: Item | null;
}

export function TaskBox({ topic, step, wasDone, item }: Props) {
  const { t } = useSpeech();
  const lessons = usePlaceCommands(createLessonCommands);
  const quiz = usePlaceCommands(createQuizCommands);
  const [given, setGiven] = useGiven(`${topic}/${step.id}/task`);
  const met = useTaskMet(step.task);
  const [measured, setMeasured] = useState(false);
  const done = wasDone || measured || met || (step.task?.type === 'predict' && given !== null);
  useEffect(() => {
    if (done && !wasDone) lessons.taskDone(topic, step.id);
  }, [done, wasDone, lessons, topic, step.id]);
  const { task } = step;
  if (task === null) return null;
  return (
    <section
      className="lesson-task"
      aria-label={t(task.type === 'predict' ? 'lessons.predict' : 'lessons.task')}
    >
      <h3>{t(task.type === 'predict' ? 'lessons.predict' : 'lessons.task')}</h3>
      {step.taskText !== null && <Rich rich={step.taskText} />}
      {task.type === 'find' && !done && <FindList task={task} />}
      {task.type === 'take-off' && !done && <OpenTeardown />}
      {touchesExciter(task) && <ExciterHere controls={task.type === 'set'} />}
      {task.type === 'measure' && !done && <Measure task={task} onRight={() => setMeasured(true)} />}
      {task.type === 'predict' && item !== null && (
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
      )}
      <div role="status">
        {done ? (
          <>
            <p className="task-done">✓ {t('lessons.task-done')}</p>
            {step.after !== null && <Rich rich={step.after} />}
          </>
        ) : (
          <p className="small faint">{t('lessons.task-open')}</p>
        )}
      </div>
    </section>
  );
}

/** Parts near at hand, so that finding needs no pointer. */
function FindList({ task }: { readonly task: Extract<TaskEntry, { type: 'find' }> }) {
  const { t } = useSpeech();
  const commands = useCommands();
  const teller = useTeller();
  const { machine } = teller;
  const picked = useApp((s) => s.selectedPart);
  if (machine === null) return null;
  const kinds = Object.keys(machine.kinds)
    .map((id) => ({ id, name: teller.name(id) }))
    .sort((a, b) => a.name.localeCompare(b.name, teller.speech.language));
  return (
    <label className="find-list">
      <span className="field-name">{t('lessons.find-list')}</span>
      <select
        value=""
        onChange={(event) => {
          const wanted = partsNamed(machine, event.currentTarget.value);
          const ref = partsNamed(machine, task.part).find((id) => wanted.includes(id)) ?? wanted[0];
          if (ref !== undefined) commands.select(ref);
        }}
      >
        <option value="">{picked === null ? t('ask.match-none') : teller.name(picked)}</option>
        {kinds.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}

function OpenTeardown() {
  const { t } = useSpeech();
  const commands = useCommands();
  return (
    <p>
      <button type="button" className="button" onClick={() => commands.openTeardown(true)}>
        {t('lessons.teardown-open')}
      </button>
    </p>
  );
}

const touchesExciter = (task: TaskEntry): boolean =>
  (task.type === 'set' && task.setting.startsWith('exciter.')) ||
  (task.type === 'measure' && /^(study|now)\.exciter\./.test(task.value));

/** The exciter's numbers, and what can be set on it, beside the text that asks about them. */
function ExciterHere({ controls }: { readonly controls: boolean }) {
  const { t } = useSpeech();
  const commands = useCommands();
  const direction = useApp((s) => s.exciter.direction);
  const study = useExciterStudy();
  if (study === null) return <p className="faint">{t('exciter.none')}</p>;
  return (
    <div className="lesson-exciter">
      <Segmented
        fill
        legend={t('lessons.exciter-direction')}
        value={direction}
        choices={(['high', 'low'] as const).map((value) => ({ value, label: t(`exciter.${value}`) }))}
        onChange={(value) => commands.setExciter({ direction: value })}
      />
      <ExciterTable study={study} direction={direction} />
      {controls && <ExciterControls study={study} />}
    </div>
  );
}

/** Reading a number off a panel and typing it. */
function Measure(props: {
  readonly task: Extract<TaskEntry, { type: 'measure' }>;
  readonly onRight: () => void;
}) {
  const { task, onRight } = props;
  const { t } = useSpeech();
  const value = useApp(selectValues)?.get(task.value);
  const [typed, setTyped] = useState<number | null>(null);
  const [off, setOff] = useState(false);
  if (value === undefined || !('si' in value)) return <p className="faint">{t('ask.no-machine')}</p>;
  return (
    <form
      className="measure"
      onSubmit={(event) => {
        event.preventDefault();
        if (typed === null) return;
        const right = Math.abs(typed - value.si) <= task.tolerance * Math.abs(value.si);
        setOff(!right);
        if (right) onRight();
      }}
    >
      <TypedNumber
        label={t('lessons.measured')}
        quantity={task.quantity ?? value.quantity}
        onValue={setTyped}
      />
      <button type="submit" className="button" disabled={typed === null}>
        {t('lessons.check-measure')}
      </button>
      <p role="status">{off ? t('lessons.measure-off') : ''}</p>
    </form>
  );
}
