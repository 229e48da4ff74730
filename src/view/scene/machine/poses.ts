/** Pose of every part now: assembled pose, turned by a thread, moved by teardown and explode, carried round by the spin. */
import { Matrix4, Quaternion, Vector3 } from 'three';
import type { MovesWith } from '../../../core/machine';
import type { PartTable } from './part-table';

/** What moves the parts at this moment. Offsets: dx dy dz turn a part, metres and radians (explode does not turn). */
export interface Motion {
  readonly teardown: Float32Array;
  readonly explode: Float32Array;
  /** Axis of each part's turn, three numbers a part; null: the machine's x. */
  readonly turnAxes: Float32Array | null;
  drumAngle_rad: number;
  exciterAngle_rad: number;
}

const place = new Vector3();
const axis = new Vector3();
const turn = new Quaternion();
const spin = new Quaternion();
const matrix = new Matrix4();
const X = new Vector3(1, 0, 0);
const ONE = new Vector3(1, 1, 1);

/** Teardown lays parts down where the exploded view has them, so of two offsets the farther one holds. */
function farther(a: Float32Array, b: Float32Array, o: number): Float32Array {
  return Math.hypot(a[o]!, a[o + 1]!, a[o + 2]!) >= Math.hypot(b[o]!, b[o + 1]!, b[o + 2]!) ? a : b;
}

/** Angle of the spin that carries a part, radians about machine +x. */
export const spinAngle = (
  movesWith: MovesWith,
  motion: Pick<Motion, 'drumAngle_rad' | 'exciterAngle_rad'>,
): number =>
  movesWith === 'drum' ? motion.drumAngle_rad : movesWith === 'exciter' ? motion.exciterAngle_rad : 0;

/** Writes `table.matrices`. */
export function writePoses(table: PartTable, motion: Motion): void {
  const { parts } = table.document.machine;
  for (let i = 0; i < table.count; i++) {
    const o = 4 * i;
    const { turnAxes } = motion;
    const off = farther(motion.teardown, motion.explode, o);
    place.copy(table.positions[i]!);
    place.x += off[o]!;
    place.y += off[o + 1]!;
    place.z += off[o + 2]!;
    const angle = motion.teardown[o + 3]!;
    turn.copy(table.turns[i]!);
    if (angle !== 0) {
      if (turnAxes === null) axis.copy(X);
      else axis.fromArray(turnAxes, 3 * i);
      turn.premultiply(spin.setFromAxisAngle(axis, angle));
    }
    const carried = spinAngle(parts[i]!.movesWith, motion);
    if (carried !== 0) {
      spin.setFromAxisAngle(X, carried);
      place.applyQuaternion(spin);
      turn.premultiply(spin);
    }
    matrix.compose(place, turn, ONE).toArray(table.matrices, 16 * i);
  }
}
