/**
 * What a further measurement can be expected to tell about which fault it is: mutual information of hypothesis and
 * reading, in bits (D. V. Lindley, Ann. Math. Statist. 27 (1956) 986, from memory), and the same for each minute.
 */
import { type Belief, BLUNDER, errorOf, predicted } from './belief';
import type { Measurement } from './schema';
import type { Signatures } from './signatures';

export interface Gain {
  readonly measurement: string;
  readonly minutes: number;
  readonly bits: number;
  readonly bitsPerMinute: number;
}

const BINS = 240;
/** States lighter than this do not matter. */
const LIGHT = 1e-5;

/** Gains of all measurements on offer that are not taken yet, the most for a minute first. */
export function gains(signatures: Signatures, belief: Belief, offered?: readonly string[]): readonly Gain[] {
  const taken = new Set(belief.readings.map((r) => r.at));
  return signatures.measurements
    .flatMap((m, at): Gain[] => {
      if (taken.has(at) || offered?.includes(m.id) === false) return [];
      const bits = Math.max(0, m.kind === 'look' ? lookBits(signatures, belief, at) : numberBits(signatures, belief, m, at)); // prettier-ignore
      return [{ measurement: m.id, minutes: m.minutes, bits, bitsPerMinute: bits / m.minutes }];
    })
    .sort((a, b) => b.bitsPerMinute - a.bitsPerMinute);
}

function lookBits(signatures: Signatures, belief: Belief, at: number): number {
  const m = signatures.measurements[at]!;
  if (m.kind !== 'look') return 0;
  const count = m.outcomes.length;
  const rows = emptyRows(signatures, count);
  signatures.states.forEach((state, s) => {
    const chances = state.signs[at];
    if (chances == null)
      rows.unknown[state.hypothesis] = rows.unknown[state.hypothesis]! + belief.weights[s]!;
    else add(rows, state.hypothesis, belief.weights[s]!, (bin) => chances[bin]!);
  });
  const sound = signatures.states[0]!.signs[at];
  const odd = signatures.oddShare;
  add(rows, signatures.hypotheses.length - 1, belief.elseWeight, (bin) => (1 - odd) * (sound?.[bin] ?? 1 / count) + odd / count); // prettier-ignore
  return information(rows);
}

function numberBits(signatures: Signatures, belief: Belief, m: Measurement, at: number): number {
  if (m.kind !== 'number') return 0;
  const known: { hypothesis: number; weight: number; mean: number; sd: number }[] = [];
  const unknown: [number, number][] = [];
  signatures.states.forEach((state, s) => {
    const weight = belief.weights[s]!;
    if (weight < LIGHT) return;
    const prediction = state.numbers[at];
    if (prediction == null) {
      unknown.push([state.hypothesis, weight]);
      return;
    }
    const { mean, variance } = predicted(prediction, belief.strays[s]!);
    known.push({
      hypothesis: state.hypothesis,
      weight,
      mean,
      sd: Math.hypot(errorOf(m, mean), Math.sqrt(variance)),
    });
  });
  const sound = signatures.states[0]!.numbers[at];
  let [low, high] = [Infinity, -Infinity];
  for (const { mean, sd } of known) {
    low = Math.min(low, mean - 4 * sd);
    high = Math.max(high, mean + 4 * sd);
  }
  if (belief.elseWeight > 1e-3 || known.length === 0) [low, high] = [Math.min(low, m.span[0]), Math.max(high, m.span[1])]; // prettier-ignore
  const width = (high - low) / BINS;
  const rows = emptyRows(signatures, BINS);
  for (const [hypothesis, weight] of unknown) rows.unknown[hypothesis] = rows.unknown[hypothesis]! + weight;
  const bump = (mean: number, sd: number): ((bin: number) => number) => {
    // Narrower than a bin counts as one bin wide.
    const wide = Math.max(sd, 0.6 * width);
    return (bin) => {
      const z = (low + (bin + 0.5) * width - mean) / wide;
      return Math.abs(z) > 5 ? 0 : (width / (wide * Math.sqrt(2 * Math.PI))) * Math.exp(-0.5 * z * z);
    };
  };
  const odd = signatures.oddShare;
  const even = 1 / BINS;
  for (const { hypothesis, weight, mean, sd } of known) {
    const at = bump(mean, sd);
    add(rows, hypothesis, weight, (bin) => (1 - BLUNDER) * at(bin) + BLUNDER * even);
  }
  const plain = sound == null ? () => even : bump(sound.mean, Math.hypot(errorOf(m, sound.mean), Math.sqrt(sound.slope.reduce((a, b) => a + b * b, 0)))); // prettier-ignore
  add(
    rows,
    signatures.hypotheses.length - 1,
    belief.elseWeight,
    (bin) => (1 - odd) * plain(bin) + odd * even,
  );
  return information(rows);
}

interface Rows {
  readonly joint: readonly Float64Array[];
  readonly unknown: Float64Array;
}

const emptyRows = (signatures: Signatures, bins: number): Rows => ({
  joint: signatures.hypotheses.map(() => new Float64Array(bins)),
  unknown: new Float64Array(signatures.hypotheses.length),
});

function add(rows: Rows, hypothesis: number, weight: number, density: (bin: number) => number): void {
  const row = rows.joint[hypothesis]!;
  for (let bin = 0; bin < row.length; bin++) row[bin] = row[bin]! + weight * density(bin);
}

/** Mutual information of the joint table, bits. States whose reading is not known expect what the others do. */
function information({ joint, unknown }: Rows): number {
  const bins = joint[0]!.length;
  const overall = new Float64Array(bins);
  for (const row of joint) for (let bin = 0; bin < bins; bin++) overall[bin] = overall[bin]! + row[bin]!;
  const known = overall.reduce((a, b) => a + b, 0);
  if (!(known > 0)) return 0;
  const unknownSum = unknown.reduce((a, b) => a + b, 0);
  const all = known + unknownSum;
  let bits = 0;
  joint.forEach((row, h) => {
    const mass = row.reduce((a, b) => a + b, 0) + unknown[h]!;
    if (!(mass > 0)) return;
    for (let bin = 0; bin < bins; bin++) {
      const whole = overall[bin]! / known;
      const p = (row[bin]! + unknown[h]! * whole) / all;
      if (p > 0) bits += p * Math.log2(p / ((mass / all) * whole));
    }
  });
  return bits;
}
