/**
 * A question as an assessment item of QTI 3.0, for systems that read that standard. Source: 1EdTech (IMS Global),
 * Question & Test Interoperability 3.0, assessment, section and item information model (from memory).
 */
import { toShown, UNITS } from '../../kernel';
import {
  type Content,
  DIRECTION_SETS,
  type Item,
  mayGo,
  oneOrder,
  type Option,
  type Order,
} from '../../quiz';
import { type Attributes, element, escaped, paragraphs } from './xml';

/** Turns what a question says into plain words of a language. */
export interface QtiWords {
  text(content: Content): string;
  /** Name of a direction. */
  direction(set: string, id: string): string;
  readonly language: string;
}

/** Why a question has no counterpart in the standard. */
export type Unmapped = 'stage' | 'picture' | 'several-orders';

export type QtiResult =
  { readonly ok: true; readonly xml: string } | { readonly ok: false; readonly why: Unmapped };

const NAMESPACE = 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0';
const SCHEMA = 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd';
const MATCH_CORRECT = 'https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/match_correct.xml';
const RESPONSE = 'RESPONSE';
const LONGEST_TITLE = 80;

/** What an interaction asks for and how it is answered rightly. */
interface Asked {
  readonly cardinality: 'single' | 'multiple' | 'ordered';
  readonly base: 'identifier' | 'directedPair' | 'float';
  readonly correct: readonly string[];
  readonly body: readonly string[];
  readonly processing: string;
}

/** The item's XML under its own id, or why it cannot be said in this standard. */
export function qtiItem(item: Item, words: QtiWords): QtiResult {
  const asked = askedOf(item, words);
  if (typeof asked === 'string') return { ok: false, why: asked };
  const prompt = words.text(item.prompt);
  const attributes: Attributes = {
    xmlns: NAMESPACE,
    'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
    'xsi:schemaLocation': `${NAMESPACE} ${SCHEMA}`,
    identifier: item.id.replace(/[^A-Za-z0-9_.-]/g, '-'),
    title: prompt.replaceAll('\n', ' ').slice(0, LONGEST_TITLE),
    adaptive: false,
    'time-dependent': false,
    'xml:lang': words.language,
  };
  const values = asked.correct.map((value) => element('qti-value', {}, [escaped(value)]));
  const inner = [
    element(
      'qti-response-declaration',
      { identifier: RESPONSE, cardinality: asked.cardinality, 'base-type': asked.base },
      [element('qti-correct-response', {}, values)],
    ),
    element('qti-outcome-declaration', { identifier: 'SCORE', cardinality: 'single', 'base-type': 'float' }, [
      element('qti-default-value', {}, [element('qti-value', {}, ['0'])]),
    ]),
    element('qti-item-body', {}, [
      element('qti-rubric-block', { use: 'scoring', view: 'scorer' }, [
        element('qti-content-body', {}, paragraphs(words.text(item.explain))),
      ]),
      ...asked.body,
    ]),
    asked.processing,
  ];
  return {
    ok: true,
    xml: `<?xml version="1.0" encoding="UTF-8"?>\n${element('qti-assessment-item', attributes, inner)}\n`,
  };
}

const matchCorrect = element('qti-response-processing', { template: MATCH_CORRECT });

function askedOf(item: Item, words: QtiWords): Asked | Unmapped {
  if (item.picture !== undefined) return 'picture';
  // What stands on the stage would be missing from the question.
  if (item.stage !== undefined && item.kind !== 'number') return 'stage';
  switch (item.kind) {
    case 'pick-part':
      return 'stage';
    case 'read-picture':
      return 'picture';
    case 'choose-one':
      return choice(item, item.options, [item.right], words, !item.keepOrder);
    case 'choose-several':
      return choice(item, item.options, item.right, words, !item.keepOrder);
    case 'find-fault':
      return choice(item, item.options, [item.right], words, true, item.shown);
    case 'direction': {
      const options = DIRECTION_SETS[item.set].map((id): Spoken => ({
        id,
        text: words.direction(item.set, id),
      }));
      return spokenChoice(item, options, [item.right], words, false);
    }
    case 'order':
      return ordering(item, words);
    case 'number':
      return numeric(item, words);
    case 'match':
      return matching(item, words);
  }
}

interface Spoken {
  readonly id: string;
  readonly text: string;
}

const prompted = (item: Item, words: QtiWords, shown: readonly Content[] = []): string =>
  element('qti-prompt', {}, [
    ...paragraphs(words.text(item.prompt)),
    ...(shown.length === 0
      ? []
      : [
          element(
            'ul',
            {},
            shown.map((each) => element('li', {}, [escaped(words.text(each))])),
          ),
        ]),
  ]);

const choice = (
  item: Item,
  options: readonly Option[],
  right: readonly string[],
  words: QtiWords,
  shuffle: boolean,
  shown: readonly Content[] = [],
): Asked =>
  spokenChoice(
    item,
    options.map(({ id, says }) => ({ id, text: words.text(says) })),
    right,
    words,
    shuffle,
    shown,
  );

function spokenChoice(
  item: Item,
  options: readonly Spoken[],
  right: readonly string[],
  words: QtiWords,
  shuffle: boolean,
  shown: readonly Content[] = [],
): Asked {
  const several = item.kind === 'choose-several';
  return {
    cardinality: several ? 'multiple' : 'single',
    base: 'identifier',
    correct: right,
    body: [
      element(
        'qti-choice-interaction',
        { 'response-identifier': RESPONSE, shuffle, 'max-choices': several ? 0 : 1 },
        [
          prompted(item, words, shown),
          ...options.map(({ id, text }) => element('qti-simple-choice', { identifier: id }, [escaped(text)])),
        ],
      ),
    ],
    processing: matchCorrect,
  };
}

/** The standard compares with one order; where several are right the question cannot be marked there. */
function hasOneOrder({ cards, needs }: Order): boolean {
  const gone = new Set<string>();
  for (const id of oneOrder({ cards, needs })) {
    const may = cards.filter((card) => !gone.has(card.id) && mayGo(needs, card.id, gone));
    if (may.length !== 1) return false;
    gone.add(id);
  }
  return gone.size === cards.length;
}

function ordering(item: Order, words: QtiWords): Asked | Unmapped {
  if (!hasOneOrder(item)) return 'several-orders';
  return {
    cardinality: 'ordered',
    base: 'identifier',
    correct: oneOrder(item),
    body: [
      element('qti-order-interaction', { 'response-identifier': RESPONSE, shuffle: true }, [
        prompted(item, words),
        ...item.cards.map(({ id, says }) =>
          element('qti-simple-choice', { identifier: id }, [escaped(words.text(says))]),
        ),
      ]),
    ],
    processing: matchCorrect,
  };
}

/** In the shown unit of SI, which stands behind the field. */
function numeric(item: Extract<Item, { kind: 'number' }>, words: QtiWords): Asked {
  const unit = UNITS[item.quantity].si;
  const right = toShown(item.right_si, item.quantity, 'si');
  const tolerance = Math.abs(item.tolerance_si * unit.factor);
  const outcome = (score: number): string =>
    element('qti-set-outcome-value', { identifier: 'SCORE' }, [
      element('qti-base-value', { 'base-type': 'float' }, [String(score)]),
    ]);
  return {
    cardinality: 'single',
    base: 'float',
    correct: [String(right)],
    body: [
      ...paragraphs(words.text(item.prompt)),
      element('p', {}, [
        element('qti-text-entry-interaction', { 'response-identifier': RESPONSE, 'expected-length': 12 }),
        escaped(unit.symbol === '' ? '' : ` ${unit.symbol}`),
      ]),
    ],
    processing: element('qti-response-processing', {}, [
      element('qti-response-condition', {}, [
        element('qti-response-if', {}, [
          element('qti-equal', { 'tolerance-mode': 'absolute', tolerance: `${tolerance} ${tolerance}` }, [
            element('qti-variable', { identifier: RESPONSE }),
            element('qti-correct', { identifier: RESPONSE }),
          ]),
          outcome(1),
        ]),
        element('qti-response-else', {}, [outcome(0)]),
      ]),
    ]),
  };
}

function matching(item: Extract<Item, { kind: 'match' }>, words: QtiWords): Asked {
  const set = (options: readonly Option[]): string =>
    element(
      'qti-simple-match-set',
      {},
      options.map(({ id, says }) =>
        element('qti-simple-associable-choice', { identifier: id, 'match-max': 1 }, [
          escaped(words.text(says)),
        ]),
      ),
    );
  return {
    cardinality: 'multiple',
    base: 'directedPair',
    correct: Object.entries(item.right).map(([from, to]) => `${from} ${to}`),
    body: [
      element(
        'qti-match-interaction',
        { 'response-identifier': RESPONSE, shuffle: true, 'max-associations': item.left.length },
        [prompted(item, words), set(item.left), set(item.options)],
      ),
    ],
    processing: matchCorrect,
  };
}
