/**
 * Simulated cases: a machine with one fault (or none) and everything else straying as sound machines do, and what is
 * read on it with the error of the way it is read. The full physics is used, not the first-order signatures.
 */
import { panic, type Random, seededRandom } from '../kernel';
import { errorOf, type Reading } from './belief';
import { type BenchInputs, INPUT_NAMES, WHOLE_INPUTS } from './inputs';
import type { Plant } from './plant';
import { readingsOf, type Readings } from './readings';
import type { ReadingName } from './reading-names';
import type { FaultEntry, Measurement } from './schema';
import { faultyInputs, inSteps, NO_FAULT, severities, signChances } from './states';

export interface FaultCase {
  readonly hypothesis: string;
  readonly severity: number;
  readonly inputs: BenchInputs;
  readonly readings: Readings;
}

/** Inputs of a sound machine that strays as they do; counts and switches do not. */
export function strayInputs(plant: Plant, random: Random): BenchInputs {
  return Object.fromEntries(
    INPUT_NAMES.map((name) => [
      name,
      WHOLE_INPUTS.has(name)
        ? plant.sound[name]
        : clampedShare(name, plant.sound[name] + plant.spread[name] * random.normal()),
    ]),
  ) as BenchInputs;
}

/** Wear, play and drag are never below nothing. */
const clampedShare = (name: string, value: number): number =>
  name.startsWith('wear') || name === 'end_play_m' || name === 'brake_drag_Nm' ? Math.max(0, value) : value;

/** A case with this fault (null: none); `severity` left out is drawn. */
export function faultCase(
  plant: Plant,
  fault: FaultEntry | null,
  random: Random,
  severity: number = drawSeverity(fault, random),
): FaultCase {
  const inputs = faultyInputs(plant, strayInputs(plant, random), fault, severity);
  return { hypothesis: fault?.id ?? NO_FAULT, severity, inputs, readings: readingsOf(plant, inputs) };
}

function drawSeverity(fault: FaultEntry | null, random: Random): number {
  if (fault === null) return 0;
  const levels = severities(fault);
  return inSteps(fault) ? levels[random.index(levels.length)]! : random.next();
}

/** Draws the fault by how often it is met, then the case; none of its readings is unknown (asked for up to 60 times). */
export function drawCase(plant: Plant, random: Random): FaultCase {
  const { faults, hypotheses } = plant.book;
  const total = faults.reduce((sum, f) => sum + f.prior, hypotheses.no_fault);
  for (let tries = 0; tries < 60; tries++) {
    let left = random.next() * total - hypotheses.no_fault;
    const fault = left < 0 ? null : (faults.find((f) => (left -= f.prior) < 0) ?? null);
    const drawn = faultCase(plant, fault, random);
    if (
      plant.book.measurements.every(
        (m) => m.kind === 'look' || drawn.readings.numbers[m.id as ReadingName] !== null,
      )
    )
      return drawn;
  }
  return panic('faults/drawCase', 'case whose readings are all known', 'none in 60', 'one');
}

/** One measurement on a case by a way of taking it; null where the model does not know the reading. */
export function takeReading(
  plant: Plant,
  of: FaultCase,
  m: Measurement,
  random: Random,
  method = 0,
): Reading | null {
  if (m.kind === 'number') {
    const value = of.readings.numbers[m.id as ReadingName];
    if (value === null) return null;
    const read = value + errorOf(m, value, method) * random.normal();
    return { measurement: m.id, value: read, sd: errorOf(m, read, method) };
  }
  const fault = plant.book.faults.find((f) => f.id === of.hypothesis) ?? null;
  const chances = signChances(m, fault, of.severity, of.readings.signs);
  if (chances === null) return null;
  let left = random.next();
  const outcome = chances.findIndex((p) => (left -= p) < 0);
  return { measurement: m.id, value: m.outcomes[outcome < 0 ? m.outcomes.length - 1 : outcome]! };
}

/** A source of random numbers of its own for each measurement, so that the order they are taken in changes nothing. */
export const readingRandom = (seed: number, place: number): Random =>
  seededRandom(seed * 1009 + place * 7919 + 17);
