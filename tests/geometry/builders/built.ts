/** Builds one kind from its parameters alone and gives what every builder's test asks of it. */
import { builderParams, type Kind } from '../../../src/core/machine';
import {
  buildKind,
  type KindSolid,
  loadSolidKernel,
  meshIntegrals,
  validateSolid,
} from '../../../src/core/geometry';

const kernel = await loadSolidKernel();

export function built(params: unknown): KindSolid {
  const kind: Kind = {
    item: 1,
    material: 'steel',
    finish: 'machined',
    family: 'frame',
    params: builderParams.parse(params),
  };
  return buildKind(kernel, kind, { kinds: {}, operation: {} as never });
}

export const volumes_m3 = (solid: KindSolid): readonly number[] =>
  solid.bodies.map((b) => meshIntegrals(b.solid).volume_m3);

export const volume_m3 = (solid: KindSolid): number => volumes_m3(solid).reduce((sum, v) => sum + v, 0);

/** Every fault of every body, named; empty for a sound kind. */
export const faults = (solid: KindSolid): readonly string[] =>
  solid.bodies.flatMap((b) => validateSolid(b.solid).map((f) => `${b.name}: ${f.fault} ${f.count}`));

export const triangles = (solid: KindSolid): number =>
  solid.bodies.reduce((sum, b) => sum + b.solid.indices.length / 3, 0);

/** Low and high corner over all bodies. */
export function bounds(solid: KindSolid): { low: number[]; high: number[] } {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (const b of solid.bodies) {
    b.solid.positions.forEach((c, i) => {
      low[i % 3] = Math.min(low[i % 3] ?? 0, c);
      high[i % 3] = Math.max(high[i % 3] ?? 0, c);
    });
  }
  return { low, high };
}
