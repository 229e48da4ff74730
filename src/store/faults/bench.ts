/** Puts a machine on the fault bench in small pieces of work, so that the page stays alive meanwhile. */
import {
  believe,
  createPlant,
  estimateShot,
  type FaultBook,
  gains,
  groupMembers,
  groupsOf,
  placeReadings,
  rank,
  type Reading,
  signatureSteps,
} from '../../core/faults';
import { kindSolids, type MachineDocument } from '../../core/document';
import type { EnteredReading, FaultAnswer, FaultBench } from './state';

/** Lets the page draw and listen before the next piece. */
export const breath = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** Longest piece of work without a breath, ms. */
const PIECE_MS = 12;

/** Benches of machines seen in this visit. */
const built = new WeakMap<MachineDocument, FaultBench | null>();

/** Null where the machine has nothing that the book speaks of. */
export async function buildBench(
  document: MachineDocument,
  book: FaultBook,
  onShare: (share: number) => void,
): Promise<FaultBench | null> {
  const found = built.get(document);
  if (found !== undefined) return found;
  const bench = await workOut(document, book, onShare);
  built.set(document, bench);
  return bench;
}

async function workOut(
  document: MachineDocument,
  book: FaultBook,
  onShare: (share: number) => void,
): Promise<FaultBench | null> {
  const { machine, masses, fit } = document;
  const plant = createPlant(machine, kindSolids(document), masses, fit, book);
  if (plant === null) return null;
  const steps = signatureSteps(plant);
  let since = performance.now();
  for (;;) {
    const step = steps.next();
    if (step.done === true) return { plant, signatures: step.value };
    if (performance.now() - since < PIECE_MS) continue;
    onShare(step.value);
    await breath();
    since = performance.now();
  }
}

/** Readings entered as the diagnosis takes them. */
export function enteredReadings(
  bench: FaultBench,
  entered: Readonly<Record<string, EnteredReading>>,
): readonly Reading[] {
  return bench.signatures.measurements.flatMap((m): Reading[] => {
    const one = entered[m.id];
    if (one === undefined || one.value === null) return [];
    if (m.kind === 'look') return [{ measurement: m.id, value: one.value }];
    const value = Number(one.value);
    const way = m.methods[one.method] ?? m.methods[0]!;
    return [{ measurement: m.id, value, sd: one.sd ?? way.sd + way.share * Math.abs(value) }];
  });
}

const known = new WeakMap<FaultBench, Map<string, readonly number[]>>();

/** Groups for what can be measured here; worked out once for each choice. */
function groupsFor(bench: FaultBench, offered: readonly string[]): readonly number[] {
  const map = known.get(bench) ?? new Map<string, readonly number[]>();
  known.set(bench, map);
  const key = offered.join();
  const groups = map.get(key) ?? groupsOf(bench.signatures, offered);
  map.set(key, groups);
  return groups;
}

/**
 * The answer to readings: first the ranking, then its reasons, what to measure next and the estimate. Stops when
 * `stale` says that newer readings have come.
 */
export async function answerTo(
  bench: FaultBench,
  entered: Readonly<Record<string, EnteredReading>>,
  barred: readonly string[],
  put: (answer: FaultAnswer) => void,
  stale: () => boolean,
): Promise<void> {
  const { signatures, plant } = bench;
  const placed = placeReadings(signatures, enteredReadings(bench, entered));
  if (!placed.ok) return;
  const offered = signatures.measurements.map((m) => m.id).filter((id) => !barred.includes(id));
  const groups = groupsFor(bench, offered);
  const belief = believe(signatures, placed.value);
  const doubt_bits = belief.hypotheses.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);
  const answer: FaultAnswer = {
    ranking: rank(signatures, belief, groups, false),
    next: [],
    groups: groupMembers(groups)
      .filter((group) => group.length > 1)
      .map((group) => group.map((h) => signatures.hypotheses[h]!.id)),
    shot: null,
    doubt_bits,
    complete: false,
  };
  put(answer);
  await breath();
  if (stale()) return;
  const ranking = rank(signatures, belief, groups);
  await breath();
  if (stale()) return;
  const next = gains(signatures, belief, offered);
  await breath();
  if (stale()) return;
  const amplitude = (id: string) => {
    const read = placed.value.find((r) => signatures.measurements[r.at]!.id === id);
    return read === undefined ? null : { value_m: read.number, sd_m: read.sd };
  };
  const [high, low] = [amplitude('amplitude-high'), amplitude('amplitude-low')];
  const shot = high === null || low === null ? null : estimateShot(plant, high, low);
  put({ ...answer, ranking, next, shot, complete: true });
}
