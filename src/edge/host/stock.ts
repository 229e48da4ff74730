/**
 * What a session's questions are drawn from: banks held back for class, everybody's practice banks, and generators.
 * Held-back banks are read here alone; they are not in the built app.
 */
import { readCourse } from '../content/lesson-files';
import type { Fault } from '../../core/kernel';
import {
  drawSheet,
  type ClassQuestion,
  type HostStock,
  type PoolItem,
  type SheetWish,
} from '../../core/classroom';
import {
  type Bank,
  type BankItem,
  generateItems,
  orderNeeds,
  resolveItem,
  type Subject,
} from '../../core/quiz';

export interface Stock {
  readonly about: HostStock;
  draw(wish: SheetWish, seed: number): readonly ClassQuestion[];
}

/** Generated for each question wanted, so that wishes for a kind or difficulty can be met. */
const MADE_FOR_ONE = 4;

/**
 * @param lessons folder of lessons and banks
 * @param onFaults told when the course cannot be read; questions are generated alone then
 */
export function openStock(
  lessons: string,
  language: string,
  subject: Subject | null,
  onFaults: (faults: readonly Fault[]) => void,
): Stock {
  const course = readCourse(lessons, language, { heldBack: true });
  if (!course.ok) onFaults(course.faults);
  const pool: readonly PoolItem[] =
    course.ok && subject !== null ? course.value.banks.flatMap((bank) => poolOf(bank, subject)) : [];
  const topics = course.ok
    ? course.value.lessons.map(({ lesson }) => {
        const of = (from: PoolItem['from']): number =>
          pool.filter((each) => each.topic === lesson.id && each.from === from).length;
        return { id: lesson.id, title: lesson.title, class: of('class-bank'), practice: of('practice-bank') };
      })
    : [];
  return {
    about: { topics: topics.filter((each) => each.class + each.practice > 0), generates: subject !== null },
    draw(wish, seed) {
      const count = wish.generated > 0 ? MADE_FOR_ONE * wish.count : 0;
      const made = subject === null ? [] : generateItems(subject, count, seed);
      const generated = made.map((item): PoolItem => ({ item, from: 'generated', topic: null }));
      return drawSheet(pool, generated, wish, seed);
    },
  };
}

/** Questions of a bank that this machine can be asked. */
function poolOf(bank: Bank, subject: Subject): readonly PoolItem[] {
  return bank.items.flatMap((said): PoolItem[] => {
    const item = resolveItem(bank.topic, withOrder(said, subject), subject);
    const from = bank.heldBack ? 'class-bank' : 'practice-bank';
    return item.ok ? [{ item: item.value, from, topic: bank.topic }] : [];
  });
}

/** What the planner says of an order of units. */
function withOrder(said: BankItem, subject: Subject): BankItem {
  const { entry } = said;
  if (entry.kind !== 'order' || entry.legal !== 'planner') return said;
  const cards = entry.cards.flatMap((card) =>
    typeof card === 'object' && 'part' in card ? [{ id: card.id, unit: card.part }] : [],
  );
  const needs = orderNeeds(subject, cards);
  return needs === null ? said : { ...said, needs };
}
