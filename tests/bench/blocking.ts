/** What blocks what, against boolean intersections of a sample of swept pairs, scaled up to all pairs and directions. */
import { buildGraph } from '../../src/core/assembly';
import { withSolids } from '../../src/core/geometry';
import { kernel, machine, masses, solids } from '../models/alder-one';
import { median_ms, type Measure } from './row';

const SAMPLE = 40;

export const measure: Measure = () => {
  const units = machine.units.filter((u) =>
    u.partIds.some((id) => !machine.parts.find((p) => p.id === id)!.context),
  );
  const every = Math.max(1, Math.floor(units.length / SAMPLE));
  const baseline = withSolids(kernel, (scope) => {
    const solidOf = (u: (typeof units)[number]) =>
      scope.union(
        u.partIds.flatMap((id) => {
          const part = machine.parts.find((p) => p.id === id)!;
          return solids[part.kind]!.bodies.map((body) => scope.pose(scope.fromMesh(body.solid), part.pose));
        }),
      );
    const chosen = units.filter((_, i) => i % every === 0).map(solidOf);
    let pairs = 0;
    const start = performance.now();
    for (let i = 0; i < chosen.length; i += 4) {
      for (let j = 0; j < chosen.length; j += 4) {
        if (i === j) continue;
        // Ten steps of 50 mm along +x: the coarsest sweep that still tells what is struck.
        for (let k = 1; k <= 10; k++)
          scope.intersect(scope.translate(chosen[i]!, [0.05 * k, 0, 0]), chosen[j]!).isEmpty();
        pairs++;
      }
    }
    const perPair = (performance.now() - start) / pairs;
    return perPair * units.length * (units.length - 1) * 6;
  });
  return [
    {
      name: 'blocking graph of Alder One, cold',
      unit: 'ms',
      ours: median_ms(1, () => void buildGraph(machine, solids, masses)),
      baseline: 'stepped sweeps by the solid kernel',
      baseline_value: baseline,
      more_is_better: false,
      note: 'baseline extrapolated from a sample of pairs to all pairs and six directions',
    },
  ];
};
