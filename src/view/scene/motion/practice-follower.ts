/** During practice: the camera goes to what a try was about, and a phantom line shows the way of what moved. */
import { Vector3 } from 'three';
import type { PracticeStage } from '../../../store';
import { roomy } from '../machine/bounds';
import { eachReach, HIDDEN, type PartTable } from '../machine/part-table';
import type { RemovalPaths } from '../machine/removal-paths';

/** Half width of what a flight keeps in view at least, metres. */
const ROOM_M = 0.6;
/** Way that stays in view for a small part, metres; large ones are seen farther. */
const WAY_IN_VIEW_M = 1.2;
/** Share of the machine's half length beyond which a part is looked at from its end. */
const END_SHARE = 0.3;
/** And drum radii from the axis beyond which it is looked at from the front or the rear. */
const OUTSIDE_RADII = 0.8;

export interface PracticeFollower {
  /**
   * `frame` is called with points, the direction to look from (null: as now) and the parts that are to be seen past what
   * covers them (none while something moves).
   */
  follow(
    stage: PracticeStage,
    laid: Float32Array,
    changed: boolean,
    frame: (points: readonly number[], from: Vector3 | null, about: readonly number[]) => void,
  ): void;
}

export function practiceFollower(table: PartTable, paths: RemovalPaths): PracticeFollower {
  let seen: number | null = null;
  const { drumWidth_m, drumRadius_m } = table.document.machine;

  /** Parts where they lie by `where`, and a stretch of the way from there to where they will lie. */
  const pointsOf = (stage: PracticeStage, laid: Float32Array, parts: readonly number[]): number[] => {
    const out: number[] = [];
    for (const part of parts) {
      if (table.shown[part] === HIDDEN) continue;
      const o = 4 * part;
      const way = [0, 1, 2].map((k) => stage.to[o + k]! - stage.from[o + k]!);
      const length = Math.hypot(...way);
      const most = Math.max(WAY_IN_VIEW_M, 8 * table.kinds[table.kindOf[part]!]!.radius);
      const share = length > most ? most / length : 1;
      // What is put on is looked at where it goes; what comes off where it was.
      const inwards = stage.laying !== null && stage.laying.reverse !== stage.back;
      const seat = inwards ? stage.to : stage.from;
      const sense = inwards ? -share : share;
      eachReach(table, part, (...at) => {
        const p = at.map((x, k) => x + seat[o + k]! - laid[o + k]!);
        out.push(...p);
        if (length > 0) out.push(...p.map((x, k) => x + sense * way[k]!));
      });
    }
    return out;
  };

  /** From the side that the parts are on; null in the middle, where the view stays as it is. */
  const sideOf = (points: readonly number[]): Vector3 | null => {
    let x = 0;
    let z = 0;
    for (let i = 0; i < points.length; i += 3) {
      x += points[i]!;
      z += points[i + 2]!;
    }
    x /= points.length / 3;
    z /= points.length / 3;
    const outside = Math.abs(z) > OUTSIDE_RADII * drumRadius_m;
    const end = Math.abs(x) > END_SHARE * drumWidth_m;
    if (!outside && !end) return null;
    const rear = outside && z > 0;
    return new Vector3(end ? Math.sign(x) * 0.62 : 0.3, 0.36, rear ? 0.8 : -0.7).normalize();
  };

  return {
    follow(stage, laid, changed, frame) {
      const anew = stage.serial !== seen;
      const first = seen === null;
      seen = stage.serial;
      if (anew && stage.frame !== null && !first) {
        const points = pointsOf(stage, laid, stage.frame);
        if (points.length > 0)
          frame(roomy(points, ROOM_M), sideOf(points), stage.laying === null ? stage.frame : []);
      }
      if (anew || changed) paths.write(table, waysOf(stage));
    },
  };

  /** Parts whose way is drawn: those that left their seat on the machine, of a subassembly only its largest. */
  function waysOf({ laying, back }: PracticeStage): number[] {
    if (laying === null || laying.reverse !== back) return [];
    const parts = laying.parts.filter((p) => [0, 1, 2].every((k) => laying.seat[4 * p + k] === 0));
    const kinds = new Set(parts.map((p) => table.kindOf[p]));
    if (kinds.size < 2) return parts;
    const size = (part: number): number => table.kinds[table.kindOf[part]!]!.radius;
    return parts.sort((a, b) => size(b) - size(a)).slice(0, 1);
  }
}
