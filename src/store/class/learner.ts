/** A phone in class: joining, answering, coming back. Answers are kept here until the host has confirmed them. */
import { type HostMessage, type LearnerView, TALK_VERSION } from '../../core/classroom';
import type { Answer, Certainty } from '../../core/quiz';
import type { Ports } from '../ports';
import type { ClassSlice } from './state';
import { type KeptSeat, readSeat, seatAt, settled, withAnswer } from './outbox';

const KEPT = 'drumbench.class.seat.1';
/** After 'too fast' an answer is sent once more. */
const AGAIN_ms = 2500;

interface Context {
  readonly ports: Ports;
  get(): ClassSlice;
  set(part: Partial<ClassSlice>): void;
  send(message: object): boolean;
  /** A view has come: the stage follows it. */
  onView(view: LearnerView): void;
}

export interface LearnerTalk {
  /** The seat that this phone had last. */
  kept(): KeptSeat | null;
  /** First words of a fresh connection. */
  hello(): void;
  hear(message: HostMessage): void;
  join(code: string, seat: number, name: string | null): void;
  answer(answer: Answer, certainty: Certainty): void;
  /** Gives the number up on this phone. */
  forget(): void;
}

export function learnerTalk({ ports, get, set, send, onView }: Context): LearnerTalk {
  let kept: KeptSeat | null = readSeat(ports.keep.read(KEPT));
  /** First words of the next connection: a number that was confirmed is taken up again, a new one asked for. */
  let first: 'resume' | 'join' | 'nothing' = kept === null ? 'nothing' : 'resume';
  const keep = (next: KeptSeat | null): void => {
    kept = next;
    set({ keeps: ports.keep.write(KEPT, JSON.stringify(next)) });
  };
  const sayJoin = (): void => {
    if (kept === null) return;
    const { code, seat, name, token } = kept;
    send({ type: 'join', version: TALK_VERSION, code, seat, name, token });
  };
  /** @param late it could not be sent when it was given */
  const sayAnswers = (late: boolean): void => {
    for (const out of kept?.outbox ?? []) send({ type: 'answer', ...out, kept: late });
  };
  const mine = (view: LearnerView): ClassSlice['given'] => {
    const waiting = kept?.outbox.find(
      (out) => out.session === view.session && out.question === view.question?.number,
    );
    if (waiting !== undefined)
      return { answer: waiting.answer, certainty: waiting.certainty, reached: false };
    return view.own === null
      ? null
      : { answer: view.own.answer, certainty: view.own.certainty, reached: true };
  };
  const take = (view: LearnerView): void => {
    onView(view);
    set({ view, given: mine(view), refused: null });
  };
  const refresh = (): void => {
    const { view, given } = get();
    if (view === null || given === null) return;
    const waits = kept?.outbox.some(
      (out) => out.session === view.session && out.question === view.question?.number,
    );
    set({ given: { ...given, reached: waits !== true } });
  };

  return {
    kept: () => kept,
    hello() {
      if (kept === null) return;
      if (first === 'resume') send({ type: 'resume', version: TALK_VERSION, token: kept.token });
      else if (first === 'join') sayJoin();
    },
    hear(message) {
      switch (message.type) {
        case 'joined':
          first = 'resume';
          // Answers of sessions that are over will never be taken.
          if (kept !== null)
            keep({
              ...kept,
              seat: message.view.seat,
              outbox: kept.outbox.filter((out) => out.session === message.view.session),
            });
          take(message.view);
          sayAnswers(true);
          return;
        case 'view':
          take(message.view);
          return;
        case 'accepted':
          if (kept !== null) keep(settled(kept, message.id));
          refresh();
          return;
        case 'refused': {
          const { why, id } = message;
          if (why.key === 'class.refused.unknown' && id === null) {
            // Whoever was sent away does not come back unasked.
            first = 'nothing';
            set({ view: null, given: null, refused: get().view === null ? null : why });
            return;
          }
          if (id === null) {
            if (why.key !== 'class.refused.slow' || get().view === null) set({ refused: why });
            else setTimeout(() => sayAnswers(true), AGAIN_ms);
            return;
          }
          if (kept !== null) keep(settled(kept, id));
          const { view } = get();
          set({ refused: why, given: view === null ? null : mine(view) });
          return;
        }
        default:
          return;
      }
    },
    join(code, seat, name) {
      keep(seatAt(kept, code, seat, name));
      first = 'join';
      set({ refused: null });
      sayJoin();
    },
    answer(answer, certainty) {
      const { view } = get();
      if (kept === null || view?.session == null || view.question === null) return;
      const { session, question } = view;
      const { kept: next, out } = withAnswer(kept, { session, question: question.number, answer, certainty });
      keep(next);
      set({ given: { answer, certainty, reached: false }, refused: null });
      send({ type: 'answer', ...out, kept: false });
    },
    forget() {
      first = 'nothing';
      keep(null);
      set({ view: null, given: null, refused: null });
    },
  };
}
