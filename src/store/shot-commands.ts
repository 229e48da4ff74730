/** Commands of "watch the shot": opening the exciter, playing, and runs of one's own in the worker. */
import type { Direction, ShotParameters } from '../core/shot';
import type { Ports } from './ports';
import {
  type ExperimentId,
  experimentSetup,
  INITIAL_SHOT,
  MOST_RUNS,
  type Prediction,
  type ShotRun,
  type ShotSetup,
  type ShotState,
  type ShotTake,
} from './shot';
import { isOwnRun, outcomeOf, parametersOf, shotBase, type ShotBase } from './shot-base';
import { showShot, shotTransient } from './shot-transient';
import { selectShownRun } from './shot-selectors';
import type { AppStore } from './store';
import { requestFrame } from './transient';

export function createShotCommands(store: AppStore, ports: Ports) {
  const get = store.getState;
  const set = (part: Partial<ShotState>): void => {
    store.setState({ shot: { ...get().shot, ...part } });
    requestFrame();
  };
  let serial = 0;
  let cancelJob: (() => void) | null = null;

  const base = (): ShotBase | null => {
    const { document } = get();
    return document === null ? null : shotBase(document);
  };
  const ownU = (): Record<Direction, number | null> => {
    const { own } = get().shot;
    return { high: own.high?.outcome.U_kgm ?? null, low: own.low?.outcome.U_kgm ?? null };
  };
  const runOf = (
    of: Pick<ShotRun, 'id' | 'experiment' | 'setup' | 'comparedWith' | 'prediction'>,
    take: ShotTake,
    from: ShotBase,
  ): ShotRun => ({ ...of, take, outcome: outcomeOf(from, of.setup, take, ownU(), of.comparedWith) });

  /** Puts the run that is shown now at its beginning. */
  const cue = (): void => showShot(selectShownRun(get())?.take ?? null, 0);

  const keepOwn = (direction: Direction, take: ShotTake, from: ShotBase): void => {
    const setup = { ...from.own, direction, seed: take.parameters.seed };
    const of = {
      id: `own-${direction}`,
      experiment: 'own',
      setup,
      comparedWith: direction,
      prediction: null,
    } as const;
    set({ own: { ...get().shot.own, [direction]: runOf(of, take, from) } });
    // Shares of HIGH are known only now for what came before it.
    const { own } = get().shot;
    const again = (run: ShotRun | null): ShotRun | null => run && runOf(run, run.take, from);
    set({ own: { high: again(own.high), low: again(own.low) } });
  };

  const loadOwn = async (): Promise<void> => {
    const from = base();
    const { document, shot } = get();
    if (document === null || from === null || shot.loading === 'busy') return;
    if (shot.own.high !== null && shot.own.low !== null) return;
    set({ loading: 'busy' });
    try {
      const takes = await ports.shot.loadRecordings(document.machine.id);
      if (get().document !== document) return;
      // A machine of the same name with other numbers is another machine.
      if (takes === null || !isOwnRun(from, takes.high.parameters) || !isOwnRun(from, takes.low.parameters)) {
        set({ loading: 'none-shipped' });
        return;
      }
      keepOwn('high', takes.high, from);
      keepOwn('low', takes.low, from);
      set({ loading: 'no' });
      cue();
    } catch {
      if (get().document === document) set({ loading: 'failed' });
    }
  };

  /** Runs in the worker and tells how far it is; undefined when the run was given up meanwhile. */
  const inWorker = async (id: string, parameters: ShotParameters, shareOf: (share: number) => number) => {
    set({ job: { id, share: shareOf(0), left_s: null }, faults: [], playing: false });
    const job = ports.shot.run(parameters, (share, left_s) => {
      if (get().shot.job?.id === id) set({ job: { id, share: shareOf(share), left_s } });
    });
    cancelJob = job.cancel;
    const result = await job.result;
    if (get().shot.job?.id !== id) return undefined;
    cancelJob = null;
    return result;
  };

  const commands = {
    /** Watches the shot, or ends it: opens the exciter on the stage and puts everything back afterwards. */
    watchShot(open: boolean): void {
      const s = get();
      if (open === s.shot.open) return;
      if (!open) {
        const { before } = s.shot;
        set({ open: false, playing: false, before: null });
        if (before !== null)
          store.setState({
            hiddenParts: before.hidden,
            ghostedParts: before.ghosted,
            isolatedParts: before.isolated,
            cameraWish: { view: 'home', partId: null, serial: s.cameraWish.serial + 1 },
          });
        requestFrame();
        return;
      }
      const from = base();
      if (from === null) return;
      const { housingPart, unitParts } = from;
      set({
        open: true,
        before: { hidden: s.hiddenParts, ghosted: s.ghostedParts, isolated: s.isolatedParts },
      });
      // The balls stand in for the solid that shows the settled shot elsewhere.
      store.setState({
        spinning: false,
        isolatedParts: new Set(unitParts),
        hiddenParts: new Set([from.basis.rest.shot_part ?? '']),
        ghostedParts: new Set([housingPart]),
        cameraWish: { view: 'fit', partId: housingPart, serial: s.cameraWish.serial + 1 },
      });
      cue();
      void loadOwn();
    },
    /** Tries the shipped recordings once more. */
    loadShot: (): Promise<void> => loadOwn(),
    /** Runs the machine as built both ways, where no recordings ship with it. */
    async runOwn(): Promise<void> {
      const from = base();
      const { document } = get();
      if (from === null || get().shot.job !== null) return;
      const takes: ShotTake[] = [];
      for (const [k, direction] of (['high', 'low'] as const).entries()) {
        const id = `own-${direction}`;
        const result = await inWorker(
          id,
          parametersOf(from, { ...from.own, direction }),
          (share) => (k + share) / 2,
        );
        if (get().document !== document || result === undefined) return;
        set({ job: null });
        if (result === null) return;
        if (!result.ok) {
          set({ faults: result.faults });
          return;
        }
        takes.push(result.value);
      }
      for (const take of takes) keepOwn(take.parameters.direction, take, from);
      set({ loading: 'no' });
      cue();
    },
    playShot(playing: boolean): void {
      const { take, time_s } = shotTransient;
      if (take === null) return;
      if (playing && time_s >= take.duration_s) showShot(take, 0);
      set({ playing });
    },
    /** Puts the playhead to a time and stops there. */
    scrubShot(time_s: number): void {
      if (get().shot.playing) set({ playing: false });
      showShot(shotTransient.take, time_s);
    },
    setShot: (part: Partial<Pick<ShotState, 'slow' | 'eye' | 'along' | 'chartOver'>>): void => set(part),
    /** Shows a run from its beginning; null: the machine's own in the lever's direction. */
    showRun(id: string | null): void {
      const { playing } = get().shot;
      set({ shown: id });
      cue();
      if (playing) set({ playing: true });
    },
    /** Sets an experiment up, or a free run from what is set up now; asks for a prediction first. */
    draftRun(experiment: ExperimentId | 'free'): void {
      const from = base();
      if (from === null) return;
      const { exciter, shot } = get();
      const own = { ...from.own, direction: exciter.direction };
      const setup = experiment === 'free' ? (shot.draft?.setup ?? own) : experimentSetup(experiment, own);
      set({
        draft: { experiment, setup, comparedWith: exciter.direction, prediction: null },
        faults: [],
      });
    },
    closeDraft: (): void => set({ draft: null, faults: [] }),
    /** Changes the run being set up; it is then one's own and no longer the experiment. */
    changeDraft(part: Partial<ShotSetup>): void {
      const { draft } = get().shot;
      if (draft === null) return;
      const experiment = Object.keys(part).every((key) => key === 'seed') ? draft.experiment : 'free';
      set({ draft: { ...draft, experiment, setup: { ...draft.setup, ...part } }, faults: [] });
    },
    predictRun(prediction: Prediction): void {
      const { draft } = get().shot;
      if (draft !== null) set({ draft: { ...draft, prediction } });
    },
    /** Runs what is set up in the worker; ends with the run shown, or with faults. */
    async runDraft(): Promise<void> {
      const from = base();
      const { document, shot } = get();
      const { draft } = shot;
      if (from === null || draft === null || shot.job !== null) return;
      const id = `run-${++serial}`;
      const result = await inWorker(id, parametersOf(from, draft.setup), (share) => share);
      if (get().document !== document || result === undefined) return;
      if (result === null) set({ job: null });
      else if (!result.ok) set({ job: null, faults: result.faults });
      else {
        const { experiment, setup, comparedWith, prediction } = draft;
        const run = runOf({ id, experiment, setup, comparedWith, prediction }, result.value, from);
        set({ job: null, draft: null, runs: [...get().shot.runs, run].slice(-MOST_RUNS), shown: id });
        cue();
        set({ playing: true });
      }
    },
    cancelRun(): void {
      cancelJob?.();
      cancelJob = null;
      set({ job: null });
    },
    clearRuns(): void {
      set({ runs: [], shown: null });
      cue();
    },
  };

  // The lever shows the machine's own run of its direction; another machine has runs of its own.
  store.subscribe((now, before) => {
    if (now.document !== before.document) {
      cancelJob?.();
      cancelJob = null;
      showShot(null, 0);
      store.setState({ shot: INITIAL_SHOT });
    } else if (now.exciter.direction !== before.exciter.direction && now.shot.open) commands.showRun(null);
    else if (now.spinning && !before.spinning && now.shot.open) commands.watchShot(false);
    // Whoever shows the whole machine again has done with looking into the exciter.
    else if (now.shot.open && now.isolatedParts === null && before.isolatedParts !== null)
      set({ open: false, playing: false, before: null });
  });
  return commands;
}
