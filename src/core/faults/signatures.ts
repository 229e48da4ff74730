/**
 * Signatures: what each state of the machine would show, computed once for a machine and its fault book.
 *
 * A number is its mean and how it moves when each input strays by one standard deviation of sound machines (first
 * order, by differences). So two readings that stray together (both amplitudes on a softer bed) are known to do so.
 */
import { INPUT_NAMES } from './inputs';
import type { Plant } from './plant';
import { readingsOf } from './readings';
import type { ReadingName } from './reading-names';
import type { FaultEntry, Measurement } from './schema';
import { faultyInputs, NO_FAULT, severities, signChances, SOMETHING_ELSE } from './states';

export interface Prediction {
  readonly mean: number;
  /** Change for one standard deviation of each straying input. */
  readonly slope: Float64Array;
}

export interface State {
  /** Place of its hypothesis. */
  readonly hypothesis: number;
  readonly severity: number;
  /** Share among the states of its hypothesis. */
  readonly share: number;
  /** By place of the measurement; null: not known here, or a sign. */
  readonly numbers: readonly (Prediction | null)[];
  readonly signs: readonly (readonly number[] | null)[];
}

export interface Hypothesis {
  readonly id: string;
  readonly prior: number;
  readonly fault: FaultEntry | null;
}

export interface Signatures {
  readonly measurements: readonly Measurement[];
  /** 'no-fault' first, then the faults, 'something-else' last (it has no states). */
  readonly hypotheses: readonly Hypothesis[];
  readonly states: readonly State[];
  /** Chance of an odd reading when the cause is none of the book. */
  readonly oddShare: number;
  /** Number of straying inputs. */
  readonly strays: number;
}

/** Computes the signatures, a fault at a time: each step of the generator is one fault, so that a page stays alive. */
export function* signatureSteps(plant: Plant): Generator<number, Signatures> {
  const { book } = plant;
  const weights = [
    book.hypotheses.no_fault,
    ...book.faults.map((f) => f.prior),
    book.hypotheses.something_else,
  ];
  const total = weights.reduce((a, b) => a + b, 0);
  const faults = [null, ...book.faults, null];
  const hypotheses: Hypothesis[] = faults.map((fault, i) => ({
    id: fault?.id ?? (i === 0 ? NO_FAULT : SOMETHING_ELSE),
    prior: weights[i]! / total,
    fault,
  }));
  const straying = INPUT_NAMES.filter((name) => plant.spread[name] > 0);
  const states: State[] = [];
  for (let h = 0; h < hypotheses.length - 1; h++) {
    const fault = hypotheses[h]!.fault;
    const levels = fault === null ? [0] : severities(fault);
    for (const severity of levels) {
      const at = (base: typeof plant.sound) => readingsOf(plant, faultyInputs(plant, base, fault, severity));
      const here = at(plant.sound);
      const moved = straying.map((name) => {
        const nudge = (sign: number) =>
          at({ ...plant.sound, [name]: plant.sound[name] + sign * plant.spread[name] }).numbers;
        return { up: nudge(1), down: () => nudge(-1) };
      });
      const numbers = book.measurements.map((m): Prediction | null => {
        const mean = m.kind === 'number' ? here.numbers[m.id as ReadingName] : null;
        if (mean === null) return null;
        const slope = Float64Array.from(moved, ({ up, down }) => {
          const above = up[m.id as ReadingName];
          if (above !== null) return above - mean;
          // At the end of the table one side is unknown; the other tells the slope.
          const below = down()[m.id as ReadingName];
          return below === null ? 0 : mean - below;
        });
        return { mean, slope };
      });
      const signs = book.measurements.map((m) =>
        m.kind === 'look' ? signChances(m, fault, severity, here.signs) : null,
      );
      states.push({ hypothesis: h, severity, share: 1 / levels.length, numbers, signs });
    }
    yield (h + 1) / (hypotheses.length - 1);
  }
  return {
    measurements: book.measurements,
    hypotheses,
    states,
    oddShare: book.hypotheses.odd_share,
    strays: straying.length,
  };
}

/** The signatures at one go. */
export function signaturesOf(plant: Plant): Signatures {
  const steps = signatureSteps(plant);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
