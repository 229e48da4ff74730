/** The start of the quiz: what is due today, and a sheet to be drawn. */
import { dueOn, plan } from '../../../core/quiz';
import { createQuizCommands, today } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { Segmented } from '../common/Segmented';

const COUNTS = [5, 10, 20, 40] as const;
const MINUTES = [null, 10, 20, 40] as const;
const DAYS = 7;

export function QuizHome() {
  const { t } = useSpeech();
  const quiz = usePlaceCommands(createQuizCommands);
  const { busy, setup } = useApp((s) => s.quiz);
  const run = useApp((s) => s.quiz.run);
  return (
    <div className="panel-body quiz-home">
      <h2>{t('quiz.title')}</h2>
      <ReviewToday />
      <section aria-labelledby="quiz-new">
        <h3 id="quiz-new">{t('quiz.new')}</h3>
        <Topics />
        <Segmented
          fill
          legend={t('quiz.count')}
          value={String(setup.count)}
          choices={COUNTS.map((count) => ({ value: String(count), label: count }))}
          onChange={(value) => quiz.change({ count: Number(value) })}
        />
        <Segmented
          fill
          legend={t('quiz.from')}
          value={setup.from}
          choices={(['bank', 'generated', 'both'] as const).map((value) => ({
            value,
            label: t(`quiz.from.${value}`),
          }))}
          onChange={(from) => quiz.change({ from })}
        />
        <p className="small faint">{t('quiz.from-about')}</p>
        <div className="buttons">
          <button
            type="button"
            className="button act"
            disabled={busy}
            onClick={() => void quiz.start('practice')}
          >
            {t('quiz.practice')}
          </button>
          <span className="small faint quiz-about">{t('quiz.practice-about')}</span>
        </div>
        <Segmented
          fill
          legend={t('quiz.minutes')}
          value={String(setup.minutes)}
          choices={MINUTES.map((minutes) => ({
            value: String(minutes),
            label: minutes === null ? t('quiz.minutes-none') : t('quiz.minutes-some', { minutes }),
          }))}
          onChange={(value) => quiz.change({ minutes: value === 'null' ? null : Number(value) })}
        />
        <div className="buttons">
          <button type="button" className="button" disabled={busy} onClick={() => void quiz.start('test')}>
            {t('quiz.test')}
          </button>
          <span className="small faint quiz-about">{t('quiz.test-about')}</span>
        </div>
        <div className="buttons">
          <button type="button" className="button" disabled={busy} onClick={() => void quiz.makePaper()}>
            {t('quiz.paper')}
          </button>
        </div>
        <p role="status" className="small">
          {busy ? t('quiz.drawing') : run?.items.length === 0 ? t('quiz.none') : ''}
        </p>
      </section>
      <p className="small faint">{t('certainty.about')}</p>
    </div>
  );
}

function ReviewToday() {
  const { t } = useSpeech();
  const quiz = usePlaceCommands(createQuizCommands);
  const cards = useApp((s) => s.quiz.cards);
  const busy = useApp((s) => s.quiz.busy);
  const all = Object.values(cards);
  const day = today();
  const due = dueOn(all, day).length;
  const coming = plan(all, day, DAYS);
  return (
    <section aria-labelledby="quiz-today">
      <h3 id="quiz-today">{t('quiz.today')}</h3>
      <p data-testid="due">
        {due === 0 ? t('quiz.due-none') : due === 1 ? t('quiz.due-one') : t('quiz.due', { count: due })}
      </p>
      <p className="small faint">{t('quiz.due-about')}</p>
      <button
        type="button"
        className="button"
        disabled={due === 0 || busy}
        onClick={() => void quiz.startReview()}
      >
        {t('quiz.start-review')}
      </button>
      {all.length > 0 && (
        <table className="review-plan small">
          <caption className="visually-hidden">{t('quiz.plan')}</caption>
          <tbody>
            <tr>
              {coming.map((_, i) => (
                <th key={i} scope="col">
                  {i === 0 ? t('quiz.plan-today') : t('quiz.plan-day', { days: i })}
                </th>
              ))}
            </tr>
            <tr className="mono">
              {coming.map((count, i) => (
                <td key={i}>{count}</td>
              ))}
            </tr>
          </tbody>
        </table>
      )}
    </section>
  );
}

function Topics() {
  const { t } = useSpeech();
  const quiz = usePlaceCommands(createQuizCommands);
  const course = useApp((s) => s.lessons.course);
  const topics = useApp((s) => s.quiz.setup.topics);
  const toggle = (id: string): void =>
    quiz.change({ topics: topics.includes(id) ? topics.filter((each) => each !== id) : [...topics, id] });
  return (
    <details className="quiz-topics">
      <summary>
        {t('quiz.topics')}:{' '}
        {topics.length === 0
          ? t('quiz.topics-all')
          : topics.map((id) => course?.lessons.find((each) => each.id === id)?.title ?? id).join(', ')}
      </summary>
      <fieldset>
        <legend className="visually-hidden">{t('quiz.topics')}</legend>
        {course?.lessons
          .filter((lesson) => lesson.items.length > 0)
          .map((lesson) => (
            <label key={lesson.id} className="check">
              <input
                type="checkbox"
                checked={topics.includes(lesson.id)}
                onChange={() => toggle(lesson.id)}
              />
              <span>{lesson.title}</span>
            </label>
          ))}
      </fieldset>
    </details>
  );
}
