/** Small synthetic machines for the planner: boxes, rings and rods as closed meshes, without the solid kernel. */
import {
  expandMachine,
  type CompleteMachineFile,
  type GroupEntry,
  type Machine,
  type Relation,
} from '../../src/core/machine';
import { kindMasses, type KindSolid, type SolidMesh } from '../../src/core/geometry';
import type { Vec3 } from '../../src/core/kernel';

/** A box between two corners. */
export function box(low: Vec3, high: Vec3): SolidMesh {
  const [x0, y0, z0] = low;
  const [x1, y1, z1] = high;
  const positions = new Float32Array([
    x0, y0, z0, x1, y0, z0, x1, y1, z0, x0, y1, z0, x0, y0, z1, x1, y0, z1, x1, y1, z1, x0, y1, z1,
  ]); // prettier-ignore
  const indices = new Uint32Array([
    0, 2, 1, 0, 3, 2, 4, 5, 6, 4, 6, 7, 0, 1, 5, 0, 5, 4, 3, 7, 6, 3, 6, 2, 1, 2, 6, 1, 6, 5, 0, 4, 7, 0, 7, 3,
  ]); // prettier-ignore
  return { positions, indices };
}

/** A ring (or a rod where `inner_m` is 0) about x, turned from stations [x, inner, outer]. */
export function turned(stations: readonly (readonly [number, number, number])[], sides = 48): SolidMesh {
  // Closed profile in (x, r): outer side from left to right, inner side back.
  const outer = stations.map(([x, , r]) => [x, r] as const);
  const inner = [...stations].reverse().map(([x, r]) => [x, r] as const);
  const profile = [...outer, ...inner];
  const positions: number[] = [];
  for (let s = 0; s < sides; s++) {
    const angle = (2 * Math.PI * s) / sides;
    for (const [x, r] of profile) positions.push(x, r * Math.cos(angle), r * Math.sin(angle));
  }
  const indices: number[] = [];
  const n = profile.length;
  for (let s = 0; s < sides; s++) {
    const next = (s + 1) % sides;
    for (let i = 0; i < n; i++) {
      const j = (i + 1) % n;
      const [a, b, c, d] = [s * n + i, s * n + j, next * n + j, next * n + i];
      indices.push(a, c, b, a, d, c);
    }
  }
  return { positions: new Float32Array(positions), indices: new Uint32Array(indices) };
}

/** A screw as the model's bolts have it: head from 0 to `head_m` along +x, shank along -x. */
export const screw = (radius_m: number, length_m: number, head_m: number, headRadius_m: number): SolidMesh =>
  turned(
    [
      [-length_m, 0, radius_m],
      [0, 0, radius_m],
      [0, 0, headRadius_m],
      [head_m, 0, headRadius_m],
    ],
    24,
  );

export interface SyntheticPart {
  readonly id: string;
  readonly solid: SolidMesh | readonly SolidMesh[];
  readonly at_m?: Vec3;
  readonly turn_deg?: Vec3;
  readonly fixed?: boolean;
}

export interface SyntheticGroup extends Omit<SyntheticPart, 'at_m' | 'turn_deg'> {
  readonly places: readonly { readonly at_m: Vec3; readonly turn_deg?: Vec3 }[];
  readonly joins: readonly string[];
  readonly engaged_m: number;
  readonly diameter_m: number;
  readonly size_m?: number;
}

export interface Synthetic {
  readonly machine: Machine;
  readonly solids: Readonly<Record<string, KindSolid>>;
  readonly masses: ReturnType<typeof kindMasses>;
}

const shared = { moves_with: 'drum', side: 'still' } as const;

export function synthetic(
  parts: readonly SyntheticPart[],
  groups: readonly SyntheticGroup[] = [],
  relations: readonly Relation[] = [],
): Synthetic {
  const solids: Record<string, KindSolid> = {};
  const kinds: Record<string, CompleteMachineFile['kinds'][string]> = {};
  [...parts, ...groups].forEach(({ id, solid }, i) => {
    const list = Array.isArray(solid) ? (solid as SolidMesh[]) : [solid as SolidMesh];
    solids[id] = {
      bodies: list.map((mesh, b) => ({ name: `b${b}`, finish: 'machined', section: 'cut', solid: mesh })),
    };
    const bolt = groups.some((g) => g.id === id);
    kinds[id] = {
      item: i + 1,
      material: 'steel',
      finish: 'machined',
      family: 'drum',
      params: bolt
        ? {
            builder: 'bolt',
            diameter_m: 0.01,
            length_m: 0.05,
            head: { form: 'hex', across_flats_m: 0.016, height_m: 0.006 },
          }
        : {
            builder: 'turned',
            stations: [{ from_x_m: 0, to_x_m: 1, inner_m: 0, outer_m: 1 }],
          },
    };
  });
  const file = {
    schema_version: 1,
    machine: { id: 'bench', name: 'Bench', drum_width_m: 1, drum_radius_m: 0.5 },
    materials: { steel: { density_kg_m3: 7850, source: 'handbook value' } },
    kinds,
    parts: parts.map(({ id, at_m, turn_deg, fixed }) => ({
      ...shared,
      id,
      kind: id,
      ...(at_m === undefined ? {} : { at_m }),
      ...(turn_deg === undefined ? {} : { turn_deg }),
      ...(fixed === undefined ? {} : { fixed }),
    })),
    groups: groups.map(
      (g): GroupEntry =>
        ({
          ...shared,
          id: g.id,
          kind: g.id,
          pattern: { type: 'places', places: g.places },
          joins: g.joins,
          thread: { designation: 'M', diameter_m: g.diameter_m, pitch_m: 0.0015, class: '8.8' },
          engaged_m: g.engaged_m,
          grip_m: 0.01,
          tool: { drive: g.size_m === undefined ? 'none' : 'hex', size_m: g.size_m ?? 0 },
        }) as unknown as GroupEntry,
    ),
    relations,
    operation: {
      exciter_part: 'none',
      shot_part: null,
    },
  } as unknown as CompleteMachineFile;
  const machine = expandMachine(file);
  return { machine, solids, masses: kindMasses(machine, solids) };
}
