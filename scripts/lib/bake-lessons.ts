/** Checks the course against a machine and writes what the app reads: public/baked/lessons/<language>/*.json. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { kindSolids, type MachineDocument } from '../../src/core/document';
import type { BlockingGraph } from '../../src/core/assembly';
import { type Fault } from '../../src/core/kernel';
import { checkCourse, outlineOf, type Topic } from '../../src/core/lessons';
import { type Bank, type BankItem, orderNeeds, type Subject } from '../../src/core/quiz';
import { lessonLanguages, readCourse } from '../../src/edge/content/lesson-files';
import { PLACES } from '../../src/store/places';
import english from '../../src/words/en';

/** The machine that the course is about. */
export const LESSON_MACHINE = 'alder-one';

export function subjectOf(document: MachineDocument, graph: BlockingGraph | null): Subject {
  const { machine, masses, teardown, fit } = document;
  const solids = kindSolids(document);
  return { machine, solids, masses, teardown, fit, graph };
}

const keysUnder = (stem: string, end = ''): ReadonlySet<string> =>
  new Set(
    Object.keys(english)
      .filter((key) => key.startsWith(stem) && key.endsWith(end))
      .map((key) => key.slice(stem.length, key.length - end.length)),
  );

/** All faults, none when everything was written. */
export function bakeLessons(folder: string, out: string, subject: Subject): readonly Fault[] {
  const faults: Fault[] = [];
  const known = {
    subject,
    cautions: keysUnder('caution.'),
    places: new Set<string>(PLACES),
    faults: keysUnder('fault-bench.fault.'),
  };
  rmSync(out, { recursive: true, force: true });
  for (const language of lessonLanguages(folder)) {
    const course = readCourse(folder, language, { heldBack: true });
    if (!course.ok) {
      faults.push(...course.faults);
      continue;
    }
    const banks = course.value.banks.map((bank) => withOrders(bank, subject));
    const wrong = checkCourse({ ...course.value, banks }, known);
    if (wrong.length > 0) {
      faults.push(...wrong);
      continue;
    }
    const to = join(out, language);
    mkdirSync(to, { recursive: true });
    const write = (name: string, data: unknown): void =>
      writeFileSync(join(to, `${name}.json`), JSON.stringify(data));
    const topics = course.value.lessons.map(({ lesson }): Topic => ({
      lesson,
      items: banks.filter((bank) => bank.topic === lesson.id && !bank.heldBack).flatMap((bank) => bank.items),
    }));
    write('course', outlineOf(language, topics));
    for (const topic of topics) write(`topic-${topic.lesson.id}`, topic);
    write('glossary', { language, terms: course.value.glossary?.terms ?? [] });
  }
  return faults;
}

/** The planner's word on orders, worked out once here. */
function withOrders(bank: Bank, subject: Subject): Bank {
  const items = bank.items.map((item): BankItem => {
    const { entry } = item;
    if (entry.kind !== 'order' || entry.legal !== 'planner') return item;
    const cards = entry.cards.flatMap((card) =>
      typeof card === 'object' && 'part' in card ? [{ id: card.id, unit: card.part }] : [],
    );
    const needs = orderNeeds(subject, cards);
    return needs === null ? item : { ...item, needs };
  });
  return { ...bank, items };
}
