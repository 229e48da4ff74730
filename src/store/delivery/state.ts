/** Slow state of the delivery of statements to a learning record store. */

/** What a person sets; the secret is kept only where they ask for it. */
export interface DeliverySettings {
  readonly endpoint: string;
  readonly user: string;
  readonly secret: string;
  readonly keepSecret: boolean;
  /** Who learns: an account at a school. */
  readonly homePage: string;
  readonly name: string;
  /** Share of right answers that passes a test, 0 to 1. */
  readonly mastery: number;
}

export interface DeliveryState {
  /** Null: nothing is sent anywhere. */
  readonly settings: DeliverySettings | null;
  readonly phase: 'idle' | 'sending' | 'waiting' | 'stopped';
  /** Statements that wait, that the store has, that it will never take. */
  readonly queued: number;
  readonly sent: number;
  readonly refused: number;
  /** Why it waits or stopped: a key of the catalogue, and what the store itself said. */
  readonly trouble: { readonly key: string; readonly says: string } | null;
  /** Milliseconds of the clock at the next try; null: none is planned. */
  readonly next_ms: number | null;
}

export const INITIAL_DELIVERY: DeliveryState = {
  settings: null,
  phase: 'idle',
  queued: 0,
  sent: 0,
  refused: 0,
  trouble: null,
  next_ms: null,
};
