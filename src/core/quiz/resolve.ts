/** Entries of a bank made into questions about one machine: names into parts, values into numbers. */
import { type Fault, fail, message, type Message, ok, printFound, type Result } from '../kernel';
import { type BankItem, optionId, optionSays } from './parse-bank';
import type { Content } from './content';
import {
  type About,
  type Difficulty,
  DIRECTION_SETS,
  type Item,
  NOTHING_ABOUT,
  type Option,
  type Readiness,
} from './item';
import { partsNamed } from './refs';
import type { Subject } from './subject';
import type { OptionEntry } from './bank-schema';
import { valuesOf } from './values/table';

/** Something of an entry that this machine does not have. Path inside the entry. */
export interface Lack {
  readonly path: readonly PropertyKey[];
  readonly expected: Message;
  readonly found: string;
}

/** The question, or what it asks of the machine in vain. */
export function resolveItem(topic: string, said: BankItem, subject: Subject): Result<Item> {
  const lacks: Lack[] = [];
  const item = build(topic, said, subject, lacks);
  return lacks.length === 0
    ? ok(item)
    : fail(lacks.map(({ path, expected, found }): Fault => ({ path: path.join('.'), expected, found })));
}

/** What of an entry this machine lacks, with its place in the entry. */
export function lacksOf(said: BankItem, subject: Subject): readonly Lack[] {
  const lacks: Lack[] = [];
  build('', said, subject, lacks);
  return lacks;
}

function build(topic: string, said: BankItem, subject: Subject, lacks: Lack[]): Item {
  const { entry } = said;
  const { machine } = subject;
  const lack = (expected: Message, found: unknown, ...path: PropertyKey[]): void => {
    lacks.push({ path, expected, found: printFound(found) });
  };
  const parts = (ref: string, ...path: PropertyKey[]): readonly string[] => {
    const found = partsNamed(machine, ref);
    if (found.length === 0) lack(message('quiz.expected.part'), ref, ...path);
    return found;
  };
  const value = (name: string, ...path: PropertyKey[]): number => {
    const found = valuesOf(subject).get(name);
    if (found !== undefined && 'si' in found) return found.si;
    lack(message('quiz.expected.value'), name, ...path);
    return 0;
  };
  const option = (each: OptionEntry, ...path: PropertyKey[]): Option => {
    const id = optionId(each);
    const own = optionSays(each);
    if (own !== null && 'part' in own) parts(own.part, ...path);
    if (own !== null && 'value' in own) value(own.value, ...path);
    const why = said.why[id];
    const says: Content = own ?? said.options[id] ?? { rich: [] };
    return why === undefined ? { id, says } : { id, says, why };
  };
  const options = (list: readonly OptionEntry[], key: string): Option[] =>
    list.map((each, i) => option(each, key, i));
  const about: About = {
    ...NOTHING_ABOUT,
    parts: (entry.about?.parts ?? []).flatMap((ref, i) => parts(ref, 'about', 'parts', i).slice(0, 1)),
    step: stepOf(entry.about?.step),
    place: entry.about?.place ?? null,
    terms: entry.about?.terms ?? [],
  };
  const shared = {
    id: entry.id,
    origin: { from: 'bank' as const, topic },
    difficulty: entry.difficulty satisfies Difficulty,
    prompt: said.prompt,
    explain: said.explain,
    source: entry.source,
    about,
    ...(entry.stage === undefined ? {} : { stage: entry.stage }),
    ...(entry.picture === undefined ? {} : { picture: entry.picture }),
  };
  switch (entry.kind) {
    case 'choose-one':
    case 'read-picture':
      return {
        ...shared,
        kind: entry.kind,
        options: options(entry.options, 'options'),
        right: entry.right,
        keepOrder: entry.keep_order ?? false,
      };
    case 'choose-several':
      return {
        ...shared,
        kind: entry.kind,
        options: options(entry.options, 'options'),
        right: entry.right,
        keepOrder: entry.keep_order ?? false,
      };
    case 'pick-part': {
      const accept = entry.accept.flatMap((ref, i) => parts(ref, 'accept', i));
      const fitting = entry.among.filter((ref, i) =>
        parts(ref, 'among', i).some((id) => accept.includes(id)),
      );
      if (fitting.length !== 1) lack(message('quiz.expected.one-among'), fitting, 'among');
      return { ...shared, kind: entry.kind, accept, among: entry.among };
    }
    case 'order': {
      const cards = options(entry.cards, 'cards');
      const needs =
        entry.legal === 'planner' ? said.needs : listedNeeds(entry.cards.map(optionId), entry.legal);
      if (needs === undefined) lack(message('quiz.expected.units-that-move'), entry.cards, 'cards');
      return { ...shared, kind: entry.kind, cards, needs: needs ?? {} };
    }
    case 'number': {
      const right_si = 'si' in entry.answer ? entry.answer.si : value(entry.answer.value, 'answer', 'value');
      return {
        ...shared,
        kind: entry.kind,
        quantity: entry.quantity,
        right_si,
        tolerance_si:
          'si' in entry.tolerance ? entry.tolerance.si : entry.tolerance.share * Math.abs(right_si),
      };
    }
    case 'direction':
      return {
        ...shared,
        kind: entry.kind,
        set: entry.set,
        right: entry.right,
        why: Object.fromEntries(
          DIRECTION_SETS[entry.set].flatMap((id) => {
            const why = said.why[id];
            return why === undefined ? [] : [[id, why]];
          }),
        ),
      };
    case 'match': {
      const left = options(entry.left, 'left');
      const extra = entry.extra ?? [];
      return {
        ...shared,
        kind: entry.kind,
        left,
        options: [...left.map((each) => each.id), ...extra].map((id) => ({
          id,
          says: said.right[id] ?? { rich: [] },
        })),
        right: Object.fromEntries(left.map((each) => [each.id, each.id])),
      };
    }
    case 'find-fault':
      return {
        ...shared,
        kind: entry.kind,
        shown: entry.shown.map((id): Content => said.shown[id] ?? { rich: [] }),
        options: options(entry.options, 'options'),
        right: entry.right,
      };
  }
}

/** An order written in the file as what must go before each card. */
export function listedNeeds(
  cards: readonly string[],
  legal: 'as-listed' | { readonly before: readonly (readonly [string, string])[] },
): Readiness {
  const pairs: readonly (readonly [string, string])[] =
    legal === 'as-listed'
      ? cards.slice(1).map((id, i): readonly [string, string] => [cards[i]!, id])
      : legal.before;
  return Object.fromEntries(
    cards.flatMap((id) => {
      const before = pairs.filter(([, second]) => second === id).map(([first]) => first);
      return before.length === 0 ? [] : [[id, [before]]];
    }),
  );
}

function stepOf(address: string | undefined): About['step'] {
  const [topic, step] = address?.split('/') ?? [];
  return topic === undefined || step === undefined ? null : { topic, step };
}
