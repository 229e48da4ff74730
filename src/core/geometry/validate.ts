/** The one check that every solid passes: closed, outward, no degenerate triangle. */
import { meshIntegrals } from './integrals';
import type { SolidMesh } from './types';

export interface SolidFault {
  readonly fault: 'open-edge' | 'degenerate-triangle' | 'inward' | 'not-finite' | 'index-out-of-range';
  /** How many of it. */
  readonly count: number;
}

/** Faults of a mesh, none for a sound one. An edge is sound when each direction of it is used exactly once. */
export function validateSolid(mesh: SolidMesh): readonly SolidFault[] {
  const { positions, indices } = mesh;
  const vertices = positions.length / 3;
  const faults: SolidFault[] = [];
  const add = (fault: SolidFault['fault'], count: number): void => {
    if (count > 0) faults.push({ fault, count });
  };
  add('not-finite', positions.filter((c) => !Number.isFinite(c)).length);
  add('index-out-of-range', indices.filter((i) => i >= vertices).length);
  if (faults.length > 0) return faults;

  const uses = new Map<number, number>();
  let degenerate = 0;
  for (let t = 0; t < indices.length; t += 3) {
    const corner = [indices[t] ?? 0, indices[t + 1] ?? 0, indices[t + 2] ?? 0] as const;
    if (corner[0] === corner[1] || corner[1] === corner[2] || corner[2] === corner[0]) degenerate++;
    for (let e = 0; e < 3; e++) {
      const key = (corner[e] ?? 0) * vertices + (corner[(e + 1) % 3] ?? 0);
      uses.set(key, (uses.get(key) ?? 0) + 1);
    }
  }
  let open = 0;
  for (const [key, count] of uses) {
    const from = Math.floor(key / vertices);
    const back = uses.get((key - from * vertices) * vertices + from) ?? 0;
    if (count !== back) open++;
  }
  add('degenerate-triangle', degenerate);
  add('open-edge', open);
  if (!(meshIntegrals(mesh).volume_m3 > 0)) add('inward', 1);
  return faults;
}
