/**
 * What a phone keeps of a class until the host has confirmed it: its token, its number, and answers on their way. Kept
 * before anything is sent, so that neither a reload nor a lost network loses an answer.
 */
import { tidyCode } from '../../core/classroom';
import type { Answer, Certainty } from '../../core/quiz';

export interface OutAnswer {
  /** Given back by the host with its confirmation. */
  readonly id: string;
  readonly session: string;
  readonly question: number;
  readonly revision: number;
  readonly answer: Answer;
  readonly certainty: Certainty;
}

export interface KeptSeat {
  readonly token: string;
  readonly code: string;
  readonly seat: number;
  readonly name: string | null;
  /** Answers given so far by this phone; the next one has the next number. */
  readonly revision: number;
  readonly outbox: readonly OutAnswer[];
}

/** 192 random bits. */
export function newToken(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(24));
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_');
}

export const seatAt = (
  before: KeptSeat | null,
  code: string,
  seat: number,
  name: string | null,
): KeptSeat => ({
  token: before?.token ?? newToken(),
  code: tidyCode(code),
  seat,
  name,
  revision: before?.revision ?? 0,
  outbox: before?.outbox ?? [],
});

/** An answer put on its way; an older one to the same question is not needed any more. */
export function withAnswer(
  kept: KeptSeat,
  given: Pick<OutAnswer, 'session' | 'question' | 'answer' | 'certainty'>,
): { readonly kept: KeptSeat; readonly out: OutAnswer } {
  const revision = kept.revision + 1;
  const out = { ...given, revision, id: `${given.question}-${revision}` };
  const others = kept.outbox.filter(
    (each) => each.session !== given.session || each.question !== given.question,
  );
  return { out, kept: { ...kept, revision, outbox: [...others, out] } };
}

/** The host has it, or will never take it. */
export const settled = (kept: KeptSeat, id: string): KeptSeat => ({
  ...kept,
  outbox: kept.outbox.filter((each) => each.id !== id),
});

/** Kept text back; null when it is none. */
export function readSeat(text: string | null): KeptSeat | null {
  if (text === null) return null;
  try {
    const data = JSON.parse(text) as Partial<KeptSeat> | null;
    const fine =
      typeof data?.token === 'string' &&
      typeof data.code === 'string' &&
      typeof data.seat === 'number' &&
      typeof data.revision === 'number' &&
      Array.isArray(data.outbox);
    return fine ? { ...(data as KeptSeat), name: data.name ?? null } : null;
  } catch {
    return null;
  }
}
