/** From readings to a ranking with its reasons, what to measure next, and estimates. */
import { ok, type Result } from '../kernel';
import { believe, type Belief, placeReadings, type PlacedReading, type Reading } from './belief';
import { estimateShot, type ShotEstimate } from './estimate';
import { type Gain, gains } from './gain';
import { groupsOf } from './groups';
import type { Plant } from './plant';
import type { Signatures } from './signatures';

/** How one reading speaks for or against an answer: natural logarithm of the factor on its odds. */
export interface Contribution {
  readonly measurement: string;
  readonly logOdds: number;
}

export interface Ranked {
  /** Faults that no measurement on offer tells apart stand together, the likeliest first. */
  readonly ids: readonly string[];
  readonly probability: number;
  /** Severity of the likeliest, 0 mild to 1 severe, and its standard deviation; null where there is none. */
  readonly severity: { readonly mean: number; readonly sd: number } | null;
  readonly why: readonly Contribution[];
}

export interface Diagnosis {
  readonly ranking: readonly Ranked[];
  readonly next: readonly Gain[];
  /** Groups of more than one that the measurements on offer leave together. */
  readonly groups: readonly (readonly string[])[];
  readonly shot: ShotEstimate | null;
  /** Entropy of the answer, bits. */
  readonly doubt_bits: number;
}

/** How many of the ranking get their reasons worked out. */
const EXPLAINED = 4;
const MIN_P = 1e-12;

const logit = (p: number): number => {
  const q = Math.min(1 - MIN_P, Math.max(MIN_P, p));
  return Math.log(q / (1 - q));
};

/** Members of each group, in the order of the hypotheses. */
export function groupMembers(groups: readonly number[]): readonly (readonly number[])[] {
  const by = new Map<number, number[]>();
  groups.forEach((g, h) => by.set(g, [...(by.get(g) ?? []), h]));
  return [...by.values()];
}

const massOf = (belief: Belief, members: readonly number[]): number =>
  members.reduce((sum, h) => sum + belief.hypotheses[h]!, 0);

/**
 * Ranks the hypotheses of a belief, groups as one.
 * @param explain leave one reading out at a time to find what each contributes (costs a belief a reading)
 */
export function rank(
  signatures: Signatures,
  belief: Belief,
  groups: readonly number[],
  explain = true,
): readonly Ranked[] {
  const members = [...groupMembers(groups)].sort((a, b) => massOf(belief, b) - massOf(belief, a));
  const without = explain
    ? belief.readings.map((left) =>
        believe(
          signatures,
          belief.readings.filter((r) => r !== left),
        ),
      )
    : [];
  return members.map((group, place) => {
    const probability = massOf(belief, group);
    const order = [...group].sort((a, b) => belief.hypotheses[b]! - belief.hypotheses[a]!);
    const why =
      place < EXPLAINED
        ? without
            .map((other, i) => ({
              measurement: signatures.measurements[belief.readings[i]!.at]!.id,
              logOdds: logit(probability) - logit(massOf(other, group)),
            }))
            .sort((a, b) => Math.abs(b.logOdds) - Math.abs(a.logOdds))
        : [];
    return {
      ids: order.map((h) => signatures.hypotheses[h]!.id),
      probability,
      severity: severityOf(signatures, belief, order[0]!),
      why,
    };
  });
}

function severityOf(signatures: Signatures, belief: Belief, h: number): Ranked['severity'] {
  const fault = signatures.hypotheses[h]!.fault;
  if (fault === null || fault.levels === 1) return null;
  let [sum, first, second] = [0, 0, 0];
  signatures.states.forEach((state, s) => {
    if (state.hypothesis !== h) return;
    const w = belief.weights[s]!;
    sum += w;
    first += w * state.severity;
    second += w * state.severity ** 2;
  });
  if (!(sum > 0)) return null;
  const mean = first / sum;
  return { mean, sd: Math.sqrt(Math.max(0, second / sum - mean * mean)) };
}

const amplitude = (
  signatures: Signatures,
  readings: readonly PlacedReading[],
  id: string,
): { value_m: number; sd_m: number } | null => {
  const read = readings.find((r) => signatures.measurements[r.at]!.id === id);
  return read === undefined ? null : { value_m: read.number, sd_m: read.sd };
};

/**
 * Diagnoses from any subset of the measurements. Faults of the readings (no such measurement, no number) come back all
 * at once.
 * @param offered ids of the measurements that can be taken at all; left out: every one of the book
 */
export function diagnose(
  plant: Plant,
  signatures: Signatures,
  readings: readonly Reading[],
  offered?: readonly string[],
): Result<Diagnosis> {
  const placed = placeReadings(signatures, readings);
  if (!placed.ok) return placed;
  const belief = believe(signatures, placed.value);
  const groups = groupsOf(signatures, offered);
  const high = amplitude(signatures, placed.value, 'amplitude-high');
  const low = amplitude(signatures, placed.value, 'amplitude-low');
  return ok({
    ranking: rank(signatures, belief, groups),
    next: gains(signatures, belief, offered),
    groups: groupMembers(groups)
      .filter((group) => group.length > 1)
      .map((group) => group.map((h) => signatures.hypotheses[h]!.id)),
    shot: high === null || low === null ? null : estimateShot(plant, high, low),
    doubt_bits: belief.hypotheses.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0),
  });
}
