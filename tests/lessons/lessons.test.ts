import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { buildGraph, planOnGraph } from '../../src/core/assembly';
import {
  checkCourse,
  type Known,
  newProgress,
  parseGlossary,
  parseLesson,
  play,
  readProgress,
  resumeAt,
  shareDone,
} from '../../src/core/lessons';
import {
  markAnswer,
  orderNeeds,
  parseBank,
  resolveItem,
  rightAnswer,
  type Subject,
  valuesOf,
} from '../../src/core/quiz';
import { lessonLanguages, readCourse } from '../../src/edge/content/lesson-files';
import { printFault } from '../../src/edge/cli/print-faults';
import { PLACES } from '../../src/store/places';
import english from '../../src/words/en';
import { fit, machine, masses, solids } from '../models/alder-one';
import { fuzzCourse } from './fuzz';

const folder = resolve(import.meta.dirname, '../../lessons');
const graph = buildGraph(machine, solids, masses);
const subject: Subject = { machine, solids, masses, fit, graph, teardown: planOnGraph(machine, graph) };
const known: Known = {
  subject,
  cautions: new Set(
    Object.keys(english).flatMap((key) => (key.startsWith('caution.') ? [key.slice('caution.'.length)] : [])),
  ),
  places: new Set(PLACES),
  faults: new Set(
    Object.keys(english).flatMap((key) => /^fault-bench\.fault\.([a-z0-9-]+)$/.exec(key)?.[1] ?? []),
  ),
};
const file = (text: string, name = 'x.yaml') => ({ name, text });
const LESSON = 'schema_version: 1\nid: a\nminutes: 5\nsteps:\n  - id: one\n';
const TEXTS =
  'schema_version: 1\nlanguage: en\ntitle: T\nsummary: S\nsteps:\n  one:\n    title: One\n    text: Words.\n';
const lines = (result: { ok: boolean; faults?: readonly Parameters<typeof printFault>[0][] }) =>
  (result.faults ?? []).map(printFault);

describe('the course', () => {
  it.each(lessonLanguages(folder))('has no faults in %s, and every question can be asked', (language) => {
    const course = readCourse(folder, language, { heldBack: true });
    expect(lines(course)).toEqual([]);
    if (!course.ok) return;
    const banks = course.value.banks.map((bank) => ({
      ...bank,
      items: bank.items.map((item) => {
        if (item.entry.kind !== 'order' || item.entry.legal !== 'planner') return item;
        const cards = item.entry.cards.flatMap((card) =>
          typeof card === 'object' && 'part' in card ? [{ id: card.id, unit: card.part }] : [],
        );
        const needs = orderNeeds(subject, cards);
        return needs === null ? item : { ...item, needs };
      }),
    }));
    expect(checkCourse({ ...course.value, banks }, known).map(printFault)).toEqual([]);
    for (const bank of banks)
      for (const said of bank.items) {
        const item = resolveItem(bank.topic, said, subject);
        expect(item.ok, said.entry.id).toBe(true);
        if (item.ok) expect(markAnswer(item.value, rightAnswer(item.value)).right, said.entry.id).toBe(true);
      }
  });

  it('names values that are numbers or words of the model', () => {
    const values = valuesOf(subject);
    expect(values.get('machine.drum_width_m')).toEqual({ si: machine.drumWidth_m, quantity: 'length' });
    expect(values.get('fastener.hub-bolts.thread')).toEqual({ text: 'M24 x 3' });
    expect(values.get('unit.hub-bolts.count')).toEqual({ si: 16, quantity: 'count' });
    for (const [name, value] of values) if ('si' in value) expect(value.si, name).not.toBeNaN();
  });
});

describe('faults stand at their line', () => {
  it('of a lesson: unknown key, unknown step, missing text, bad link', () => {
    expect(lines(parseLesson('a', file(`${LESSON}    colour: red\n`), file(TEXTS)))[0]).toMatch(
      /^x\.yaml:5 /,
    );
    expect(lines(parseLesson('b', file(LESSON), file(TEXTS)))[0]).toMatch(/^x\.yaml:2 id: .*b/);
    expect(lines(parseLesson('a', file(`${LESSON}  - id: two\n`), file(TEXTS)))[0]).toMatch(
      /^x\.yaml:6 steps\[1\]\.id/,
    );
    expect(
      lines(parseLesson('a', file(LESSON), file(TEXTS.replace('Words.', '"[x](http:y)"'), 'x.en.yaml')))[0],
    ).toMatch(/^x\.en\.yaml:8 steps\.one\.text: .*part:/);
  });

  it('of references: parts, values, terms, steps, items, cautions', () => {
    const lesson = parseLesson(
      'a',
      file(
        `${LESSON}    stage: { highlight: [nothing] }\n    cautions: [none]\n    check: no-item\n    task: { type: find, part: hubb }\n`,
      ),
      file(`${TEXTS.replace('Words.', '"[a](term:t) {{b.c}} [d](step:e/f) [g](go:h)"')}    task: Do.\n`),
    );
    if (!lesson.ok) throw new Error(lines(lesson).join('\n'));
    const found = checkCourse({ lessons: [lesson.value], banks: [], glossary: null }, known).map(printFault);
    for (const pattern of [
      /:6 .*nothing/,
      /:7 .*none/,
      /:8 .*no-item/,
      /:9 .*hubb/,
      /:8 .*b\.c/,
      /found "t"/,
      /e\/f/,
      /found "h"/,
    ])
      expect(
        found.some((line) => pattern.test(line)),
        `${String(pattern)}\n${found.join('\n')}`,
      ).toBe(true);
  });

  it('of a bank: answers that are no options, doubles, circles, texts too many and too few', () => {
    const bank = (items: string, texts: string) =>
      lines(
        parseBank(
          'a',
          file(`schema_version: 1\nitems:\n${items}`, 'b.yaml'),
          file(`schema_version: 1\nlanguage: en\nitems:\n${texts}`, 'b.en.yaml'),
        ),
      );
    const one = '  - { kind: choose-one, id: q, difficulty: 1, source: s, options: [a, b], right: c }\n';
    expect(bank(one, '  q: { prompt: P, explain: E, options: { a: A } }\n')).toEqual([
      expect.stringMatching(/^b\.yaml:3 items\[0\]\.right: .*found "c"/),
      expect.stringMatching(/^b\.en\.yaml:4 items\.q: .*found "b"/),
    ]);
    expect(
      bank(`${one}${one}`.replaceAll('right: c', 'right: a'), '  r: { prompt: P, explain: E }\n').length,
    ).toBe(4);
    const order =
      '  - { kind: order, id: q, difficulty: 1, source: s, cards: [a, b, c], legal: { before: [[a, b], [b, a]] } }\n';
    expect(bank(order, '  q: { prompt: P, explain: E, options: { a: A, b: B, c: C } }\n')).toEqual([
      expect.stringMatching(/^b\.yaml:3 items\[0\]\.legal/),
    ]);
  });

  it('of a glossary', () => {
    const bad = parseGlossary(
      file('schema_version: 1\nterms: [{ id: a }, { id: a }]\n'),
      file('schema_version: 1\nlanguage: en\nterms: { a: { name: A, text: T }, b: { name: B, text: T } }\n'),
    );
    expect(lines(bad)).toHaveLength(2);
  });
});

describe('whatever is done to a file', () => {
  it('ends in clear faults or in a course', () => {
    const { faulty, valid } = fuzzCourse(1000, 20, known);
    expect(faulty + valid).toBe(1000);
    // Most changes hurt, some only change a word.
    expect(faulty).toBeGreaterThan(300);
    expect(valid).toBeGreaterThan(50);
  });
});

describe('the player', () => {
  const lesson = parseLesson(
    'a',
    file('schema_version: 1\nid: a\nminutes: 5\nsteps: [{ id: one }, { id: two }, { id: three }]\n'),
    file(
      'schema_version: 1\nlanguage: en\ntitle: T\nsummary: S\nsteps:\n  one: { title: A, text: A }\n  two: { title: B, text: B }\n  three: { title: C, text: C }\n',
    ),
  );
  if (!lesson.ok) throw new Error('lesson');
  const it3 = lesson.value.lesson;
  const ids = it3.steps.map((step) => step.id);

  it('goes on, back, remembers what is done and where it was', () => {
    let now = play(it3, newProgress('a', 1), { type: 'open', step: null }, 1);
    expect(now.at).toBe('one');
    now = play(it3, now, { type: 'previous' }, 1);
    expect(now.at).toBe('one');
    now = play(it3, now, { type: 'next' }, 2);
    now = play(it3, now, { type: 'task-done', step: 'two' }, 2);
    expect([now.at, now.done, now.tasks, now.day]).toEqual(['two', ['one'], ['two'], 2]);
    expect(shareDone(ids, now)).toBeCloseTo(1 / 3);
    now = play(it3, now, { type: 'next' }, 2);
    now = play(it3, now, { type: 'next' }, 3);
    expect([now.at, shareDone(ids, now)]).toEqual(['three', 1]);
    expect(readProgress(JSON.stringify(now))).toEqual(now);
    expect(play(it3, now, { type: 'open', step: 'no' }, 3).at).toBe('three');
    expect(play(it3, now, { type: 'restart' }, 4)).toMatchObject({ at: 'one', done: [], tasks: [] });
  });

  it('takes up at the first step not done where the open one is gone, and leaves unknown steps out', () => {
    const old = { lesson: 'a', done: ['one', 'gone'], tasks: ['gone'], at: 'gone', day: 1 };
    expect(resumeAt(it3, old)).toBe('two');
    expect(play(it3, old, { type: 'open', step: null }, 2)).toMatchObject({ done: ['one'], tasks: [] });
    for (const text of ['', '1', '{}', '{"lesson":1}']) expect(readProgress(text)).toBeNull();
  });
});
