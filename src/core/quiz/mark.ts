/** Marking: whether an answer is right, and what was wrong with it. */
import type { Answer, Item, Order, Readiness } from './item';

export interface Marked {
  readonly right: boolean;
  /** Share of the answer's pieces that are right (pairs of a match, options of several), 0 to 1. */
  readonly share: number;
  /** Pieces that are wrong: option ids, left ids of a match, the first card that may not go yet. */
  readonly wrong: readonly string[];
  /** Of an order: what should have gone before the first wrong card. */
  readonly missing: readonly string[];
}

const RIGHT: Marked = { right: true, share: 1, wrong: [], missing: [] };
const wrongWith = (wrong: readonly string[], share = 0, missing: readonly string[] = []): Marked => ({
  right: false,
  share,
  wrong,
  missing,
});

/** Marks an answer; an answer of another type than the item asks for is wrong. */
export function markAnswer(item: Item, answer: Answer): Marked {
  switch (item.kind) {
    case 'choose-one':
    case 'read-picture':
    case 'find-fault':
    case 'direction': {
      const ids = answer.type === 'choice' ? answer.ids : [];
      return ids.length === 1 && ids[0] === item.right ? RIGHT : wrongWith(ids);
    }
    case 'choose-several': {
      const chosen = new Set(answer.type === 'choice' ? answer.ids : []);
      const right = new Set(item.right);
      const wrong = item.options.map((option) => option.id).filter((id) => chosen.has(id) !== right.has(id));
      return wrong.length === 0 ? RIGHT : wrongWith(wrong, 1 - wrong.length / item.options.length);
    }
    case 'pick-part': {
      const id = answer.type === 'part' ? answer.partId : '';
      return item.accept.includes(id) ? RIGHT : wrongWith(id === '' ? [] : [id]);
    }
    case 'order':
      return markOrder(item, answer.type === 'order' ? answer.ids : []);
    case 'number': {
      const si = answer.type === 'number' ? answer.si : NaN;
      // Slack for the rounding of a shown unit, so that the limit itself counts.
      const off = Math.abs(si - item.right_si);
      return off <= item.tolerance_si * (1 + 1e-9) + Number.EPSILON ? RIGHT : wrongWith([]);
    }
    case 'match': {
      const pairs = answer.type === 'match' ? answer.pairs : {};
      const left = Object.keys(item.right);
      const wrong = left.filter((id) => pairs[id] !== item.right[id]);
      return wrong.length === 0 ? RIGHT : wrongWith(wrong, 1 - wrong.length / left.length);
    }
  }
}

function markOrder({ cards, needs }: Order, ids: readonly string[]): Marked {
  const all = new Set(cards.map((card) => card.id));
  const complete =
    ids.length === all.size && ids.every((id) => all.has(id)) && new Set(ids).size === all.size;
  if (!complete) return wrongWith([]);
  const gone = new Set<string>();
  for (const id of ids) {
    if (!mayGo(needs, id, gone)) return wrongWith([id], gone.size / ids.length, stillBefore(needs, id, gone));
    gone.add(id);
  }
  return RIGHT;
}

/** Whether a card may go once those of `gone` have gone. */
export function mayGo(needs: Readiness, id: string, gone: ReadonlySet<string>): boolean {
  const alternatives = needs[id];
  return alternatives === undefined || alternatives.some((set) => set.every((other) => gone.has(other)));
}

/** What is still missing of the alternative that is nearest to being met. */
function stillBefore(needs: Readiness, id: string, gone: ReadonlySet<string>): readonly string[] {
  const left = (needs[id] ?? []).map((set) => set.filter((other) => !gone.has(other)));
  return left.reduce((best, each) => (each.length < best.length ? each : best), left[0] ?? []);
}

/** One right order: cards as listed, each as soon as it may go. Shorter than the cards when none is right. */
export function oneOrder({ cards, needs }: Pick<Order, 'cards' | 'needs'>): readonly string[] {
  const gone = new Set<string>();
  for (;;) {
    const next = cards.find((card) => !gone.has(card.id) && mayGo(needs, card.id, gone));
    if (next === undefined) return [...gone];
    gone.add(next.id);
  }
}

/** The answer that is right (one of them), for keys and results. */
export function rightAnswer(item: Item): Answer {
  switch (item.kind) {
    case 'choose-one':
    case 'read-picture':
    case 'find-fault':
    case 'direction':
      return { type: 'choice', ids: [item.right] };
    case 'choose-several':
      return { type: 'choice', ids: item.right };
    case 'pick-part':
      return { type: 'part', partId: item.accept[0] ?? '' };
    case 'order':
      return { type: 'order', ids: oneOrder(item) };
    case 'number':
      return { type: 'number', si: item.right_si };
    case 'match':
      return { type: 'match', pairs: item.right };
  }
}
