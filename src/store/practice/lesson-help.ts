/** Which step of a lesson shows the parts that a try went wrong about. */
import type { Topic } from '../../core/lessons';
import type { Machine } from '../../core/machine';
import { partsNamed } from '../../core/quiz';

export interface LessonHelp {
  readonly topic: string;
  readonly step: string;
  readonly title: string;
}

/** The step that is nearest to the matter of these units; null when no lesson shows any of them. */
export function lessonFor(
  topics: readonly Topic[],
  machine: Machine,
  unitIds: readonly string[],
): LessonHelp | null {
  const sought = new Set(unitIds.flatMap((id) => partsNamed(machine, id)));
  const names = (refs: readonly (string | undefined)[]): boolean =>
    refs.some((ref) => ref !== undefined && partsNamed(machine, ref).some((id) => sought.has(id)));
  let best: LessonHelp | null = null;
  let most = 0;
  for (const { lesson } of topics)
    for (const { id, title, task, stage } of lesson.steps) {
      // What a step has done outweighs what it points at, and that what it merely has in view.
      const weight =
        (task?.type === 'take-off' && names([task.unit]) ? 8 : 0) +
        (task?.type === 'find' && names([task.part]) ? 4 : 0) +
        (names(stage.highlight ?? []) ? 3 : 0) +
        (names([stage.camera?.part]) ? 2 : 0) +
        (names([stage.taken_off]) ? 1 : 0);
      if (weight <= most) continue;
      most = weight;
      best = { topic: lesson.id, step: id, title };
    }
  return best;
}
