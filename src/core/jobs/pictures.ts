/** Pictures of a sheet: which steps share one, what stands around them, and what has left by then. */
import type { Plan, Step } from '../assembly';
import { findUnit, type Machine } from '../machine';
import type { Phase } from './schema';
import type { JobSheet, SheetStep } from './sheet-types';

export interface SheetPicture {
  /** From 1 through the sheet. */
  readonly number: number;
  readonly phase: Phase;
  /** Numbers of its steps. */
  readonly stepNumbers: readonly number[];
  /** What it is about; balloons name these. */
  readonly partIds: readonly string[];
  /** Steps of the plan that it shows drawn apart. */
  readonly planSteps: readonly number[];
  /** Only these parts are drawn (on the bench, or all that it is about has left); null: the machine. */
  readonly only: readonly string[] | null;
  /** Parts that have left before it. */
  readonly goneIds: readonly string[];
}

/** A picture stays legible with so many balloons and steps. */
const MOST_KINDS = 8;
const MOST_STEPS = 5;

interface Open {
  readonly mode: string;
  /** Axis along which its parts leave; null while none does. */
  way: string | null;
  readonly steps: SheetStep[];
  readonly kinds: Set<number>;
  readonly only: readonly string[] | null;
  readonly gone: readonly string[];
}

/**
 * Steps that follow one another share a picture as far as they happen at the same place. Putting together goes back by
 * the pictures of taking apart, and what was drawn before is not drawn again: `pictureOf` finds them.
 */
export function sheetPictures(machine: Machine, sheet: JobSheet, plan: Plan | null): readonly SheetPicture[] {
  const pictures: SheetPicture[] = [];
  const gone = new Set<string>();
  const partsOf = (ids: readonly string[]): string[] =>
    ids.flatMap((id) => findUnit(machine, id)?.partIds ?? []);
  let open = null as Open | null;
  const close = (): void => {
    if (open === null) return;
    const { steps, only, gone: goneIds } = open;
    pictures.push({
      number: pictures.length + 1,
      phase: steps[0]!.phase,
      stepNumbers: steps.map((s) => s.number),
      partIds: [...new Set(steps.flatMap((s) => s.partIds))],
      planSteps: steps.flatMap((s) =>
        s.planStep === null || !moves(plan?.steps[s.planStep]) ? [] : [s.planStep],
      ),
      only,
      goneIds,
    });
    open = null;
  };
  for (const step of sheet.steps) {
    const planned = step.planStep === null ? undefined : plan?.steps[step.planStep];
    if (step.phase === 'together') {
      close();
      if (planned?.kind === 'remove') for (const id of partsOf(planned.unitIds)) gone.delete(id);
      continue;
    }
    const drawn = planned === undefined && isDrawn(step, pictures, open);
    if (
      drawn &&
      open !== null &&
      holds(
        open.steps.flatMap((s) => s.partIds),
        step,
      )
    )
      open.steps.push(step);
    if (step.partIds.length > 0 && !drawn) {
      const bench = planned?.kind === 'bench';
      const left = !bench && step.partIds.every((id) => gone.has(id));
      const way = moves(planned) ? axisOf(planned) : null;
      const mode = `${step.phase} ${bench ? 'bench' : left ? 'alone' : 'machine'}`;
      const kinds = new Set(step.balloons.map((b) => b.item));
      const full = open !== null && new Set([...open.kinds, ...kinds]).size > MOST_KINDS;
      const turned = way !== null && open?.way != null && open.way !== way;
      // a step that moves the picture's own parts on begins another
      const again =
        way !== null && open?.steps.some((s) => s.planStep !== null && sharesPart(s, step)) === true;
      if (open?.mode !== mode || full || open.steps.length >= MOST_STEPS || left || again || turned) {
        close();
        const only: readonly string[] | null = bench
          ? partsOf([...planned.fromIds, ...planned.unitIds])
          : left
            ? step.partIds
            : null;
        open = { mode, way, steps: [step], kinds, only, gone: [...gone] };
      } else {
        open.steps.push(step);
        open.way ??= way;
        for (const item of kinds) open.kinds.add(item);
      }
    }
    if (planned?.kind === 'remove') for (const id of partsOf(planned.unitIds)) gone.add(id);
  }
  close();
  return pictures;
}

const moves = (step: Step | undefined): step is Step => step?.kind === 'remove' || step?.kind === 'bench';

/** The axis of the machine along which a step's last leg runs most. */
function axisOf(step: Step): string {
  const [x, y, z] = step.legs.at(-1)?.direction.map(Math.abs) ?? [1, 0, 0];
  return x! >= Math.max(y!, z!) ? 'x' : y! >= z! ? 'y' : 'z';
}

const holds = (partIds: readonly string[], step: SheetStep): boolean =>
  step.partIds.every((id) => partIds.includes(id));

const sharesPart = (a: SheetStep, b: SheetStep): boolean => a.partIds.some((id) => b.partIds.includes(id));

/** Whether a picture that fits the step's phase shows all that a step of the job's own is about: it points there. */
const isDrawn = (step: SheetStep, pictures: readonly SheetPicture[], open: Open | null): boolean =>
  step.partIds.length > 0 &&
  (pictures.some((p) => fits(p, step)) ||
    (open !== null &&
      holds(
        open.steps.flatMap((s) => s.partIds),
        step,
      )));

/** The drum before it is opened looks like the drum afterwards; what lies on the bench stays there for the work. */
const fits = (picture: SheetPicture, step: SheetStep): boolean =>
  holds(picture.partIds, step) &&
  (picture.phase === step.phase ||
    step.phase === 'together' ||
    (step.phase === 'test' && picture.phase === 'prepare') ||
    (picture.only !== null && (step.phase === 'work' || step.phase === 'measure')));

/** The picture of a step: its own, an earlier one of the same parts, or the one of taking apart what it puts back. */
export function pictureOf(
  pictures: readonly SheetPicture[],
  sheet: JobSheet,
  step: SheetStep,
): SheetPicture | null {
  const own = pictures.find((p) => p.stepNumbers.includes(step.number));
  if (own !== undefined) return own;
  if (step.planStep !== null) {
    const apart = sheet.steps.find((s) => s.phase === 'apart' && s.planStep === step.planStep);
    return pictures.find((p) => p.stepNumbers.includes(apart?.number ?? -1)) ?? null;
  }
  if (step.partIds.length === 0) return null;
  return pictures.findLast((p) => fits(p, step) && (p.stepNumbers[0] ?? 0) < step.number) ?? null;
}
