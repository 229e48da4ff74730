/**
 * A question as it may leave the host. Before the reveal nothing of it may tell the answer: not its id (a generated
 * one holds its seed, a bank's leads to the bank), not the ids of its options, not what is said of it afterwards.
 */
import type { Item, Option } from '../quiz';

const NO_WORDS = { rich: [] } as const;
const NOWHERE = { parts: [], step: null, place: null, terms: [] } as const;

const lettered = (prefix: string, list: readonly Option[]): ReadonlyMap<string, string> =>
  new Map(list.map(({ id }, i) => [id, `${prefix}${i + 1}`]));

const renamed = (list: readonly Option[], names: ReadonlyMap<string, string>): readonly Option[] =>
  list.map((option) => ({ ...option, id: names.get(option.id)! }));

/**
 * The question under ids that say nothing but the order in which it and its options are shown. Lay it out first: the
 * numbers follow the order of the list. The key moves along, so answers to it can be marked.
 * @param number from 1
 */
export function sealed(item: Item, number: number): Item {
  const id = `q${number}`;
  switch (item.kind) {
    case 'choose-one':
    case 'read-picture':
    case 'find-fault': {
      const names = lettered('o', item.options);
      return { ...item, id, options: renamed(item.options, names), right: names.get(item.right)! };
    }
    case 'choose-several': {
      const names = lettered('o', item.options);
      const right = item.right.map((each) => names.get(each)!).sort();
      return { ...item, id, options: renamed(item.options, names), right };
    }
    case 'order': {
      const names = lettered('o', item.cards);
      const needs = Object.fromEntries(
        Object.entries(item.needs).map(([card, alternatives]) => [
          names.get(card)!,
          alternatives.map((set) => set.map((each) => names.get(each)!)),
        ]),
      );
      return { ...item, id, cards: renamed(item.cards, names), needs };
    }
    case 'match': {
      const left = lettered('l', item.left);
      const names = lettered('o', item.options);
      const right = Object.fromEntries(
        Object.entries(item.right).map(([from, to]) => [left.get(from)!, names.get(to)!]),
      );
      return { ...item, id, left: renamed(item.left, left), options: renamed(item.options, names), right };
    }
    default:
      return { ...item, id };
  }
}

const bare = (list: readonly Option[]): readonly Option[] => list.map(({ id, says }) => ({ id, says }));

/** The question without its key, and without what is said once it has been answered. */
export function withoutKey(item: Item): Item {
  const shared = {
    origin: { from: 'bank' as const, topic: '' },
    explain: NO_WORDS,
    source: '',
    about: NOWHERE,
  };
  switch (item.kind) {
    case 'choose-one':
    case 'read-picture':
    case 'find-fault':
      return { ...item, ...shared, options: bare(item.options), right: '' };
    case 'choose-several':
      return { ...item, ...shared, options: bare(item.options), right: [] };
    case 'pick-part':
      return { ...item, ...shared, accept: [] };
    case 'order':
      return { ...item, ...shared, cards: bare(item.cards), needs: {} };
    case 'number':
      return { ...item, ...shared, right_si: 0, tolerance_si: 0 };
    case 'direction':
      return { ...item, ...shared, right: '', why: {} };
    case 'match':
      return { ...item, ...shared, left: bare(item.left), options: bare(item.options), right: {} };
  }
}
