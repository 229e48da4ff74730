/** Which parts get a balloon, and the point of each that the eye can see. */
import { type Camera, Matrix4, Raycaster, Vector2, Vector3 } from 'three';
import type { AppState } from '../../../store';
import { HIDDEN, type PartTable } from '../machine/part-table';
import { pick, type PickCut } from '../pick/pick';

export const MOST_BALLOONS = 24;

/** Kinds (numbers) that deserve a balloon now, the largest first (fasteners wait for their step), and single parts. */
export interface Wanted {
  readonly parts: readonly number[];
  readonly kinds: readonly number[];
}

export function wantedBalloons(table: PartTable, state: AppState, exploded: boolean): Wanted {
  if (!state.balloons) return { parts: [], kinds: [] };
  const parts: number[] = [];
  const selected = state.selectedPart === null ? undefined : table.indexOf.get(state.selectedPart);
  if (selected !== undefined) parts.push(selected);
  const { teardown, document, jobs, practice } = state;
  const stage = practice.stage ?? jobs.stage;
  if (stage !== null) {
    // one balloon a kind, as on the printed sheet
    const kinds = new Set<number>(parts.map((part) => table.kindOf[part]!));
    const about = 'blockers' in stage ? stage.blockers : stage.partIds.map((id) => table.indexOf.get(id));
    for (const part of about) {
      if (part === undefined || kinds.has(table.kindOf[part]!)) continue;
      kinds.add(table.kindOf[part]!);
      parts.push(part);
    }
  } else if (teardown.open && document !== null) {
    const step = document.teardown.steps[teardown.step];
    const { units } = document.machine;
    for (const id of step?.unitIds ?? []) {
      const first = units.find((u) => u.id === id)?.partIds[0];
      const part = first === undefined ? undefined : table.indexOf.get(first);
      if (part !== undefined && part !== selected) parts.push(part);
    }
  }
  // A step of a lesson that wants names wants them on an assembled drum too.
  const { place, path } = state.route;
  const inLesson = place === 'lessons' && path[0] !== undefined && path[0] !== 'glossary';
  const kinds =
    exploded || inLesson
      ? table.kinds
          .map((kind, k) => ({ k, kind }))
          .filter(({ kind }) => table.document.machine.kinds[kind.id]?.family !== 'fasteners')
          .filter(({ kind }) => kind.parts.some((p) => table.shown[p] !== HIDDEN))
          .sort((a, b) => b.kind.radius - a.kind.radius)
          .map(({ k }) => k)
      : [];
  return { parts: parts.slice(0, MOST_BALLOONS), kinds };
}

/** A seen point of a part, in the part's own frame. */
export interface SeenPoint {
  readonly part: number;
  readonly own: Vector3;
}

const caster = new Raycaster();
const onScreen = new Vector2();
const world = new Vector3();
const normal = new Vector3();
const eye = new Vector3();
const inverse = new Matrix4();

/** Triangles tried for each part before it counts as covered. */
const TRIES = 7;

/**
 * Yields a seen point for each wanted part and kind, at most one a kind, so that the caller can stop between them: a
 * ray is cast to the middles of a part's triangles that face the eye, from the one that faces it most.
 */
export function* seenPoints(
  table: PartTable,
  camera: Camera,
  cut: PickCut | null,
  wanted: Wanted,
): Generator<SeenPoint | null> {
  const done = new Set<number>();
  camera.getWorldPosition(eye);
  for (const part of wanted.parts) {
    const own = seenPoint(table, part, camera, cut);
    if (own !== null) done.add(table.kindOf[part]!);
    yield own === null ? null : { part, own };
  }
  for (const kind of wanted.kinds) {
    if (done.has(kind)) continue;
    const near = table.kinds[kind]!.parts.filter((p) => table.shown[p] !== HIDDEN)
      .map((part) => ({ part, d: world.fromArray(table.matrices, part * 16 + 12).distanceTo(eye) }))
      .sort((a, b) => a.d - b.d)
      .slice(0, 2);
    for (const { part } of near) {
      const own = seenPoint(table, part, camera, cut);
      yield own === null ? null : { part, own };
      if (own !== null) break;
    }
  }
}

function seenPoint(table: PartTable, part: number, camera: Camera, cut: PickCut | null): Vector3 | null {
  const candidates = facing(table, part);
  for (const own of candidates) {
    place(table, part, own, world);
    const projected = world.clone().project(camera);
    if (Math.abs(projected.x) > 0.98 || Math.abs(projected.y) > 0.98 || projected.z > 1) continue;
    caster.setFromCamera(onScreen.set(projected.x, projected.y), camera);
    const hit = pick(table, caster.ray, cut);
    // What the eye meets of the part may lie before the candidate (a cut face) or behind it (its near side is cut away).
    if (hit?.part === part) return back(table, part, hit.point);
  }
  return null;
}

/** Middles of large triangles that face the eye, spread over the part. */
function facing(table: PartTable, part: number): Vector3[] {
  const kind = table.kinds[table.kindOf[part]!]!;
  const found: { own: Vector3; weight: number }[] = [];
  const a = new Vector3();
  const b = new Vector3();
  const c = new Vector3();
  for (const { solid } of kind.bodies) {
    const count = solid.indices.length / 3;
    const stride = Math.max(1, Math.floor(count / 400));
    for (let t = 0; t < count; t += stride) {
      a.fromArray(solid.positions, solid.indices[3 * t]! * 3);
      b.fromArray(solid.positions, solid.indices[3 * t + 1]! * 3);
      c.fromArray(solid.positions, solid.indices[3 * t + 2]! * 3);
      const own = a.clone().add(b).add(c).divideScalar(3);
      normal.crossVectors(b.sub(a), c.sub(a));
      const area = normal.length();
      if (area === 0) continue;
      place(table, part, own, world);
      turn(table, part, normal);
      const towards = normal.dot(world.subVectors(eye, world).normalize()) / area;
      if (towards > 0.15) found.push({ own, weight: towards * Math.sqrt(area) });
    }
  }
  found.sort((p, q) => q.weight - p.weight);
  // Not seven triangles of one face: each further one keeps its distance from those before.
  const out: Vector3[] = [];
  const apart = kind.radius * 0.3;
  for (const { own } of found) {
    if (out.length >= TRIES) break;
    if (out.every((p) => p.distanceTo(own) > apart)) out.push(own);
  }
  return out;
}

function place(table: PartTable, part: number, own: Vector3, out: Vector3): Vector3 {
  const m = table.matrices;
  const o = part * 16;
  return out.set(
    m[o]! * own.x + m[o + 4]! * own.y + m[o + 8]! * own.z + m[o + 12]!,
    m[o + 1]! * own.x + m[o + 5]! * own.y + m[o + 9]! * own.z + m[o + 13]!,
    m[o + 2]! * own.x + m[o + 6]! * own.y + m[o + 10]! * own.z + m[o + 14]!,
  );
}

/** A point of the machine in the part's own frame. */
function back(table: PartTable, part: number, point: Vector3): Vector3 {
  return point.clone().applyMatrix4(inverse.fromArray(table.matrices, part * 16).invert());
}

/** Where a seen point is now, CSS pixels; null behind the eye. */
export function projectSeen(
  table: PartTable,
  seen: SeenPoint,
  camera: Camera,
  width: number,
  height: number,
): { x: number; y: number } | null {
  place(table, seen.part, seen.own, world).project(camera);
  if (world.z > 1 || world.z < -1) return null;
  return { x: (world.x * 0.5 + 0.5) * width, y: (0.5 - world.y * 0.5) * height };
}

function turn(table: PartTable, part: number, v: Vector3): void {
  const m = table.matrices;
  const o = part * 16;
  const { x, y, z } = v;
  v.set(
    m[o]! * x + m[o + 4]! * y + m[o + 8]! * z,
    m[o + 1]! * x + m[o + 5]! * y + m[o + 9]! * z,
    m[o + 2]! * x + m[o + 6]! * y + m[o + 10]! * z,
  );
}
