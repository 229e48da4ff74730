/**
 * A question as it is asked, whether it stood in a bank or was made by a generator: what it says, how it is answered,
 * which answers are right, why, and where to read on. Plain data, so that it passes through a port or a network.
 */
import type { Quantity } from '../kernel';
import type { Content } from './content';
import type { PictureSetting } from './picture';
import type { StageSetting } from './stage-setting';

export const ITEM_KINDS = [
  'choose-one',
  'choose-several',
  'pick-part',
  'order',
  'number',
  'direction',
  'match',
  'read-picture',
  'find-fault',
] as const;
export type ItemKind = (typeof ITEM_KINDS)[number];

/** 1 know it, 2 apply it, 3 join several things. */
export type Difficulty = 1 | 2 | 3;

export interface Option {
  readonly id: string;
  readonly says: Content;
  /** Said to whoever chose it though it is wrong: what is mistaken about it. */
  readonly why?: Content;
}

/** Where a result leads: parts to look at, the step that teaches it, the study that computes it, words to look up. */
export interface About {
  readonly parts: readonly string[];
  readonly step: { readonly topic: string; readonly step: string } | null;
  /** Path of an address of the app, such as `studies/two-speed`. */
  readonly place: string | null;
  readonly terms: readonly string[];
}

/** Where an item comes from. A generated one can be made again from its generator, seed and machine. */
export type Origin =
  | { readonly from: 'bank'; readonly topic: string }
  | { readonly from: 'generator'; readonly generator: string; readonly seed: number };

interface Shared {
  /** Of a bank: unique over all banks. Of a generator: `gen/<generator>/<seed>`. */
  readonly id: string;
  readonly origin: Origin;
  readonly difficulty: Difficulty;
  readonly prompt: Content;
  readonly explain: Content;
  /** Publication it follows, or 'common practice' (then said in the reader's language). */
  readonly source: string;
  readonly about: About;
  /** How the stage stands while it is asked; left out: as it is. */
  readonly stage?: StageSetting;
  readonly picture?: PictureSetting;
}

export interface ChooseOne extends Shared {
  readonly kind: 'choose-one' | 'read-picture';
  readonly options: readonly Option[];
  readonly right: string;
  /** The order of the options means something (sizes, say): it is not shuffled. */
  readonly keepOrder: boolean;
}

export interface ChooseSeveral extends Shared {
  readonly kind: 'choose-several';
  readonly options: readonly Option[];
  /** Exactly these. */
  readonly right: readonly string[];
  readonly keepOrder: boolean;
}

/** Answered on the stage or from the list; any part of `accept` is right. */
export interface PickPart extends Shared {
  readonly kind: 'pick-part';
  /** Part ids that are right. */
  readonly accept: readonly string[];
  /** The list that is equal to the stage: one representative ref each, exactly one of which is accepted. */
  readonly among: readonly string[];
}

/**
 * Cards to put in order. A card may go when all cards of at least one of its alternatives have gone before it; a card
 * without an entry may go at any time. Monotone: what may go once may go later. Every order in which each card may go
 * at its turn is right.
 */
export type Readiness = Readonly<Record<string, readonly (readonly string[])[]>>;

export interface Order extends Shared {
  readonly kind: 'order';
  readonly cards: readonly Option[];
  readonly needs: Readiness;
}

export interface NumberItem extends Shared {
  readonly kind: 'number';
  readonly quantity: Quantity;
  readonly right_si: number;
  /** Largest difference that still counts, SI. */
  readonly tolerance_si: number;
}

/** What happens to something, or which way it goes; the words of each set are in the catalogue. */
export const DIRECTION_SETS = {
  change: ['less', 'same', 'more'],
  axis: ['left', 'right', 'up', 'down', 'front', 'rear'],
  turn: ['forward', 'backward'],
} as const;
export type DirectionSet = keyof typeof DIRECTION_SETS;

export interface Direction extends Shared {
  readonly kind: 'direction';
  readonly set: DirectionSet;
  readonly right: string;
  /** What a wrong prediction mistakes, by the direction chosen. */
  readonly why: Readonly<Record<string, Content>>;
}

export interface Match extends Shared {
  readonly kind: 'match';
  readonly left: readonly Option[];
  /** Those that belong to a left one, and some that belong to none. */
  readonly options: readonly Option[];
  /** Left id -> right id. */
  readonly right: Readonly<Record<string, string>>;
}

/** What was seen and measured, and the faults that it may come from; one fits all of it. */
export interface FindFault extends Shared {
  readonly kind: 'find-fault';
  readonly shown: readonly Content[];
  readonly options: readonly Option[];
  readonly right: string;
}

export type Item = ChooseOne | ChooseSeveral | PickPart | Order | NumberItem | Direction | Match | FindFault;

export type Answer =
  | { readonly type: 'choice'; readonly ids: readonly string[] }
  | { readonly type: 'part'; readonly partId: string }
  | { readonly type: 'order'; readonly ids: readonly string[] }
  | { readonly type: 'number'; readonly si: number }
  | { readonly type: 'match'; readonly pairs: Readonly<Record<string, string>> };

export const NOTHING_ABOUT: About = { parts: [], step: null, place: null, terms: [] };
