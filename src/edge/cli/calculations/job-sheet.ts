/** `calc job-sheet`: the sheet of a job on a machine as data, with the values entered so far. */
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { z } from 'zod';
import { buildGraph } from '../../../core/assembly';
import { buildJobSheet, machineFor, parseJobs, planJob, textIn } from '../../../core/jobs';
import { fail, message, ok, printFound } from '../../../core/kernel';
import { exciterStudy, OWN_CHOICE } from '../../../core/studies';
import { readJobFiles } from '../../content/model-files';
import { defineCalculation } from '../calculation';
import { choice, number, outNumber, text } from '../fields';
import { loadFit, loadModel } from '../model';
import { say } from '../say';

const MODELS = join(resolve(import.meta.dirname, '../../../..'), 'models');
const value = z.union([z.number(), z.string(), z.boolean()]);

const numberOut = z.object({
  id: text(),
  label: text(),
  value: outNumber('SI'),
  to: outNumber('SI'),
  quantity: text(),
  source: text(),
  calculation: text(),
  training: z.boolean(),
  verdict: choice('good', 'bad', 'unknown').nullable(),
  notes: z.array(text()),
});

export default defineCalculation({
  name: 'job-sheet',
  answers: 'calc.job-sheet.answers',
  source: 'planner, solids and the calculations that each number names',
  input: z.object({ model: text(), job: text(), values: z.record(z.string(), value).default({}) }),
  output: z.object({
    title: text(),
    people: number('1'),
    time_s: number('s'),
    order_exists: z.boolean().nullable(),
    steps: z.array(
      z.object({
        number: number('1'),
        id: text(),
        phase: text(),
        text: text(),
        units: z.array(text()),
        items: z.array(number('1')),
        hold: z.boolean(),
        mass_kg: number('kg').nullable(),
        centre_m: z.array(number('m')).nullable(),
        by_hand: z.boolean().nullable(),
        supports: z.array(z.object({ kind: text(), what: text(), force_N: number('N') })),
        numbers: z.array(numberOut),
        fields: z.array(
          z.object({
            id: text(),
            min: outNumber('SI'),
            max: outNumber('SI'),
            from_manual: z.boolean(),
            optional: z.boolean(),
          }),
        ),
      }),
    ),
    sources: z.array(text()),
  }),
  example: { model: 'alder-one', job: 'exciter-oil', values: {} },
  run: async ({ model, job: jobId, values }) => {
    const loaded = await loadModel(model);
    if (!loaded.ok) return loaded;
    const { machine, solids, masses, graph } = loaded.value;
    const folder = [join(MODELS, model), resolve(model)].find((path) => existsSync(path)) ?? model;
    const jobs = parseJobs(readJobFiles(folder), machine);
    if (!jobs.ok) return jobs;
    const job = jobs.value.find((j) => j.id === jobId);
    if (job === undefined)
      return fail([{ path: 'job', expected: message('calc.fault.job'), found: printFound(jobId) }]);
    const own = machineFor(machine, job);
    const plan = planJob(own, own === machine ? graph : buildGraph(own, solids, masses), job);
    const fit = loadFit(model);
    if (!fit.ok) return fit;
    const study = exciterStudy(machine, solids, masses, OWN_CHOICE, fit.value);
    const sheet = buildJobSheet({ machine: own, solids, masses, job, plan, study, values });
    return ok({
      title: textIn(sheet.title, 'en'),
      people: sheet.people,
      time_s: sheet.time_s,
      order_exists: sheet.plan?.orderExists ?? null,
      steps: sheet.steps.map((step) => ({
        number: step.number,
        id: step.id,
        phase: step.phase,
        text: step.text === null ? (step.what === null ? '' : say(step.what)) : textIn(step.text, 'en'),
        units: [...step.unitIds],
        items: step.balloons.map((b) => b.item),
        hold: step.hold,
        mass_kg: step.lift?.mass_kg ?? null,
        centre_m: step.lift === null ? null : [...step.lift.centre_m],
        by_hand: step.lift?.byHand ?? null,
        supports: step.supports.map(({ kind, what, force_N }) => ({ kind, what, force_N })),
        numbers: step.numbers.map((n) => ({
          id: n.id,
          label: say(n.label),
          value: typeof n.value === 'number' || n.value === null ? n.value : n.value[0],
          to: typeof n.value === 'number' || n.value === null ? null : n.value[1],
          quantity: n.quantity,
          source: say(n.source),
          calculation: n.calculation,
          training: n.training,
          verdict: n.verdict ?? null,
          notes: n.notes.map(say),
        })),
        fields: step.fields.map((f) => ({
          id: f.id,
          min: f.min,
          max: f.max,
          from_manual: f.fromManual,
          optional: f.optional,
        })),
      })),
      sources: sheet.sources.map((s) => say(s.source)),
    });
  },
});
