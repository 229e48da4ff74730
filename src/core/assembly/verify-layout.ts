/** Looks for parts that stand in one another in a lay-out, such as an exploded view half-way open. */
import { seededRandom } from '../kernel';
import type { Machine } from '../machine';
import { allowances, anyInside, boxesMeet, isFlexible, sampleSurface } from './contact';
import { insideTest } from './inside';
import { buildWorld, type Masses, type Solids } from './world';

export interface LayoutContact {
  readonly partId: string;
  readonly otherId: string;
}

/**
 * Pairs of parts that overlap when every part is shifted by its offset (dx dy dz a part, `machine.parts` order).
 * Pairs that move by the same shift are left out: they stand as assembled.
 */
export function verifyLayout(
  machine: Machine,
  solids: Solids,
  masses: Masses,
  offsets: Float32Array,
  options: { readonly seed?: number; readonly samples?: number; readonly allowance_m?: number } = {},
): readonly LayoutContact[] {
  const { seed = 1, samples = 160, allowance_m = 0.0006 } = options;
  const world = buildWorld(machine, solids, masses);
  const random = seededRandom(seed);
  const allow = allowances(world, allowance_m);
  const parts = world.meshes.flatMap((mesh, p) => (mesh === null || isFlexible(world, p) ? [] : [p]));
  const points = new Map(parts.map((p) => [p, sampleSurface(world.meshes[p]!, samples, random)]));
  const tests = new Map(
    parts.map((p) => [
      p,
      insideTest(world.meshes[p]!, world.partBounds.subarray(p * 6, p * 6 + 6) as Float64Array),
    ]),
  );
  const contacts: LayoutContact[] = [];
  for (const p of parts)
    for (const q of parts) {
      if (p === q) continue;
      const shift = [0, 1, 2].map((k) => offsets[p * 3 + k]! - offsets[q * 3 + k]!);
      if (Math.hypot(...shift) < 1e-9 || !boxesMeet(world, p, q, shift)) continue;
      if (anyInside(points.get(p)!, tests.get(q)!, shift, allow(p, q)).hit)
        contacts.push({ partId: machine.parts[p]!.id, otherId: machine.parts[q]!.id });
    }
  return contacts;
}
