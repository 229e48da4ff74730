/** Rates: a bucket of so many, filled again by so many a second. */
export interface Rate {
  readonly most: number;
  readonly perSecond: number;
}

export interface Bucket {
  /** Takes one; false when there is none left. */
  take(now_ms: number): boolean;
  /** Whether it is full again, so that it need not be remembered. */
  full(now_ms: number): boolean;
  /** Whether one is left, without taking it. */
  has(now_ms: number): boolean;
}

export function bucket({ most, perSecond }: Rate, start_ms: number): Bucket {
  let left = most;
  let at_ms = start_ms;
  const fill = (now_ms: number): void => {
    left = Math.min(most, left + (Math.max(0, now_ms - at_ms) / 1000) * perSecond);
    at_ms = now_ms;
  };
  return {
    take(now_ms) {
      fill(now_ms);
      if (left < 1) return false;
      left--;
      return true;
    },
    has(now_ms) {
      fill(now_ms);
      return left >= 1;
    },
    full(now_ms) {
      fill(now_ms);
      return left >= most;
    },
  };
}

const MOST_REMEMBERED = 10_000;

/** A bucket for each key, such as an address; full ones are forgotten when there are too many. */
export function buckets(rate: Rate): (key: string, now_ms: number) => Bucket {
  const known = new Map<string, Bucket>();
  return (key, now_ms) => {
    const found = known.get(key);
    if (found !== undefined) return found;
    if (known.size >= MOST_REMEMBERED)
      for (const [each, held] of known) if (held.full(now_ms)) known.delete(each);
    const made = bucket(rate, now_ms);
    // Where even that does not help, somebody sends from very many addresses: they share one.
    if (known.size >= MOST_REMEMBERED) return known.get([...known.keys()][0]!)!;
    known.set(key, made);
    return made;
  };
}
