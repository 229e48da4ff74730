/**
 * Checks of a machine that need its solids and its relations, run over every model: what the schema cannot see.
 * Each fault names the entry it belongs to, with file and line when the machine came from files.
 */
import {
  cross,
  type Fault,
  invertPose,
  length,
  message,
  rotate,
  transformPoint,
  type Vec3,
  X_AXIS,
} from '../kernel';
import { kindMass, type KindSolid, type SolidKernel } from '../geometry';
import { partOf, type Part, partsOfRef, relationRefs, type Machine, type SourcedMachine } from '../machine';
import { findOverlaps } from './overlap';

/** Share by which a declared mass may differ from volume times density without a word of explanation. */
const MASS_TOLERANCE = 0.05;
/** Volume that two solids may share for each metre of tight fit's circumference and length is small; this is slack. */
const CONTACT_SLACK_M3 = 5e-8;

type Where = SourcedMachine['where'];

/** Fasteners: a shank that covers its grip and its engaged thread, an engagement of at least 0.8 diameters. */
function checkFasteners(machine: Machine, where: Where): Fault[] {
  const faults: Fault[] = [];
  for (const unit of machine.units) {
    const group = unit.group;
    if (group === null) continue;
    const kind = machine.kinds[group.kind];
    const params = kind?.params;
    if (params?.builder !== 'bolt') continue;
    const needed = group.grip_m + group.engaged_m;
    if (params.length_m < needed - 1e-9) {
      faults.push({
        ...where('groups', group.id, 'engaged_m'),
        expected: message('fault.bolt-length', {
          needed_m: needed,
          grip_m: group.grip_m,
          engaged_m: group.engaged_m,
        }),
        found: String(params.length_m),
      });
    }
    if (Math.abs(params.diameter_m - group.thread.diameter_m) > 1e-9) {
      faults.push({
        ...where('groups', group.id, 'thread', 'diameter_m'),
        expected: message('fault.bolt-diameter', { diameter_m: params.diameter_m }),
        found: String(group.thread.diameter_m),
      });
    }
    if (group.thread.class !== null && group.engaged_m < 0.8 * group.thread.diameter_m - 1e-9) {
      faults.push({
        ...where('groups', group.id, 'engaged_m'),
        expected: message('fault.engagement', { least_m: 0.8 * group.thread.diameter_m }),
        found: String(group.engaged_m),
      });
    }
  }
  return faults;
}

/** Declared masses against volume times density. */
function checkMasses(machine: Machine, solids: Readonly<Record<string, KindSolid>>, where: Where): Fault[] {
  const faults: Fault[] = [];
  for (const [id, kind] of Object.entries(machine.kinds)) {
    const solid = solids[id];
    if (solid === undefined || kind.mass_kg === undefined || kind.mass_note !== undefined) continue;
    const { solidMass_kg } = kindMass(kind, solid, machine.materials);
    if (Math.abs(solidMass_kg - kind.mass_kg) > MASS_TOLERANCE * kind.mass_kg) {
      faults.push({
        ...where('kinds', id, 'mass_kg'),
        expected: message('fault.mass', { solid_kg: solidMass_kg }),
        found: String(kind.mass_kg),
      });
    }
  }
  return faults;
}

/** Whether a part has corners at `radius_m` from the line through `at` along the unit vector `axis` (machine frame). */
function hasRoundFace(part: Part, solid: KindSolid, at: Vec3, axis: Vec3, radius_m: number): boolean {
  // The line in the kind's own frame; a corner of the polygon lies up to 2.4 % outside the true circle (12 corners).
  const back = invertPose(part.pose);
  const origin = transformPoint(back, at);
  const along = rotate(back.rotation, axis);
  const [low, high] = [radius_m * 0.9985 - 1e-5, radius_m * 1.025 + 1e-5];
  for (const { solid: mesh } of solid.bodies) {
    const { positions } = mesh;
    for (let i = 0; i < positions.length; i += 3) {
      const arm: Vec3 = [
        positions[i]! - origin[0],
        positions[i + 1]! - origin[1],
        positions[i + 2]! - origin[2],
      ];
      const r = length(cross(arm, along));
      if (r >= low && r <= high) return true;
    }
  }
  return false;
}

/** Seats with a declared diameter: both parts must have a round face of it about the inner part's own x axis. */
function checkSeats(machine: Machine, solids: Readonly<Record<string, KindSolid>>, where: Where): Fault[] {
  const faults: Fault[] = [];
  machine.relations.forEach((relation, number) => {
    if (relation.type !== 'seat' || relation.diameter_m === undefined) return;
    const radius_m = relation.diameter_m / 2;
    const inner = partsOfRef(machine, relation.inner).map((id) => partOf(machine, id));
    const outer = partsOfRef(machine, relation.outer).map((id) => partOf(machine, id));
    const fits = (part: Part, axisOf: Part): boolean => {
      const solid = solids[part.kind];
      if (solid === undefined) return true;
      const axis = rotate(axisOf.pose.rotation, X_AXIS);
      return hasRoundFace(part, solid, axisOf.pose.position_m, axis, radius_m);
    };
    for (const [side, parts] of [
      ['inner', inner],
      ['outer', outer],
    ] as const) {
      if (parts.some((part) => inner.some((axisOf) => fits(part, axisOf)))) continue;
      faults.push({
        ...where('relations', number, side),
        expected: message('fault.seat-diameter', { diameter_m: relation.diameter_m }),
        found: relation[side],
      });
    }
  });
  return faults;
}

/** Every part hangs together with the others over relations and fasteners. */
function checkReach(machine: Machine, where: Where): Fault[] {
  const neighbours = new Map<string, Set<string>>();
  const link = (ids: readonly string[]): void => {
    const [first, ...others] = ids;
    if (first === undefined) return;
    for (const other of others) {
      (neighbours.get(first) ?? neighbours.set(first, new Set()).get(first)!).add(other);
      (neighbours.get(other) ?? neighbours.set(other, new Set()).get(other)!).add(first);
    }
  };
  for (const relation of machine.relations)
    link(relationRefs(relation).flatMap(([, ref]) => [...partsOfRef(machine, ref)]));
  for (const unit of machine.units) {
    link(unit.partIds);
    if (unit.group)
      link([...unit.partIds, ...unit.group.joins.flatMap((ref) => [...partsOfRef(machine, ref)])]);
  }
  // The web with the most parts is the machine; whatever hangs free of it is not held by anything.
  let reached = new Set<string>();
  const visited = new Set<string>();
  for (const part of machine.parts) {
    if (visited.has(part.id)) continue;
    const web = new Set([part.id]);
    const queue = [part.id];
    for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
      visited.add(id);
      for (const next of neighbours.get(id) ?? []) {
        if (web.has(next)) continue;
        web.add(next);
        queue.push(next);
      }
    }
    if (web.size > reached.size) reached = web;
  }
  const faults: Fault[] = [];
  const told = new Set<string>();
  for (const unit of machine.units) {
    for (const entry of unit.entries) {
      const lost = unit.partIds.some((id) => !reached.has(id));
      const part = machine.parts.find((p) => p.unit === unit.id);
      if (!lost || told.has(entry.id) || part?.context === true) continue;
      told.add(entry.id);
      faults.push({
        ...where(unit.group ? 'groups' : 'parts', entry.id),
        expected: message('fault.reached'),
        found: entry.id,
      });
    }
  }
  return faults;
}

/** Solids that share space beyond what their declared fits allow. */
function checkOverlaps(
  machine: Machine,
  solids: Readonly<Record<string, KindSolid>>,
  kernel: SolidKernel,
  where: Where,
): Fault[] {
  const allowed = new Map<string, number>();
  const key = (a: string, b: string): string => (a < b ? `${a} ${b}` : `${b} ${a}`);
  for (const relation of machine.relations) {
    if (relation.type !== 'seat' || relation.interference_m === undefined || relation.interference_m <= 0)
      continue;
    for (const a of partsOfRef(machine, relation.inner))
      for (const b of partsOfRef(machine, relation.outer)) {
        // A ring of the interference's thickness, at most a metre long.
        allowed.set(key(a, b), (Math.PI * (relation.diameter_m ?? 0.3) * relation.interference_m) / 2);
      }
  }
  const entryOf = new Map(
    machine.units.flatMap((u) =>
      u.partIds.map(
        (id) =>
          [
            id,
            u.entries.find((e) => id === e.id || id.startsWith(`${e.id}-`) || id.startsWith(`${e.id}/`)) ??
              u.entries[0]!,
          ] as const,
      ),
    ),
  );
  const isGroup = new Map(
    machine.units.flatMap((u) => u.partIds.map((id) => [id, u.group !== null] as const)),
  );
  // One line a pair of entries: sixteen bolts in one plate are one fault.
  const told = new Set<string>();
  const faults: Fault[] = [];
  for (const { a, b, volume_m3 } of findOverlaps(kernel, machine, solids)) {
    if (volume_m3 <= (allowed.get(key(a, b)) ?? 0) + CONTACT_SLACK_M3) continue;
    const pair = key(entryOf.get(a)!.id, entryOf.get(b)!.id);
    if (told.has(pair)) continue;
    told.add(pair);
    faults.push({
      ...where(isGroup.get(a) ? 'groups' : 'parts', entryOf.get(a)!.id),
      expected: message('fault.no-overlap', { other: b }),
      found: `${a}: ${(volume_m3 * 1e6).toFixed(2)} cm3`,
    });
  }
  return faults;
}

/** All checks; an empty list is a sound machine. */
export function checkModel(
  source: SourcedMachine,
  solids: Readonly<Record<string, KindSolid>>,
  kernel: SolidKernel,
): readonly Fault[] {
  const { machine, where } = source;
  return [
    ...checkFasteners(machine, where),
    ...checkSeats(machine, solids, where),
    ...checkReach(machine, where),
    ...checkMasses(machine, solids, where),
    ...checkOverlaps(machine, solids, kernel, where),
  ];
}
