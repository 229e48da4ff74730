/** The place of lessons: the course, an open lesson, or the glossary. */
import { useEffect } from 'react';
import { createLessonCommands } from '../../../store';
import { useApp, usePlaceCommands } from '../../bind';
import { CourseList } from './CourseList';
import { GlossaryView } from './GlossaryView';
import { LessonPlayer } from './LessonPlayer';
import './lessons.css';

export const GLOSSARY = 'glossary';

export default function LessonsPlace() {
  const { loadCourse, leaveStage } = usePlaceCommands(createLessonCommands);
  const topic = useApp((s) => s.route.path[0]);
  const inner = useApp((s) => s.route.path[1]);
  const language = useApp((s) => s.settings.language);
  useEffect(() => void loadCourse(), [loadCourse, language]);
  // The person's own stage comes back when the lesson is left.
  const playing = topic !== undefined && topic !== GLOSSARY;
  useEffect(() => (playing ? () => leaveStage() : undefined), [playing, leaveStage]);
  if (topic === undefined) return <CourseList />;
  if (topic === GLOSSARY) return <GlossaryView key={inner} termId={inner} />;
  return <LessonPlayer topic={topic} stepId={inner} />;
}
