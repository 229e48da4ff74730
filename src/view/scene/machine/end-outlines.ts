/** Ghost outlines of the largest shaking parts at both ends of their stroke: what moves shows where motion is unwanted. */
import { BufferGeometry, Group, Mesh } from 'three';
import { lineMaterial, setSegments } from './edge-material';
import { SOLID, type PartTable } from './part-table';

export interface EndOutlines {
  readonly group: Group;
  /** `ends_m`: highest and lowest place; null: none. */
  write(table: PartTable, ends_m: readonly [number, number] | null): void;
  dispose(): void;
}

/** Only parts from this radius on: a bolt's outline tells nothing. */
const LEAST_RADIUS_M = 0.3;

export function endOutlines(): EndOutlines {
  const group = new Group();
  group.name = 'ends of the stroke';
  group.visible = false;
  const meshes = (['hidden', 'phantom'] as const).map((kind) => {
    const mesh = new Mesh(new BufferGeometry(), lineMaterial({ kind, width: 1.5, depthTest: false }));
    mesh.frustumCulled = false;
    mesh.renderOrder = 5;
    group.add(mesh);
    return mesh;
  });
  return {
    group,
    write(table, ends_m) {
      group.visible = ends_m !== null;
      if (ends_m === null) return;
      meshes.forEach((mesh, i) => {
        const out: number[] = [];
        table.document.machine.parts.forEach((part, n) => {
          const kind = table.kinds[table.kindOf[n]!]!;
          if (part.side !== 'vibrating' || table.shown[n] !== SOLID || kind.radius < LEAST_RADIUS_M) return;
          const m = table.matrices;
          const o = 16 * n;
          for (const { mesh: drawn } of kind.bodies)
            for (let k = 0; k < drawn.edges.length; k += 3) {
              const [x, y, z] = [drawn.edges[k]!, drawn.edges[k + 1]!, drawn.edges[k + 2]!];
              out.push(
                m[o]! * x + m[o + 4]! * y + m[o + 8]! * z + m[o + 12]!,
                m[o + 1]! * x + m[o + 5]! * y + m[o + 9]! * z + m[o + 13]! + ends_m[i as 0 | 1],
                m[o + 2]! * x + m[o + 6]! * y + m[o + 10]! * z + m[o + 14]!,
              );
            }
        });
        mesh.geometry.dispose();
        mesh.geometry = new BufferGeometry();
        setSegments(mesh.geometry, Float32Array.from(out));
      });
    },
    dispose() {
      for (const mesh of meshes) {
        mesh.geometry.dispose();
        (mesh.material as ReturnType<typeof lineMaterial>).dispose();
      }
    },
  };
}
