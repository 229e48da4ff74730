/** `calc teardown`: the order of taking apart, whole or down to one unit, with paths, reasons and supports. */
import { z } from 'zod';
import { planOnGraph } from '../../../core/assembly';
import { fail, message, ok, printFound } from '../../../core/kernel';
import { defineCalculation } from '../calculation';
import { choice, number, text, vector3 } from '../fields';
import { loadModel } from '../model';
import { say } from '../say';

const leg = z.object({
  direction: vector3('1').readonly(),
  distance_m: number('m'),
  kind: choice('unscrew', 'slide'),
  pitch_m: number('m').optional(),
});

export default defineCalculation({
  name: 'teardown',
  answers: 'calc.teardown.answers',
  source:
    'R. H. Wilson, J.-C. Latombe, Artificial Intelligence 71 (1994); AND/OR search with branch and bound; loads by statics',
  input: z.object({
    model: text(),
    target: text().default('all'),
    least: choice('units', 'mass', 'time').default('units'),
  }),
  output: z.object({
    steps: z.array(
      z.object({
        kind: choice('remove', 'bench', 'support', 'drain'),
        units: z.array(text()),
        direction: vector3('1').readonly().nullable(),
        legs: z.array(leg),
        why: z.array(text()),
        mass_kg: number('kg'),
        time_s: number('s'),
        supports: z.array(z.object({ kind: text(), what: text(), force_N: number('N') })),
      }),
    ),
    proven_least: z.boolean(),
    order_exists: z.boolean(),
    stuck: z.array(text()),
    cost: number('1'),
    lower_bound: number('1'),
  }),
  example: { model: 'alder-one', target: 'exciter', least: 'units' },
  run: async ({ model, target, least }) => {
    const loaded = await loadModel(model);
    if (!loaded.ok) return loaded;
    const { machine, graph } = loaded.value;
    if (target !== 'all' && !graph.bodies.some((b) => b.unitIds.includes(target)))
      return fail([{ path: 'target', expected: message('calc.fault.unit'), found: printFound(target) }]);
    const plan = planOnGraph(machine, graph, { target, least });
    return ok({
      steps: plan.steps.map((step) => ({
        kind: step.kind,
        units: [...step.unitIds],
        direction: step.legs.at(-1)?.direction ?? null,
        legs: [...step.legs],
        why: step.why.map(say),
        mass_kg: step.mass_kg,
        time_s: step.time_s,
        supports: step.supports.map(({ kind, what, force_N }) => ({ kind, what, force_N })),
      })),
      proven_least: plan.provenLeast,
      order_exists: plan.orderExists,
      stuck: [...plan.stuckIds],
      cost: plan.cost,
      lower_bound: plan.lowerBound,
    });
  },
});
