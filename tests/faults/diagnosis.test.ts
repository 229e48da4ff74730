/** Diagnosis: 200 simulated cases, what it must do at its limits, and that it never claims more than it knows. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  believe,
  diagnose,
  drawCase,
  faultCase,
  gains,
  groupsOf,
  NO_FAULT,
  placeReadings,
  rank,
  type Reading,
  readingRandom,
  SOMETHING_ELSE,
  takeReading,
} from '../../src/core/faults';
import { seededRandom } from '../../src/core/kernel';
import { plant, signatures } from './bench-of-alder-one';

const beliefOf = (readings: readonly Reading[]) => {
  const placed = placeReadings(signatures, readings);
  if (!placed.ok) throw new Error(JSON.stringify(placed.faults));
  return believe(signatures, placed.value);
};
const shareOf = (readings: readonly Reading[], id: string): number =>
  beliefOf(readings).hypotheses[signatures.hypotheses.findIndex((h) => h.id === id)]!;
const told = (readings: readonly Reading[], offered?: readonly string[]) => {
  const result = diagnose(plant, signatures, readings, offered);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
};

describe('200 simulated cases', () => {
  it('name the fault, or its group, first in at least 90 %, and are sure only as often as they are right', () => {
    const groups = groupsOf(signatures);
    let first = 0;
    let claimed = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const drawn = drawCase(plant, seededRandom(seed));
      const readings = plant.book.measurements.flatMap(
        (m, at) => takeReading(plant, drawn, m, readingRandom(seed, at)) ?? [],
      );
      const [top] = rank(signatures, beliefOf(readings), groups, false);
      claimed += top!.probability;
      if (top!.ids.includes(drawn.hypothesis)) first++;
    }
    expect(first).toBeGreaterThanOrEqual(180);
    // 200 cases tell a share to about 2 % (one standard error)
    expect(Math.abs(claimed - first) / 200).toBeLessThan(0.06);
  });
});

describe('belief', () => {
  it('without a measurement is the priors', () => {
    const belief = beliefOf([]);
    signatures.hypotheses.forEach((h, i) => expect(belief.hypotheses[i]).toBeCloseTo(h.prior, 12));
  });
  it('sums to 1 and does not hang on the order of the readings', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 2, max: 12 }), (seed, count) => {
        const random = seededRandom(seed);
        const drawn = drawCase(plant, random);
        const readings = plant.book.measurements
          .map((m) => ({ m, at: random.next() }))
          .sort((a, b) => a.at - b.at)
          .slice(0, count)
          .flatMap(({ m }) => takeReading(plant, drawn, m, random) ?? []);
        const one = beliefOf(readings).hypotheses;
        const other = beliefOf([...readings].reverse()).hypotheses;
        expect(one.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
        one.forEach((p, i) => expect(Math.abs(p - other[i]!)).toBeLessThan(0.02));
      }),
      { seed: 3, numRuns: 8 },
    );
  });
  it('a coarser reading tells less', () => {
    const reading = (sd: number): Reading[] => [{ measurement: 'vpm-high', value: 25, sd }];
    const shares = [1, 3, 10, 100].map((sd) => shareOf(reading(sd), 'motor-weak'));
    for (let i = 1; i < shares.length; i++) expect(shares[i]).toBeLessThan(shares[i - 1]! + 1e-12);
    const prior = signatures.hypotheses.find((h) => h.id === 'motor-weak')!.prior;
    expect(Math.abs(shares.at(-1)! - prior)).toBeLessThan(0.4 * prior);
  });
  it('readings of a sound machine speak for no fault', () => {
    const sound = faultCase(plant, null, seededRandom(4));
    const readings = plant.book.measurements.flatMap(
      (m, at) => takeReading(plant, sound, m, readingRandom(4, at)) ?? [],
    );
    expect(shareOf(readings, NO_FAULT)).toBeGreaterThan(0.6);
  });
  it('readings that no fault of the book explains make something else grow to the first place', () => {
    const odd: Reading[] = [
      { measurement: 'amplitude-high', value: 3.2e-3 },
      { measurement: 'sag-left', value: 25e-3 },
      { measurement: 'relief-pressure', value: 48e6 },
    ];
    const shares = [0, 1, 2, 3].map((n) => shareOf(odd.slice(0, n), SOMETHING_ELSE));
    for (let i = 1; i < shares.length; i++) expect(shares[i]).toBeGreaterThan(shares[i - 1]!);
    expect(told(odd).ranking[0]!.ids).toEqual([SOMETHING_ELSE]);
  });
  it('what is not known is no evidence: oil in the chamber stands as it stood after LOW', () => {
    const flooded = signatures.states.findIndex(
      (s) => signatures.hypotheses[s.hypothesis]!.id === 'housing-cracked' && s.severity === 1,
    );
    const low = signatures.measurements.findIndex((m) => m.id === 'amplitude-low');
    expect(signatures.states[flooded]!.numbers[low]).toBeNull();
    // averaged over what is read, the weight of the state stays
    const before = beliefOf([]).weights[flooded]!;
    let after = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const drawn = drawCase(plant, seededRandom(seed));
      const m = plant.book.measurements[low]!;
      after += beliefOf([takeReading(plant, drawn, m, seededRandom(seed))!]).weights[flooded]! / 60;
    }
    expect(after / before).toBeGreaterThan(0.7);
    expect(after / before).toBeLessThan(1.4);
  });
});

describe('diagnosis', () => {
  it('says why: the reading that speaks for the answer comes first', () => {
    const { ranking } = told([
      { measurement: 'amplitude-high', value: 1.45e-3 },
      { measurement: 'scraper-gap', value: 0.0205 },
    ]);
    expect(ranking[0]!.ids).toEqual(['shot-lost']);
    expect(ranking[0]!.why[0]!.measurement).toBe('amplitude-high');
    expect(ranking[0]!.why[0]!.logOdds).toBeGreaterThan(1);
  });
  it('names as one what the measurements on offer cannot tell apart, and parts it when they can', () => {
    const few = ['oil-level', 'amplitude-high', 'temperature-right'];
    const together = told([{ measurement: 'oil-level', value: 0.02 }], few);
    expect(
      together.groups.some((g) => g.includes('case-overfilled') && g.includes('motor-seal-leaking')),
    ).toBe(true);
    expect(together.ranking[0]!.ids).toEqual(
      expect.arrayContaining(['case-overfilled', 'motor-seal-leaking']),
    );
    const all = told([{ measurement: 'oil-level', value: 0.02 }]);
    expect(all.groups.some((g) => g.includes('case-overfilled') && g.includes('motor-seal-leaking'))).toBe(
      false,
    );
    const gain = all.next.find((g) => g.measurement === 'level-rise')!;
    expect(gain.bits).toBeGreaterThan(0.2);
  });
  it('expects no more from a measurement than there is doubt, and never less than nothing', () => {
    for (const readings of [[], [{ measurement: 'vpm-high', value: 26 }]]) {
      const { next, doubt_bits } = told(readings);
      for (const gain of next) {
        expect(gain.bits).toBeGreaterThanOrEqual(0);
        expect(gain.bits).toBeLessThanOrEqual(doubt_bits);
      }
      expect(next.some((g) => readings.some((r) => r.measurement === g.measurement))).toBe(false);
    }
  });
  it('does gain, on average, what it expects to gain', () => {
    const start = beliefOf([]);
    const entropy = (p: Float64Array): number =>
      p.reduce((sum, q) => (q > 0 ? sum - q * Math.log2(q) : sum), 0);
    const expected = gains(signatures, start).find((g) => g.measurement === 'vpm-high')!.bits;
    const at = signatures.measurements.findIndex((m) => m.id === 'vpm-high');
    const m = plant.book.measurements[at]!;
    if (m.kind !== 'number') throw new Error('vpm-high is a number');
    const random = seededRandom(8);
    const pick = (weights: readonly number[]): number => {
      let left = random.next() * weights.reduce((a, b) => a + b, 0);
      return Math.max(
        0,
        weights.findIndex((w) => (left -= w) < 0),
      );
    };
    const draws = 1500;
    let mean = 0;
    for (let i = 0; i < draws; i++) {
      const h = pick(signatures.hypotheses.map((each) => each.prior));
      const from = signatures.states.filter((s) => s.hypothesis === h);
      const loose = from.length === 0 && random.next() < signatures.oddShare;
      const state = from[random.index(from.length)] ?? signatures.states[0]!;
      const { mean: middle, slope } = state.numbers[at]!;
      const straying = slope.reduce((sum, s) => sum + s * random.normal(), 0);
      const value = loose
        ? random.between(...m.span)
        : middle + straying + m.methods[0]!.sd * random.normal();
      mean +=
        (entropy(start.hypotheses) - entropy(beliefOf([{ measurement: m.id, value }]).hypotheses)) / draws;
    }
    expect(Math.abs(mean - expected)).toBeLessThan(0.08);
  });
  it('refuses what it cannot read, all at once', () => {
    const result = diagnose(plant, signatures, [
      { measurement: 'no-such', value: 1 },
      { measurement: 'noise', value: 'loud' },
      { measurement: 'vpm-high', value: NaN },
      { measurement: 'vpm-low', value: 30, sd: 0 },
    ]);
    expect(result.ok).toBe(false);
    expect(!result.ok && result.faults.map((f) => f.path)).toEqual([
      'readings[0].measurement',
      'readings[1].value',
      'readings[2].value',
      'readings[3].sd',
    ]);
  });
});

describe('estimate of the shot', () => {
  const fault = plant.book.faults.find((f) => f.id === 'shot-lost')!;
  it('nine in ten lie within the span it gives', () => {
    let within = 0;
    let tries = 0;
    for (let seed = 1; seed <= 30; seed++) {
      const drawn = faultCase(plant, fault, seededRandom(seed), 0.1 + 0.75 * seededRandom(seed + 500).next());
      const take = (id: string): Reading | null => {
        const at = plant.book.measurements.findIndex((m) => m.id === id);
        return takeReading(plant, drawn, plant.book.measurements[at]!, readingRandom(seed, at), 1);
      };
      const readings = [take('amplitude-high'), take('amplitude-low')].flatMap((r) => r ?? []);
      if (readings.length < 2) continue;
      tries++;
      const shot = told(readings).shot;
      const true_kg = drawn.inputs.shot_share * plant.exciter.rest.shot_mass_kg;
      if (shot !== null && shot.mass_kg.low <= true_kg && true_kg <= shot.mass_kg.high) within++;
    }
    expect(tries).toBeGreaterThan(25);
    expect(within / tries).toBeGreaterThan(0.75);
  });
  it('is not given for amplitudes that no charge explains', () => {
    const { shot } = told([
      { measurement: 'amplitude-high', value: 0.3e-3 },
      { measurement: 'amplitude-low', value: 2.8e-3 },
    ]);
    expect(shot).toBeNull();
  });
});
