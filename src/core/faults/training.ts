/**
 * Training: a hidden fault by seed, measurements at a cost in minutes, a diagnosis with a confidence, and feedback.
 * A pure reducer; its whole state is a few plain values that can be kept and read back.
 */
import { seededRandom } from '../kernel';
import { believe, placeReadings, type Reading } from './belief';
import { drawCase, type FaultCase, readingRandom, takeReading } from './cases';
import { rank, type Ranked } from './diagnose';
import { gains } from './gain';
import { groupsOf } from './groups';
import type { Plant } from './plant';
import type { Signatures } from './signatures';

export interface TrainingRun {
  readonly seed: number;
  /** Measurements in the order they were taken, with the way of taking each. */
  readonly taken: readonly { readonly measurement: string; readonly method: number }[];
  readonly committed: { readonly hypothesis: string; readonly confidence: number } | null;
}

export type TrainingAction =
  | { readonly type: 'measure'; readonly measurement: string; readonly method: number }
  | { readonly type: 'commit'; readonly hypothesis: string; readonly confidence: number };

export const startTraining = (seed: number): TrainingRun => ({ seed, taken: [], committed: null });

/** What cannot be done (measured already, committed already, a confidence outside 0 to 1) leaves the run as it was. */
export function train(run: TrainingRun, action: TrainingAction): TrainingRun {
  if (run.committed !== null) return run;
  if (action.type === 'measure') {
    const { measurement, method } = action;
    if (run.taken.some((t) => t.measurement === measurement)) return run;
    return { ...run, taken: [...run.taken, { measurement, method }] };
  }
  if (!(action.confidence >= 0 && action.confidence <= 1)) return run;
  return { ...run, committed: { hypothesis: action.hypothesis, confidence: action.confidence } };
}

/** Reads a kept run; null when the text is not one of this book. */
export function resumeTraining(text: string, signatures: Signatures): TrainingRun | null {
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch {
    return null;
  }
  if (typeof found !== 'object' || found === null) return null;
  const { seed, taken, committed } = found as Record<string, unknown>;
  if (typeof seed !== 'number' || !Number.isSafeInteger(seed) || !Array.isArray(taken)) return null;
  let run = startTraining(seed);
  for (const each of taken as unknown[]) {
    const { measurement, method } = (each ?? {}) as Record<string, unknown>;
    const m = signatures.measurements.find((one) => one.id === measurement);
    if (m === undefined || typeof method !== 'number') return null;
    if (!(method === 0 || (m.kind === 'number' && m.methods[method] !== undefined))) return null;
    run = train(run, { type: 'measure', measurement: m.id, method });
  }
  if (committed === null || committed === undefined) return run;
  const { hypothesis, confidence } = committed as Record<string, unknown>;
  const known = signatures.hypotheses.some((h) => h.id === hypothesis);
  if (!known || typeof hypothesis !== 'string' || typeof confidence !== 'number') return null;
  return train(run, { type: 'commit', hypothesis, confidence });
}

/** The machine behind a seed. */
export const hiddenCase = (plant: Plant, seed: number): FaultCase => drawCase(plant, seededRandom(seed));

/** A reading on the hidden machine; the same however often and in whatever order it is asked for. */
export function trainingReading(
  plant: Plant,
  hidden: FaultCase,
  seed: number,
  measurement: string,
  method = 0,
): Reading | null {
  const at = plant.book.measurements.findIndex((m) => m.id === measurement);
  const m = plant.book.measurements[at];
  return m === undefined ? null : takeReading(plant, hidden, m, readingRandom(seed, at), method);
}

export const minutesOf = (plant: Plant, run: TrainingRun): number =>
  run.taken.reduce(
    (sum, t) => sum + (plant.book.measurements.find((m) => m.id === t.measurement)?.minutes ?? 0),
    0,
  );

export interface PathStep {
  readonly measurement: string;
  readonly minutes: number;
  readonly reading: Reading | null;
  /** Probability of the hidden fault (with its group) after this step. */
  readonly probability: number;
}

export interface Feedback {
  readonly truth: string;
  readonly severity: number;
  /** Faults that count as right: the group of the truth. */
  readonly group: readonly string[];
  readonly right: boolean;
  readonly minutes: number;
  /** What the learner's own readings bear out. */
  readonly ranking: readonly Ranked[];
  /** Probability that these readings give to what was committed. */
  readonly borneOut: number;
  /**
   * Brier score of the confidence: (confidence - outcome)^2, 0 best (G. W. Brier, Monthly Weather Review 78 (1950) 1,
   * from memory).
   */
  readonly brier: number;
  /** The way that takes the most information a minute at each step, until one answer stands out. */
  readonly best: readonly PathStep[];
}

/** One answer stands out. */
const SURE = 0.9;
/** Less than this is not worth walking to the machine for. */
const WORTH_BITS = 0.004;

/**
 * Feedback of a committed run; null before.
 * @param best the path of `pathSteps`, where it was worked out elsewhere
 */
export function feedbackOf(
  plant: Plant,
  signatures: Signatures,
  run: TrainingRun,
  best: readonly PathStep[] = [...pathSteps(plant, signatures, run.seed)],
): Feedback | null {
  if (run.committed === null) return null;
  const hidden = hiddenCase(plant, run.seed);
  const groups = groupsOf(signatures);
  const group = truthGroup(signatures, hidden.hypothesis);
  const readings = run.taken.flatMap(
    (t) => trainingReading(plant, hidden, run.seed, t.measurement, t.method) ?? [],
  );
  const placed = placeReadings(signatures, readings);
  const belief = believe(signatures, placed.ok ? placed.value : []);
  const ranking = rank(signatures, belief, groups);
  const { hypothesis, confidence } = run.committed;
  const right = group.includes(hypothesis);
  return {
    truth: hidden.hypothesis,
    severity: hidden.severity,
    group,
    right,
    minutes: minutesOf(plant, run),
    ranking,
    borneOut: ranking.find((r) => r.ids.includes(hypothesis))?.probability ?? 0,
    brier: (confidence - (right ? 1 : 0)) ** 2,
    best,
  };
}

/** The hypotheses that count as the hidden fault. */
function truthGroup(signatures: Signatures, hypothesis: string): readonly string[] {
  const groups = groupsOf(signatures);
  const truth = signatures.hypotheses.findIndex((h) => h.id === hypothesis);
  return signatures.hypotheses.filter((_, h) => groups[h] === groups[truth]).map((h) => h.id);
}

/** The greedy path on a hidden machine, step by step: each time the measurement that tells most for its minutes. */
export function* pathSteps(plant: Plant, signatures: Signatures, seed: number): Generator<PathStep, void> {
  const hidden = hiddenCase(plant, seed);
  const group = truthGroup(signatures, hidden.hypothesis);
  const readings: Reading[] = [];
  let belief = believe(signatures, []);
  for (;;) {
    const [next] = gains(signatures, belief);
    if (next === undefined || next.bits < WORTH_BITS) return;
    const reading = trainingReading(plant, hidden, seed, next.measurement);
    if (reading !== null) readings.push(reading);
    const placed = placeReadings(signatures, readings);
    if (placed.ok) belief = believe(signatures, placed.value);
    const probability = group.reduce(
      (sum, id) => sum + belief.hypotheses[signatures.hypotheses.findIndex((h) => h.id === id)]!,
      0,
    );
    yield { measurement: next.measurement, minutes: next.minutes, reading, probability };
    if (belief.hypotheses.some((p) => p > SURE) || probability > SURE) return;
  }
}
