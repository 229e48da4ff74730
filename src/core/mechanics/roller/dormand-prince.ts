/**
 * Ordinary differential equations y' = f(t, y) with a bound on the error of each step: the embedded pair of orders
 * 5 and 4 of Dormand and Prince, carried on with order 5. Source: E. Hairer, S. P. Norsett, G. Wanner, Solving
 * Ordinary Differential Equations I, 2nd ed., section II.5, table 5.2 (coefficients from memory; their order is
 * tested).
 */

/** Writes f(t, y) into `out`. */
export type Derivative = (t: number, y: Float64Array, out: Float64Array) => void;

const C = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1] as const;
const A: readonly (readonly number[])[] = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
];
/** Difference of the two orders: the estimate of a step's error. */
const E = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40] as const;

const SAFETY = 0.9;
const SHRINK = 0.2;
const GROW = 5;

export interface Stepper {
  /** Goes from `t` to `end`, changing `y`; false when the steps run out or the numbers overflow. */
  advance(y: Float64Array, t: number, end: number): boolean;
  /** Steps tried so far, refused ones included. */
  readonly steps: number;
}

/**
 * @param bound largest error of one step, by component; Infinity: the component does not steer the steps
 * @param firstStep size of the first try
 * @param mostSteps steps that may be tried in all
 */
export function dormandPrince(
  f: Derivative,
  bound: Float64Array,
  firstStep: number,
  mostSteps: number,
): Stepper {
  const n = bound.length;
  const k = Array.from({ length: 7 }, () => new Float64Array(n));
  const trial = new Float64Array(n);
  let step = firstStep;
  let steps = 0;

  /** Tries one step: the new state in `trial`, its error as a share of the bound. */
  const attempt = (y: Float64Array, t: number, h: number): number => {
    f(t, y, k[0]!);
    for (let stage = 1; stage < 7; stage++) {
      const row = A[stage]!;
      for (let i = 0; i < n; i++) {
        let sum = 0;
        for (let j = 0; j < stage; j++) sum += row[j]! * k[j]![i]!;
        trial[i] = y[i]! + h * sum;
      }
      f(t + C[stage]! * h, trial, k[stage]!);
    }
    let worst = 0;
    for (let i = 0; i < n; i++) {
      if (bound[i] === Infinity) continue;
      let error = 0;
      for (let j = 0; j < 7; j++) error += E[j]! * k[j]![i]!;
      const share = Math.abs(h * error) / bound[i]!;
      // a state that is no number any more counts as the worst error there is
      worst = share <= worst ? worst : Number.isFinite(share) ? share : Infinity;
    }
    return worst;
  };

  return {
    get steps() {
      return steps;
    },
    advance(y, t, end) {
      let at = t;
      while (at < end) {
        if (steps++ >= mostSteps) return false;
        const left = end - at;
        const h = Math.min(step, left);
        const worst = attempt(y, at, h);
        const factor = worst === 0 ? GROW : Math.min(GROW, Math.max(SHRINK, SAFETY * worst ** -0.2));
        if (worst <= 1) {
          y.set(trial);
          at = h === left ? end : at + h;
          // the last step before a stop is cut short and says little about the next
          step = h < step ? Math.max(step, h * factor) : h * factor;
        } else {
          step = h * (worst === Infinity ? SHRINK : factor);
          if (!(at + step > at)) return false;
        }
      }
      return true;
    },
  };
}
