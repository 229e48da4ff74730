/**
 * The machine as the planner sees it: its active parts as meshes in the machine's frame, gathered into bodies.
 * A body is what moves as one piece whatever happens: a unit of the model, or several that are bonded for good
 * (a bond relation, loose contents shut in their vessel). Parts of the context and of options that are off do not
 * take part; fluids have no shape here, they are drained.
 */
import { rotate, type Vec3, X_AXIS } from '../kernel';
import { defaultOptions, type GroupEntry, isPresent, type Machine, type Relation } from '../machine';
import { type KindMass, type KindSolid, poseMass } from '../geometry';

export type Solids = Readonly<Record<string, KindSolid>>;
export type Masses = Readonly<Record<string, KindMass>>;

/** A mesh in the frame of the machine; all bodies of a part run together. */
export interface PlacedMesh {
  readonly positions: Float32Array;
  readonly indices: Uint32Array;
}

export interface AssemblyBody {
  readonly index: number;
  /** Unit that names it (the heaviest), and all units it is made of. */
  readonly id: string;
  readonly unitIds: readonly string[];
  /** Numbers of its parts in `machine.parts`. */
  readonly parts: readonly number[];
  readonly group: GroupEntry | null;
  readonly fixed: boolean;
  readonly hose: boolean;
  readonly seal: boolean;
  readonly mass_kg: number;
  readonly centre_m: Vec3;
  /** Least and greatest x, y, z. */
  readonly bounds: Float64Array;
  readonly directions: readonly Vec3[];
}

export interface World {
  readonly machine: Machine;
  readonly bodies: readonly AssemblyBody[];
  /** Body of each part of `machine.parts`; -1: takes no part. */
  readonly bodyOfPart: Int32Array;
  readonly meshes: readonly (PlacedMesh | null)[];
  /** Six numbers a part. */
  readonly partBounds: Float64Array;
  readonly fluids: readonly Extract<Relation, { type: 'fluid' }>[];
  /** Parts that an id of the model names: a part, an entry with a pattern, a unit, a weldment. */
  partsOf(id: string): readonly number[];
  bodiesOf(id: string): readonly number[];
}

const PATTERN_TAIL = /(-\d+|\/\d+)$/;

/** Gathers the world of a machine. Kinds without a solid have no shape and block nothing. */
export function buildWorld(machine: Machine, solids: Solids, masses: Masses): World {
  const { parts, units, relations } = machine;
  const fluidIds = new Set(relations.flatMap((r) => (r.type === 'fluid' ? [r.fluid] : [])));
  const options = defaultOptions(machine);
  const active = parts.map((p) => isPresent(p, options) && !fluidIds.has(p.unit) && !fluidIds.has(p.id));
  const partNumber = new Map(parts.map((p, i) => [p.id, i]));
  const named = new Map<string, number[]>();
  const name = (id: string, part: number): void => {
    const list = named.get(id);
    if (list === undefined) named.set(id, [part]);
    else if (!list.includes(part)) list.push(part);
  };
  const unitParts = new Map<string, number[]>();
  for (const unit of units) {
    const entryIds = new Set(unit.entries.map((e) => e.id));
    for (const partId of unit.partIds) {
      const part = partNumber.get(partId);
      if (part === undefined || active[part] !== true) continue;
      name(partId, part);
      name(unit.id, part);
      const stem = partId.replace(PATTERN_TAIL, '');
      if (entryIds.has(stem)) name(stem, part);
      unitParts.set(unit.id, [...(unitParts.get(unit.id) ?? []), part]);
    }
  }

  const partMass = parts.map((p) => {
    const mass = masses[p.kind];
    return mass === undefined ? { mass_kg: 0, centre_m: p.pose.position_m } : poseMass(p.pose, mass);
  });
  const unitOfPart = parts.map((p) => p.unit);
  const clusters = clusterUnits(machine, [...unitParts.keys()], (id) => [
    ...new Set((named.get(id) ?? []).map((p) => unitOfPart[p] ?? '')),
  ]);
  const meshes = parts.map((p, i) => {
    const solid = solids[p.kind];
    return active[i] === true && solid !== undefined ? placeMesh(solid, p.pose) : null;
  });
  const partBounds = new Float64Array(parts.length * 6);
  parts.forEach((p, i) => meshBounds(meshes[i] ?? null, p.pose.position_m, partBounds, i * 6));

  const hoses = new Set(relations.flatMap((r) => (r.type === 'hose' ? [r.hose] : [])));
  const seals = new Set(relations.flatMap((r) => (r.type === 'seal' ? [r.seal] : [])));
  const unitsById = new Map(units.map((u) => [u.id, u]));
  const bodyOfPart = new Int32Array(parts.length).fill(-1);
  const bodies = clusters.map((unitIds, index): AssemblyBody => {
    const own = unitIds.flatMap((id) => unitParts.get(id) ?? []);
    for (const p of own) bodyOfPart[p] = index;
    const weight = (id: string): number =>
      (unitParts.get(id) ?? []).reduce((sum, p) => sum + (partMass[p]?.mass_kg ?? 0), 0);
    const id = [...unitIds].sort((a, b) => weight(b) - weight(a))[0] ?? '';
    const entries = unitIds.flatMap((u) => unitsById.get(u)?.entries ?? []);
    const group = unitIds.length === 1 ? (unitsById.get(id)?.group ?? null) : null;
    const isNamed = (set: Set<string>): boolean =>
      unitIds.every((u) => set.has(u) || (unitsById.get(u)?.entries ?? []).every((e) => set.has(e.id)));
    const mass_kg = own.reduce((sum, p) => sum + (partMass[p]?.mass_kg ?? 0), 0);
    const centre = [0, 0, 0];
    for (const p of own)
      for (let k = 0; k < 3; k++)
        centre[k] =
          (centre[k] ?? 0) +
          (mass_kg > 0
            ? ((partMass[p]?.mass_kg ?? 0) * (partMass[p]?.centre_m[k] ?? 0)) / mass_kg
            : (parts[p]?.pose.position_m[k] ?? 0) / own.length);
    return {
      index,
      id,
      unitIds,
      parts: own,
      group,
      fixed: entries.some((e) => e.fixed === true),
      hose: isNamed(hoses),
      seal: isNamed(seals),
      mass_kg,
      centre_m: [centre[0] ?? 0, centre[1] ?? 0, centre[2] ?? 0],
      bounds: joinBounds(partBounds, own),
      directions: entries.flatMap((e) => e.directions ?? []),
    };
  });
  const none: readonly number[] = [];
  return {
    machine,
    bodies,
    bodyOfPart,
    meshes,
    partBounds,
    fluids: relations.filter((r) => r.type === 'fluid'),
    partsOf: (id) => named.get(id) ?? none,
    bodiesOf: (id) => [...new Set((named.get(id) ?? none).map((p) => bodyOfPart[p] ?? -1))],
  };
}

/** Own axis (+x of the kind) of a part in the frame of the machine; rounding of its turn is taken off. */
export function partAxis(machine: Machine, part: number): Vec3 {
  const axis = rotate(machine.parts[part]?.pose.rotation ?? [0, 0, 0, 1], X_AXIS);
  const clean = (c: number): number => (Math.abs(c) < 1e-9 ? 0 : Math.abs(c) > 1 - 1e-9 ? Math.sign(c) : c);
  return [clean(axis[0]), clean(axis[1]), clean(axis[2])];
}

/** Units that are bonded for good, together; the others alone; in the order of the machine. */
function clusterUnits(machine: Machine, unitIds: string[], unitsOf: (id: string) => string[]): string[][] {
  const root = new Map(unitIds.map((id) => [id, id]));
  const find = (id: string): string => {
    const up = root.get(id) ?? id;
    return up === id ? id : find(up);
  };
  const join = (ids: readonly string[]): void => {
    const known = ids.filter((id) => root.has(id));
    for (const id of known.slice(1)) root.set(find(id), find(known[0] ?? id));
  };
  for (const relation of machine.relations) {
    if (relation.type !== 'bond') continue;
    // Names of patterns with the same count are bonded copy by copy, not all in one lump.
    const lists = relation.parts.map(unitsOf);
    const count = lists[0]?.length ?? 0;
    if (count > 1 && lists.every((list) => list.length === count))
      for (let i = 0; i < count; i++) join(lists.map((list) => list[i] ?? ''));
    else join(lists.flat());
  }
  const { shot_part, exciter_part } = machine.operation;
  if (shot_part !== null) join([exciter_part, shot_part].flatMap(unitsOf));
  const clusters = new Map<string, string[]>();
  for (const id of unitIds) clusters.set(find(id), [...(clusters.get(find(id)) ?? []), id]);
  return [...clusters.values()];
}

function placeMesh(kind: KindSolid, pose: Machine['parts'][number]['pose']): PlacedMesh {
  const vertexCount = kind.bodies.reduce((sum, b) => sum + b.solid.positions.length, 0);
  const indexCount = kind.bodies.reduce((sum, b) => sum + b.solid.indices.length, 0);
  const positions = new Float32Array(vertexCount);
  const indices = new Uint32Array(indexCount);
  const columns = ([[1, 0, 0], [0, 1, 0], [0, 0, 1]] as const).map((a) => rotate(pose.rotation, a)); // prettier-ignore
  const [[xx, xy, xz], [yx, yy, yz], [zx, zy, zz]] = columns as unknown as [Vec3, Vec3, Vec3];
  const [px, py, pz] = pose.position_m;
  let v = 0;
  let t = 0;
  for (const body of kind.bodies) {
    const base = v / 3;
    const from = body.solid.positions;
    for (let i = 0; i < from.length; i += 3) {
      const x = from[i] ?? 0;
      const y = from[i + 1] ?? 0;
      const z = from[i + 2] ?? 0;
      positions[v++] = xx * x + yx * y + zx * z + px;
      positions[v++] = xy * x + yy * y + zy * z + py;
      positions[v++] = xz * x + yz * y + zz * z + pz;
    }
    const list = body.solid.indices;
    for (let i = 0; i < list.length; i++) indices[t++] = (list[i] ?? 0) + base;
  }
  return { positions, indices };
}

function meshBounds(mesh: PlacedMesh | null, at: Vec3, out: Float64Array, offset: number): void {
  for (let k = 0; k < 3; k++) {
    let low = mesh === null ? at[k]! : Infinity;
    let high = mesh === null ? at[k]! : -Infinity;
    if (mesh !== null)
      for (let i = k; i < mesh.positions.length; i += 3) {
        const value = mesh.positions[i]!;
        if (value < low) low = value;
        if (value > high) high = value;
      }
    out[offset + 2 * k] = low;
    out[offset + 2 * k + 1] = high;
  }
}

function joinBounds(partBounds: Float64Array, parts: readonly number[]): Float64Array {
  const out = new Float64Array([Infinity, -Infinity, Infinity, -Infinity, Infinity, -Infinity]);
  for (const p of parts)
    for (let k = 0; k < 3; k++) {
      out[2 * k] = Math.min(out[2 * k]!, partBounds[p * 6 + 2 * k]!);
      out[2 * k + 1] = Math.max(out[2 * k + 1]!, partBounds[p * 6 + 2 * k + 1]!);
    }
  return out;
}
