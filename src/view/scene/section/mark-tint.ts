/** Cut faces in the tint of their part's mark, as a view of the stage has it; a part without a mark stays pale. */
import { Color } from 'three';
import { MARK_NAMES, MARKS } from '../../theme/marks';
import type { CapData } from './cap-geometry';

const TINTS = MARK_NAMES.map((name) => {
  const { r, g, b } = new Color(MARKS[name].fill).convertLinearToSRGB();
  return [255 * r, 255 * g, 255 * b];
});
const PALE = [240, 240, 236];

export function tintByMarks({ part, tint }: CapData, states: Int8Array): void {
  for (let v = 0; v < part.length; v++) tint.set(TINTS[-1 - states[part[v]!]!] ?? PALE, 3 * v);
}
