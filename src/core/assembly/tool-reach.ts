/**
 * Whether a tool reaches a fastener: a free straight cylinder for its socket from the head to the open, or a swing
 * of 30 degrees for a ring spanner at its head with the hand's end open to the same side. Standard outside diameters
 * by wrench size (sizes.ts).
 */
import { add, cross, dot, normalize, quatFromAxisAngle, rotate, scale, type Vec3, Y_AXIS } from '../kernel';
import { bodiesInCylinder, type Sight, type Sighting, sightAlong } from './sight';
import { socketOutside_m, spannerLength_m } from './sizes';
import { type AssemblyBody, partAxis } from './world';

/** Longer than any machine here: 'to the open'. */
const FAR_M = 20;
const SECTORS = 12;

/** Sets of bodies, one of which must be gone for a tool to reach every copy of the group. */
export function toolBlockers(sighting: Sighting, body: AssemblyBody, sense: number): readonly Set<number>[] {
  const { drive, size_m } = body.group!.tool;
  if (drive === 'none' || size_m <= 0) return [new Set()];
  const socket = new Set<number>();
  const spanner = new Set<number>();
  const radius = drive === 'socket-hex' ? Math.max(size_m, 0.012) : socketOutside_m(size_m) / 2;
  for (const part of body.parts) {
    const { sight, out, at_m, height_m } = headOf(sighting, body, part, sense);
    const from = drive === 'socket-hex' ? height_m : 0.4 * height_m;
    const inWay = bodiesInCylinder(sighting, sight, at_m, from, FAR_M, radius, body.index);
    for (const b of inWay) socket.add(b);
    if (drive === 'hex' && inWay.size > 0)
      for (const b of bestSwing(sighting, sight, out, at_m, height_m, size_m, body.index)) spanner.add(b);
  }
  if (socket.size === 0 || drive !== 'hex') return [socket];
  const better = [...socket].some((b) => !spanner.has(b));
  return better ? [socket, spanner] : [socket];
}

function headOf(
  sighting: Sighting,
  body: AssemblyBody,
  part: number,
  sense: number,
): { sight: Sight; out: Vec3; at_m: Vec3; height_m: number } {
  const { world } = sighting;
  const out = scale(partAxis(world.machine, part), sense);
  const at_m = world.machine.parts[part]!.pose.position_m;
  const reach = spannerLength_m(body.group!.tool.size_m);
  const sight = sightAlong(sighting, out, [part], [0, 0, 0], reach);
  const mesh = world.meshes[part];
  let height_m = 0;
  if (mesh !== null && mesh !== undefined)
    for (let i = 0; i < mesh.positions.length; i += 3) {
      const p: Vec3 = [mesh.positions[i]!, mesh.positions[i + 1]!, mesh.positions[i + 2]!];
      height_m = Math.max(height_m, dot(out, p) - dot(out, at_m));
    }
  return { sight, out, at_m, height_m };
}

/** Bodies in the way of the best of twelve swings of a ring spanner. */
function bestSwing(
  sighting: Sighting,
  sight: Sight,
  out: Vec3,
  at_m: Vec3,
  height_m: number,
  size_m: number,
  skip: number,
): Set<number> {
  const length = spannerLength_m(size_m);
  const helper: Vec3 = Math.abs(dot(out, Y_AXIS)) < 0.9 ? Y_AXIS : [1, 0, 0];
  const e1 = normalize(cross(helper, out));
  const ringRadius = 0.75 * size_m;
  const onHead = bodiesInCylinder(sighting, sight, at_m, 0.3 * height_m, 1.7 * height_m, ringRadius, skip);
  let best: Set<number> | null = null;
  for (let s = 0; s < SECTORS; s++) {
    const found = new Set(onHead);
    // Three shafts across the sector of 30 degrees, each a row of discs from the ring to the hand.
    for (const turn of [0, 0.5, 1]) {
      const angle = ((s + turn) * 2 * Math.PI) / SECTORS;
      const along = rotate(quatFromAxisAngle(out, angle), e1);
      for (let r = ringRadius; r <= length; r += 0.75 * size_m) {
        const place = add(at_m, scale(along, r));
        for (const b of bodiesInCylinder(
          sighting,
          sight,
          place,
          0.3 * height_m,
          0.7 * height_m,
          0.35 * size_m,
          skip,
        ))
          found.add(b);
      }
      const hand = add(at_m, scale(along, 0.85 * length));
      for (const b of bodiesInCylinder(sighting, sight, hand, 0.3 * height_m, FAR_M, 0.04, skip))
        found.add(b);
    }
    if (best === null || found.size < best.size) best = found;
    if (best.size === 0) break;
  }
  return best ?? new Set();
}
