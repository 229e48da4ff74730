/**
 * Bank files in, questions out: structure and texts joined, each fault with its file, line and path. What only a
 * machine or the rest of the course can tell (parts, values, steps) is checked by `bankReferences`.
 */
import { type Fault, fail, message, type Message, ok, printFound, type Result } from '../kernel';
import { placeIn, type ReadYaml, readYaml, type SourceFile } from '../machine';
import {
  type BankFile,
  bankSchema,
  type BankTexts,
  bankTextsSchema,
  type ItemEntry,
  type ItemTexts,
  type OptionEntry,
} from './bank-schema';
import type { Content, RichText } from './content';
import { DIRECTION_SETS, type Readiness } from './item';
import { readText } from './rich-text';

/** An entry with its texts read; answers that the machine decides (parts, values, legal orders) are still names. */
export interface BankItem {
  readonly entry: ItemEntry;
  readonly prompt: Content;
  readonly explain: Content;
  readonly options: Readonly<Record<string, Content>>;
  readonly why: Readonly<Record<string, Content>>;
  readonly right: Readonly<Record<string, Content>>;
  readonly shown: Readonly<Record<string, Content>>;
  /** Of an order that the planner judges: worked out once from the blocking graph, since that is heavy. */
  readonly needs?: Readiness;
}

type Place = Pick<Fault, 'file' | 'line' | 'path'>;

export interface Bank {
  readonly topic: string;
  readonly language: string;
  readonly heldBack: boolean;
  readonly items: readonly BankItem[];
  /** Where an entry stands in its files, for faults that only show later; `rest` leads on from the entry. */
  readonly where: (itemId: string, ...rest: PropertyKey[]) => Place;
  readonly whereText: (itemId: string, ...rest: PropertyKey[]) => Place;
}

export const optionId = (option: OptionEntry): string => (typeof option === 'string' ? option : option.id);

/** What an option that is no id alone says. */
export function optionSays(option: OptionEntry): Content | null {
  if (typeof option === 'string') return null;
  if ('part' in option) return { part: option.part };
  if ('fault' in option) return { fault: option.fault };
  if ('value' in option) return { value: option.value };
  return { si: option.si, quantity: option.quantity };
}

/** @param topic the folder's name */
export function parseBank(topic: string, structure: SourceFile, texts: SourceFile): Result<Bank> {
  const read = readYaml(structure, bankSchema);
  const words = readYaml(texts, bankTextsSchema);
  if (!read.ok || !words.ok)
    return fail([...(read.ok ? [] : read.faults), ...(words.ok ? [] : words.faults)]);
  return joinBank(topic, read.value, words.value);
}

function joinBank(topic: string, read: ReadYaml<BankFile>, words: ReadYaml<BankTexts>): Result<Bank> {
  const faults: Fault[] = [];
  const add = (place: Place, expected: Message, found: unknown): void => {
    faults.push({ ...place, expected, found: printFound(found) });
  };
  const known = new Set<string>();
  const items: BankItem[] = [];
  const whereText: Bank['whereText'] = (id, ...rest) => placeIn(words, ['items', id, ...rest]);
  read.data.items.forEach((entry, i) => {
    const where = (...rest: PropertyKey[]): Place => placeIn(read, ['items', i, ...rest]);
    if (known.has(entry.id)) add(where('id'), message('quiz.expected.own-id'), entry.id);
    known.add(entry.id);
    checkEntry(entry, (expected, found, ...rest) => add(where(...rest), expected, found));
    const said = words.data.items[entry.id];
    if (said === undefined) add(where('id'), message('quiz.expected.texts', { file: words.name }), entry.id);
    else items.push({ entry, ...itemTexts(entry, said, (...rest) => whereText(entry.id, ...rest), add) });
  });
  for (const id of Object.keys(words.data.items))
    if (!known.has(id))
      add(placeIn(words, ['items', id]), message('quiz.expected.known-item', { file: read.name }), id);
  if (faults.length > 0) return fail(faults);
  const numbers = new Map(read.data.items.map((entry, i) => [entry.id, i]));
  return ok({
    topic,
    language: words.data.language,
    heldBack: read.data.held_back === true,
    items,
    where: (id, ...rest) => placeIn(read, ['items', numbers.get(id) ?? 0, ...rest]),
    whereText,
  });
}

/** What the schema cannot see: ids once each, answers among the options. */
function checkEntry(
  entry: ItemEntry,
  add: (expected: Message, found: unknown, ...rest: PropertyKey[]) => void,
): void {
  const unique = (list: readonly OptionEntry[], key: string): ReadonlySet<string> => {
    const ids = new Set<string>();
    list.forEach((option, i) => {
      const id = optionId(option);
      if (ids.has(id)) add(message('quiz.expected.own-id'), id, key, i);
      ids.add(id);
    });
    return ids;
  };
  const among = (id: string, ids: ReadonlySet<string>, ...rest: PropertyKey[]): void => {
    if (!ids.has(id)) add(message('quiz.expected.option', { options: [...ids] }), id, ...rest);
  };
  switch (entry.kind) {
    case 'choose-one':
    case 'read-picture':
    case 'find-fault':
      among(entry.right, unique(entry.options, 'options'), 'right');
      if (entry.kind === 'find-fault') unique(entry.shown, 'shown');
      break;
    case 'choose-several': {
      const ids = unique(entry.options, 'options');
      entry.right.forEach((id, i) => among(id, ids, 'right', i));
      if (new Set(entry.right).size < entry.right.length)
        add(message('quiz.expected.own-id'), entry.right, 'right');
      break;
    }
    case 'order': {
      const ids = unique(entry.cards, 'cards');
      if (entry.legal === 'planner')
        entry.cards.forEach((card, i) => {
          if (typeof card === 'string' || !('part' in card))
            add(message('quiz.expected.unit-card'), card, 'cards', i);
        });
      else if (entry.legal !== 'as-listed') {
        entry.legal.before.forEach((pair, i) =>
          pair.forEach((id, side) => among(id, ids, 'legal', 'before', i, side)),
        );
        if (isCyclic(entry.legal.before))
          add(message('quiz.expected.some-order'), entry.legal.before, 'legal');
      }
      break;
    }
    case 'direction':
      among(entry.right, new Set<string>(DIRECTION_SETS[entry.set]), 'right');
      break;
    case 'match': {
      const ids = unique(entry.left, 'left');
      entry.extra?.forEach((id, i) => {
        if (ids.has(id)) add(message('quiz.expected.own-id'), id, 'extra', i);
      });
      unique(entry.extra ?? [], 'extra');
      break;
    }
    case 'pick-part':
      unique(entry.among, 'among');
      break;
    case 'number':
      if ('si' in entry.answer && 'share' in entry.tolerance && entry.answer.si === 0)
        add(message('quiz.expected.tolerance-of-zero'), entry.tolerance, 'tolerance');
      break;
  }
}

/** Whether pairs 'first before second' contradict each other. */
function isCyclic(pairs: readonly (readonly [string, string])[]): boolean {
  let left = pairs;
  for (;;) {
    // Whoever nothing goes before can go; its pairs are kept.
    const next = left.filter(([first]) => left.some(([, second]) => second === first));
    if (next.length === 0) return false;
    if (next.length === left.length) return true;
    left = next;
  }
}

type Texts = Pick<BankItem, 'prompt' | 'explain' | 'options' | 'why' | 'right' | 'shown'>;

/** Ids that need words in each section of an item's texts. */
function wanted(entry: ItemEntry): Record<'options' | 'right' | 'shown', readonly string[]> {
  const spoken = (list: readonly OptionEntry[]): string[] =>
    list.filter((option) => typeof option === 'string').map(optionId);
  return {
    options:
      'options' in entry
        ? spoken(entry.options)
        : entry.kind === 'order'
          ? spoken(entry.cards)
          : entry.kind === 'match'
            ? spoken(entry.left)
            : [],
    right: entry.kind === 'match' ? [...entry.left.map(optionId), ...(entry.extra ?? [])] : [],
    shown: entry.kind === 'find-fault' ? entry.shown : [],
  };
}

/** Ids that may have a word on why they are wrong. */
function mayBeWrong(entry: ItemEntry): readonly string[] {
  if (entry.kind === 'direction') return DIRECTION_SETS[entry.set];
  if ('options' in entry) return entry.options.map(optionId);
  return entry.kind === 'pick-part' ? entry.among : [];
}

function itemTexts(
  entry: ItemEntry,
  said: ItemTexts,
  whereText: (...rest: PropertyKey[]) => Place,
  add: (place: Place, expected: Message, found: unknown) => void,
): Texts {
  const rich = (text: string, ...rest: PropertyKey[]): Content => {
    const read = readText(text);
    for (const fault of read.faults) add(whereText(...rest), fault.expected, fault.found);
    return { rich: read.rich satisfies RichText };
  };
  const section = (
    name: 'options' | 'right' | 'shown' | 'why',
    needed: readonly string[],
    allowed: readonly string[],
  ): Record<string, Content> => {
    const texts = said[name] ?? {};
    for (const id of needed)
      if (texts[id] === undefined) add(whereText(), message('quiz.expected.text-of', { section: name }), id);
    const out: Record<string, Content> = {};
    for (const [id, text] of Object.entries(texts)) {
      if (!allowed.includes(id)) add(whereText(name, id), message('quiz.expected.known-text'), id);
      out[id] = rich(text, name, id);
    }
    return out;
  };
  const need = wanted(entry);
  return {
    prompt: rich(said.prompt, 'prompt'),
    explain: rich(said.explain, 'explain'),
    options: section('options', need.options, need.options),
    right: section('right', need.right, need.right),
    shown: section('shown', need.shown, need.shown),
    why: section('why', [], mayBeWrong(entry)),
  };
}
