/** While the teardown strip is open: the camera frames each step, and phantom lines show the way of what it moves. */
import { Vector3 } from 'three';
import { type AppState, transient } from '../../../store';
import { roomy } from '../machine/bounds';
import type { PartTable } from '../machine/part-table';
import type { RemovalPaths } from '../machine/removal-paths';
import type { StageMotion } from './stage-motion';
import { stepPoints } from './step-framing';
import { stepAt } from './teardown-clock';

/** Half width of what a flight to one step keeps in view at least, metres. */
const ROOM_M = 0.75;

export interface TeardownFollower {
  /**
   * `frame` is called when another step leads: with its points and the direction to look from (null: as now), or with
   * null for the whole machine.
   */
  follow(
    state: AppState,
    changed: boolean,
    frame: (points: readonly number[] | null, from: Vector3 | null) => void,
  ): void;
}

export function teardownFollower(
  table: PartTable,
  motion: StageMotion,
  paths: RemovalPaths,
): TeardownFollower {
  const { steps } = table.document.teardown;
  let leading = -1;

  const partsOf = (step: number): number[] => {
    const ids = new Set(steps[step]?.unitIds ?? []);
    const out: number[] = [];
    table.document.machine.parts.forEach((part, i) => {
      if (ids.has(part.unit)) out.push(i);
    });
    return out;
  };

  /** Parts whose way is drawn: each of a ring of bolts, but of a subassembly only its largest. */
  const pathsOf = (step: number): number[] => {
    const parts = partsOf(step);
    if ((steps[step]?.unitIds.length ?? 0) < 2) return parts;
    const size = (part: number): number => table.kinds[table.kindOf[part]!]!.radius;
    return parts.sort((a, b) => size(b) - size(a)).slice(0, 1);
  };

  return {
    follow({ teardown }, changed, frame) {
      const { timeline } = motion;
      if (!teardown.open || timeline === null) {
        if (paths.mesh.visible) paths.write(table, []);
        leading = teardown.step;
        return;
      }
      // While it plays the step under way leads, otherwise the one last done.
      const done = stepAt(timeline, transient.teardownTime_s);
      const leads = teardown.playing
        ? Math.min(steps.length - 1, teardown.reverse ? Math.max(done, 0) : done + 1)
        : teardown.step;
      const turned = leads !== leading;
      leading = leads;
      if (turned && leads < 0) frame(null, null);
      else if (turned) {
        const points = stepPoints(table, timeline, leads, partsOf(leads));
        if (points.length > 0) frame(roomy(points, ROOM_M), sideOf(steps[leads]?.legs.at(-1)?.direction));
      }
      if (turned || changed) paths.write(table, leads >= 0 ? pathsOf(leads) : []);
    },
  };
}

/** From the front and the end that the parts leave by; null where they leave across the axis. */
const sideOf = (way: readonly [number, number, number] | undefined): Vector3 | null =>
  way !== undefined && Math.abs(way[0]) > 0.5
    ? new Vector3(Math.sign(way[0]) * 0.5, 0.36, -0.8).normalize()
    : null;
