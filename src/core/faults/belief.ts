/**
 * Belief over the states of the machine after some readings, by Bayes' rule (T. Bayes, Phil. Trans. 53 (1763), from
 * memory). Severity and the straying of sound machines are summed over: severity on its grid, the straying inputs as
 * a normal vector that each reading narrows (R. E. Kalman, J. Basic Eng. 82 (1960) 35, from memory).
 *
 * Where a state's reading is not known, the reading is taken to be as likely as before anything was known: it is no
 * evidence for or against that state. 'Something else' expects each reading as on a sound machine or, with a stated
 * chance, anywhere in its span.
 */
import { fail, faultAt, message, ok, type Fault, type Result } from '../kernel';
import type { NumericMeasurement } from './schema';
import type { Prediction, Signatures, State } from './signatures';

/** What a person has read: a number with its standard error, or the outcome that was seen. */
export interface Reading {
  readonly measurement: string;
  readonly value: number | string;
  /** Standard error, SI; left out: that of the usual method. */
  readonly sd?: number | undefined;
}

/** A reading that the signatures know: places instead of names. */
export interface PlacedReading {
  readonly at: number;
  readonly number: number;
  readonly sd: number;
  /** Place of the outcome, -1 for a number. */
  readonly outcome: number;
}

/** What is known of the straying inputs in one state: mean and covariance, row by row. */
export interface Stray {
  readonly mean: Float64Array;
  readonly cov: Float64Array;
}

export interface Belief {
  /** Probability of each state; of 'something else' apart. */
  readonly weights: Float64Array;
  readonly elseWeight: number;
  /** By hypothesis, summing to 1. */
  readonly hypotheses: Float64Array;
  readonly strays: readonly Stray[];
  readonly readings: readonly PlacedReading[];
}

/** Chance that a number was misread altogether. */
export const BLUNDER = 0.01;

/** Standard error of a method at a reading. */
export const errorOf = (m: NumericMeasurement, value: number, method = 0): number => {
  const way = m.methods[method] ?? m.methods[0]!;
  return way.sd + way.share * Math.abs(value);
};

/** Readings checked against the measurements on offer; all faults at once, each with the reading's path. */
export function placeReadings(
  signatures: Signatures,
  readings: readonly Reading[],
): Result<readonly PlacedReading[]> {
  const faults: Fault[] = [];
  const placed: PlacedReading[] = [];
  const seen = new Set<string>();
  readings.forEach((reading, i) => {
    const at = signatures.measurements.findIndex((m) => m.id === reading.measurement);
    const m = signatures.measurements[at];
    const path = `readings[${i}]`;
    if (m === undefined || seen.has(reading.measurement)) {
      const values = signatures.measurements.map((each) => each.id);
      faults.push(
        faultAt(
          `${path}.measurement`,
          message('diagnose.expected.measurement', { values }),
          reading.measurement,
        ),
      );
      return;
    }
    seen.add(reading.measurement);
    if (m.kind === 'look') {
      const outcome = m.outcomes.indexOf(String(reading.value));
      if (outcome < 0)
        faults.push(faultAt(`${path}.value`, message('fault.one-of', { values: m.outcomes }), reading.value));
      else placed.push({ at, number: 0, sd: 0, outcome });
      return;
    }
    if (typeof reading.value !== 'number' || !Number.isFinite(reading.value)) {
      faults.push(faultAt(`${path}.value`, message('expected.number'), reading.value));
      return;
    }
    const sd = reading.sd ?? errorOf(m, reading.value);
    if (!(Number.isFinite(sd) && sd > 0))
      faults.push(faultAt(`${path}.sd`, message('expected.above', { limit: 0 }), reading.sd));
    else placed.push({ at, number: reading.value, sd, outcome: -1 });
  });
  return faults.length > 0 ? fail(faults) : ok(placed);
}

export const logNormal = (x: number, mean: number, variance: number): number =>
  -0.5 * ((x - mean) ** 2 / variance + Math.log(2 * Math.PI * variance));

/** Mean and variance (without the reading's own error) of a prediction. */
export function predicted({ mean, slope }: Prediction, stray: Stray): { mean: number; variance: number } {
  const p = slope.length;
  let at = mean;
  let variance = 0;
  for (let i = 0; i < p; i++) {
    const s = slope[i]!;
    if (s === 0) continue;
    at += s * stray.mean[i]!;
    for (let j = 0; j < p; j++) variance += s * slope[j]! * stray.cov[i * p + j]!;
  }
  return { mean: at, variance: Math.max(0, variance) };
}

function freshStray(p: number): { mean: Float64Array; cov: Float64Array } {
  const cov = new Float64Array(p * p);
  for (let i = 0; i < p; i++) cov[i * p + i] = 1;
  return { mean: new Float64Array(p), cov };
}

/** Narrows the straying inputs by one reading. */
function narrow(stray: Stray, slope: Float64Array, miss: number, variance: number): void {
  const p = slope.length;
  const gain = new Float64Array(p);
  for (let i = 0; i < p; i++) {
    let sum = 0;
    for (let j = 0; j < p; j++) if (slope[j] !== 0) sum += stray.cov[i * p + j]! * slope[j]!;
    gain[i] = sum;
  }
  for (let i = 0; i < p; i++) {
    const gi = gain[i]!;
    if (gi === 0) continue;
    stray.mean[i] = stray.mean[i]! + (gi * miss) / variance;
    for (let j = 0; j < p; j++) stray.cov[i * p + j] = stray.cov[i * p + j]! - (gi * gain[j]!) / variance;
  }
}

/** Density of a reading before anything is known: the mix of all states where it is known. */
function priorDensity(signatures: Signatures, r: PlacedReading): number {
  let sum = 0;
  let known = 0;
  for (const state of signatures.states) {
    const weight = signatures.hypotheses[state.hypothesis]!.prior * state.share;
    const density = plainDensity(state, r);
    if (density === null) continue;
    known += weight;
    sum += weight * density;
  }
  return known > 0 ? sum / known : 1;
}

/** Density of one reading by itself in a state, or null where it is not known. */
function plainDensity(state: State, r: PlacedReading): number | null {
  if (r.outcome >= 0) return state.signs[r.at]?.[r.outcome] ?? null;
  const prediction = state.numbers[r.at];
  if (prediction == null) return null;
  const spread = prediction.slope.reduce((sum, s) => sum + s * s, 0);
  return Math.exp(logNormal(r.number, prediction.mean, spread + r.sd * r.sd));
}

/** Density of being nowhere in particular. */
export function looseDensity(signatures: Signatures, r: PlacedReading): number {
  const m = signatures.measurements[r.at]!;
  return m.kind === 'look' ? 1 / m.outcomes.length : 1 / (m.span[1] - m.span[0]);
}

/** The belief after `readings`; with none it is the priors. */
export function believe(signatures: Signatures, readings: readonly PlacedReading[]): Belief {
  const { states, hypotheses, strays: p, oddShare } = signatures;
  const loose = readings.map((r) => looseDensity(signatures, r));
  const unknown = readings.map((r) => priorDensity(signatures, r));
  const log = new Float64Array(states.length + 1);
  const strays = states.map((state, s) => {
    const stray = freshStray(p);
    let sum = Math.log(hypotheses[state.hypothesis]!.prior * state.share);
    readings.forEach((r, i) => {
      if (r.outcome >= 0) {
        sum += Math.log(Math.max(1e-12, state.signs[r.at]?.[r.outcome] ?? unknown[i]!));
        return;
      }
      const prediction = state.numbers[r.at];
      if (prediction == null) {
        sum += Math.log(Math.max(1e-300, unknown[i]!));
        return;
      }
      const here = predicted(prediction, stray);
      const variance = here.variance + r.sd * r.sd;
      const fits = Math.log(1 - BLUNDER) + logNormal(r.number, here.mean, variance);
      const misread = Math.log(BLUNDER * loose[i]!);
      const top = Math.max(fits, misread);
      sum += top + Math.log(Math.exp(fits - top) + Math.exp(misread - top));
      if (fits > misread) narrow(stray, prediction.slope, r.number - here.mean, variance);
    });
    log[s] = sum;
    return stray;
  });
  const sound = states.find((state) => hypotheses[state.hypothesis]!.fault === null)!;
  log[states.length] = readings.reduce(
    (sum, r, i) =>
      sum + Math.log((1 - oddShare) * (plainDensity(sound, r) ?? loose[i]!) + oddShare * loose[i]!),
    Math.log(hypotheses[hypotheses.length - 1]!.prior),
  );
  const top = log.reduce((a, b) => Math.max(a, b), -Infinity);
  const raw = log.map((value) => Math.exp(value - top));
  const total = raw.reduce((a, b) => a + b, 0);
  const weights = raw.slice(0, states.length).map((w) => w / total);
  const elseWeight = raw[states.length]! / total;
  const shares = new Float64Array(hypotheses.length);
  states.forEach((state, s) => (shares[state.hypothesis] = shares[state.hypothesis]! + weights[s]!));
  shares[hypotheses.length - 1] = elseWeight;
  return { weights, elseWeight, hypotheses: shares, strays, readings };
}
