/** The lessons of the course, with how far a person is in each. */
import { shareDone } from '../../../core/lessons';
import { createQuizCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';

export function CourseList() {
  const { t } = useSpeech();
  const commands = useCommands();
  const quiz = usePlaceCommands(createQuizCommands);
  const course = useApp((s) => s.lessons.course);
  const phase = useApp((s) => s.lessons.phase);
  const progress = useApp((s) => s.lessons.progress);
  return (
    <div className="panel-body course">
      <h2>{t('lessons.title')}</h2>
      <p>{t('lessons.intro')}</p>
      <p>
        <button type="button" className="link" onClick={() => commands.go('lessons', 'glossary')}>
          {t('lessons.glossary')}
        </button>
      </p>
      {course === null && (
        <p className="faint">{t(phase === 'failed' ? 'lessons.failed' : 'lessons.loading')}</p>
      )}
      <ol className="course-list">
        {course?.lessons.map((lesson) => {
          const ids = lesson.steps.map((step) => step.id);
          const own = progress[lesson.id];
          const share = shareDone(ids, own);
          const done = Math.round(share * ids.length);
          const open = lesson.requires.filter((id) => {
            const other = course.lessons.find((each) => each.id === id);
            return (
              other !== undefined &&
              shareDone(
                other.steps.map((s) => s.id),
                progress[id],
              ) < 1
            );
          });
          return (
            <li key={lesson.id}>
              <h3>{lesson.title}</h3>
              <p>{lesson.summary}</p>
              <p className="small faint">
                {`${t('lessons.minutes', { minutes: lesson.minutes })}, ${t('lessons.steps-done', { done, count: ids.length })}`}
              </p>
              {open.length > 0 && done === 0 && (
                <p className="small faint">
                  {t('lessons.first', {
                    lessons: open
                      .map((id) => course.lessons.find((each) => each.id === id)!.title)
                      .join(', '),
                  })}
                </p>
              )}
              <progress value={done} max={ids.length} aria-hidden="true" />
              <div className="buttons">
                <button
                  type="button"
                  className="button"
                  aria-label={`${t(share === 1 ? 'lessons.again' : own === undefined ? 'lessons.start' : 'lessons.go-on')}: ${lesson.title}`}
                  onClick={() =>
                    share === 1
                      ? commands.go('lessons', lesson.id, ids[0]!)
                      : commands.go('lessons', lesson.id)
                  }
                >
                  {t(share === 1 ? 'lessons.again' : own === undefined ? 'lessons.start' : 'lessons.go-on')}
                </button>
                {lesson.items.length > 0 && (
                  <button
                    type="button"
                    className="button plain"
                    aria-label={`${t('lessons.practise')}: ${lesson.title}`}
                    onClick={() => {
                      quiz.change({ topics: [lesson.id], from: 'bank', kinds: [] });
                      void quiz.start('practice');
                    }}
                  >
                    {t('lessons.practise')}
                  </button>
                )}
              </div>
            </li>
          );
        })}
      </ol>
    </div>
  );
}
