/** Cut faces of the whole machine against the solid kernel's own slices of the same solids. */
import { planeInPart, sliceSolid, withSolids } from '../../src/core/geometry';
import { kernel, machine, solids } from '../models/alder-one';
import { median_ms, type Measure } from './row';

export const measure: Measure = () => {
  const plane = { point_m: [0, 0, 1e-4], normal: [0, 0, 1] } as const;
  const parts = machine.parts.filter((p) => !p.context && p.option === null);
  const ours = (): void => {
    for (const part of parts)
      for (const body of solids[part.kind]!.bodies) sliceSolid(body.solid, planeInPart(plane, part.pose));
  };
  return withSolids(kernel, (scope) => {
    const posed = parts.flatMap((part) =>
      solids[part.kind]!.bodies.map((body) => scope.pose(scope.fromMesh(body.solid), part.pose)),
    );
    return [
      {
        name: 'cut faces of the whole machine',
        unit: 'ms',
        ours: median_ms(7, ours),
        baseline: 'slices by the solid kernel (manifold), solids already in it',
        baseline_value: median_ms(3, () => {
          for (const solid of posed) solid.slice(plane.point_m[2]).delete();
        }),
        more_is_better: false,
      },
    ];
  });
};
