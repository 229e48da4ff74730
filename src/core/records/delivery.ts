/** What a learning record store's answer to statements means, and how long to wait before the next try. */

/** `taken`: there now, or there already; `refused`: never as it is; the others stop everything for now. */
export type Delivery = 'taken' | 'refused' | 'too-large' | 'not-let-in' | 'no-store' | 'busy' | 'unreachable';

/**
 * @param status of HTTP; null where no answer came (no network, or the store does not let pages of this address ask)
 * A conflict (409) means that a statement of this id is there already: one statement counts as delivered then.
 * Source: ADL, Experience API 1.0.3, part 3, sections 2.1 and 3.2.
 */
export function deliveryOf(status: number | null): Delivery {
  if (status === null) return 'unreachable';
  if ((status >= 200 && status < 300) || status === 409) return 'taken';
  if (status === 401 || status === 403) return 'not-let-in';
  if (status === 404 || status === 405) return 'no-store';
  if (status === 413) return 'too-large';
  if (status === 408 || status === 429 || status >= 500) return 'busy';
  return 'refused';
}

const FIRST_WAIT_ms = 5000;
const LONGEST_WAIT_ms = 10 * 60_000;

/** Doubles with each failed try in a row, up to ten minutes. @param failed tries in a row, from 1 */
export const waitBefore_ms = (failed: number): number =>
  Math.min(LONGEST_WAIT_ms, FIRST_WAIT_ms * 2 ** Math.max(0, Math.min(20, failed - 1)));
