/** Lesson, course and glossary files in; lessons with their texts out, or every fault with its file, line and path. */
import { type Fault, fail, message, type Message, ok, printFound, type Result } from '../kernel';
import { placeIn, type ReadYaml, readYaml, type SourceFile } from '../machine';
import { readText, type RichText, type StageSetting } from '../quiz';
import {
  courseSchema,
  type GlossaryFile,
  glossarySchema,
  type GlossaryTexts,
  glossaryTextsSchema,
  type LessonFile,
  lessonSchema,
  type LessonTexts,
  lessonTextsSchema,
  type StepEntry,
  type TaskEntry,
} from './schema';

type Place = Pick<Fault, 'file' | 'line' | 'path'>;

export interface LessonStep {
  readonly id: string;
  readonly title: string;
  readonly text: RichText;
  /** How the stage stands: the step's own setting, else that of the last step before it that has one. */
  readonly stage: StageSetting;
  readonly cautions: readonly string[];
  readonly task: TaskEntry | null;
  readonly taskText: RichText | null;
  /** Shown once the task is done. */
  readonly after: RichText | null;
  /** Item that checks the step. */
  readonly check: string | null;
}

export interface Lesson {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly minutes: number;
  readonly requires: readonly string[];
  readonly steps: readonly LessonStep[];
}

export interface Term {
  readonly id: string;
  readonly name: string;
  readonly also: readonly string[];
  readonly text: RichText;
  readonly parts: readonly string[];
  readonly see: readonly string[];
  readonly source: string | null;
}

/** Data with the way back to its files; `where` is about structure, `whereText` about texts. */
export interface SourcedLesson {
  readonly lesson: Lesson;
  readonly language: string;
  readonly where: (...path: PropertyKey[]) => Place;
  readonly whereText: (...path: PropertyKey[]) => Place;
}

export interface SourcedGlossary {
  readonly terms: readonly Term[];
  readonly language: string;
  readonly where: (...path: PropertyKey[]) => Place;
  readonly whereText: (...path: PropertyKey[]) => Place;
}

/** Collects faults, and reads texts as it goes. */
class Faults {
  readonly list: Fault[] = [];
  add(place: Place, expected: Message, found: unknown): void {
    this.list.push({ ...place, expected, found: printFound(found) });
  }
  text(text: string, place: Place): RichText {
    const read = readText(text);
    for (const fault of read.faults) this.list.push({ ...place, ...fault });
    return read.rich;
  }
}

/** @param topic the folder's name; the lesson's id must be the same */
export function parseLesson(topic: string, structure: SourceFile, texts: SourceFile): Result<SourcedLesson> {
  const read = readYaml(structure, lessonSchema);
  const words = readYaml(texts, lessonTextsSchema);
  if (!read.ok || !words.ok)
    return fail([...(read.ok ? [] : read.faults), ...(words.ok ? [] : words.faults)]);
  const faults = new Faults();
  const lesson = joinLesson(topic, read.value, words.value, faults);
  if (faults.list.length > 0) return fail(faults.list);
  return ok({
    lesson,
    language: words.value.data.language,
    where: (...path) => placeIn(read.value, path),
    whereText: (...path) => placeIn(words.value, path),
  });
}

function joinLesson(
  topic: string,
  read: ReadYaml<LessonFile>,
  words: ReadYaml<LessonTexts>,
  faults: Faults,
): Lesson {
  const { data } = read;
  if (data.id !== topic)
    faults.add(placeIn(read, ['id']), message('lesson.expected.folder', { topic }), data.id);
  const known = new Set<string>();
  let stage: StageSetting = {};
  const steps = data.steps.flatMap((entry, i): LessonStep[] => {
    const where = (...rest: PropertyKey[]): Place => placeIn(read, ['steps', i, ...rest]);
    if (known.has(entry.id)) faults.add(where('id'), message('lesson.expected.own-step'), entry.id);
    known.add(entry.id);
    stage = entry.stage ?? stage;
    checkTask(entry, where, faults);
    const said = words.data.steps[entry.id];
    if (said === undefined) {
      faults.add(where('id'), message('quiz.expected.texts', { file: words.name }), entry.id);
      return [];
    }
    const whereText = (...rest: PropertyKey[]): Place => placeIn(words, ['steps', entry.id, ...rest]);
    const asks = entry.task !== undefined && entry.task.type !== 'predict';
    if (asks !== (said.task !== undefined))
      faults.add(
        whereText(),
        message(asks ? 'lesson.expected.task-text' : 'lesson.expected.no-task-text'),
        said.task,
      );
    if (said.after !== undefined && entry.task === undefined)
      faults.add(whereText('after'), message('lesson.expected.task-before-after'), said.after);
    return [
      {
        id: entry.id,
        title: said.title,
        text: faults.text(said.text, whereText('text')),
        stage,
        cautions: entry.cautions ?? [],
        task: entry.task ?? null,
        taskText: said.task === undefined ? null : faults.text(said.task, whereText('task')),
        after: said.after === undefined ? null : faults.text(said.after, whereText('after')),
        check: entry.check ?? null,
      },
    ];
  });
  for (const id of Object.keys(words.data.steps))
    if (!known.has(id))
      faults.add(
        placeIn(words, ['steps', id]),
        message('lesson.expected.known-step', { file: read.name }),
        id,
      );
  return {
    id: data.id,
    title: words.data.title,
    summary: words.data.summary,
    minutes: data.minutes,
    requires: data.after ?? [],
    steps,
  };
}

/** A setting is asked to equal something or to lie in a range, never both, never neither. */
function checkTask({ task }: StepEntry, where: (...rest: PropertyKey[]) => Place, faults: Faults): void {
  if (task?.type !== 'set') return;
  const range = task.at_least !== undefined || task.at_most !== undefined;
  if (range === (task.equals !== undefined))
    faults.add(where('task'), message('lesson.expected.equals-or-range'), task);
  else if (task.at_least !== undefined && task.at_most !== undefined && task.at_least > task.at_most)
    faults.add(
      where('task', 'at_least'),
      message('expected.at-most', { limit: task.at_most }),
      task.at_least,
    );
}

/** Topics in teaching order. */
export function parseCourse(file: SourceFile): Result<readonly string[]> {
  const read = readYaml(file, courseSchema);
  if (!read.ok) return read;
  const { lessons } = read.value.data;
  const faults = new Faults();
  lessons.forEach((id, i) => {
    if (lessons.indexOf(id) < i)
      faults.add(placeIn(read.value, ['lessons', i]), message('quiz.expected.own-id'), id);
  });
  return faults.list.length > 0 ? fail(faults.list) : ok(lessons);
}

export function parseGlossary(structure: SourceFile, texts: SourceFile): Result<SourcedGlossary> {
  const read = readYaml(structure, glossarySchema);
  const words = readYaml(texts, glossaryTextsSchema);
  if (!read.ok || !words.ok)
    return fail([...(read.ok ? [] : read.faults), ...(words.ok ? [] : words.faults)]);
  const faults = new Faults();
  const terms = joinGlossary(read.value, words.value, faults);
  if (faults.list.length > 0) return fail(faults.list);
  return ok({
    terms,
    language: words.value.data.language,
    where: (...path) => placeIn(read.value, path),
    whereText: (...path) => placeIn(words.value, path),
  });
}

function joinGlossary(read: ReadYaml<GlossaryFile>, words: ReadYaml<GlossaryTexts>, faults: Faults): Term[] {
  const known = new Set<string>();
  const terms = read.data.terms.flatMap((entry, i): Term[] => {
    if (known.has(entry.id))
      faults.add(placeIn(read, ['terms', i, 'id']), message('quiz.expected.own-id'), entry.id);
    known.add(entry.id);
    const said = words.data.terms[entry.id];
    if (said === undefined) {
      faults.add(
        placeIn(read, ['terms', i, 'id']),
        message('quiz.expected.texts', { file: words.name }),
        entry.id,
      );
      return [];
    }
    return [
      {
        id: entry.id,
        name: said.name,
        also: said.also ?? [],
        text: faults.text(said.text, placeIn(words, ['terms', entry.id, 'text'])),
        parts: entry.parts ?? [],
        see: entry.see ?? [],
        source: entry.source ?? null,
      },
    ];
  });
  for (const id of Object.keys(words.data.terms))
    if (!known.has(id))
      faults.add(
        placeIn(words, ['terms', id]),
        message('lesson.expected.known-term', { file: read.name }),
        id,
      );
  return terms;
}
