/**
 * One connection from its first word on. Nothing is believed: sizes are bounded by the socket, words are checked by
 * their schema, wrong codes and secrets cost, floods are cut.
 */
import type { RawData, WebSocket } from 'ws';
import {
  type HostMessage,
  instructorMessageSchema,
  type LearnerMessage,
  learnerMessageSchema,
  MOST_BYTES_LEARNER,
  tidyCode,
} from '../../core/classroom';
import type { Desk, Line } from './desk';
import { hearInstructor } from './instructor-talk';
import { hearLearner, welcome } from './learner-talk';
import { bucket, type Bucket, type Rate } from './limits';
import { learnerIdOf, sameSecret, type Secrets } from './secrets';

/** A person's pace with room for what a phone sends again after a gap. */
const LEARNER_RATE: Rate = { most: 40, perSecond: 10 };
const INSTRUCTOR_RATE: Rate = { most: 400, perSecond: 60 };
/** Faults of one connection before it is cut. */
const MOST_FAULTS = 20;
/** Whoever does not say who they are in this time is cut. */
const FIRST_WORD_ms = 10_000;
/** A phone that does not read what is sent to it must not fill the host's memory. */
const MOST_UNREAD_BYTES = 4 * 1024 * 1024;
const CLOSE_POLICY = 1008;
const CLOSE_BUSY = 1013;

export interface Gate {
  readonly desk: Desk;
  readonly secrets: Secrets;
  /** Wrong codes and secrets of one address. */
  readonly guesses: Bucket;
  /** Wrong codes and secrets of all addresses together. */
  readonly allGuesses: Bucket;
}

type Who =
  | { readonly role: 'nobody' }
  | { readonly role: 'learner'; readonly id: string; readonly leave: () => void }
  | { readonly role: 'instructor'; readonly leave: () => void };

export function attend(socket: WebSocket, { desk, secrets, guesses, allGuesses }: Gate): void {
  let who: Who = { role: 'nobody' };
  let faults = 0;
  let rate = bucket(LEARNER_RATE, Date.now());
  // One after another, in the order in which they were sent.
  let turn: Promise<void> = Promise.resolve();

  const line: Line = {
    say: (message) => line.sayText(JSON.stringify(message)),
    sayText: (text) => {
      if (socket.readyState !== socket.OPEN) return;
      if (socket.bufferedAmount > MOST_UNREAD_BYTES) socket.terminate();
      else socket.send(text);
    },
  };
  const refuse = (key: string, id: string | null = null): void =>
    line.say({ type: 'refused', id, why: { key: `class.refused.${key}` } } satisfies HostMessage);
  const fault = (): void => {
    refuse('words');
    if (++faults >= MOST_FAULTS) socket.close(CLOSE_POLICY);
  };
  const silent = setTimeout(() => socket.close(CLOSE_POLICY), FIRST_WORD_ms);
  const known = (next: Who): void => {
    clearTimeout(silent);
    if (who.role !== 'nobody') who.leave();
    who = next;
  };

  /** Whether another guess may be made. A wrong one costs, a right one does not. */
  const mayGuess = (now: number): boolean => {
    if (guesses.has(now) && allGuesses.has(now)) return true;
    refuse('slow');
    return false;
  };
  const wrongGuess = (now: number, key: string): void => {
    guesses.take(now);
    allGuesses.take(now);
    refuse(key);
    if (++faults >= MOST_FAULTS) socket.close(CLOSE_POLICY);
  };

  const enter = (id: string): void => {
    if (who.role !== 'learner' || who.id !== id)
      known({ role: 'learner', id, leave: desk.addLearner(id, line) });
    welcome(desk, id, line);
  };

  async function firstWord(said: Extract<LearnerMessage, { type: 'join' | 'resume' }>): Promise<void> {
    const now = Date.now();
    const id = learnerIdOf(said.token);
    const member = desk.store.state().learners[id] !== undefined;
    if (said.type === 'resume') {
      // A token cannot be guessed; phones of a class that was deleted come with old ones and may join again.
      if (member) enter(id);
      else refuse('unknown');
      return;
    }
    // Whoever is in already has shown the code before.
    if (!member) {
      if (!mayGuess(now)) return;
      if (!sameSecret(tidyCode(said.code), secrets.code)) {
        wrongGuess(now, 'code');
        return;
      }
    }
    const verdict = await desk.put({ type: 'join', learner: id, seat: said.seat, name: said.name });
    if (verdict.verdict === 'refuse') line.say({ type: 'refused', id: null, why: { key: verdict.why } });
    else enter(id);
  }

  async function hear(text: string): Promise<void> {
    let data: unknown;
    try {
      data = JSON.parse(text);
    } catch {
      fault();
      return;
    }
    if (who.role === 'instructor') {
      const said = instructorMessageSchema.safeParse(data);
      if (!said.success) fault();
      else if (said.data.type !== 'instruct') await hearInstructor(desk, line, said.data);
      return;
    }
    const type = typeof data === 'object' && data !== null && 'type' in data ? data.type : undefined;
    if (who.role === 'nobody' && type === 'instruct') {
      const said = instructorMessageSchema.safeParse(data);
      const now = Date.now();
      if (!said.success || said.data.type !== 'instruct') fault();
      else if (!mayGuess(now)) return;
      else if (!sameSecret(said.data.secret, secrets.secret)) wrongGuess(now, 'secret');
      else {
        rate = bucket(INSTRUCTOR_RATE, now);
        known({ role: 'instructor', leave: desk.addInstructor(line) });
      }
      return;
    }
    const said = learnerMessageSchema.safeParse(data);
    if (!said.success) fault();
    else if (said.data.type === 'join' || said.data.type === 'resume') await firstWord(said.data);
    else if (who.role === 'learner') await hearLearner(desk, who.id, line, said.data);
    else if (said.data.type === 'ping') line.say({ type: 'pong' });
    else refuse('unknown', said.data.id);
  }

  socket.on('message', (data: RawData, isBinary: boolean) => {
    const text = isBinary ? null : String(data as Buffer);
    const tooLong = text !== null && who.role !== 'instructor' && text.length > MOST_BYTES_LEARNER;
    if (text === null || tooLong) {
      fault();
      return;
    }
    if (!rate.take(Date.now())) {
      refuse('slow');
      if (++faults >= MOST_FAULTS) socket.close(CLOSE_POLICY);
      return;
    }
    // The disk refused: whoever is connected must not believe that anything is kept.
    turn = turn.then(() => hear(text)).catch(() => socket.close(CLOSE_BUSY));
  });
  socket.on('close', () => {
    clearTimeout(silent);
    if (who.role !== 'nobody') who.leave();
    who = { role: 'nobody' };
  });
  socket.on('error', () => socket.terminate());
}
