/** What the stage shows of a run: everything where it lies, a move under way, a try that could not move. */
import type { Laying, PracticeBench } from '../../core/assembly';
import type { Explode } from '../../core/assembly';
import type { Vec3 } from '../../core/kernel';
import type { PracticeRun, PracticeStage } from './state';

let serial = 0;

const NOTHING = { laying: null, back: false, stuck: null, blockers: [], frame: null } as const;

/** Numbers of the parts of bodies, by id. */
export const partsOfBodies = ({ graph, bodyOf }: PracticeBench, ids: readonly string[]): number[] =>
  ids.flatMap((id) => graph.bodies[bodyOf(id)]?.parts ?? []);

/** Everything at rest after the moves made. */
export function atRest(run: PracticeRun, start: PracticeStage['to']): PracticeStage {
  const laid = run.made.at(-1)?.laying.to ?? start;
  return { ...NOTHING, serial: ++serial, from: laid, to: laid };
}

/** A move being made, or taken back. */
export function moving(from: PracticeStage['from'], laying: Laying, back: boolean): PracticeStage {
  return {
    ...NOTHING,
    serial: ++serial,
    from: back ? laying.to : from,
    to: back ? from : laying.to,
    laying,
    back,
    frame: laying.parts,
  };
}

/** A try that could not move: the unit gives a little, and what holds it first of all stands out. */
export function stuckAt(
  run: PracticeRun,
  before: PracticeStage,
  explode: Explode,
  unitId: string,
  blockers: readonly string[],
): PracticeStage {
  const { bench } = run;
  const parts = partsOfBodies(bench, [unitId]);
  const barring = partsOfBodies(bench, likeTheFirst(bench, blockers));
  return {
    ...NOTHING,
    serial: ++serial,
    from: before.to,
    to: before.to,
    stuck: parts.length === 0 ? null : { parts, direction: wayOut(explode, parts[0]!) },
    blockers: barring,
    frame: [...parts, ...barring],
  };
}

/** Parts asked for come into view; nothing moves. */
export const lookingAt = (
  before: PracticeStage,
  frame: readonly number[],
  blockers: readonly number[],
): PracticeStage => ({
  ...NOTHING,
  serial: ++serial,
  from: before.to,
  to: before.to,
  blockers,
  frame,
});

/** Of what stands in the way the first, with those alike: all of it at once is a thicket. */
export function likeTheFirst({ bodyOf, entryOf }: PracticeBench, ids: readonly string[]): string[] {
  const entry = entryOf[bodyOf(ids[0] ?? '')];
  return ids.filter((id) => entryOf[bodyOf(id)] === entry);
}

/** Where a part goes in the exploded view: the way that a hand would pull. */
export function wayOut({ groupOffsets, innerOffsets }: Explode, part: number): Vec3 {
  const way = [0, 1, 2].map((k) => groupOffsets[3 * part + k]! + innerOffsets[3 * part + k]!);
  const far = Math.hypot(...way);
  return far > 0 ? [way[0]! / far, way[1]! / far, way[2]! / far] : [0, 1, 0];
}
