/**
 * Seeded random numbers (mulberry32, public domain by T. Ettinger, 2017; 32-bit state, period 2^32).
 * Nothing in core draws unseeded numbers, so that every run can be repeated from its seed.
 */
export interface Random {
  /** Uniform in [0, 1). */
  next(): number;
  /** Uniform in [low, high). */
  between(low: number, high: number): number;
  /** Whole number in [0, count). */
  index(count: number): number;
  /** Standard normal by Box and Muller. */
  normal(): number;
}

/** A generator from a whole-number seed; throws when the seed is missing or not finite. */
export function seededRandom(seed: number): Random {
  if (!Number.isFinite(seed))
    throw new Error(`kernel/seededRandom: seed, got ${seed}, wanted a finite number`);
  let state = Math.trunc(seed) >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    next,
    between: (low, high) => low + (high - low) * next(),
    index: (count) => Math.floor(next() * count),
    normal: () => {
      const u = 1 - next();
      return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * next());
    },
  };
}
