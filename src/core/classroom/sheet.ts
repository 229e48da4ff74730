/** Drawing the questions of a session from what the host holds. */
import { drawItems, type Item, ITEM_KINDS, type ItemKind } from '../quiz';
import type { ClassQuestion, QuestionOrigin } from './state';

export interface SheetWish {
  /** Topics of the banks; empty: all. */
  readonly topics: readonly string[];
  /** Which banks: held back for class, everybody's practice, or both. */
  readonly banks: 'class' | 'practice' | 'both';
  /** Empty: all. */
  readonly kinds: readonly ItemKind[];
  /** Empty: all. */
  readonly difficulties: readonly number[];
  /** Share of generated questions, 0 to 1. */
  readonly generated: number;
  readonly count: number;
}

export interface PoolItem {
  readonly item: Item;
  readonly from: QuestionOrigin;
  readonly topic: string | null;
}

/**
 * Draws a sheet, the same from the same pools and seed. Where one sort runs dry the other fills up, as far as the wish
 * allows it at all; shorter than asked for when both do.
 */
export function drawSheet(
  bank: readonly PoolItem[],
  generated: readonly PoolItem[],
  wish: SheetWish,
  seed: number,
): readonly ClassQuestion[] {
  const kinds = wish.kinds.length === 0 ? ITEM_KINDS : wish.kinds;
  const fits = ({ item }: PoolItem): boolean =>
    kinds.includes(item.kind) &&
    (wish.difficulties.length === 0 || wish.difficulties.includes(item.difficulty));
  const banks = bank.filter(
    (each) =>
      fits(each) &&
      (wish.banks === 'both' || each.from === `${wish.banks}-bank`) &&
      (wish.topics.length === 0 || (each.topic !== null && wish.topics.includes(each.topic))),
  );
  const made = generated.filter(fits);
  const share = Math.min(1, Math.max(0, wish.generated));
  const wanted = Math.round(share * wish.count);
  const fromBank = share === 1 ? 0 : Math.min(banks.length, wish.count - Math.min(wanted, made.length));
  const fromMade = share === 0 ? 0 : Math.min(made.length, wish.count - fromBank);
  const drawn = [
    ...drawItems(
      banks.map(({ item }) => item),
      { count: fromBank },
      seed,
    ),
    ...drawItems(
      made.map(({ item }) => item),
      { count: fromMade },
      seed + 1,
    ),
  ];
  const byId = new Map([...banks, ...made].map((each) => [each.item.id, each]));
  // Once more as a whole, so that kinds alternate over both sorts.
  return drawItems(drawn, { count: wish.count }, seed + 2).map((item) => {
    const { from, topic } = byId.get(item.id)!;
    return { item, from, topic, original: item.id };
  });
}
