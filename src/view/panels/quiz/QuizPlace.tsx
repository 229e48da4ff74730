/** The place of the quiz: its start, an open run, results, or a sheet for printing. */
import { useEffect } from 'react';
import { createQuizCommands } from '../../../store';
import { useApp, usePlaceCommands } from '../../bind';
import { PaperSheet } from './PaperSheet';
import { QuizHome } from './QuizHome';
import { QuizResults } from './QuizResults';
import { QuizRunView } from './QuizRunView';
import './quiz.css';

export default function QuizPlace() {
  const { load, leaveStage } = usePlaceCommands(createQuizCommands);
  const inner = useApp((s) => s.route.path[0]);
  const seed = useApp((s) => s.route.path[1]);
  const run = useApp((s) => s.quiz.run);
  const language = useApp((s) => s.settings.language);
  useEffect(() => void load(), [load, language]);
  useEffect(() => () => leaveStage(), [leaveStage]);
  if (inner === 'paper') return <PaperSheet seed={Number(seed)} />;
  if (run !== null && run.items.length > 0) {
    if (inner === 'results' && run.phase === 'done') return <QuizResults run={run} />;
    if (inner === 'run' && run.phase !== 'done') return <QuizRunView run={run} />;
  }
  return <QuizHome />;
}
