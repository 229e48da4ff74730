/**
 * Load path and torque path: the shortest ways through the machine's joints from where a force comes in to where it
 * goes out. Load crosses every joint that holds; torque about the drum's axis does not cross a bearing or a running
 * fit, so it crosses only what is welded, bonded, bolted, splined or tight. Shortest means fewest joints; ways of one
 * length are parallel (eight isolators, two wheel bearings) and all belong to the path.
 */
import { type KindMass, type KindSolid } from '../../geometry';
import { transformPoint } from '../../kernel';
import {
  kindOf,
  type Machine,
  type Part,
  type PartJoint,
  partJoints,
  partOf,
  partsOfRef,
} from '../../machine';
import { meshBox } from '../overlap';

export type ForceKind = 'load' | 'torque';

export interface ForcePath {
  /** Parts in order, parallel ones together; the first holds the source, the last the sink. */
  readonly stages: readonly (readonly string[])[];
  /** Joints in the direction of the force. */
  readonly links: readonly (readonly [string, string])[];
}

type Present = (partId: string) => boolean;
type Solids = Readonly<Record<string, KindSolid>>;

const ROLLS = new Set(['spherical-roller-bearing', 'tapered-roller-bearing']);

function carries(machine: Machine, joint: PartJoint, kind: ForceKind, present: Present): boolean {
  if (!present(joint.a) || !present(joint.b)) return false;
  if (joint.fasteners.length > 0 && !joint.fasteners.some(present)) return false;
  const builders = [joint.a, joint.b].map((id) => kindOf(machine, partOf(machine, id)).params.builder);
  // An O-ring or a lip gives way: it holds itself, nothing else.
  if (builders.some((builder) => builder === 'o-ring' || builder === 'lip-seal')) return false;
  if (kind === 'load') return joint.kind !== 'spline';
  if (builders.some((builder) => ROLLS.has(builder))) return false;
  return joint.kind !== 'seat' || joint.interference_m > 0;
}

/**
 * The path; null where no joint that carries leads from `from` to `to` among the parts that are present (a set of
 * isolators is off, say). From and to are part ids; the same part gives a path of one stage.
 */
export function forcePath(
  machine: Machine,
  kind: ForceKind,
  from: string,
  to: string,
  present: Present,
): ForcePath | null {
  if (!present(from) || !present(to)) return null;
  const next = new Map<string, Set<string>>();
  const link = (a: string, b: string): void => {
    next.set(a, (next.get(a) ?? new Set()).add(b));
  };
  for (const joint of partJoints(machine)) {
    if (!carries(machine, joint, kind, present)) continue;
    link(joint.a, joint.b);
    link(joint.b, joint.a);
  }
  const away = distances(next, from);
  const left = distances(next, to);
  const length = away.get(to);
  if (length === undefined) return null;
  const on = (id: string): boolean => (away.get(id) ?? Infinity) + (left.get(id) ?? Infinity) === length;
  const stages: string[][] = Array.from({ length: length + 1 }, () => []);
  for (const { id } of machine.parts) if (on(id)) stages[away.get(id)!]!.push(id);
  const links = stages.flatMap((stage, i) =>
    stage.flatMap((a) =>
      (stages[i + 1] ?? []).filter((b) => next.get(a)?.has(b)).map((b): [string, string] => [a, b]),
    ),
  );
  return { stages, links };
}

/** Joints from one part to every other that can be reached. */
function distances(next: ReadonlyMap<string, ReadonlySet<string>>, from: string): Map<string, number> {
  const away = new Map([[from, 0]]);
  for (const [id, steps] of away)
    for (const to of next.get(id) ?? []) if (!away.has(to)) away.set(to, steps + 1);
  return away;
}

/**
 * Where the frame's load comes in: the part of the front frame that the rest of the machine leans on by the declared
 * weight path, else the heaviest part of the frame. Null where the machine has no frame.
 */
export function loadSource(
  machine: Machine,
  masses: Readonly<Record<string, KindMass>>,
  present: Present,
): string | null {
  const frame = machine.parts.filter((p) => p.movesWith === 'frame' && !p.context && present(p.id));
  for (const relation of machine.relations) {
    if (relation.type !== 'rests') continue;
    const above = partsOfRef(machine, relation.part).map((id) => partOf(machine, id));
    if (!above.some((part) => part.context)) continue;
    const on = partsOfRef(machine, relation.on).find((id) => frame.some((part) => part.id === id));
    if (on !== undefined) return on;
  }
  const mass = (part: Part): number => masses[part.kind]?.mass_kg ?? 0;
  return frame.length === 0 ? null : frame.reduce((best, p) => (mass(p) > mass(best) ? p : best)).id;
}

/** What touches the ground: of all that turns with the drum the part that reaches lowest. Null where nothing does. */
export function groundPart(machine: Machine, solids: Solids, present: Present): string | null {
  let lowest: { id: string; y: number } | null = null;
  for (const part of machine.parts) {
    if (part.movesWith !== 'drum' || !present(part.id)) continue;
    const bodies = solids[part.kind]?.bodies ?? [];
    if (bodies.length === 0) continue;
    const { low, high } = meshBox(bodies.map((body) => body.solid));
    for (let corner = 0; corner < 8; corner++) {
      const [x, y, z] = [0, 1, 2].map((k) => ((corner >> k) & 1 ? high : low)[k]!) as [
        number,
        number,
        number,
      ];
      const at = transformPoint(part.pose, [x, y, z])[1];
      // A turned solid's box is exact along its own axes; a hair's difference is no other part.
      if (lowest === null || at < lowest.y - 1e-6) lowest = { id: part.id, y: at };
    }
  }
  return lowest?.id ?? null;
}

/** The drive: the motor that turns the drum, the one joined by torque to something that turns with it. */
export function torqueSource(machine: Machine, present: Present): string | null {
  const isMotor = (id: string): boolean =>
    kindOf(machine, partOf(machine, id)).params.builder === 'radial-piston-motor';
  for (const joint of partJoints(machine)) {
    if (!carries(machine, joint, 'torque', () => true)) continue;
    for (const [motor, driven] of [
      [joint.a, joint.b],
      [joint.b, joint.a],
    ] as const)
      if (isMotor(motor) && present(motor) && partOf(machine, driven).movesWith === 'drum') return motor;
  }
  return null;
}
