/**
 * When to ask an item again: boxes with growing gaps. Right moves it one box up, wrong back to the first, as in
 * S. Leitner, So lernt man lernen (1972; from memory). A right guess stays where it is: it was not known. Days are
 * whole numbers given from outside.
 */
import type { Certainty } from './certainty';

/** Days until an item of each box is due again; each gap about double the one before (common practice, no source). */
export const BOX_GAPS_days = [1, 2, 4, 8, 16, 32] as const;
export const LAST_BOX = BOX_GAPS_days.length;

export interface ReviewCard {
  readonly item: string;
  /** 1 to LAST_BOX. */
  readonly box: number;
  /** Day number from which on it is due. */
  readonly due: number;
  /** Day number of the last answer. */
  readonly seen: number;
  readonly right: number;
  readonly wrong: number;
  /** Its last answer was wrong though the person was sure. */
  readonly sureAndWrong: boolean;
}

/** The card after an answer; `before` undefined: the item's first. */
export function reviewed(
  item: string,
  before: ReviewCard | undefined,
  right: boolean,
  certainty: Certainty,
  day: number,
): ReviewCard {
  const old = before?.box ?? 0;
  const box = !right ? 1 : certainty === 1 ? Math.max(1, old) : Math.min(LAST_BOX, old + 1);
  return {
    item,
    box,
    due: day + BOX_GAPS_days[box - 1]!,
    seen: day,
    right: (before?.right ?? 0) + (right ? 1 : 0),
    wrong: (before?.wrong ?? 0) + (right ? 0 : 1),
    sureAndWrong: !right && certainty === 3,
  };
}

/** Cards due on a day: sure and wrong first, then low boxes, then the longest overdue. */
export function dueOn(cards: readonly ReviewCard[], day: number): readonly ReviewCard[] {
  return cards
    .filter((card) => card.due <= day)
    .sort(
      (a, b) =>
        Number(b.sureAndWrong) - Number(a.sureAndWrong) ||
        a.box - b.box ||
        a.due - b.due ||
        (a.item < b.item ? -1 : 1),
    );
}

/** How many cards fall due on each of the next `days` days, today with all that is overdue first. */
export function plan(cards: readonly ReviewCard[], day: number, days: number): readonly number[] {
  return Array.from(
    { length: days },
    (_, i) => cards.filter((card) => (i === 0 ? card.due <= day : card.due === day + i)).length,
  );
}

/** Kept text back into a card; null when it is none. */
export function readReviewCard(text: string): ReviewCard | null {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return null;
  }
  if (typeof data !== 'object' || data === null) return null;
  const card = data as Record<string, unknown>;
  const whole = (key: string, least: number): boolean =>
    Number.isInteger(card[key]) && (card[key] as number) >= least;
  const fine =
    typeof card['item'] === 'string' &&
    whole('box', 1) &&
    (card['box'] as number) <= LAST_BOX &&
    Number.isInteger(card['due']) &&
    Number.isInteger(card['seen']) &&
    whole('right', 0) &&
    whole('wrong', 0) &&
    typeof card['sureAndWrong'] === 'boolean';
  return fine ? (data as ReviewCard) : null;
}
