/**
 * Where a learner goes on, as short text for the one element that a learning system keeps of a lesson (4,096 letters
 * in SCORM 1.2). Plain ASCII; ids are said by number, and a mark of the lesson's make tells when its numbers changed.
 */
import { hashText } from '../../kernel';
import { type Answer, type Certainty, DIRECTION_SETS, type Given, type Item } from '../../quiz';

/** An answer with when it was given, seconds after the quiz (or the visit) began, and how long it took. */
export interface TimedGiven {
  readonly given: Given;
  readonly latency_s: number;
  readonly after_s: number;
}

export interface Resume {
  /** Number of the step that was open. */
  readonly at: number;
  /** Numbers of the steps gone through, and of those whose task was done. */
  readonly done: readonly number[];
  readonly tasks: readonly number[];
  /** Of the quizzes handed in: how many, and the most right answers in one. */
  readonly attempts: number;
  readonly bestRight: number;
  /** Answers in the lesson's steps, by number of the question. */
  readonly inLesson: ReadonlyMap<number, Given>;
  /** The quiz that is on. */
  readonly quiz: QuizResume | null;
}

export interface QuizResume {
  readonly seed: number;
  readonly at: number;
  /** Milliseconds of the clock when it began. */
  readonly began_ms: number;
  /** By number of the question in the bank, not in the order asked; null: not answered. */
  readonly given: readonly (TimedGiven | null)[];
}

const VERSION = '1';
const FIELD = '~';
const ENTRY = '!';
const WITHIN = '*';
const NONE = '_';
const FIGURES = 12;
const LETTERS = '0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** Tells one make of a lesson and its questions from another. */
export const makeOf = (stepIds: readonly string[], items: readonly Item[]): string =>
  hashText(
    ...stepIds,
    ...[...items].sort((a, b) => (a.id < b.id ? -1 : 1)).map((item) => `${item.id} ${idsOf(item).join(' ')}`),
  ).slice(0, 8);

/**
 * @param limit letters that there is room for
 * @param items the bank, in the order that numbers it
 * Where room is short, answers in the lesson go first, then those of the quiz from the end; steps and scores stay.
 */
export function writeResume(resume: Resume, make: string, items: readonly Item[], limit: number): string {
  const text = (inLesson: number, inQuiz: number): string => {
    const lesson = [...resume.inLesson].slice(0, inLesson);
    return [
      VERSION + make,
      n(resume.at),
      bits(resume.done),
      bits(resume.tasks),
      n(resume.attempts),
      n(resume.bestRight),
      lesson.map(([i, given]) => [n(i), writeGiven(items[i]!, given)].join(WITHIN)).join(ENTRY),
      resume.quiz === null ? '' : writeQuiz(resume.quiz, items, inQuiz),
    ].join(FIELD);
  };
  const most = resume.quiz?.given.length ?? 0;
  for (let lesson = resume.inLesson.size; lesson >= 0; lesson--)
    if (text(lesson, most).length <= limit) return text(lesson, most);
  for (let quiz = most; quiz >= 0; quiz--) if (text(0, quiz).length <= limit) return text(0, quiz);
  return '';
}

function writeQuiz(quiz: QuizResume, items: readonly Item[], most: number): string {
  const given = quiz.given.map((each, i) => {
    if (each === null || i >= most) return '';
    const { latency_s, after_s } = each;
    return [writeGiven(items[i]!, each.given), n(latency_s), n(after_s)].join(WITHIN);
  });
  while (given.at(-1) === '') given.pop();
  return [n(quiz.seed), n(quiz.at), n(quiz.began_ms), ...given].join(ENTRY);
}

/** Null where the text is none of ours, damaged, or of another make of the lesson. */
export function readResume(text: string, make: string, items: readonly Item[]): Resume | null {
  const [head, at, done, tasks, attempts, bestRight, lesson, quiz, ...more] = text.split(FIELD);
  if (head !== VERSION + make || quiz === undefined || more.length > 0) return null;
  const numbers = [at, attempts, bestRight].map((each) => readN(each ?? ''));
  const [steps, tasksDone] = [readBits(done ?? ''), readBits(tasks ?? '')];
  if (numbers.includes(null) || steps === null || tasksDone === null) return null;
  const inLesson = new Map<number, Given>();
  for (const entry of lesson === '' ? [] : lesson!.split(ENTRY)) {
    const [number, ...rest] = entry.split(WITHIN);
    const i = readN(number ?? '');
    const item = i === null ? undefined : items[i];
    const given = item === undefined ? null : readGiven(item, rest);
    if (i !== null && given !== null) inLesson.set(i, given);
  }
  return {
    at: numbers[0]!,
    done: steps,
    tasks: tasksDone,
    attempts: numbers[1]!,
    bestRight: numbers[2]!,
    inLesson,
    quiz: readQuiz(quiz, items),
  };
}

function readQuiz(text: string, items: readonly Item[]): QuizResume | null {
  const [seed, at, began, ...entries] = text.split(ENTRY);
  const [seedRead, atRead, beganRead] = [seed, at, began].map((each) => readN(each ?? ''));
  if (seedRead == null || atRead == null || beganRead == null) return null;
  const given = items.map((item, i): TimedGiven | null => {
    const [answer, certainty, latency, after] = (entries[i] ?? '').split(WITHIN);
    const read = readGiven(item, [answer ?? '', certainty ?? '']);
    return read === null
      ? null
      : { given: read, latency_s: readN(latency ?? '') ?? 0, after_s: readN(after ?? '') ?? 0 };
  });
  return { seed: seedRead, at: atRead, began_ms: beganRead, given };
}

const n = (value: number): string => Math.max(0, Math.round(value)).toString(36);
const readN = (text: string): number | null => (/^[0-9a-z]{1,11}$/.test(text) ? parseInt(text, 36) : null);

/** Numbers as one bit each, five to a letter. */
function bits(numbers: readonly number[]): string {
  const has = new Set(numbers);
  const letters = Math.ceil((Math.max(-1, ...numbers) + 1) / 5);
  return Array.from({ length: letters }, (_, i) =>
    [0, 1, 2, 3, 4].reduce((sum, k) => sum + (has.has(5 * i + k) ? 1 << k : 0), 0).toString(32),
  ).join('');
}

function readBits(text: string): readonly number[] | null {
  if (!/^[0-9a-v]*$/.test(text)) return null;
  return [...text].flatMap((letter, i) =>
    [0, 1, 2, 3, 4].flatMap((k) => ((parseInt(letter, 32) >> k) & 1 ? [5 * i + k] : [])),
  );
}

/** Ids that an answer is made of, the same in whatever order they are shown. */
function idsOf(item: Item): readonly string[] {
  switch (item.kind) {
    case 'number':
      return [];
    case 'direction':
      return DIRECTION_SETS[item.set];
    case 'pick-part':
      return [...item.among].sort();
    case 'order':
      return item.cards.map((card) => card.id).sort();
    default:
      return item.options.map((option) => option.id).sort();
  }
}

const leftOf = (item: Item): readonly string[] =>
  item.kind === 'match' ? item.left.map((each) => each.id).sort() : [];

function writeGiven(item: Item, { answer, certainty }: Given): string {
  return [answer === null ? NONE : writeAnswer(item, answer), certainty].join(WITHIN);
}

function writeAnswer(item: Item, answer: Answer): string {
  const ids = idsOf(item);
  const letter = (id: string): string => LETTERS[ids.indexOf(id)] ?? NONE;
  switch (answer.type) {
    case 'choice':
    case 'order':
      return `.${answer.ids.map(letter).join('')}`;
    case 'match':
      return `.${leftOf(item)
        .map((left) => letter(answer.pairs[left] ?? ''))
        .join('')}`;
    case 'number':
      return `.${Number(answer.si.toPrecision(FIGURES))}`;
    case 'part':
      // A part beside the list is said by its name.
      return ids.includes(answer.partId) ? `.${letter(answer.partId)}` : `=${plain(answer.partId)}`;
  }
}

function readGiven(item: Item, [text, certainty]: readonly string[]): Given | null {
  if (text === undefined || !/^[123]$/.test(certainty ?? '')) return null;
  const sure = Number(certainty) as Certainty;
  if (text === NONE) return { answer: null, certainty: sure };
  const answer = readAnswer(item, text);
  return answer === null ? null : { answer, certainty: sure };
}

function readAnswer(item: Item, text: string): Answer | null {
  const ids = idsOf(item);
  const rest = text.slice(1);
  const id = (letter: string): string | undefined => ids[LETTERS.indexOf(letter)];
  const all = [...rest].map((letter) => (LETTERS.includes(letter) ? id(letter) : undefined));
  const whole = all.every((each) => each !== undefined);
  if (item.kind === 'pick-part' && text.startsWith('=')) return namedPart(rest);
  if (!text.startsWith('.')) return null;
  switch (item.kind) {
    case 'number': {
      const si = Number(rest);
      return rest !== '' && Number.isFinite(si) ? { type: 'number', si } : null;
    }
    case 'pick-part':
      return all.length === 1 && whole ? { type: 'part', partId: all[0]! } : null;
    case 'order':
      return whole ? { type: 'order', ids: all as string[] } : null;
    case 'match': {
      const left = leftOf(item);
      if (rest.length !== left.length) return null;
      const pairs = left.flatMap((each, i) => (all[i] === undefined ? [] : [[each, all[i]] as const]));
      return { type: 'match', pairs: Object.fromEntries(pairs) };
    }
    default:
      return whole ? { type: 'choice', ids: all as string[] } : null;
  }
}

/** Without the marks that divide this text. */
const plain = (text: string): string =>
  encodeURIComponent(text).replace(/[!*~]/g, (mark) => `%${mark.charCodeAt(0).toString(16)}`);

function namedPart(text: string): Answer | null {
  try {
    return { type: 'part', partId: decodeURIComponent(text) };
  } catch {
    return null;
  }
}
