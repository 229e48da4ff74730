/** Mutated lesson, bank and glossary files: each ends in clear faults or in a course, or the run throws. */
import { buildGraph, planOnGraph } from '../../src/core/assembly';
import { PLACES } from '../../src/store/places';
import english from '../../src/words/en';
import { fuzzCourse } from '../lessons/fuzz';
import { fit, machine, masses, solids } from '../models/alder-one';
import { type Measure } from './row';

const MUTATIONS = 10_000;

export const measure: Measure = () => {
  const graph = buildGraph(machine, solids, masses);
  const known = {
    subject: { machine, solids, masses, fit, graph, teardown: planOnGraph(machine, graph) },
    cautions: new Set(
      Object.keys(english).flatMap((key) =>
        key.startsWith('caution.') ? [key.slice('caution.'.length)] : [],
      ),
    ),
    places: new Set<string>(PLACES),
    faults: new Set<string>(),
  };
  const timed = (count: number, changes: number): { ms: number; faulty: number; valid: number } => {
    const start = performance.now();
    const found = fuzzCourse(count, 7, known, changes);
    return { ms: (performance.now() - start) / count, ...found };
  };
  timed(50, 1);
  const whole = timed(500, 0);
  const mutated = timed(MUTATIONS, 3);
  return [
    {
      name: 'a mutated course read to its end',
      unit: 'ms',
      ours: mutated.ms,
      baseline: 'the unchanged course, read the same way',
      baseline_value: whole.ms,
      more_is_better: false,
      note: `${MUTATIONS} mutations: ${mutated.faulty} with clear faults, ${mutated.valid} still a course, none else`,
    },
  ];
};
