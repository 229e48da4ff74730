/** What a class comes to by an event that `judge` let happen. */
import type { ClassEvent, Move } from './events';
import {
  type AskedQuestion,
  type ClassSession,
  type ClassState,
  type Learner,
  NOT_ASKED,
  type QuestionPhase,
} from './state';

export function apply(state: ClassState, event: ClassEvent): ClassState {
  const { session, learners, settings } = state;
  switch (event.type) {
    case 'settings': {
      const { mode, seats, names } = event.settings;
      // Another mode deals the numbers anew; fewer numbers leave out whoever sat beyond; names are not kept unasked.
      const staying = Object.entries(learners).filter(
        ([, { seat }]) => mode === settings.mode && seat <= seats,
      );
      const kept = staying.map(([id, { seat, name }]): [string, Learner] => [
        id,
        { seat, name: names ? name : null },
      ]);
      return { ...state, settings: event.settings, learners: Object.fromEntries(kept) };
    }
    case 'join': {
      const name = settings.names ? event.name : null;
      return { ...state, learners: { ...learners, [event.learner]: { seat: event.seat, name } } };
    }
    case 'free':
      return {
        ...state,
        learners: Object.fromEntries(Object.entries(learners).filter(([, { seat }]) => seat !== event.seat)),
      };
    case 'session':
      return {
        ...state,
        session: {
          id: event.id,
          at_ms: event.at_ms,
          phase: 'lobby',
          paused: false,
          at: -1,
          questions: event.questions,
          asked: event.questions.map(() => NOT_ASKED),
        },
      };
    case 'follow':
      return { ...state, follow: event.follow };
    case 'move':
      // What is asked takes the place of what was followed.
      return session === null
        ? state
        : {
            ...state,
            session: moved(session, event.move),
            follow: event.move === 'open' || event.move === 'next' ? null : state.follow,
          };
    case 'answer': {
      const seat = learners[event.learner]?.seat;
      if (session === null || seat === undefined) return state;
      return withQuestion(state, session, event.question, (asked) => {
        const before = asked.answers[seat];
        const revisions = before?.via === 'phone' ? before.revisions : {};
        return {
          ...asked,
          answers: {
            ...asked.answers,
            [seat]: {
              via: 'phone',
              answer: event.answer,
              certainty: event.certainty,
              revisions: { ...revisions, [event.learner]: event.revision },
            },
          },
        };
      });
    }
    case 'hands':
      if (session === null) return state;
      return withQuestion(state, session, event.question, (asked) => ({ ...asked, hands: event.hands }));
    case 'paper': {
      if (session === null) return state;
      const { entry, seat } = event;
      return withQuestion(state, session, event.question, (asked) => {
        const others = Object.fromEntries(
          Object.entries(asked.answers).filter(([at]) => at !== String(seat)),
        );
        return {
          ...asked,
          answers: entry === null ? others : { ...others, [seat]: { via: 'paper', ...entry } },
        };
      });
    }
  }
}

function withQuestion(
  state: ClassState,
  session: ClassSession,
  number: number,
  change: (asked: AskedQuestion) => AskedQuestion,
): ClassState {
  const asked = session.asked.map((each, i) => (i === number ? change(each) : each));
  return { ...state, session: { ...session, asked } };
}

function moved(session: ClassSession, move: Move): ClassSession {
  const put = (phase: QuestionPhase, at = session.at): ClassSession => ({
    ...session,
    phase: 'asking',
    at,
    asked: session.asked.map((each, i) => (i === at ? { ...each, phase } : each)),
  });
  switch (move) {
    case 'open':
      return put('open', Math.max(0, session.at));
    case 'close':
      return put('closed');
    case 'reveal':
      return put('revealed');
    case 'next':
      return { ...session, phase: 'asking', at: Math.min(session.questions.length - 1, session.at + 1) };
    case 'back':
      return { ...session, at: Math.max(0, session.at - 1) };
    case 'skip': {
      const skipped = put('skipped');
      return { ...skipped, at: Math.min(session.questions.length - 1, session.at + 1) };
    }
    case 'pause':
      return { ...session, paused: true };
    case 'resume':
      return { ...session, paused: false };
    case 'end':
      return {
        ...session,
        phase: 'ended',
        paused: false,
        asked: session.asked.map((each) => (each.phase === 'open' ? { ...each, phase: 'closed' } : each)),
      };
  }
}
