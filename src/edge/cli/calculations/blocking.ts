/** `calc blocking`: what bars a unit from leaving, direction by direction, and the joints that hold it. */
import { z } from 'zod';
import { DIRECTIONS, straightBlockers, type Way } from '../../../core/assembly';
import { fail, message, ok, printFound } from '../../../core/kernel';
import { defineCalculation } from '../calculation';
import { choice, number, text, vector3 } from '../fields';
import { loadModel } from '../model';

const blocker = z.object({
  unit: text(),
  strike_distance_m: number('m'),
  why: choice('path', 'tool'),
});

export default defineCalculation({
  name: 'blocking',
  answers: 'calc.blocking.answers',
  source:
    'R. H. Wilson, J.-C. Latombe, Geometric reasoning about mechanical assembly, Artificial Intelligence 71 (1994)',
  input: z.object({ model: text(), unit: text() }),
  output: z.object({
    directions: z.array(
      z.object({ direction: vector3('1').readonly(), free: z.boolean(), blockers: z.array(blocker) }),
    ),
    ways: z.array(
      z.object({
        kind: text(),
        legs: z.array(z.object({ direction: vector3('1').readonly(), distance_m: number('m').nullable() })),
        blockers: z.array(blocker),
      }),
    ),
    joints: z.array(z.object({ kind: text(), unit: text() })),
  }),
  example: { model: 'alder-one', unit: 'hub' },
  run: async ({ model, unit }) => {
    const loaded = await loadModel(model);
    if (!loaded.ok) return loaded;
    const { graph } = loaded.value;
    const body = graph.bodies.findIndex((b) => b.unitIds.includes(unit));
    if (body < 0)
      return fail([{ path: 'unit', expected: message('calc.fault.unit'), found: printFound(unit) }]);
    const id = (b: number): string => graph.bodies[b]!.id;
    const shown = (list: Way['blockers']) =>
      [...list]
        .sort((a, b) => a.strike_m - b.strike_m)
        .map((b) => ({ unit: id(b.body), strike_distance_m: b.strike_m, why: b.cause }));
    return ok({
      directions: DIRECTIONS.map((direction, d) => {
        const blockers = shown(straightBlockers(graph, body, d));
        return { direction, free: blockers.length === 0, blockers };
      }),
      ways: graph.ways[body]!.map((way) => ({
        kind: way.kind,
        legs: way.legs.map(({ direction, distance_m }) => ({ direction, distance_m })),
        blockers: shown(way.blockers),
      })),
      joints: graph.joints
        .filter((j) => j.from === body && j.kind !== 'holds')
        .map((j) => ({ kind: j.kind, unit: id(j.to) })),
    });
  },
});
