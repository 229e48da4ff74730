/** Pose of every part now: assembled pose, turned by a thread, moved by teardown and explode, carried round by the spin. */
import { Matrix4, Quaternion, Vector3 } from 'three';
import type { MovesWith } from '../../../core/machine';
import type { PartTable } from './part-table';

/** What moves the parts at this moment. */
export interface Motion {
  /** dx dy dz turn a part, metres and radians. */
  readonly teardown: Float32Array;
  /** dx dy dz a part, metres. */
  readonly explode: Float32Array;
  /** Axis of each part's turn, three numbers a part; null: the machine's x. */
  readonly turnAxes: Float32Array | null;
  drumAngle_rad: number;
  exciterAngle_rad: number;
  /** What a study adds to a part's place and turn; false: the part is left out. Null: nothing. */
  readonly carry?: ((part: number, place: Vector3, turn: Quaternion) => boolean) | null;
}

const place = new Vector3();
const offset = new Vector3();
const other = new Vector3();
const axis = new Vector3();
const turn = new Quaternion();
const spin = new Quaternion();
const matrix = new Matrix4();
const X = new Vector3(1, 0, 0);
const ONE = new Vector3(1, 1, 1);
const NOTHING = new Vector3(0, 0, 0);

/** Teardown lays parts down where the exploded view has them, so of two offsets the farther one holds. */
function farther(a: Float32Array, i: number, b: Float32Array, j: number): Vector3 {
  offset.fromArray(a, i);
  other.fromArray(b, j);
  return offset.lengthSq() >= other.lengthSq() ? offset : other;
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
    const { turnAxes } = motion;
    place.copy(table.positions[i]!).add(farther(motion.teardown, 4 * i, motion.explode, 3 * i));
    const angle = motion.teardown[4 * i + 3]!;
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
    const stays = motion.carry?.(i, place, turn) ?? true;
    // shrunk to nothing inside the drum, where not even its edges leave a dot
    if (!stays) place.set(0, 0, 0);
    matrix.compose(place, turn, stays ? ONE : NOTHING).toArray(table.matrices, 16 * i);
  }
}
