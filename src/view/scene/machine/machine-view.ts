/** The whole machine as three sees it: one batch a kind, rewritten only when poses, visibility or states changed. */
import { Group, type Material, type Vector3 } from 'three';
import type { DrawnBody, MachineDocument } from '../../../core/document';
import { CUT_DEFINE } from './clip-shader';
import { coveredEdges } from './covered-edges';
import { lineMaterial } from './edge-material';
import { depthMaterial } from './depth-material';
import { markState } from './mark-shader';
import { ghostMaterial } from './ghost-material';
import { kindBatch, type KindBatch, type PartState, type StageMaterials } from './kind-batch';
import { HIDDEN, partTable, type PartTable, replaceKindBodies } from './part-table';
import { surfaceMaterial } from './surface-material';

export interface MachineView {
  readonly table: PartTable;
  readonly group: Group;
  /**
   * Rewrites the batches; selected and hovered are part numbers or -1; `sides`: tinted by side of the isolators;
   * `marked`: drawn like the selected one; `barring`: what stands in the way, dashed; `states`: marks of a view.
   */
  write(
    selected: number,
    hovered: number,
    sides?: boolean,
    marked?: ReadonlySet<number>,
    barring?: readonly number[],
    states?: Int8Array,
  ): void;
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
    barringEdges: lineMaterial({
      instanced: true,
      kind: 'hidden',
      accent: true,
      width: 1.7,
      depthTest: false,
    }),
  };
  const batches: (KindBatch | null)[] = table.kinds.map((kind) =>
    kind.bodies.length > 0 ? kindBatch(kind, group, materials) : null,
  );
  const covered = coveredEdges(table, group, materials.hiddenEdges, 'covered edges');
  const barred = coveredEdges(table, group, materials.barringEdges, 'edges of what stands in the way');

  return {
    table,
    group,
    write(selected, hovered, sides = false, marked = NONE, barring = [], states) {
      const { parts } = document.machine;
      const plain = (part: number): PartState => {
        const side = sides ? parts[part]!.side : 'still';
        if (side === 'vibrating') return markState('drum');
        return side === 'isolator' ? markState('isolator') : (states?.[part] ?? 0);
      };
      const stateOf = (part: number): PartState =>
        part === selected || marked.has(part) ? 2 : part === hovered ? 1 : plain(part);
      for (const batch of batches) batch?.write(table, stateOf);
      covered.write(selected >= 0 && table.shown[selected] !== HIDDEN ? [selected] : []);
      barred.write(barring.filter((part) => table.shown[part] !== HIDDEN));
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
      barred.forget(k);
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
      barred.dispose();
      for (const material of Object.values(materials) as Material[]) material.dispose();
    },
  };
}
