/** `calc diagnose`: faults ranked from any subset of the measurements, and what to measure next. */
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { z } from 'zod';
import {
  createPlant,
  diagnose,
  parseFaultBook,
  type Plant,
  type Signatures,
  signaturesOf,
} from '../../../core/faults';
import { fail, message, ok, printFound, type Message, type Result } from '../../../core/kernel';
import { readFaultFolder } from '../../content/model-files';
import { defineCalculation } from '../calculation';
import { number, positive, text } from '../fields';
import { loadFit, loadModel } from '../model';

const MODELS = join(resolve(import.meta.dirname, '../../../..'), 'models');

interface Bench {
  readonly plant: Plant;
  readonly signatures: Signatures;
}

/** Benches already worked out by this process. */
const known = new Map<string, Result<Bench>>();

async function benchOf(model: string): Promise<Result<Bench>> {
  const found = known.get(model) ?? (await makeBench(model));
  known.set(model, found);
  return found;
}

async function makeBench(model: string): Promise<Result<Bench>> {
  const loaded = await loadModel(model);
  if (!loaded.ok) return loaded;
  const { machine, solids, masses } = loaded.value;
  const place = [join(MODELS, model), resolve(model)].find((path) => existsSync(path));
  const files = place === undefined ? [] : readFaultFolder(place);
  const none = fail<Bench>([
    { path: 'model', expected: message('calc.fault.bench'), found: printFound(model) },
  ]);
  if (files.length === 0) return none;
  const book = parseFaultBook(files, machine);
  const fit = loadFit(model);
  if (!book.ok) return book;
  if (!fit.ok) return fit;
  const plant = createPlant(machine, solids, masses, fit.value, book.value);
  return plant === null ? none : ok({ plant, signatures: signaturesOf(plant) });
}

const span = z
  .object({ mean: number('1'), low: number('1'), high: number('1') })
  .describe('mean, and the span that holds 9 times in 10');

export default defineCalculation({
  name: 'diagnose',
  answers: 'calc.diagnose.answers',
  source:
    'Bayes rule over simulated signatures; D. V. Lindley, Ann. Math. Statist. 27 (1956) 986 (from memory); chances of what is seen: common practice, no source',
  input: z.object({
    model: text(),
    readings: z
      .array(
        z.object({
          measurement: text(),
          value: z.union([z.number(), text()]).meta({ unit: 'SI of the measurement' }),
          sd: positive('SI of the measurement').optional(),
        }),
      )
      .default([]),
    offered: z.array(text()).optional(),
  }),
  output: z.object({
    ranking: z.array(
      z.object({
        faults: z.array(text()),
        probability: number('1'),
        severity: number('1').nullable(),
        why: z.array(z.object({ measurement: text(), log_odds: number('1') })),
      }),
    ),
    next: z.array(
      z.object({
        measurement: text(),
        minutes: number('min'),
        bits: number('bit'),
        bits_per_minute: number('bit/min'),
      }),
    ),
    groups: z.array(z.array(text())),
    doubt_bits: number('bit'),
    shot_mass_kg: span.nullable(),
    captured_share: span.nullable(),
  }),
  example: {
    model: 'alder-one',
    readings: [
      { measurement: 'amplitude-high', value: 1.5e-3 },
      { measurement: 'amplitude-low', value: 0.78e-3, sd: 0.05e-3 },
      { measurement: 'noise', value: 'even' },
    ],
  },
  run: async ({ model, readings, offered }) => {
    const bench = await benchOf(model);
    if (!bench.ok) return bench;
    const told = diagnose(bench.value.plant, bench.value.signatures, readings, offered);
    if (!told.ok) return told;
    const { ranking, next, groups, doubt_bits, shot } = told.value;
    const notes: Message[] = [message('calc.note.fault-training')];
    if (shot === null) notes.push(message('calc.note.no-shot'));
    else if (shot.atEdge) notes.push(message('calc.note.shot-edge'));
    if (ranking.some((r) => r.severity === null)) notes.push(message('calc.note.no-severity'));
    return ok({
      ranking: ranking.map((r) => ({
        faults: [...r.ids],
        probability: r.probability,
        severity: r.severity?.mean ?? null,
        why: r.why.map((w) => ({ measurement: w.measurement, log_odds: w.logOdds })),
      })),
      next: next.map((g) => ({
        measurement: g.measurement,
        minutes: g.minutes,
        bits: g.bits,
        bits_per_minute: g.bitsPerMinute,
      })),
      groups: groups.map((g) => [...g]),
      doubt_bits,
      shot_mass_kg: shot === null ? null : { ...shot.mass_kg },
      captured_share: shot === null ? null : { ...shot.captured },
      notes,
    });
  },
});
