/** Where the named views look from. Machine axes: x to its right, y up, z to the rear, so the front is -z. */
import { Vector3 } from 'three';
import type { CameraView } from '../../../store';

/** Three-quarter from the right front, a little above: the drum's face and its working side both show. */
const HOME = new Vector3(0.66, 0.4, -0.8).normalize();

/** Narrow stages look from higher up and further round, so that the machine fills height instead of a strip across. */
const HOME_NARROW = new Vector3(0.9, 0.66, -0.5).normalize();

/** A long exploded row is seen more along itself, so that it is not a thin strip. */
const HOME_APART = new Vector3(0.8, 0.46, -0.62).normalize();

/** A hair off the axis, so that orbit controls keep their sense of up. */
const TOP = new Vector3(0, 1, -0.0015).normalize();

/** Unit vector from the machine towards the eye; null for 'fit', which keeps the direction of now. `explode`: 0 to 1. */
export function viewDirection(view: CameraView, aspect: number, explode: number): Vector3 | null {
  switch (view) {
    case 'home': {
      const narrow = Math.min(1, Math.max(0, (1.25 - aspect) / 0.65));
      return HOME.clone().lerp(HOME_APART, explode).lerp(HOME_NARROW, narrow).normalize();
    }
    case 'front':
      return new Vector3(0, 0, -1);
    case 'right':
      return new Vector3(1, 0, 0);
    case 'left':
      return new Vector3(-1, 0, 0);
    case 'top':
      return TOP.clone();
    case 'axis':
      return new Vector3(0.94, 0.16, -0.3).normalize();
    case 'fit':
      return null;
  }
}

/** Milliseconds of a flight: longer ways take a little longer, within what feels short. */
export function flightTime_ms(from: Vector3, to: Vector3, size: number): number {
  return Math.min(600, 350 + (250 * from.distanceTo(to)) / Math.max(size, 0.1));
}
