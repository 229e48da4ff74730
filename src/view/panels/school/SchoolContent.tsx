/** What a packaged lesson shows beside the stage: its start, the lesson, the glossary, the quiz and its results. */
import type { SchoolSession } from '../../../store';
import { useApp, useCommands, useSpeech } from '../../bind';
import { GlossaryView } from '../lessons/GlossaryView';
import { LessonPlayer } from '../lessons/LessonPlayer';
import '../lessons/lessons.css';
import { QuizResults } from '../quiz/QuizResults';
import { QuizRunView } from '../quiz/QuizRunView';
import '../quiz/quiz.css';
import { SchoolHome } from './SchoolHome';

const GLOSSARY = 'glossary';

export function SchoolContent({ session }: { readonly session: SchoolSession }) {
  const { t } = useSpeech();
  const { place, path } = useApp((s) => s.route);
  const school = useApp((s) => s.school);
  const run = useApp((s) => s.quiz.run);
  const [first, second] = path;
  if (school === null || school.phase === 'opening')
    return <p className="panel-body faint">{t('lessons.loading')}</p>;
  if (school.phase === 'failed') return <p className="panel-body">{t('school.failed')}</p>;
  const home = <SchoolHome session={session} />;
  if (place === 'lessons') {
    if (first === undefined) return home;
    if (first === GLOSSARY) return <GlossaryView key={second} termId={second} />;
    return first === school.topic ? <LessonPlayer topic={first} stepId={second} /> : <Elsewhere />;
  }
  if (place !== 'quiz') return <Elsewhere />;
  if (run !== null && first === 'run' && run.phase !== 'done') return <QuizRunView run={run} />;
  if (run !== null && first === 'results' && run.phase === 'done') return <QuizResults run={run} />;
  return home;
}

/** A text's link led out of the lesson. */
function Elsewhere() {
  const { t } = useSpeech();
  const commands = useCommands();
  const topic = useApp((s) => s.school?.topic ?? '');
  return (
    <div className="panel-body">
      <p>{t('school.elsewhere')}</p>
      <div className="buttons">
        <button type="button" className="button act" onClick={() => commands.go('lessons', topic)}>
          {t('school.back')}
        </button>
      </div>
    </div>
  );
}
