/**
 * Mutations of lesson and bank files: whatever is done to a file, reading it ends in faults or in a course. They start
 * from a small course with an item of each kind and a task of each sort, so that thousands of them stay quick.
 */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { seededRandom, type Random } from '../../src/core/kernel';
import { checkCourse, type Known, parseCourse, parseGlossary, parseLesson } from '../../src/core/lessons';
import type { SourceFile } from '../../src/core/machine';
import { parseBank, refsOf } from '../../src/core/quiz';

const folder = resolve(import.meta.dirname, 'small-course');
const NAMES = [
  'course.yaml',
  'two-directions/lesson.yaml',
  'two-directions/lesson.en.yaml',
  'two-directions/bank.yaml',
  'two-directions/bank.en.yaml',
  'glossary/glossary.yaml',
  'glossary/glossary.en.yaml',
];
const original = new Map(NAMES.map((name) => [name, readFileSync(join(folder, name), 'utf8')]));

const PIECES = [
  '{{', '}}', '<script>alert(1)</script>', '<img src=x onerror=alert(1)>', '[x](javascript:alert(1))', '- ', ': ', '&a ',
  '*a', '!!js/function "x"', '!!binary "AA"', '\t', '\n', '"', "'", '|', '>', '#', 'null', '-1', '1e400', '.nan', '__proto__: {}',
  'constructor: 1', '[', ']', '{', '}', '\u0000', '\ud800', 'hub', 'no-such-part', '{{no.such}}', '? ', '<<: *a', '%YAML 9',
]; // prettier-ignore

/** One change up to `most`: cut, doubled, swapped, or strange pieces put in; none at 0. */
export function mutate(text: string, random: Random, most: number): string {
  let out = text;
  for (let n = most === 0 ? 0 : 1 + random.index(most); n > 0; n--) {
    const at = random.index(out.length + 1);
    const to = Math.min(out.length, at + random.index(40));
    switch (random.index(6)) {
      case 0:
        out = out.slice(0, at) + out.slice(to);
        break;
      case 1:
        out = out.slice(0, to) + out.slice(at, to) + out.slice(to);
        break;
      case 2:
        out = out.slice(0, at) + PIECES[random.index(PIECES.length)]! + out.slice(at);
        break;
      case 3:
        out = out.slice(0, at) + PIECES[random.index(PIECES.length)]! + out.slice(to);
        break;
      case 4: {
        const lines = out.split('\n');
        const line = random.index(lines.length);
        lines.splice(random.index(lines.length), 0, ...lines.splice(line, 1));
        out = lines.join('\n');
        break;
      }
      default:
        out = out.slice(0, at) + String.fromCharCode(random.index(0x2fff)) + out.slice(at + 1);
    }
  }
  return out;
}

export interface FuzzCount {
  readonly faulty: number;
  readonly valid: number;
}

const READERS = {
  course: { files: NAMES.slice(0, 1), read: ([a]: SourceFile[]) => parseCourse(a!) },
  lesson: {
    files: NAMES.slice(1, 3),
    read: ([a, b]: SourceFile[]) => parseLesson('two-directions', a!, b!),
  },
  bank: { files: NAMES.slice(3, 5), read: ([a, b]: SourceFile[]) => parseBank('two-directions', a!, b!) },
  glossary: { files: NAMES.slice(5, 7), read: ([a, b]: SourceFile[]) => parseGlossary(a!, b!) },
} as const;
type Reads = { [K in keyof typeof READERS]: ReturnType<(typeof READERS)[K]['read']> };

function readAll(text: (name: string) => string): Reads {
  const files = (names: readonly string[]): SourceFile[] => names.map((name) => ({ name, text: text(name) }));
  return Object.fromEntries(
    Object.entries(READERS).map(([key, { files: names, read }]) => [key, read(files(names))]),
  ) as Reads;
}

/** Reads `count` mutated courses; throws when one neither reads nor says clearly what is wrong. */
export function fuzzCourse(count: number, seed: number, known: Known, most = 3): FuzzCount {
  const random = seededRandom(seed);
  const sound = readAll((name) => original.get(name)!);
  const keys = Object.keys(READERS) as (keyof typeof READERS)[];
  let valid = 0;
  for (let i = 0; i < count; i++) {
    // Only what belongs to the changed file is read again.
    const key = keys[random.index(keys.length)]!;
    const names = READERS[key].files;
    const changed = names[random.index(names.length)]!;
    const files = names.map((name) => ({
      name,
      text: name === changed ? mutate(original.get(name)!, random, most) : original.get(name)!,
    }));
    const reads: Reads = { ...sound, [key]: READERS[key].read(files) };
    const faults = Object.values(reads).flatMap((read) => (read.ok ? [] : read.faults));
    const { lesson, bank, glossary } = reads;
    if (lesson.ok && bank.ok && glossary.ok) {
      faults.push(
        ...checkCourse({ lessons: [lesson.value], banks: [bank.value], glossary: glossary.value }, known),
      );
      for (const step of lesson.value.lesson.steps) refsOf(step.text);
    }
    if (faults.length === 0) valid++;
    for (const fault of faults) {
      const clear = fault.expected.key !== '' && typeof fault.found === 'string' && fault.path !== '';
      if (!clear || fault.file === undefined)
        throw new Error(`mutation ${i} of seed ${seed}: ${JSON.stringify(fault)}`);
    }
  }
  return { faulty: count - valid, valid };
}
