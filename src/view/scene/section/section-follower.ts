/** Keeps the section on the stage in step with the store: on or off, its plane, and which side is cut away. */
import type { Vector3 } from 'three';
import { type AppState, type SectionAxis, transient } from '../../../store';
import type { PickCut } from '../pick/pick';
import { AXIS_NORMAL, type SectionView } from './section-view';

export interface SectionFollower {
  /** What is cut away now; null: nothing. */
  readonly cut: PickCut | null;
  /**
   * `eye`: where the reader looks from; `anew`: the side that is cut away is chosen for that eye, otherwise it stays.
   * `changed`: parts moved or showed since the last call. Says whether the section went on or off, and whether it cut.
   */
  follow(
    state: AppState,
    eye: Vector3,
    changed: boolean,
    anew?: boolean,
  ): { readonly toggled: boolean; readonly cut: boolean };
}

/** `clip` turns clipping on or off in the machine's materials. */
export function sectionFollower(section: SectionView, clip: (on: boolean) => void): SectionFollower {
  let on = false;
  let side: 1 | -1 = 1;
  let key = '';
  let cut: PickCut | null = null;
  return {
    get cut() {
      return cut;
    },
    follow({ section: wanted }, eye, changed, anew = false) {
      const toggled = wanted.on !== on;
      if (toggled) {
        on = wanted.on;
        clip(on);
        key = '';
        if (!on) {
          section.off();
          cut = null;
        }
      }
      if (!on) return { toggled, cut: toggled };
      const { axis } = wanted;
      const offset = transient.sectionOffset_m;
      const [x, y, z] = AXIS_NORMAL[axis];
      // What lies towards the reader is cut away, and stays so while they walk round.
      if (anew || !key.startsWith(axis)) side = sideTowards(axis, offset, eye);
      const now = `${axis} ${offset} ${side}`;
      if (now === key && !changed) return { toggled, cut: false };
      key = now;
      section.cut(axis, offset, side);
      cut = { normal: [x * side, y * side, z * side], distance_m: offset * side };
      return { toggled, cut: true };
    },
  };
}

/** Side of a plane on which an eye is. */
const sideTowards = (axis: SectionAxis, offset_m: number, eye: Vector3): 1 | -1 => {
  const [x, y, z] = AXIS_NORMAL[axis];
  return eye.x * x + eye.y * y + eye.z * z >= offset_m ? 1 : -1;
};

/** What is cut away as the state wants it, for an eye; null: nothing. */
export function cutFor({ section: { on, axis } }: AppState, eye: Vector3): PickCut | null {
  if (!on) return null;
  const offset_m = transient.sectionOffset_m;
  const side = sideTowards(axis, offset_m, eye);
  const [x, y, z] = AXIS_NORMAL[axis];
  return { normal: [x * side, y * side, z * side], distance_m: offset_m * side };
}
