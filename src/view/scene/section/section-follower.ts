/** Keeps the section on the stage in step with the store: on or off, its plane, and which side is cut away. */
import type { PerspectiveCamera } from 'three';
import { type AppState, transient } from '../../../store';
import type { PickCut } from '../pick/pick';
import { AXIS_NORMAL, type SectionView } from './section-view';

export interface SectionFollower {
  /** What is cut away now; null: nothing. */
  readonly cut: PickCut | null;
  /** `changed`: parts moved or showed since the last call. Says whether the section went on or off, and whether it cut. */
  follow(
    state: AppState,
    camera: PerspectiveCamera,
    changed: boolean,
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
    follow({ section: wanted }, { position }, changed) {
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
      if (!key.startsWith(axis)) side = position.x * x + position.y * y + position.z * z >= offset ? 1 : -1;
      const now = `${axis} ${offset} ${side}`;
      if (now === key && !changed) return { toggled, cut: false };
      key = now;
      section.cut(axis, offset, side);
      cut = { normal: [x * side, y * side, z * side], distance_m: offset * side };
      return { toggled, cut: true };
    },
  };
}
