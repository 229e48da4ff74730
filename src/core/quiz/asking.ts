/** Which items are asked and in which order, all from a seed: the same seed gives the same sheet. */
import { hashText, type Random, seededRandom } from '../kernel';
import { type Item, ITEM_KINDS, type ItemKind, type Option } from './item';
import { mayGo } from './mark';

/** A copy in random order (Fisher and Yates). */
export function shuffled<T>(list: readonly T[], random: Random): T[] {
  const out = [...list];
  for (let i = out.length - 1; i > 0; i--) {
    const j = random.index(i + 1);
    [out[i], out[j]] = [out[j]!, out[i]!];
  }
  return out;
}

/** The item with its options, cards or list in an order drawn from the seed; cards never lie in a right order. */
export function laidOut(item: Item, seed: number): Item {
  const random = seededRandom(seed);
  switch (item.kind) {
    case 'choose-one':
    case 'read-picture':
    case 'choose-several':
      return item.keepOrder ? item : { ...item, options: shuffled(item.options, random) };
    case 'find-fault':
      return { ...item, options: shuffled(item.options, random) };
    case 'match':
      return { ...item, options: shuffled(item.options, random) };
    case 'pick-part':
      return { ...item, among: shuffled(item.among, random) };
    case 'order': {
      const legal = (cards: readonly Option[]): boolean => {
        const gone = new Set<string>();
        return cards.every(({ id }) => {
          const may = mayGo(item.needs, id, gone);
          gone.add(id);
          return may;
        });
      };
      // Turning the cards round once is enough where anything must precede anything; else there is no wrong order.
      for (let cards = shuffled(item.cards, random), k = 0; ; k++) {
        if (!legal(cards) || k >= cards.length) return { ...item, cards };
        cards = [...cards.slice(1), cards[0]!];
      }
    }
    case 'number':
    case 'direction':
      return item;
  }
}

/** The same by the item's own id: a lesson asks it alike for everybody and at every visit, never as the bank lists it. */
export const laidOutById = (item: Item): Item =>
  laidOut(item, Number.parseInt(hashText(item.id).slice(0, 8), 16));

export interface Wanted {
  readonly count: number;
  readonly kinds?: readonly ItemKind[];
  readonly difficulties?: readonly number[];
}

/**
 * A set of different items drawn from a pool, no kind in a row where others are left (interleaving), easy ones first
 * among equals. Shorter than asked for when the pool is.
 */
export function drawItems(pool: readonly Item[], wanted: Wanted, seed: number): readonly Item[] {
  const random = seededRandom(seed);
  const kinds = wanted.kinds ?? ITEM_KINDS;
  const fitting = pool.filter(
    (item) => kinds.includes(item.kind) && (wanted.difficulties?.includes(item.difficulty) ?? true),
  );
  const left = shuffled(fitting, random).slice(0, Math.max(0, wanted.count));
  const out: Item[] = [];
  while (left.length > 0) {
    const last = out.at(-1)?.kind;
    const at = left.findIndex((item) => item.kind !== last);
    out.push(...left.splice(Math.max(0, at), 1));
  }
  return out.map((item, i) => laidOut(item, seed + i + 1));
}
