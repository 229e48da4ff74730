/** While the teardown strip is open: the camera frames each step, and phantom lines show the way of what it moves. */
import { Vector3 } from 'three';
import { poseOffsetsAt, type Step, type Timeline } from '../../../core/assembly';
import { type AppState, type JobStage, transient } from '../../../store';
import { roomy } from '../machine/bounds';
import { eachReach, HIDDEN, type PartTable } from '../machine/part-table';
import type { RemovalPaths } from '../machine/removal-paths';
import type { StageMotion } from './stage-motion';
import { stepPoints } from './step-framing';
import { stepAt, stepTime } from './teardown-clock';

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
  let leading = -1;
  let shown: JobStage | null = null;

  const partsOf = (steps: readonly Step[], step: number): number[] => {
    const ids = new Set(steps[step]?.unitIds ?? []);
    const out: number[] = [];
    table.document.machine.parts.forEach((part, i) => {
      if (ids.has(part.unit)) out.push(i);
    });
    return out;
  };

  /** Parts whose way is drawn: each of a ring of bolts, but of a subassembly only its largest. */
  const pathsOf = (steps: readonly Step[], step: number): number[] => {
    const parts = partsOf(steps, step);
    if ((steps[step]?.unitIds.length ?? 0) < 2) return parts;
    const size = (part: number): number => table.kinds[table.kindOf[part]!]!.radius;
    return parts.sort((a, b) => size(b) - size(a)).slice(0, 1);
  };

  return {
    follow({ teardown, jobs }, changed, frame) {
      const { timeline } = motion;
      const job = jobs.stage;
      const steps = (job?.plan ?? table.document.teardown).steps;
      if (job !== null) {
        const turned = job !== shown;
        shown = job;
        leading = job.leads;
        const parts = timeline === null ? [] : partsOf(steps, job.leads);
        const leads = timeline !== null && parts.length > 0;
        if (turned) {
          const points = leads
            ? stepPoints(table, timeline, job.leads, parts)
            : pointsOf(table, job.partIds, timeline, motion.teardown, job.step);
          if (points.length > 0)
            frame(roomy(points, ROOM_M), sideOf(steps[job.leads]?.legs.at(-1)?.direction));
          else frame(null, null);
        }
        if (turned || changed) paths.write(table, leads ? pathsOf(steps, job.leads) : []);
        return;
      }
      shown = null;
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
        const points = stepPoints(table, timeline, leads, partsOf(steps, leads));
        if (points.length > 0) frame(roomy(points, ROOM_M), sideOf(steps[leads]?.legs.at(-1)?.direction));
      }
      if (turned || changed) paths.write(table, leads >= 0 ? pathsOf(steps, leads) : []);
    },
  };
}

/** Points of single parts where they stand once the steps of the plan so far are done. */
function pointsOf(
  table: PartTable,
  partIds: readonly string[],
  timeline: Timeline | null,
  now: Float32Array,
  step: number,
): number[] {
  const then = new Float32Array(4 * table.count);
  if (timeline !== null) poseOffsetsAt(timeline, stepTime(timeline, step), then);
  const out: number[] = [];
  for (const id of partIds) {
    const part = table.indexOf.get(id);
    if (part === undefined || table.shown[part] === HIDDEN) continue;
    const shift = [0, 1, 2].map((k) => then[4 * part + k]! - now[4 * part + k]!);
    eachReach(table, part, (x, y, z) => out.push(x + shift[0]!, y + shift[1]!, z + shift[2]!));
  }
  return out;
}

/** From the front and the end that the parts leave by; null where they leave across the axis. */
const sideOf = (way: readonly [number, number, number] | undefined): Vector3 | null =>
  way !== undefined && Math.abs(way[0]) > 0.5
    ? new Vector3(Math.sign(way[0]) * 0.5, 0.36, -0.8).normalize()
    : null;
