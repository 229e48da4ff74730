/**
 * Kept answers as statements of the Experience API 1.0.3 (IEEE 9274.1.1), for a learning record store. A statement's id
 * follows from the record, so a store that is sent the same records again keeps each once.
 * Source: ADL, Experience API, version 1.0.3, part 2 (statement data model; requirements checked in the tests).
 */
import { hashText } from '../kernel';
import type { KeptRecord } from './archive';
import { readAnswer } from './summary';

/** Who learned: an account at a place that the person or the school names. */
export interface StatementActor {
  /** IRI, such as `https://school.example`. */
  readonly homePage: string;
  readonly name: string;
}

/** What every statement says: which it is, who, did what. */
export interface StatementHead {
  readonly id: string;
  readonly actor: {
    readonly objectType: 'Agent';
    readonly account: { readonly homePage: string; readonly name: string };
  };
  readonly verb: { readonly id: string; readonly display: Readonly<Record<string, string>> };
}

export interface StatementScore {
  readonly scaled: number;
  readonly raw: number;
  readonly min: number;
  readonly max: number;
}

export interface Statement extends StatementHead {
  readonly object: {
    readonly objectType: 'Activity';
    readonly id: string;
    readonly definition: {
      readonly type: string;
      readonly interactionType: InteractionType;
      readonly correctResponsesPattern?: readonly string[];
    };
  };
  readonly result: {
    readonly success: boolean;
    readonly completion: true;
    readonly response: string;
    readonly score: StatementScore;
    readonly extensions: Readonly<Record<string, string | number>>;
  };
  readonly context: { readonly platform: string; readonly language: string };
  /** ISO 8601. */
  readonly timestamp: string;
}

type InteractionType = 'choice' | 'sequencing' | 'numeric' | 'matching' | 'other';

const VERB_ANSWERED = 'http://adlnet.gov/expapi/verbs/answered';
const INTERACTION = 'http://adlnet.gov/expapi/activities/cmi.interaction';
/** IRIs of our own are names only; nothing is fetched there. */
export const OWN_IRI = 'tag:drumbench,2026:';
const BEST = 3;
const WORST = -6;

/** A UUID (RFC 9562, form of version 4) that follows from the texts. */
export function uuidOf(...texts: readonly string[]): string {
  const hex = hashText('1', ...texts) + hashText('2', ...texts);
  const variant = ((parseInt(hex[16]!, 16) & 0x3) | 0x8).toString(16);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-4${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

/**
 * One statement a readable answer; those left out in a test have none.
 * @param records of the collection of answers
 */
export function statementsOf(
  records: readonly KeptRecord[],
  actor: StatementActor,
  language: string,
): readonly Statement[] {
  return records.flatMap((record): Statement[] => {
    const answer = readAnswer(record.text);
    const response = answer === null ? null : responseOf(answer.answer);
    if (answer === null || response === null) return [];
    return [
      {
        id: uuidOf(actor.homePage, actor.name, record.collection, record.key, record.text),
        actor: { objectType: 'Agent', account: { homePage: actor.homePage, name: actor.name } },
        verb: { id: VERB_ANSWERED, display: { en: 'answered' } },
        object: {
          objectType: 'Activity',
          id: `${OWN_IRI}item/${encodeURIComponent(answer.item)}`,
          definition: { type: INTERACTION, interactionType: response.type },
        },
        result: {
          success: answer.right,
          completion: true,
          response: response.text,
          score: { scaled: Math.max(-1, answer.mark / BEST), raw: answer.mark, min: WORST, max: BEST },
          extensions: { [`${OWN_IRI}certainty`]: answer.certainty, [`${OWN_IRI}mode`]: answer.mode },
        },
        context: { platform: 'Drumbench', language },
        timestamp: new Date(answer.at_ms).toISOString(),
      },
    ];
  });
}

/** Delimiters as the specification has them for responses of interactions. */
function responseOf(answer: unknown): { readonly type: InteractionType; readonly text: string } | null {
  if (typeof answer !== 'object' || answer === null || !('type' in answer)) return null;
  const { type, ids, si, partId, pairs } = answer as Record<string, unknown>;
  const joined = (list: unknown): string | null =>
    Array.isArray(list) && list.every((each) => typeof each === 'string') ? list.join('[,]') : null;
  const said = (kind: InteractionType, text: string | null) => (text === null ? null : { type: kind, text });
  switch (type) {
    case 'choice':
      return said('choice', joined(ids));
    case 'order':
      return said('sequencing', joined(ids));
    case 'number':
      return said('numeric', typeof si === 'number' ? String(si) : null);
    case 'part':
      return said('other', typeof partId === 'string' ? partId : null);
    case 'match':
      return said(
        'matching',
        typeof pairs === 'object' && pairs !== null
          ? Object.entries(pairs)
              .map(([from, to]) => `${from}[.]${String(to)}`)
              .join('[,]')
          : null,
      );
    default:
      return null;
  }
}
