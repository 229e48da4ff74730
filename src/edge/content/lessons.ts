/** Fetches the course, made ready at build time: outline, one topic at a time, glossary. */
import type { CourseOutline, Glossary, Topic } from '../../core/lessons';

const FOLDER = './baked/lessons';
const FALLBACK = 'en';

async function load<T>(language: string, name: string): Promise<T> {
  // A language that the course does not have answers with the page of the app, or not at all: English then.
  for (const each of new Set([language, FALLBACK])) {
    const response = await fetch(`${FOLDER}/${each}/${name}.json`);
    if (response.ok && (response.headers.get('content-type') ?? '').includes('json'))
      return (await response.json()) as T;
  }
  throw new Error(`edge/loadLessons: ${name}, got none`);
}

export const loadCourse = (language: string): Promise<CourseOutline> => load(language, 'course');
export const loadTopic = (language: string, topic: string): Promise<Topic> =>
  load(language, `topic-${topic}`);
export const loadGlossary = (language: string): Promise<Glossary> => load(language, 'glossary');
