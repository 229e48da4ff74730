/** The start of a packaged lesson: what is to be done, how far one is, and whether the school's system hears of it. */
import type { SchoolSession } from '../../../store';
import { useApp, useCommands, useSpeech } from '../../bind';
import { SchoolNotice } from './SchoolNotice';

export function SchoolHome({ session }: { readonly session: SchoolSession }) {
  const { t, language } = useSpeech();
  const commands = useCommands();
  const school = useApp((s) => s.school)!;
  const run = useApp((s) => s.quiz.run);
  const lesson = useApp((s) => s.lessons.topics[school.topic]?.lesson);
  const done = useApp((s) => s.lessons.progress[school.topic]?.done);
  if (lesson === undefined) return null;
  const steps = lesson.steps.length;
  const gone = lesson.steps.filter((step) => done?.includes(step.id)).length;
  const percent = new Intl.NumberFormat(language, { style: 'percent', maximumFractionDigits: 0 });
  const running = run !== null && run.phase !== 'done';
  const passed = school.attempts > 0 && school.bestRight / school.count >= school.mastery - 1e-9;
  return (
    <div className="panel-body school-home">
      <h2>{lesson.title}</h2>
      <p>{lesson.summary}</p>
      <SchoolNotice />
      <dl className="facts">
        <dt>{t('school.steps')}</dt>
        <dd className="mono" data-testid="steps-done">
          {t('school.of', { done: gone, count: steps })}
        </dd>
        {school.count > 0 && (
          <>
            <dt>{t('school.quiz')}</dt>
            <dd data-testid="quiz-best">
              {school.attempts === 0
                ? t('school.not-yet')
                : t(passed ? 'school.passed' : 'school.not-passed', {
                    right: school.bestRight,
                    count: school.count,
                  })}
            </dd>
            <dt>{t('school.pass-at')}</dt>
            <dd className="mono">{percent.format(school.mastery)}</dd>
          </>
        )}
      </dl>
      <div className="buttons">
        <button type="button" className="button act" onClick={() => commands.go('lessons', school.topic)}>
          {t(
            done === undefined || gone === 0
              ? 'school.start'
              : gone === steps
                ? 'school.again'
                : 'school.go-on',
          )}
        </button>
        {school.count > 0 && (
          <button
            type="button"
            className="button"
            onClick={() => (running ? commands.go('quiz', 'run') : session.startQuiz())}
          >
            {t(running ? 'school.quiz-on' : school.attempts > 0 ? 'school.quiz-again' : 'school.quiz-start')}
          </button>
        )}
      </div>
      <p className="small faint">{t('school.about', { count: school.count })}</p>
    </div>
  );
}
