/**
 * Faults that no measurement on offer can tell apart. Two are one group when every severity of either looks like some
 * severity of the other: Bhattacharyya coefficient of all readings together (A. Bhattacharyya, Bull. Calcutta Math.
 * Soc. 35 (1943) 99, from memory) of at least `ALIKE`.
 */
import { errorOf } from './belief';
import type { Signatures, State } from './signatures';

const ALIKE = 0.75;

/** By hypothesis: the number of its group; hypotheses of one number cannot be told apart. */
export function groupsOf(signatures: Signatures, offered?: readonly string[]): readonly number[] {
  const { hypotheses, states, measurements } = signatures;
  const on = measurements.flatMap((m, at) => (offered?.includes(m.id) === false ? [] : [at]));
  const by = hypotheses.map((_, h) => states.filter((state) => state.hypothesis === h));
  const covered = (a: readonly State[], b: readonly State[]): boolean =>
    a.every((one) => b.some((other) => distance(signatures, one, other, on) <= -Math.log(ALIKE)));
  const group = hypotheses.map((_, h) => h);
  for (let a = 0; a < hypotheses.length - 1; a++)
    for (let b = a + 1; b < hypotheses.length - 1; b++) {
      if (group[a] === group[b] || !covered(by[a]!, by[b]!) || !covered(by[b]!, by[a]!)) continue;
      const [keep, drop] = [group[a]!, group[b]!];
      group.forEach((g, h) => (group[h] = g === drop ? keep : g));
    }
  return group;
}

/** Bhattacharyya distance of two states over the measurements `on`; where one is not known they do not differ. */
function distance(signatures: Signatures, a: State, b: State, on: readonly number[]): number {
  let sum = 0;
  for (const at of on) {
    const m = signatures.measurements[at]!;
    if (m.kind === 'look') {
      const [p, q] = [a.signs[at], b.signs[at]];
      if (p == null || q == null) continue;
      sum -= Math.log(
        Math.max(
          1e-9,
          p.reduce((total, each, i) => total + Math.sqrt(each * (q[i] ?? 0)), 0),
        ),
      );
      continue;
    }
    const [p, q] = [a.numbers[at], b.numbers[at]];
    if (p == null || q == null) continue;
    const variance = (mean: number, slope: Float64Array): number =>
      errorOf(m, mean) ** 2 + slope.reduce((total, s) => total + s * s, 0);
    const [v, w] = [variance(p.mean, p.slope), variance(q.mean, q.slope)];
    sum += (p.mean - q.mean) ** 2 / (4 * (v + w)) + 0.5 * Math.log((v + w) / (2 * Math.sqrt(v * w)));
    if (sum > 20) return sum;
  }
  return sum;
}
