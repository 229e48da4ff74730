/**
 * Benchmark of the diagnosis: how often the hidden fault stands first, beside always naming the commonest one, and the
 * calibration curve: in bins of what was claimed, how often it was right.
 */
import { resolve } from 'node:path';
import {
  believe,
  createPlant,
  drawCase,
  gains,
  groupsOf,
  parseFaultBook,
  placeReadings,
  rank,
  readingRandom,
  signaturesOf,
  takeReading,
} from '../../src/core/faults';
import { buildMachine, kindMasses, loadSolidKernel } from '../../src/core/geometry';
import { seededRandom } from '../../src/core/kernel';
import { parseModel } from '../../src/core/studies';
import { readFaultFolder, readFitFiles, readModelFolder } from '../../src/edge/content/model-files';
import type { Measure, Row } from './row';

const BINS = [0, 0.5, 0.7, 0.9, 0.97, 1] as const;

export const measure: Measure = async (long) => {
  const folder = resolve(import.meta.dirname, '../../models/alder-one');
  const model = parseModel([...readModelFolder(folder), ...readFitFiles(folder)]);
  if (!model.ok) throw new Error(JSON.stringify(model.faults.slice(0, 3)));
  const { machine } = model.value.source;
  const book = parseFaultBook(readFaultFolder(folder), machine);
  if (!book.ok) throw new Error(JSON.stringify(book.faults.slice(0, 3)));
  const solids = buildMachine(await loadSolidKernel(), machine);
  const plant = createPlant(machine, solids, kindMasses(machine, solids), model.value.fit, book.value);
  if (plant === null) throw new Error('bench/diagnosis: no bench');
  const signatures = signaturesOf(plant);
  const groups = groupsOf(signatures);
  const cases = long ? 2000 : 400;
  /** All measurements, and the greedy first five: with little measured claims are modest, and must still be true. */
  const ways = ['all', 'five'] as const;
  const rows: Row[] = [];
  const { no_fault } = plant.book.hypotheses;
  const commonest = Math.max(no_fault, ...plant.book.faults.map((f) => f.prior));
  const all = plant.book.faults.reduce((sum, f) => sum + f.prior, no_fault);
  for (const way of ways) {
    const bins = BINS.slice(1).map(() => ({ count: 0, claimed: 0, right: 0 }));
    let first = 0;
    for (let seed = 1; seed <= cases; seed++) {
      const drawn = drawCase(plant, seededRandom(700_000 + seed));
      const read = (at: number) =>
        takeReading(plant, drawn, plant.book.measurements[at]!, readingRandom(700_000 + seed, at)) ?? [];
      const place = (ats: readonly number[]) => {
        const placed = placeReadings(
          signatures,
          ats.flatMap((at) => read(at)),
        );
        if (!placed.ok) throw new Error('bench/diagnosis: readings');
        return believe(signatures, placed.value);
      };
      let taken: number[] = way === 'all' ? plant.book.measurements.map((_, at) => at) : [];
      let belief = place(taken);
      while (way === 'five' && taken.length < 5) {
        const best = gains(signatures, belief).reduce((a, b) => (b.bits > a.bits ? b : a));
        taken = [...taken, plant.book.measurements.findIndex((m) => m.id === best.measurement)];
        belief = place(taken);
      }
      const top = rank(signatures, belief, groups, false)[0]!;
      const right = top.ids.includes(drawn.hypothesis);
      if (right) first++;
      const at = BINS.findIndex((edge, i) => i > 0 && top.probability <= edge) - 1;
      const bin = bins[Math.max(0, at)]!;
      bin.count++;
      bin.claimed += top.probability;
      bin.right += right ? 1 : 0;
    }
    rows.push({
      name: `diagnosis first, ${way === 'all' ? 'all measurements' : 'five that tell most'}`,
      unit: '%',
      ours: (100 * first) / cases,
      baseline: 'always the commonest answer',
      baseline_value: (100 * commonest) / all,
      more_is_better: true,
      note: `${cases} simulated cases`,
    });
    bins.forEach((bin, i) => {
      if (bin.count === 0) return;
      rows.push({
        name: `right when ${Math.round(100 * BINS[i]!)} to ${Math.round(100 * BINS[i + 1]!)} % is claimed, ${way}`,
        unit: '%',
        ours: (100 * bin.right) / bin.count,
        baseline: 'mean of what was claimed',
        baseline_value: (100 * bin.claimed) / bin.count,
        more_is_better: true,
        note: `calibration: the nearer to 1 the ratio, the better; ${bin.count} cases`,
      });
    });
  }
  return rows;
};
