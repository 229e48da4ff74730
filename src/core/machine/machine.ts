/** A machine as immutable data, patterns written out: what every other folder reads. */
import {
  type Pose,
  quatFromAxisAngle,
  quatFromEulerXYZ,
  quatMultiply,
  rotate,
  X_AXIS,
  Y_AXIS,
} from '../kernel';
import type {
  Articulation,
  CompleteMachineFile,
  Drive,
  GroupEntry,
  Isolation,
  IsolationSide,
  Kind,
  Material,
  MovesWith,
  Operation,
  PartEntry,
  Pattern,
  Relation,
} from './schema';

/** One solid instance. */
export interface Part {
  /** `hub`, `isolator-right-3`, or `hub-bolts/07` for one of a group. */
  readonly id: string;
  readonly kind: string;
  /** Id of what one plan step would take off: the part's own id, its fastener group's or its weldment's. */
  readonly unit: string;
  /** Pose of the kind's frame in the machine, assembled. */
  readonly pose: Pose;
  readonly movesWith: MovesWith;
  readonly side: IsolationSide;
  readonly context: boolean;
  readonly option: string | null;
}

/** What a plan step can take off: one part, one weldment or one fastener group. */
export interface Unit {
  readonly id: string;
  readonly partIds: readonly string[];
  /** The group entry (thread, joins, tool) when it is a fastener group. */
  readonly group: GroupEntry | null;
  /** The entries it came from: one, or one a welded part. */
  readonly entries: readonly (PartEntry | GroupEntry)[];
}

export interface Machine {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly drumWidth_m: number;
  readonly drumRadius_m: number;
  readonly materials: Readonly<Record<string, Material>>;
  readonly kinds: Readonly<Record<string, Kind>>;
  readonly parts: readonly Part[];
  readonly units: readonly Unit[];
  readonly relations: readonly Relation[];
  readonly operation: Operation;
  /** Data of the whole machine that studies ask for; a file may leave them out. */
  readonly isolation?: Isolation | undefined;
  readonly drive?: Drive | undefined;
  readonly articulation?: Articulation | undefined;
  readonly options: Readonly<Record<string, { on: boolean }>>;
  readonly setNames: Readonly<Record<string, readonly string[]>>;
  readonly sources: Readonly<Record<string, string>>;
}

const DEGREE = Math.PI / 180;

/** Poses of a pattern's copies, in the order of their ordinals. */
export function patternPoses(pattern: Pattern): readonly Pose[] {
  if (pattern.type === 'places') {
    return pattern.places.map((place) => entryPose(place.at_m, place.turn_deg));
  }
  const flip = pattern.flip === true ? quatFromAxisAngle(Y_AXIS, Math.PI) : ([0, 0, 0, 1] as const);
  // Clockwise seen from the right (+x) runs from +y to -z: a turn about x by minus the angle; from the left the other way.
  const sense = pattern.seen_from === 'right' ? -1 : 1;
  const poses: Pose[] = [];
  for (let ordinal = 1; ordinal <= pattern.count; ordinal++) {
    if (pattern.skip?.includes(ordinal)) continue;
    const own = pattern.angles_deg?.[ordinal - 1] ?? (360 * (ordinal - 1)) / pattern.count;
    const angle = sense * (pattern.start_deg + own) * DEGREE;
    const turn = quatFromAxisAngle(X_AXIS, angle);
    const out = rotate(turn, [0, pattern.radius_m, 0]);
    poses.push({
      position_m: [pattern.x_m, out[1], out[2]],
      rotation: pattern.turn === false ? flip : quatMultiply(turn, flip),
    });
  }
  return poses;
}

/** Pose of a single entry: turns about the fixed x, y, z axes in degrees, then the place in metres. */
export function entryPose(
  at_m?: readonly [number, number, number],
  turn_deg?: readonly [number, number, number],
): Pose {
  const [x, y, z] = turn_deg ?? [0, 0, 0];
  return { position_m: at_m ?? [0, 0, 0], rotation: quatFromEulerXYZ(x * DEGREE, y * DEGREE, z * DEGREE) };
}

/** Writes out patterns and groups of a validated file (all sections present). */
export function expandMachine(file: CompleteMachineFile): Machine {
  const weldment = new Map<string, string>();
  for (const relation of file.relations ?? []) {
    if (relation.type === 'weld') for (const part of relation.parts) weldment.set(part, relation.unit);
  }
  const parts: Part[] = [];
  const units = new Map<string, Unit>();
  const place = (
    id: string,
    unit: string,
    pose: Pose,
    entry: PartEntry | GroupEntry,
    group: GroupEntry | null,
  ): void => {
    parts.push({
      id,
      kind: entry.kind,
      unit,
      pose,
      movesWith: entry.moves_with,
      side: entry.side,
      context: entry.context ?? false,
      option: entry.option ?? null,
    });
    const known = units.get(unit);
    const entries =
      known === undefined || known.entries.includes(entry)
        ? (known?.entries ?? [entry])
        : [...known.entries, entry];
    units.set(unit, { id: unit, partIds: [...(known?.partIds ?? []), id], group, entries });
  };
  for (const entry of file.parts ?? []) {
    const poses = entry.pattern ? patternPoses(entry.pattern) : [entryPose(entry.at_m, entry.turn_deg)];
    poses.forEach((pose, i) => {
      const id = entry.pattern ? `${entry.id}-${i + 1}` : entry.id;
      place(id, weldment.get(id) ?? weldment.get(entry.id) ?? id, pose, entry, null);
    });
  }
  for (const entry of file.groups ?? []) {
    patternPoses(entry.pattern).forEach((pose, i) =>
      place(`${entry.id}/${String(i + 1).padStart(2, '0')}`, entry.id, pose, entry, entry),
    );
  }
  return {
    id: file.machine.id,
    name: file.machine.name,
    place: file.machine.place ?? '',
    drumWidth_m: file.machine.drum_width_m,
    drumRadius_m: file.machine.drum_radius_m,
    materials: file.materials ?? {},
    kinds: file.kinds,
    parts,
    units: [...units.values()],
    relations: file.relations ?? [],
    operation: file.operation,
    isolation: file.isolation,
    drive: file.drive,
    articulation: file.articulation,
    options: file.options ?? {},
    setNames: file.set_names ?? {},
    sources: file.sources ?? {},
  };
}
