/** Edges of single parts drawn as dashes through whatever covers them, as hidden edges are drawn. */
import {
  type Group,
  InstancedBufferAttribute,
  type InstancedBufferGeometry,
  Mesh,
  type ShaderMaterial,
} from 'three';
import { instancedEdges } from './edge-material';
import type { PartTable } from './part-table';

export interface CoveredEdges {
  write(parts: readonly number[]): void;
  /** A kind got other bodies. */
  forget(kind: number): void;
  dispose(): void;
}

interface Drawn {
  readonly mesh: Mesh;
  readonly geometry: InstancedBufferGeometry;
  readonly matrices: InstancedBufferAttribute;
}

export function coveredEdges(
  table: PartTable,
  group: Group,
  material: ShaderMaterial,
  name: string,
): CoveredEdges {
  /** One mesh a kind, made when first asked for. */
  const made = new Map<number, Drawn>();

  const drawnOf = (kind: number): Drawn => {
    const known = made.get(kind);
    if (known !== undefined) return known;
    const { bodies, parts } = table.kinds[kind]!;
    const ends = Float32Array.from(bodies.flatMap((body) => [...body.mesh.edges]));
    const matrices = new InstancedBufferAttribute(new Float32Array(16 * parts.length), 16);
    const lines = new InstancedBufferAttribute(new Float32Array(2 * parts.length), 2);
    for (let i = 0; i < parts.length; i++) lines.array[2 * i + 1] = 1;
    const geometry = instancedEdges({ ends, whole: null }, matrices, lines);
    const mesh = new Mesh(geometry, material);
    mesh.name = name;
    mesh.frustumCulled = false;
    mesh.renderOrder = 1.5;
    group.add(mesh);
    const drawn = { mesh, geometry, matrices };
    made.set(kind, drawn);
    return drawn;
  };

  const drop = (kind: number): void => {
    const drawn = made.get(kind);
    if (drawn === undefined) return;
    group.remove(drawn.mesh);
    drawn.geometry.dispose();
    made.delete(kind);
  };

  return {
    write(parts) {
      const byKind = new Map<number, number[]>();
      for (const part of parts) {
        const kind = table.kindOf[part]!;
        if ((table.kinds[kind]?.bodies.length ?? 0) === 0) continue;
        byKind.set(kind, [...(byKind.get(kind) ?? []), part]);
      }
      for (const [kind, drawn] of made) if (!byKind.has(kind)) drawn.mesh.visible = false;
      for (const [kind, list] of byKind) {
        const { mesh, geometry, matrices } = drawnOf(kind);
        list.forEach((part, i) =>
          matrices.array.set(table.matrices.subarray(16 * part, 16 * part + 16), 16 * i),
        );
        matrices.needsUpdate = true;
        geometry.instanceCount = list.length;
        mesh.visible = geometry.getAttribute('position').count > 0;
      }
    },
    forget: drop,
    dispose() {
      for (const kind of [...made.keys()]) drop(kind);
    },
  };
}
