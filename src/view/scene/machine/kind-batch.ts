/** One kind on the stage: its solids in one draw call, its edges in another, its ghosts in a third when there are any. */
import {
  DynamicDrawUsage,
  type Group,
  InstancedBufferAttribute,
  InstancedMesh,
  Mesh,
  type MeshDepthMaterial,
  type ShaderMaterial,
  type Vector3,
} from 'three';
import { instancedEdges } from './edge-material';
import { kindGeometry } from './kind-geometry';
import { GHOST, type KindEntry, type PartTable, SOLID } from './part-table';
import type { SurfaceMaterial } from './surface-material';

/** Meshes that throw contact shadows are on this layer too. */
export const CASTER_LAYER = 1;

export interface StageMaterials {
  readonly surface: SurfaceMaterial;
  readonly ghost: ShaderMaterial;
  /** For the shadow map. */
  readonly depth: MeshDepthMaterial;
  readonly edges: ShaderMaterial;
  /** Dashes of the selected part's edges where other parts cover them. */
  readonly hiddenEdges: ShaderMaterial;
  /** Dashes of what stands in the way, seen through everything. */
  readonly barringEdges: ShaderMaterial;
}

/**
 * State of a part's drawing: 0 plain, 1 hovered, 2 selected; below that the mark of a view on its faces (mark-shader).
 * A ghost has edges only: faint, or in full ink from `FULL_INK` down.
 */
export type PartState = number;

const FULL_INK = -16;

export interface KindBatch {
  /** Writes matrices and states of the parts that show. */
  write(table: PartTable, stateOf: (part: number) => PartState): void;
  /**
   * Leaves edges out where all parts of the kind are too small on the screen for their lines to be told apart.
   * `scale`: CSS pixels that a metre spans at one metre from the eye.
   */
  thin(eye: Vector3, scale: number): void;
  /** Instances drawn, and triangles of each. */
  solids(): { visible: boolean; count: number; each: number };
  dispose(): void;
}

/** Parts with a smaller radius on the screen than this are drawn without edges, CSS pixels. */
const EDGES_FROM_PX = 7;

/** And chains of edges (a small hole, a roller's rim) with a smaller radius than this are left off. */
const CHAINS_FROM_PX = 3;

/** How many of the falling numbers are at least `least`. */
function countFrom(falling: Float32Array, least: number): number {
  let low = 0;
  let high = falling.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (falling[middle]! >= least) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Small parts get finer lines, as a drawing gives detail a thinner pen. */
const lineWeight = (radius: number): number => Math.min(1, Math.max(0.55, 0.45 + radius * 1.6));

export function kindBatch(kind: KindEntry, group: Group, materials: StageMaterials): KindBatch {
  const capacity = kind.parts.length;
  const { surface, edges } = kindGeometry(kind.bodies);
  const states = dynamic(new Float32Array(capacity), 1);
  surface.setAttribute('partState', states);
  const solids = new InstancedMesh(surface, materials.surface, capacity);
  solids.name = kind.id;
  solids.instanceMatrix.setUsage(DynamicDrawUsage);
  solids.castShadow = true;
  solids.customDepthMaterial = materials.depth;
  solids.receiveShadow = true;
  solids.frustumCulled = false;
  solids.layers.enable(CASTER_LAYER);

  const lineMatrices = dynamic(new Float32Array(capacity * 16), 16);
  const lineStates = dynamic(new Float32Array(capacity * 2), 2);
  const lineGeometry = instancedEdges(edges, lineMatrices, lineStates);
  const lines = new Mesh(lineGeometry, materials.edges);
  lines.name = `${kind.id} edges`;
  lines.frustumCulled = false;
  lines.renderOrder = 2;
  group.add(solids, lines);

  let ghosts: InstancedMesh | null = null;
  const weight = lineWeight(kind.radius);
  let drawn = 0;

  return {
    write(table, stateOf) {
      let n = 0;
      let g = 0;
      for (const part of kind.parts) {
        if (table.shown[part] !== SOLID) continue;
        const state = stateOf(part);
        const at = part * 16;
        for (let k = 0; k < 16; k++)
          lineMatrices.array[n * 16 + k] = solids.instanceMatrix.array[n * 16 + k] = table.matrices[at + k]!;
        states.array[n] = state;
        lineStates.array[2 * n] = Math.max(0, state);
        lineStates.array[2 * n + 1] = weight;
        n++;
      }
      solids.count = n;
      for (const part of kind.parts) {
        if (table.shown[part] !== GHOST) continue;
        if (ghosts === null) {
          ghosts = new InstancedMesh(surface, materials.ghost, capacity);
          ghosts.frustumCulled = false;
          ghosts.renderOrder = 1;
          group.add(ghosts);
        }
        const at = part * 16;
        const state = stateOf(part);
        for (let k = 0; k < 16; k++)
          lineMatrices.array[(n + g) * 16 + k] = ghosts.instanceMatrix.array[g * 16 + k] =
            table.matrices[at + k]!;
        lineStates.array[2 * (n + g)] = state > 0 ? state : state <= FULL_INK ? 0 : -1;
        lineStates.array[2 * (n + g) + 1] = weight;
        g++;
      }
      solids.visible = n > 0;
      lineGeometry.instanceCount = n + g;
      drawn = n + g;
      solids.instanceMatrix.needsUpdate = states.needsUpdate = true;
      lineMatrices.needsUpdate = lineStates.needsUpdate = true;
      if (ghosts !== null) {
        ghosts.count = g;
        ghosts.visible = g > 0;
        ghosts.instanceMatrix.needsUpdate = true;
      }
    },
    thin(eye, scale) {
      let near = Infinity;
      const m = lineMatrices.array;
      for (let i = 0; i < drawn; i++) {
        const dx = m[16 * i + 12]! - eye.x;
        const dy = m[16 * i + 13]! - eye.y;
        const dz = m[16 * i + 14]! - eye.z;
        near = Math.min(near, dx * dx + dy * dy + dz * dz);
      }
      // A part's nearest point may be a radius nearer than its middle.
      const distance = Math.max(0.05, Math.sqrt(near) - kind.radius);
      const count =
        (scale * kind.radius) / distance < EDGES_FROM_PX
          ? 0
          : countFrom(edges.radius, (CHAINS_FROM_PX * distance) / scale);
      lines.visible = count > 0;
      lineGeometry.setDrawRange(0, count * 6);
    },
    solids: () => ({
      visible: solids.visible,
      count: solids.count,
      each: (surface.getIndex()?.count ?? 0) / 3,
    }),
    dispose() {
      group.remove(solids, lines);
      surface.dispose();
      lineGeometry.dispose();
      solids.dispose();
      if (ghosts !== null) {
        group.remove(ghosts);
        ghosts.dispose();
      }
    },
  };
}

function dynamic(array: Float32Array, itemSize: number): InstancedBufferAttribute {
  return new InstancedBufferAttribute(array, itemSize).setUsage(DynamicDrawUsage) as InstancedBufferAttribute;
}
