/** A picture of the sheet: the steps' parts drawn apart in heavy lines, what they sit in thin, balloons at the sides. */
import { buildExplode, explodeOffsetsAt, type Plan } from '../../../core/assembly';
import { kindSolids, type MachineDocument } from '../../../core/document';
import {
  type Anchor,
  type Balloon,
  type DrawnPart,
  type Frame,
  layoutBalloons,
  lineDrawing,
  type LineDrawing,
  viewFrom,
} from '../../../core/geometry';
import type { SheetPicture } from '../../../core/jobs';
import { add, rotate, type Vec3 } from '../../../core/kernel';
import { defaultOptions, isPresent, type Machine, type Part } from '../../../core/machine';

export interface DrawnPicture {
  readonly picture: SheetPicture;
  readonly drawing: LineDrawing;
  readonly balloons: readonly (Balloon & { readonly item: number })[];
  /** True where the parts are drawn by themselves because the machine would cover them. */
  readonly alone: boolean;
}

/** Width of the sheet of drawing, pixels; printed 120 mm wide that is about 220 an inch. */
const WIDTH = 1040;
export const BALLOON_RADIUS = 25;
const COLUMN = 30;
/** Least half size of what is drawn, metres: a bolt alone says little about where it sits. */
const LEAST_M = 0.22;
/** Height over width of a picture, least and most. */
const FLAT = 0.3;
const TALL = 0.56;
/** Parts seen by fewer pixels have no balloon. */
const LEAST_SEEN = 8;
/** Ways drawn at most, so that a ring of bolts stays legible. */
const MOST_WAYS = 12;

export function drawPicture(
  document: MachineDocument,
  machine: Machine,
  plan: Plan | null,
  picture: SheetPicture,
): DrawnPicture {
  const { only, partIds, planSteps } = picture;
  const first = draw(document, machine, plan, picture, only);
  const wanted = kindsOf(machine, partIds).size;
  const seen = first.balloons.length;
  // what moves is shown where it goes; what is only looked at must be seen
  if (only !== null || (planSteps.length > 0 ? seen > 0 : seen >= wanted / 2))
    return { ...first, alone: only !== null };
  return { ...draw(document, machine, plan, picture, partIds), alone: true };
}

function draw(
  document: MachineDocument,
  machine: Machine,
  plan: Plan | null,
  picture: SheetPicture,
  only: readonly string[] | null,
): Omit<DrawnPicture, 'alone'> {
  const options = defaultOptions(machine);
  const main = new Set(picture.partIds);
  const gone = new Set(picture.goneIds);
  const shown = only === null ? null : new Set(only);
  const offsets = offsetsOf(document, machine, plan, picture.planSteps);
  const parts: DrawnPart[] = [];
  const frameOf: { readonly part: Part; readonly shift: Vec3 }[] = [];
  const ways: [Vec3, Vec3][] = [];
  machine.parts.forEach((part, i) => {
    const isMain = main.has(part.id);
    // what has left before is not drawn back at its seat
    if (!isPresent(part, options, isMain) || (shown === null ? gone.has(part.id) : !shown.has(part.id)))
      return;
    const shift = offsets?.[i] ?? [0, 0, 0];
    const position_m = add(part.pose.position_m, shift);
    parts.push({
      id: part.id,
      bodies: document.solids[part.kind] ?? [],
      position_m,
      rotation: part.pose.rotation,
      role: isMain ? 'main' : 'other',
    });
    if (isMain || shown !== null) frameOf.push({ part, shift });
    if (isMain && Math.hypot(...shift) > 0.04)
      ways.push([middleOf(document, part, [0, 0, 0]), middleOf(document, part, shift)]);
  });
  const towards = eyeFor(plan, picture, machine);
  const frame = frameAround(document, frameOf, towards);
  const drawing = lineDrawing({
    parts: parts.filter((part) => touches(document, machine, part, towards, frame)),
    towards,
    frame,
    width: WIDTH,
    paths: spread(ways),
  });
  return { picture, drawing, balloons: balloonsIn(machine, picture.partIds, drawing) };
}

/** Shifts of the parts that leave in these steps, as the exploded view lays them down; null where none leaves. */
function offsetsOf(
  document: MachineDocument,
  machine: Machine,
  plan: Plan | null,
  planSteps: readonly number[],
): readonly Vec3[] | null {
  if (plan === null || planSteps.length === 0) return null;
  const steps = planSteps.map((k, index) => ({ ...plan.steps[k]!, index }));
  const explode = buildExplode(machine, kindSolids(document), document.masses, { ...plan, steps });
  const out = new Float32Array(3 * machine.parts.length);
  explodeOffsetsAt(explode, 1, out);
  return machine.parts.map((_, i): Vec3 => [out[3 * i]!, out[3 * i + 1]!, out[3 * i + 2]!]);
}

/** From the end that most of the steps leave by, from the front and above. */
function eyeFor(plan: Plan | null, picture: SheetPicture, machine: Machine): Vec3 {
  const legs = picture.planSteps.flatMap((k) => plan?.steps[k]?.legs.at(-1)?.direction[0] ?? 0);
  const out = legs.reduce((sum, x) => sum + x, 0);
  const mean = picture.partIds.reduce(
    (sum, id) => sum + (machine.parts.find((p) => p.id === id)?.pose.position_m[0] ?? 0),
    0,
  );
  const side = Math.abs(out) > 0.5 ? Math.sign(out) : mean < -0.05 * picture.partIds.length ? -1 : 1;
  return [side * 0.66, 0.42, -0.74];
}

function cornersOf(document: MachineDocument, part: Pick<Part, 'kind' | 'pose'>, shift: Vec3): Vec3[] {
  const box = document.masses[part.kind];
  if (box === undefined) return [];
  const out: Vec3[] = [];
  for (let k = 0; k < 8; k++) {
    const own: Vec3 = [
      (k & 1 ? box.max_m : box.min_m)[0],
      (k & 2 ? box.max_m : box.min_m)[1],
      (k & 4 ? box.max_m : box.min_m)[2],
    ];
    out.push(add(add(part.pose.position_m, rotate(part.pose.rotation, own)), shift));
  }
  return out;
}

function middleOf(document: MachineDocument, part: Part, shift: Vec3): Vec3 {
  const corners = cornersOf(document, part, shift);
  const sum = corners.reduce<Vec3>((s, c) => add(s, c), [0, 0, 0]);
  return [sum[0] / 8, sum[1] / 8, sum[2] / 8];
}

const on = (p: Vec3, v: Vec3): number => p[0] * v[0] + p[1] * v[1] + p[2] * v[2];

/** Holds the parts at their seats and where they are drawn, with room for the balloons. */
function frameAround(
  document: MachineDocument,
  parts: readonly { readonly part: Part; readonly shift: Vec3 }[],
  towards: Vec3,
): Frame {
  const { right, up } = viewFrom(towards);
  const points = parts.flatMap(({ part, shift }) => [
    ...cornersOf(document, part, shift),
    ...cornersOf(document, part, [0, 0, 0]),
  ]);
  // parts of an option that is off have no place to be drawn at
  if (points.length === 0) return { x: 0, y: 0, halfWidth_m: 1, halfHeight_m: FLAT };
  const xs = points.map((p) => on(p, right));
  const ys = points.map((p) => on(p, up));
  const [left, most] = [Math.min(...xs), Math.max(...xs)];
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const free = 1 - (2 * (COLUMN + 2 * BALLOON_RADIUS)) / WIDTH;
  let halfWidth_m = Math.max(LEAST_M, (1.06 * (most - left)) / 2) / free;
  let halfHeight_m = Math.max(LEAST_M * FLAT, (1.12 * (high - low)) / 2);
  if (halfHeight_m / halfWidth_m > TALL) halfWidth_m = halfHeight_m / TALL;
  halfHeight_m = Math.max(halfHeight_m, FLAT * halfWidth_m);
  return { x: (left + most) / 2, y: (low + high) / 2, halfWidth_m, halfHeight_m };
}

function touches(
  document: MachineDocument,
  machine: Machine,
  drawn: DrawnPart,
  towards: Vec3,
  frame: Frame,
): boolean {
  const kind = machine.parts.find((p) => p.id === drawn.id)?.kind;
  if (kind === undefined) return false;
  const { right, up } = viewFrom(towards);
  const corners = cornersOf(document, { kind, pose: drawn }, [0, 0, 0]);
  const apart = (v: Vec3, middle: number, half: number): boolean =>
    corners.every((c) => on(c, v) < middle - half) || corners.every((c) => on(c, v) > middle + half);
  return !apart(right, frame.x, frame.halfWidth_m) && !apart(up, frame.y, frame.halfHeight_m);
}

/** A few of many ways, evenly. */
function spread<T>(ways: readonly T[]): readonly T[] {
  if (ways.length <= MOST_WAYS) return ways;
  return Array.from({ length: MOST_WAYS }, (_, i) => ways[Math.floor((i * ways.length) / MOST_WAYS)]!);
}

const kindsOf = (machine: Machine, partIds: readonly string[]): ReadonlyMap<string, readonly string[]> => {
  const kinds = new Map<string, string[]>();
  for (const part of machine.parts)
    if (partIds.includes(part.id)) kinds.set(part.kind, [...(kinds.get(part.kind) ?? []), part.id]);
  return kinds;
};

/** One balloon a kind, at the part of it that is seen best. */
function balloonsIn(
  machine: Machine,
  partIds: readonly string[],
  drawing: LineDrawing,
): DrawnPicture['balloons'] {
  const items = new Map<string, number>();
  const anchors: Anchor[] = [];
  for (const [kind, ids] of kindsOf(machine, partIds)) {
    const seen = drawing.seen
      .filter((s) => ids.includes(s.partId) && s.pixels >= LEAST_SEEN)
      .sort((a, b) => b.pixels - a.pixels)[0];
    if (seen === undefined) continue;
    items.set(seen.partId, machine.kinds[kind]?.item ?? 0);
    anchors.push({ id: seen.partId, x: seen.x, y: seen.y });
  }
  const edge = BALLOON_RADIUS + 3;
  const placed = layoutBalloons(anchors, {
    leftX: edge,
    rightX: drawing.width - edge,
    top: edge,
    bottom: drawing.height - edge,
    gap: 2 * BALLOON_RADIUS + 5,
  });
  return placed.map((b) => ({ ...b, item: items.get(b.id) ?? 0 }));
}
