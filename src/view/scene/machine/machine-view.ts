/** The whole machine as three sees it: one batch a kind, rewritten only when poses, visibility or states changed. */
import {
  Group,
  InstancedBufferAttribute,
  type InstancedBufferGeometry,
  type Material,
  Mesh,
  type Vector3,
} from 'three';
import type { DrawnBody, MachineDocument } from '../../../core/document';
import { CUT_DEFINE } from './clip-shader';
import { instancedEdges, lineMaterial } from './edge-material';
import { depthMaterial } from './depth-material';
import { ghostMaterial } from './ghost-material';
import { kindBatch, type KindBatch, type PartState, type StageMaterials } from './kind-batch';
import { HIDDEN, partTable, type PartTable, replaceKindBodies } from './part-table';
import { surfaceMaterial } from './surface-material';

export interface MachineView {
  readonly table: PartTable;
  readonly group: Group;
  /**
   * Rewrites the batches; selected and hovered are part numbers or -1; `sides`: tinted by side of the isolators;
   * `marked`: drawn like the selected one.
   */
  write(selected: number, hovered: number, sides?: boolean, marked?: ReadonlySet<number>): void;
  /** Leaves out edges too small to be seen; call when the camera or parts moved. */
  thin(eye: Vector3, scale: number): void;
  /** Gives a kind other bodies (the shot as it settles); its batch is built anew. */
  replaceBodies(kindId: string, bodies: readonly DrawnBody[]): void;
  /** What a shadow pass draws now. */
  casters(): { calls: number; triangles: number };
  /** Turns the section's clipping on or off in all materials. */
  setCut(on: boolean): void;
  dispose(): void;
}

const NONE: ReadonlySet<number> = new Set();

export function machineView(document: MachineDocument, fine: boolean): MachineView {
  const table = partTable(document);
  const group = new Group();
  group.name = 'machine';
  const materials: StageMaterials = {
    surface: surfaceMaterial(fine),
    ghost: ghostMaterial(),
    depth: depthMaterial(),
    edges: lineMaterial({ instanced: true }),
    hiddenEdges: lineMaterial({
      instanced: true,
      kind: 'hidden',
      accent: true,
      width: 0.55,
      strength: 0.75,
      depthTest: false,
    }),
  };
  const batches: (KindBatch | null)[] = table.kinds.map((kind) =>
    kind.bodies.length > 0 ? kindBatch(kind, group, materials) : null,
  );
  const covered = coveredEdges(table, group, materials.hiddenEdges);

  return {
    table,
    group,
    write(selected, hovered, sides = false, marked = NONE) {
      const { parts } = document.machine;
      const plain = (part: number): PartState => {
        const side = sides ? parts[part]!.side : 'still';
        return side === 'vibrating' ? -1 : side === 'isolator' ? -2 : 0;
      };
      const stateOf = (part: number): PartState =>
        part === selected || marked.has(part) ? 2 : part === hovered ? 1 : plain(part);
      for (const batch of batches) batch?.write(table, stateOf);
      covered.write(selected >= 0 && table.shown[selected] !== HIDDEN ? selected : -1);
    },
    thin(eye, scale) {
      for (const batch of batches) batch?.thin(eye, scale);
    },
    replaceBodies(kindId, bodies) {
      const k = replaceKindBodies(table, kindId, bodies);
      if (k < 0) return;
      batches[k]?.dispose();
      batches[k] = bodies.length > 0 ? kindBatch(table.kinds[k]!, group, materials) : null;
      covered.forget(k);
    },
    casters() {
      let calls = 0;
      let triangles = 0;
      for (const batch of batches) {
        const { count, visible, each } = batch?.solids() ?? { count: 0, visible: false, each: 0 };
        if (!visible) continue;
        calls++;
        triangles += count * each;
      }
      return { calls, triangles };
    },
    setCut(on) {
      for (const material of Object.values(materials) as Material[]) {
        const has = material.defines !== undefined && CUT_DEFINE in material.defines;
        if (has === on) continue;
        material.defines ??= {};
        if (on) material.defines[CUT_DEFINE] = '';
        else delete material.defines[CUT_DEFINE];
        material.needsUpdate = true;
      }
    },
    dispose() {
      for (const batch of batches) batch?.dispose();
      covered.dispose();
      for (const material of Object.values(materials) as Material[]) material.dispose();
    },
  };
}

/** Edges of the selected part where others cover it: thin dashes, as hidden edges are drawn. */
function coveredEdges(table: PartTable, group: Group, material: StageMaterials['hiddenEdges']) {
  const matrix = new InstancedBufferAttribute(new Float32Array(16), 16);
  const line = new InstancedBufferAttribute(new Float32Array([0, 1]), 2);
  const made = new Map<number, InstancedBufferGeometry>();
  const mesh = new Mesh(undefined, material);
  mesh.name = 'covered edges';
  mesh.frustumCulled = false;
  mesh.renderOrder = 1.5;
  mesh.visible = false;
  group.add(mesh);
  return {
    write(part: number): void {
      mesh.visible = part >= 0;
      if (part < 0) return;
      const kind = table.kindOf[part]!;
      let geometry = made.get(kind);
      if (geometry === undefined) {
        const { bodies } = table.kinds[kind]!;
        const ends = Float32Array.from(bodies.flatMap((body) => [...body.mesh.edges]));
        geometry = instancedEdges({ ends, whole: null }, matrix, line);
        geometry.instanceCount = 1;
        made.set(kind, geometry);
      }
      mesh.geometry = geometry;
      mesh.visible = geometry.getAttribute('position').count > 0;
      matrix.array.set(table.matrices.subarray(part * 16, part * 16 + 16));
      matrix.needsUpdate = true;
    },
    forget(kind: number): void {
      made.get(kind)?.dispose();
      made.delete(kind);
    },
    dispose(): void {
      group.remove(mesh);
      for (const geometry of made.values()) geometry.dispose();
    },
  };
}
