/** What the course as a whole has to hold: size, kinds of questions, reasons, cautions before work, no doubles. */
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Content, ITEM_KINDS, type ItemKind, PLOTS, refsOf, type RichText } from '../../src/core/quiz';
import { readCourse } from '../../src/edge/content/lesson-files';
import english from '../../src/words/en';

const read = readCourse(resolve(import.meta.dirname, '../../lessons'), 'en');
if (!read.ok) throw new Error('the course has faults: lessons.test.ts names them');
const { lessons, banks, order } = read.value;
const terms = read.value.glossary?.terms ?? [];
const items = banks.flatMap((bank) => bank.items.map((item) => ({ topic: bank.topic, ...item })));
const kindsOf = (topic: string): ReadonlySet<ItemKind> =>
  new Set(items.filter((item) => item.topic === topic).map(({ entry }) => entry.kind));
const rich = (content: Content): RichText => ('rich' in content ? content.rich : []);
const plain = (content: Content): string => JSON.stringify(content);
const optionIds = (list: readonly (string | { readonly id: string })[]): string[] =>
  list.map((option) => (typeof option === 'string' ? option : option.id));
const topics = lessons.map(({ lesson }) => lesson.id);

describe('the course', () => {
  it('has sixteen lessons of nine to eleven short steps, and a glossary of more than eighty words', () => {
    expect(topics).toEqual(order);
    expect(order).toHaveLength(16);
    for (const { lesson } of lessons) {
      expect(lesson.steps.length, lesson.id).toBeGreaterThanOrEqual(9);
      expect(lesson.steps.length, lesson.id).toBeLessThanOrEqual(11);
      expect(lesson.minutes, lesson.id).toBeGreaterThanOrEqual(5);
      expect(lesson.minutes, lesson.id).toBeLessThanOrEqual(10);
    }
    expect(terms.length).toBeGreaterThanOrEqual(80);
  });

  it('takes nothing off before safe start without the lock-out, and nothing at all without a caution', () => {
    for (const { lesson } of lessons)
      for (const step of lesson.steps) {
        if (step.task?.type !== 'take-off' || step.task.unit === 'coupling-shaft') continue;
        const early = order.indexOf(lesson.id) < order.indexOf('safe-start');
        expect(step.cautions.length, `${lesson.id}/${step.id}`).toBeGreaterThan(0);
        if (early) expect(step.cautions, `${lesson.id}/${step.id}`).toContain('lock-out');
      }
  });

  it('does not ask for lessons that come later', () => {
    for (const { lesson } of lessons)
      for (const needed of lesson.requires)
        expect(order.indexOf(needed), `${lesson.id} after ${needed}`).toBeLessThan(order.indexOf(lesson.id));
  });

  it.each(topics)('%s: has something to do, checks most steps, and says its numbers by name', (topic) => {
    const { lesson } = lessons.find((each) => each.lesson.id === topic)!;
    const { steps } = lesson;
    expect(steps.filter(({ task }) => task !== null).length).toBeGreaterThan(0);
    expect(steps.filter(({ task, check }) => task !== null || check !== null).length).toBeGreaterThan(
      steps.length / 2,
    );
    expect(
      steps.flatMap(({ text, after }) => refsOf([...text, ...(after ?? [])]).values).length,
    ).toBeGreaterThan(0);
    // a number with a unit of length, force or pressure typed into a text would not follow the reader's units
    const typed = /\d\s?(mm|cm|kg|kN|bar|MPa|km\/h|°C|litres?|in|lb|psi)\b/;
    for (const step of steps)
      expect(typed.exec(JSON.stringify([step.text, step.after ?? []])), step.id).toBeNull();
  });
});

describe('the banks together', () => {
  it('hold more than 120 questions, every kind many times', () => {
    expect(items.length).toBeGreaterThanOrEqual(120);
    for (const kind of ITEM_KINDS)
      expect(items.filter(({ entry }) => entry.kind === kind).length, kind).toBeGreaterThanOrEqual(8);
  });

  it.each(topics)('%s: eight questions or more, of five kinds or more, about its own steps', (topic) => {
    const own = items.filter((item) => item.topic === topic);
    expect(own.length).toBeGreaterThanOrEqual(8);
    expect(kindsOf(topic).size).toBeGreaterThanOrEqual(5);
    const about = own.filter(({ entry }) => entry.about?.step?.startsWith(`${topic}/`) === true);
    expect(about.length).toBeGreaterThan(0.8 * own.length);
  });

  it('ask nothing twice', () => {
    const asked = new Map<string, string>();
    for (const item of items) {
      const { kind } = item.entry;
      // 'what fits all that was found' is told apart by what was found
      const key = plain(item.prompt) + (kind === 'find-fault' ? JSON.stringify(item.shown) : '');
      const key2 = kind === 'match' ? key + JSON.stringify(item.right) : key;
      expect(asked.get(key2), item.entry.id).toBeUndefined();
      asked.set(key2, item.entry.id);
    }
  });

  it('say of every wrong option what is mistaken about it', () => {
    const lacking: string[] = [];
    for (const { entry, why } of items) {
      if (entry.kind === 'choose-one' || entry.kind === 'read-picture' || entry.kind === 'find-fault')
        for (const id of optionIds(entry.options))
          if (id !== entry.right && why[id] === undefined) lacking.push(`${entry.id} ${id}`);
      if (entry.kind === 'choose-several')
        for (const id of optionIds(entry.options))
          if (!entry.right.includes(id) && why[id] === undefined) lacking.push(`${entry.id} ${id}`);
      if (entry.kind === 'pick-part')
        for (const ref of entry.among)
          if (!entry.accept.includes(ref) && why[ref] === undefined) lacking.push(`${entry.id} ${ref}`);
    }
    expect(lacking).toEqual([]);
  });

  it('show every plot that there is, and explain every answer', () => {
    const shown = items.flatMap(({ entry }) => (entry.picture?.type === 'plot' ? [entry.picture.plot] : []));
    for (const plot of PLOTS) expect(shown, plot).toContain(plot);
    for (const { entry, explain } of items) expect(rich(explain).length, entry.id).toBeGreaterThan(0);
  });
});

describe('the glossary', () => {
  it('has one entry a word, in one of its names', () => {
    const names = terms.flatMap(({ name, also }) => [name, ...also]).map((n) => n.toLowerCase());
    expect(names.filter((name, i) => names.indexOf(name) < i)).toEqual([]);
  });

  it('is linked from the lessons, and most of its words lead to parts or other words', () => {
    const linked = new Set(
      lessons.flatMap(({ lesson }) =>
        lesson.steps.flatMap(({ text, after }) =>
          [...refsOf(text).links, ...(after === null ? [] : refsOf(after).links)].flatMap((link) =>
            link.to === 'term' ? [link.id] : [],
          ),
        ),
      ),
    );
    expect(linked.size).toBeGreaterThan(40);
    const led = terms.filter(({ parts, see }) => parts.length + see.length > 0);
    expect(led.length).toBeGreaterThan(0.9 * terms.length);
  });

  it('knows every caution that a step names', () => {
    for (const { lesson } of lessons)
      for (const step of lesson.steps)
        for (const caution of step.cautions) expect(english[`caution.${caution}`], caution).toBeDefined();
  });
});
