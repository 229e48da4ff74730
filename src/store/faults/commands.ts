/** Commands of the fault bench. */
import {
  feedbackOf,
  type PathStep,
  pathSteps,
  hiddenCase,
  resumeTraining,
  startTraining,
  train,
  trainingReading,
  type Reading,
  type TrainingAction,
  type TrainingRun,
} from '../../core/faults';
import { partsOfRef } from '../../core/machine';
import type { Commands } from '../commands';
import type { Ports } from '../ports';
import type { AppStore } from '../store';
import { requestFrame } from '../transient';
import { answerTo, breath, buildBench } from './bench';
import { COLLECTION, KEY, readClosed, readReadings } from './kept';
import { type EnteredReading, type FaultBench, type FaultsState, INITIAL_FAULTS } from './state';

/** Case numbers are drawn from this many. */
const CASES = 9999;

/** The fault that is met most often. */
const commonest = ({ plant }: FaultBench): string =>
  plant.book.faults.reduce((a, b) => (b.prior > a.prior ? b : a)).id;

export function createFaultCommands(store: AppStore, ports: Ports, commands: Commands) {
  const get = (): FaultsState => store.getState().faults;
  const set = (part: Partial<FaultsState>): void => {
    store.setState({ faults: { ...get(), ...part } });
    requestFrame();
  };
  const keep = (key: string, value: unknown): void =>
    void ports.records.write(COLLECTION, key, JSON.stringify(value));
  let asked = 0;
  const refresh = async (): Promise<void> => {
    const serial = ++asked;
    const { bench, readings, barred } = get();
    if (bench === null) return;
    await answerTo(
      bench,
      readings,
      barred,
      (answer) => serial === asked && set({ answer }),
      () => serial !== asked,
    );
  };
  const enter = (part: Partial<Pick<FaultsState, 'readings' | 'barred'>>): void => {
    set(part);
    const { readings, barred } = get();
    keep(KEY.readings, { readings, barred });
    void refresh();
  };
  /** Shows the marks at once and the good way when it is worked out, a step at a time. */
  const mark = async (run: TrainingRun): Promise<void> => {
    const { bench } = get();
    const first = bench === null ? null : feedbackOf(bench.plant, bench.signatures, run, []);
    set({ feedback: first });
    if (bench === null || first === null) return;
    const best: PathStep[] = [];
    for (const step of pathSteps(bench.plant, bench.signatures, run.seed)) {
      best.push(step);
      await breath();
      if (get().run !== run) return;
    }
    set({ feedback: { ...first, best } });
  };
  let opening: Promise<void> | null = null;

  const open = async (): Promise<void> => {
    const document = store.getState().document;
    if (document === null || get().bench?.plant.machine === document.machine) return;
    set({ ...INITIAL_FAULTS, phase: 'loading' });
    try {
      const book = await ports.loadFaults(document.machine.id);
      const bench = book === null ? null : await buildBench(document, book, (share) => set({ share }));
      if (store.getState().document !== document) return;
      if (bench === null) return set({ phase: 'none' });
      const [readings, run, closed, lasting] = await Promise.all([
        ports.records.read(COLLECTION, KEY.readings),
        ports.records.read(COLLECTION, KEY.run),
        ports.records.list(COLLECTION),
        ports.records.lasting(),
      ]);
      const resumed = run === null ? null : resumeTraining(run, bench.signatures);
      set({
        phase: 'ready',
        share: 1,
        bench,
        ...readReadings(readings, bench.signatures),
        run: resumed,
        closed: closed.flatMap(({ key, text }) =>
          key.startsWith(KEY.closed) ? (readClosed(text) ?? []) : [],
        ),
        lasting,
        shown: { ...get().shown, fault: commonest(bench) },
      });
      await refresh();
      if (resumed !== null) await mark(resumed);
    } catch {
      set({ phase: 'failed' });
    }
  };

  return {
    /** Makes the bench ready for the machine on the stage and brings back what was kept. */
    async open(): Promise<void> {
      opening ??= open().finally(() => (opening = null));
      await opening;
    },
    /** Null takes the reading back. */
    setReading(measurement: string, reading: EnteredReading | null): void {
      const readings = { ...get().readings };
      if (reading === null) delete readings[measurement];
      else readings[measurement] = reading;
      enter({ readings });
    },
    /** A measurement that cannot be taken here is not proposed, and faults that only it tells apart become one. */
    bar(measurement: string, barred: boolean): void {
      const others = get().barred.filter((id) => id !== measurement);
      enter({ barred: barred ? [...others, measurement] : others });
    },
    clearReadings: (): void => enter({ readings: {}, barred: [] }),
    /** @param seed case number; null draws one */
    startCase(seed: number | null): void {
      const run = startTraining(seed ?? 1 + Math.floor(Math.random() * CASES));
      set({ run, feedback: null });
      keep(KEY.run, run);
    },
    act(action: TrainingAction): void {
      const { run, bench } = get();
      if (run === null || bench === null) return;
      const next = train(run, action);
      if (next === run) return;
      set({ run: next });
      keep(KEY.run, next);
      void mark(next);
      const { feedback } = get();
      if (feedback === null || next.committed === null) return;
      const { truth, right, brier, minutes } = feedback;
      const done = { seed: next.seed, truth, committed: next.committed.hypothesis, right, brier, minutes };
      set({ closed: [...get().closed, done] });
      keep(`${KEY.closed}${get().closed.length}-${next.seed}`, done);
    },
    leaveCase(): void {
      set({ run: null, feedback: null });
      void ports.records.remove(COLLECTION, KEY.run);
    },
    /** What the learner has read so far, in the order it was taken. */
    ownReadings(): readonly Reading[] {
      const { run, bench } = get();
      if (run === null || bench === null) return [];
      const hidden = hiddenCase(bench.plant, run.seed);
      return run.taken.flatMap(
        (t) => trainingReading(bench.plant, hidden, run.seed, t.measurement, t.method) ?? [],
      );
    },
    /** Shows a fault, and puts the part to look at on the stage. */
    show(part: Partial<FaultsState['shown']>): void {
      const { bench, shown } = get();
      const next = { ...shown, ...part };
      set({ shown: next });
      if (part.fault === undefined || bench === null) return;
      const fault = bench.plant.book.faults.find((f) => f.id === next.fault);
      const [first] = fault === undefined ? [] : partsOfRef(bench.plant.machine, fault.parts[0]!);
      if (first !== undefined) commands.select(first);
    },
  };
}

export type FaultCommands = ReturnType<typeof createFaultCommands>;
