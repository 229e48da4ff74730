/** Hatch of each kind of the machine on the stage (core's styles and choice). */
import { hatchOfKinds } from '../../../core/geometry';
import { eachReach, type PartTable } from '../machine/part-table';

/** Style number of each kind. Call with the machine assembled. */
export function hatchStyles(table: PartTable): Uint8Array {
  const boxes: number[][] = [];
  for (let part = 0; part < table.count; part++) {
    const box = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
    eachReach(table, part, (x, y, z) => {
      [x, y, z].forEach((p, k) => {
        box[k] = Math.min(box[k]!, p);
        box[k + 3] = Math.max(box[k + 3]!, p);
      });
    });
    boxes.push(box);
  }
  return hatchOfKinds(boxes, table.kindOf, table.kinds.length);
}
