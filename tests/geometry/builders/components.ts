import type { SolidMesh } from '../../../src/core/geometry';

/** How many separate pieces a mesh has (triangles joined by shared vertices). */
export function pieces({ positions, indices }: SolidMesh): number {
  const root = Array.from({ length: positions.length / 3 }, (_, i) => i);
  const find = (i: number): number => {
    let r = i;
    while (root[r] !== r) r = root[r]!;
    root[i] = r;
    return r;
  };
  for (let t = 0; t < indices.length; t += 3) {
    root[find(indices[t]!)] = find(indices[t + 1]!);
    root[find(indices[t + 1]!)] = find(indices[t + 2]!);
  }
  return new Set(root.map((_, i) => find(i))).size;
}
