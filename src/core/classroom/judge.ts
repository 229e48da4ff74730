/** Whether an event may happen now. The host asks before it writes anything down. */
import { type Answer, DIRECTION_SETS, type Item, ITEM_KINDS } from '../quiz';
import type { AnswerEvent, ClassEvent, Move } from './events';
import { atHand, type ClassSession, type ClassState, MOST_SEATS } from './state';

export type Verdict =
  | { readonly verdict: 'take' }
  /** It has happened already: nothing is to be done, and whoever sent it may be told that all is well. */
  | { readonly verdict: 'repeat' }
  /** Key of the catalogue. */
  | { readonly verdict: 'refuse'; readonly why: string };

const TAKE: Verdict = { verdict: 'take' };
const REPEAT: Verdict = { verdict: 'repeat' };
const refuse = (why: string): Verdict => ({ verdict: 'refuse', why: `class.refused.${why}` });

/** Phones of one class at most; in teams several may share a number. */
export const MOST_LEARNERS = MOST_SEATS;

export function judge(state: ClassState, event: ClassEvent): Verdict {
  const { session, settings, learners } = state;
  switch (event.type) {
    case 'settings':
      return session?.phase === 'asking' ? refuse('running') : TAKE;
    case 'session':
      return session?.phase === 'asking' ? refuse('running') : TAKE;
    case 'follow':
      return TAKE;
    case 'free':
      return Object.values(learners).some(({ seat }) => seat === event.seat) ? TAKE : refuse('nobody-there');
    case 'join': {
      const before = learners[event.learner];
      if (event.seat > settings.seats) return refuse('no-such-number');
      const holder = Object.entries(learners).find(([, { seat }]) => seat === event.seat);
      if (settings.mode === 'solo' && holder !== undefined && holder[0] !== event.learner)
        return refuse('taken');
      if (before === undefined && Object.keys(learners).length >= MOST_LEARNERS) return refuse('full');
      if (before !== undefined && before.seat !== event.seat && hasAnswered(session, event.learner))
        return refuse('has-answered');
      return TAKE;
    }
    case 'move':
      return session === null ? refuse('no-session') : judgeMove(session, event.move);
    case 'answer':
      return judgeAnswer(state, event);
    case 'hands': {
      const asked = session?.asked[event.question];
      const item = session?.questions[event.question]?.item;
      if (asked === undefined || item === undefined) return refuse('no-question');
      if (asked.phase === 'waiting' || asked.phase === 'skipped') return refuse('not-asked');
      const known = handIds(item);
      return Object.keys(event.hands ?? {}).every((id) => known.includes(id)) ? TAKE : refuse('answer');
    }
    case 'paper': {
      const item = session?.questions[event.question]?.item;
      if (item === undefined) return refuse('no-question');
      if (event.seat > settings.seats) return refuse('no-such-number');
      const answer = event.entry?.answer ?? null;
      return answer === null || fitsItem(item, answer) ? TAKE : refuse('answer');
    }
  }
}

const hasAnswered = (session: ClassSession | null, learner: string): boolean =>
  session?.asked.some((asked) =>
    Object.values(asked.answers).some((each) => each.via === 'phone' && learner in each.revisions),
  ) === true;

function judgeMove(session: ClassSession, move: Move): Verdict {
  if (session.phase === 'ended') return refuse('ended');
  if (session.phase === 'lobby')
    return move === 'open' || move === 'next' || move === 'end' ? TAKE : refuse('not-begun');
  const phase = atHand(session)?.asked.phase;
  switch (move) {
    case 'end':
      return TAKE;
    case 'pause':
      return session.paused ? REPEAT : TAKE;
    case 'resume':
      return session.paused ? TAKE : REPEAT;
    case 'open':
      if (phase === 'open') return REPEAT;
      if (phase === 'revealed') return refuse('revealed');
      return session.paused ? refuse('paused') : TAKE;
    case 'close':
      if (phase === 'closed') return REPEAT;
      return phase === 'open' ? TAKE : refuse('not-open');
    case 'reveal':
      if (phase === 'revealed') return REPEAT;
      return phase === 'open' || phase === 'closed' ? TAKE : refuse('not-asked');
    case 'next':
      if (phase === 'open') return refuse('open');
      return session.at + 1 < session.questions.length ? TAKE : refuse('last');
    case 'back':
      if (phase === 'open') return refuse('open');
      return session.at > 0 ? TAKE : refuse('first');
    case 'skip':
      if (phase === 'revealed') return refuse('revealed');
      return phase === 'skipped' ? REPEAT : TAKE;
  }
}

function judgeAnswer(state: ClassState, event: AnswerEvent): Verdict {
  const { session, learners } = state;
  const learner = learners[event.learner];
  if (learner === undefined) return refuse('unknown');
  const asked = session?.asked[event.question];
  const item = session?.questions[event.question]?.item;
  if (session === null || asked === undefined || item === undefined) return refuse('no-question');
  const before = asked.answers[learner.seat];
  // First of all: an answer that was taken is told so for ever, whatever has happened since.
  if (before?.via === 'phone' && event.revision <= (before.revisions[event.learner] ?? 0)) return REPEAT;
  if (session.phase === 'ended') return refuse('ended');
  const open = asked.phase === 'open' && !session.paused;
  const mayStill = event.kept && (asked.phase === 'open' || asked.phase === 'closed');
  if (!open && !mayStill) return refuse(session.paused && asked.phase === 'open' ? 'paused' : 'not-open');
  return fitsItem(item, event.answer) ? TAKE : refuse('answer');
}

/** Ids by which hands are counted: options where one of them is chosen, else right and wrong. */
export function handIds(item: Item): readonly string[] {
  switch (item.kind) {
    case 'choose-one':
    case 'read-picture':
    case 'find-fault':
      return item.options.map(({ id }) => id);
    case 'direction':
      return DIRECTION_SETS[item.set];
    default:
      return ['right', 'wrong'];
  }
}

/** Whether an answer is of the form that the item asks for: its type, and nothing but the item's own pieces. */
export function fitsItem(item: Item, answer: Answer): boolean {
  const unique = (ids: readonly string[]): boolean => new Set(ids).size === ids.length;
  switch (item.kind) {
    case 'choose-one':
    case 'read-picture':
    case 'find-fault':
    case 'direction':
      return answer.type === 'choice' && answer.ids.length === 1 && handIds(item).includes(answer.ids[0]!);
    case 'choose-several': {
      if (answer.type !== 'choice' || !unique(answer.ids)) return false;
      return answer.ids.every((id) => item.options.some((option) => option.id === id));
    }
    case 'pick-part':
      return answer.type === 'part';
    case 'order':
      return (
        answer.type === 'order' &&
        answer.ids.length === item.cards.length &&
        unique(answer.ids) &&
        answer.ids.every((id) => item.cards.some((card) => card.id === id))
      );
    case 'number':
      return answer.type === 'number';
    case 'match':
      return (
        answer.type === 'match' &&
        Object.entries(answer.pairs).every(
          ([from, to]) =>
            item.left.some((left) => left.id === from) && item.options.some((option) => option.id === to),
        )
      );
  }
}

/** Kinds that are answered by one letter, so that hands can be raised for each and a paper holds a letter. */
export const LETTERED_KINDS: readonly Item['kind'][] = ITEM_KINDS.filter((kind) =>
  ['choose-one', 'read-picture', 'find-fault', 'direction'].includes(kind),
);
