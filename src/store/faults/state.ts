/** Slow state of the fault bench: its readings, the training run, what is shown, and the bench once it is ready. */
import type { Feedback, Gain, Plant, Ranked, ShotEstimate, Signatures, TrainingRun } from '../../core/faults';

/** A machine on the bench with the signatures of its faults: worked out once for each machine. */
export interface FaultBench {
  readonly plant: Plant;
  readonly signatures: Signatures;
}

/** What a person has entered for one measurement; SI. A number that was typed badly is kept as null. */
export interface EnteredReading {
  readonly value: number | string | null;
  /** Null: the error of the way it is taken. */
  readonly sd: number | null;
  /** Place of the way it is taken. */
  readonly method: number;
}

/** The answer to the readings entered; `why`, `next` and `shot` follow a moment after the ranking. */
export interface FaultAnswer {
  readonly ranking: readonly Ranked[];
  readonly next: readonly Gain[];
  readonly groups: readonly (readonly string[])[];
  readonly shot: ShotEstimate | null;
  readonly doubt_bits: number;
  /** False until everything that follows the ranking is worked out. */
  readonly complete: boolean;
}

/** A case that was closed: what is kept of it. */
export interface ClosedCase {
  readonly seed: number;
  readonly truth: string;
  readonly committed: string;
  readonly right: boolean;
  readonly brier: number;
  readonly minutes: number;
}

export interface FaultsState {
  readonly phase: 'idle' | 'loading' | 'ready' | 'none' | 'failed';
  /** Share of the signatures that are worked out, 0 to 1. */
  readonly share: number;
  readonly bench: FaultBench | null;
  readonly readings: Readonly<Record<string, EnteredReading>>;
  /** Measurements that cannot be taken here. */
  readonly barred: readonly string[];
  readonly answer: FaultAnswer | null;
  readonly run: TrainingRun | null;
  readonly feedback: Feedback | null;
  readonly closed: readonly ClosedCase[];
  /** False where the browser keeps nothing over a reload. */
  readonly lasting: boolean;
  readonly shown: { readonly fault: string; readonly severity: number; readonly lever: 'high' | 'low' };
}

export const INITIAL_FAULTS: FaultsState = {
  phase: 'idle',
  share: 0,
  bench: null,
  readings: {},
  barred: [],
  answer: null,
  run: null,
  feedback: null,
  closed: [],
  lasting: true,
  shown: { fault: '', severity: 0.5, lever: 'high' },
};
