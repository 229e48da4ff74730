/** The parts of a machine as the stage works with them: numbered, with their pose now, grouped by kind. */
import { Matrix4, Quaternion, Vector3 } from 'three';
import type { DrawnBody, MachineDocument } from '../../../core/document';
import type { Vec3 } from '../../../core/kernel';

/** How a part shows. */
export const HIDDEN = 0;
export const SOLID = 1;
export const GHOST = 2;

export interface KindEntry {
  readonly id: string;
  readonly item: number;
  readonly bodies: readonly DrawnBody[];
  readonly min: Vec3;
  readonly max: Vec3;
  /** Points on its surface, x y z each, that reach farthest in 26 directions: what frames and bounds are made of. */
  readonly reach: readonly number[];
  /** Radius of the box around it. */
  readonly radius: number;
  /** Part numbers. */
  readonly parts: readonly number[];
}

export interface PartTable {
  readonly document: MachineDocument;
  readonly count: number;
  readonly indexOf: ReadonlyMap<string, number>;
  readonly kinds: KindEntry[];
  /** Kind number of each part. */
  readonly kindOf: Uint16Array;
  /** Pose of each part now, 16 numbers column by column. */
  readonly matrices: Float32Array;
  readonly shown: Uint8Array;
  /** Assembled places and turns. */
  readonly positions: readonly Vector3[];
  readonly turns: readonly Quaternion[];
}

export function partTable(document: MachineDocument): PartTable {
  const { parts, kinds } = document.machine;
  const byKind = new Map<string, number[]>();
  parts.forEach((part, i) => {
    const list = byKind.get(part.kind);
    if (list === undefined) byKind.set(part.kind, [i]);
    else list.push(i);
  });
  const entries: KindEntry[] = [];
  const kindOf = new Uint16Array(parts.length);
  for (const [id, list] of byKind) {
    const bodies = document.solids[id] ?? [];
    const { min, max } = boxOf(bodies);
    const radius = Math.hypot(max[0] - min[0], max[1] - min[1], max[2] - min[2]) / 2;
    for (const i of list) kindOf[i] = entries.length;
    entries.push({
      id,
      item: kinds[id]?.item ?? 0,
      bodies,
      min,
      max,
      reach: reachOf(bodies),
      radius,
      parts: list,
    });
  }
  const positions = parts.map((p) => new Vector3(...p.pose.position_m));
  const turns = parts.map((p) => new Quaternion(...p.pose.rotation));
  const matrices = new Float32Array(parts.length * 16);
  const one = new Vector3(1, 1, 1);
  const m = new Matrix4();
  parts.forEach((_, i) => m.compose(positions[i]!, turns[i]!, one).toArray(matrices, i * 16));
  return {
    document,
    count: parts.length,
    indexOf: new Map(parts.map((p, i) => [p.id, i])),
    kinds: entries,
    kindOf,
    matrices,
    shown: new Uint8Array(parts.length).fill(SOLID),
    positions,
    turns,
  };
}

/** Puts other bodies in a kind's place; returns the kind's number, -1 when there is none of that id. */
export function replaceKindBodies(table: PartTable, kindId: string, bodies: readonly DrawnBody[]): number {
  const k = table.kinds.findIndex((kind) => kind.id === kindId);
  const kind = table.kinds[k];
  if (kind === undefined) return -1;
  const { min, max } = boxOf(bodies);
  const radius = Math.hypot(max[0] - min[0], max[1] - min[1], max[2] - min[2]) / 2;
  table.kinds[k] = { ...kind, bodies, min, max, reach: reachOf(bodies), radius };
  return k;
}

/** Points of the bodies that reach farthest along the axes, the face diagonals and the space diagonals. */
function reachOf(bodies: readonly DrawnBody[]): number[] {
  const out: number[] = [];
  for (let d = 0; d < 27; d++) {
    const [a, b, c] = [(d % 3) - 1, (Math.floor(d / 3) % 3) - 1, Math.floor(d / 9) - 1] as const;
    if (a === 0 && b === 0 && c === 0) continue;
    let most = -Infinity;
    let at: readonly number[] | null = null;
    for (const { solid } of bodies) {
      const p = solid.positions;
      for (let i = 0; i < p.length; i += 3) {
        const along = a * p[i]! + b * p[i + 1]! + c * p[i + 2]!;
        if (along <= most) continue;
        most = along;
        at = [p[i]!, p[i + 1]!, p[i + 2]!];
      }
    }
    if (at !== null) out.push(...at);
  }
  return out;
}

function boxOf(bodies: readonly DrawnBody[]): { min: Vec3; max: Vec3 } {
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const { mesh } of bodies)
    for (let i = 0; i < mesh.positions.length; i++) {
      const k = i % 3;
      const p = mesh.positions[i]!;
      if (p < min[k]!) min[k] = p;
      if (p > max[k]!) max[k] = p;
    }
  return min[0] <= max[0] ? { min, max } : { min: [0, 0, 0], max: [0, 0, 0] };
}

/** The points of a part that reach farthest, in the machine's frame, handed to `each` one by one. */
export function eachReach(
  table: PartTable,
  part: number,
  each: (x: number, y: number, z: number) => void,
): void {
  const { reach } = table.kinds[table.kindOf[part]!]!;
  const m = table.matrices;
  const o = part * 16;
  for (let i = 0; i < reach.length; i += 3) {
    const x = reach[i]!;
    const y = reach[i + 1]!;
    const z = reach[i + 2]!;
    each(
      m[o]! * x + m[o + 4]! * y + m[o + 8]! * z + m[o + 12]!,
      m[o + 1]! * x + m[o + 5]! * y + m[o + 9]! * z + m[o + 13]!,
      m[o + 2]! * x + m[o + 6]! * y + m[o + 10]! * z + m[o + 14]!,
    );
  }
}
