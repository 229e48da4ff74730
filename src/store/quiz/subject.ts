/** The machine at hand as what questions are about; one object a machine, so that tables are worked out once. */
import { kindSolids, type MachineDocument } from '../../core/document';
import type { Plant } from '../../core/faults';
import { resolveItem, type Item, type Subject, type ValueTable, valuesNow, valuesOf } from '../../core/quiz';
import type { Topic } from '../../core/lessons';
import { selectGraph } from '../graph/commands';
import type { AppState, ExciterSettings } from '../state';

/** Fault benches of machines seen in this visit; filled by `ensurePlant`. */
export const knownPlants = new WeakMap<MachineDocument, Plant | null>();

let last: { readonly document: MachineDocument; readonly subject: Subject } | undefined;

export function selectSubject(state: AppState): Subject | null {
  const { document } = state;
  if (document === null) return null;
  const graph = selectGraph(state);
  const plant = knownPlants.get(document) ?? null;
  if (last?.document !== document || last.subject.graph !== graph || last.subject.plant !== plant) {
    const { machine, masses, teardown, fit } = document;
    const solids = kindSolids(document);
    last = { document, subject: { machine, solids, masses, teardown, fit, graph, plant } };
  }
  return last.subject;
}

let lastValues:
  { readonly subject: Subject; readonly exciter: ExciterSettings; readonly values: ValueTable } | undefined;

/** Named values of the machine as it is and, under `now.…`, as it is set; null without a machine. */
export function selectValues(state: AppState): ValueTable | null {
  const subject = selectSubject(state);
  if (subject === null) return null;
  const { exciter } = state;
  if (lastValues?.subject.machine !== subject.machine || lastValues.exciter !== exciter) {
    lastValues = {
      subject,
      exciter,
      values: new Map([...valuesOf(subject), ...valuesNow(subject, exciter)]),
    };
  }
  return lastValues.values;
}

/** Questions of a topic that this machine can be asked; others are left out. */
export function topicItems(topic: Topic, subject: Subject): readonly Item[] {
  return topic.items.flatMap((said) => {
    const item = resolveItem(topic.lesson.id, said, subject);
    return item.ok ? [item.value] : [];
  });
}
