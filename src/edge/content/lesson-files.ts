/** The files of the lessons folder, for Node (build, command line, class host). */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Fault, fail, message, ok, type Result } from '../../core/kernel';
import {
  type CourseFiles,
  parseCourse,
  parseGlossary,
  parseLesson,
  type SourcedGlossary,
  type SourcedLesson,
} from '../../core/lessons';
import type { SourceFile } from '../../core/machine';
import { type Bank, parseBank } from '../../core/quiz';

/** Text in the language, else in English: a language may come file by file. */
const FALLBACK = 'en';

export interface CourseInLanguage extends CourseFiles {
  readonly language: string;
  /** Of `course.yaml`: topics in teaching order. */
  readonly order: readonly string[];
}

/** Languages that some lesson has texts in, English first. */
export function lessonLanguages(folder: string): readonly string[] {
  const found = new Set<string>([FALLBACK]);
  for (const entry of readdirSync(folder, { withFileTypes: true, recursive: true })) {
    const match = /^(?:lesson|bank|glossary)\.([a-z]{2,3}(?:-[A-Za-z0-9]+)*)\.yaml$/.exec(entry.name);
    if (match !== null) found.add(match[1]!);
  }
  return [...found];
}

/** Reads course, lessons, banks and glossary; all faults at once. Banks held back for class come only when asked for. */
export function readCourse(
  folder: string,
  language: string,
  options: { readonly heldBack?: boolean } = {},
): Result<CourseInLanguage> {
  const faults: Fault[] = [];
  const take = <T>(result: Result<T>): T | null => {
    if (result.ok) return result.value;
    faults.push(...result.faults);
    return null;
  };
  const file = (...path: string[]): SourceFile | null => {
    const name = path.join('/');
    const full = join(folder, ...path);
    if (existsSync(full)) return { name: `lessons/${name}`, text: readFileSync(full, 'utf8') };
    faults.push({
      file: `lessons/${name}`,
      path: '(whole file)',
      expected: message('lesson.expected.file'),
      found: name,
    });
    return null;
  };
  const texts = (topic: string, name: string): SourceFile | null => {
    const own = `${name}.${language}.yaml`;
    return file(topic, existsSync(join(folder, topic, own)) ? own : `${name}.${FALLBACK}.yaml`);
  };
  const both = <T>(
    topic: string,
    name: string,
    parse: (structure: SourceFile, words: SourceFile) => Result<T>,
  ): T | null => {
    const structure = file(topic, `${name}.yaml`);
    const words = texts(topic, name);
    return structure === null || words === null ? null : take(parse(structure, words));
  };

  const course = file('course.yaml');
  const order = course === null ? null : take(parseCourse(course));
  const lessons: SourcedLesson[] = [];
  const banks: Bank[] = [];
  for (const topic of order ?? []) {
    const lesson = both(topic, 'lesson', (a, b) => parseLesson(topic, a, b));
    if (lesson !== null) lessons.push(lesson);
    const names = ['bank', ...(options.heldBack === true ? ['class-bank'] : [])];
    for (const name of names) {
      if (!existsSync(join(folder, topic, `${name}.yaml`))) continue;
      const bank = both(topic, name, (a, b) => parseBank(topic, a, b));
      if (bank === null) continue;
      banks.push(bank);
      if (bank.heldBack !== (name === 'class-bank'))
        faults.push({
          file: `lessons/${topic}/${name}.yaml`,
          path: 'held_back',
          expected: message(name === 'bank' ? 'quiz.expected.not-held-back' : 'quiz.expected.held-back'),
          found: String(bank.heldBack),
        });
    }
  }
  const glossary: SourcedGlossary | null = both('glossary', 'glossary', parseGlossary);
  if (faults.length > 0 || order === null) return fail(faults);
  return ok({ language, order, lessons, banks, glossary });
}
