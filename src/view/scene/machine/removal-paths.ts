/** Path of removal: a phantom line (long dash, two dots) from a part's seat to where it is now. */
import { BufferGeometry, Mesh } from 'three';
import { lineMaterial, setSegments } from './edge-material';
import { HIDDEN, type PartTable } from './part-table';

/** Paths drawn at most, so that a ring of bolts stays legible. */
const MOST = 24;
/** Shorter ways are not worth a line, metres. */
const LEAST_M = 0.02;

export interface RemovalPaths {
  readonly mesh: Mesh;
  /** From the seat of each part to its place now; an empty list: none. */
  write(table: PartTable, parts: readonly number[]): void;
  dispose(): void;
}

export function removalPaths(): RemovalPaths {
  const material = lineMaterial({ kind: 'phantom', width: 1.3, strength: 1, accent: true, bias: 0.001 });
  const mesh = new Mesh(new BufferGeometry(), material);
  mesh.name = 'paths of removal';
  mesh.frustumCulled = false;
  mesh.renderOrder = 3;
  mesh.visible = false;
  return {
    mesh,
    write(table, parts) {
      const ends: number[] = [];
      for (const part of parts.slice(0, MOST)) {
        if (table.shown[part] === HIDDEN) continue;
        const seat = middle(table, part, true);
        const now = middle(table, part, false);
        if (Math.hypot(now[0] - seat[0], now[1] - seat[1], now[2] - seat[2]) > LEAST_M)
          ends.push(...seat, ...now);
      }
      mesh.visible = ends.length > 0;
      mesh.geometry.dispose();
      mesh.geometry = new BufferGeometry();
      setSegments(mesh.geometry, Float32Array.from(ends));
    },
    dispose() {
      mesh.geometry.dispose();
      material.dispose();
    },
  };
}

/** Middle of the part's box, at its seat or now. */
function middle(table: PartTable, part: number, seat: boolean): [number, number, number] {
  const { min, max } = table.kinds[table.kindOf[part]!]!;
  const own = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2] as const;
  if (seat) {
    const { x, y, z } = table.positions[part]!.clone().add(
      table.positions[part]!.clone()
        .set(...own)
        .applyQuaternion(table.turns[part]!),
    );
    return [x, y, z];
  }
  const m = table.matrices;
  const o = part * 16;
  return [0, 1, 2].map(
    (k) => m[o + k]! * own[0] + m[o + 4 + k]! * own[1] + m[o + 8 + k]! * own[2] + m[o + 12 + k]!,
  ) as [number, number, number];
}
