/** What a step of the teardown should have in view: its parts where they sit and the way that they go, up to a point. */
import { poseOffsetsAt, type Timeline } from '../../../core/assembly';
import { eachReach, HIDDEN, type PartTable } from '../machine/part-table';

/** Way that stays in view for a small part, metres; large ones are seen all the way to where they are laid down. */
const WAY_IN_VIEW_M = 1.5;

/** Points x y z of the parts at their seats and on their way. */
export function stepPoints(
  table: PartTable,
  timeline: Timeline,
  step: number,
  parts: readonly number[],
): number[] {
  const before = new Float32Array(4 * table.count);
  const after = new Float32Array(4 * table.count);
  poseOffsetsAt(timeline, timeline.stepStart_s[step] ?? 0, before);
  poseOffsetsAt(timeline, timeline.stepEnd_s[step] ?? 0, after);
  const out: number[] = [];
  for (const part of parts) {
    if (table.shown[part] === HIDDEN) continue;
    const o = 4 * part;
    const way = [0, 1, 2].map((k) => after[o + k]! - before[o + k]!);
    const length = Math.hypot(...way);
    const most = Math.max(WAY_IN_VIEW_M, 1 + 12 * table.kinds[table.kindOf[part]!]!.radius);
    const share = length > most ? most / length : 1;
    const seat = table.positions[part]!.toArray();
    const m = table.matrices;
    // From where it is drawn now to where it stood before the step.
    const shift = seat.map((p, k) => p + before[o + k]! - m[16 * part + 12 + k]!);
    eachReach(table, part, (x, y, z) => {
      const p = [x + shift[0]!, y + shift[1]!, z + shift[2]!];
      out.push(...p);
      if (length > 0) for (let k = 0; k < 3; k++) out.push(p[k]! + share * way[k]!);
    });
  }
  return out;
}
