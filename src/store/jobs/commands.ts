/** Commands of the jobs. Every change is kept at once, so that a closed page loses nothing. */
import {
  addToHistory,
  exportHistory,
  exportProgress,
  type FieldValue,
  HISTORY_FORMAT,
  historyEntry,
  importHistory,
  importProgress,
  type Job,
  type JobProgress,
  jobVerdict,
  type JobVerdict,
  machineFor,
  type MeasuredJob,
  placeInJson,
  type ProgressEvent,
  reduceProgress,
  startProgress,
} from '../../core/jobs';
import { type Fault, message, printFound } from '../../core/kernel';
import { defaultOptions } from '../../core/machine';
import type { Commands } from '../commands';
import { giveStageBack, keepStage } from '../lent-stage';
import type { Ports } from '../ports';
import type { AppStore } from '../store';
import { requestFrame, transient } from '../transient';
import {
  JOB_DAMAGED,
  JOB_MEASURED,
  JOB_RECORDS,
  keepEntry,
  keepProgress,
  readKept,
  readMeasured,
} from './kept';
import { explodeOf, jobBase, makeSheet, noPlan, stageAt, summaryOf } from './sheet';
import { type JobImport, type JobsState, NOT_MEASURED, type PaperSize } from './state';

/** What happens to a sheet, without its time: the command brings that. */
export type JobEvent = ProgressEvent extends infer E ? (E extends unknown ? Omit<E, 'at_ms'> : never) : never;

export function createJobCommands(store: AppStore, ports: Ports, commands: Commands) {
  const { records } = ports;
  const jobs = (): JobsState => store.getState().jobs;
  const set = (part: Partial<JobsState>): void => {
    store.setState({ jobs: { ...jobs(), ...part } });
    requestFrame();
  };
  let loading: Promise<void> | null = null;
  let opening: { readonly id: string; readonly done: Promise<void> } | null = null;

  /** A key that no sheet under way or in the history has. */
  const freshId = (wanted: string): string => {
    const taken = (id: string): boolean =>
      jobs().kept.some((p) => p.id === id) || jobs().history.some((e) => e.id === id);
    let id = wanted;
    for (let i = 2; taken(id); i++) id = `${wanted}-${i}`;
    return id;
  };
  const keep = (progress: JobProgress): void => {
    const rest = jobs().kept.filter((p) => p.id !== progress.id);
    set({ kept: [progress, ...rest] });
    void keepProgress(records, progress).then((keptSafely) => {
      if (keptSafely !== jobs().keptSafely) set({ keptSafely });
    });
  };
  /** Puts a progress (or none) into the open job and makes its sheet anew where values differ. */
  const put = (progress: JobProgress | null): void => {
    const { document } = store.getState();
    const { open, progress: before } = jobs();
    if (open === null || document === null) return;
    const values = progress?.values ?? {};
    const sheet =
      values === (before?.values ?? null) ? open.sheet : makeSheet(document, open.job, open.plan, values);
    set({ progress, open: { ...open, sheet } });
  };
  const begun = (): JobProgress | null => {
    const { open, progress } = jobs();
    if (open === null) return null;
    const at_ms = Date.now();
    return progress ?? startProgress(open.sheet, freshId(`${open.job.id}-${at_ms}`), at_ms);
  };
  const latestOf = (jobId: string): JobProgress | null => jobs().kept.find((p) => p.jobId === jobId) ?? null;

  async function load(): Promise<void> {
    const { document } = store.getState();
    if (document === null) return;
    const machineId = document.machine.id;
    if (jobs().machineId === machineId && jobs().phase === 'ready') return;
    loading ??= (async () => {
      set({ phase: 'loading' });
      try {
        const [list, kept] = await Promise.all([
          ports.jobs.loadJobs(machineId),
          readKept(records, machineId),
        ]);
        set({
          ...kept,
          machineId,
          list,
          summaries: {},
          open: null,
          progress: null,
          stage: null,
          phase: 'ready',
        });
      } catch {
        set({ phase: 'failed' });
      }
    })().finally(() => (loading = null));
    await loading;
  }

  async function fetchJob(id: string): Promise<void> {
    await load();
    const { document } = store.getState();
    const job = jobs().list.find((each) => each.id === id);
    if (document === null || job === undefined) {
      set({ opening: 'failed' });
      return;
    }
    set({ opening: 'loading', open: null, progress: null, measured: NOT_MEASURED });
    try {
      const { plan } = await ports.jobs.loadPlan(document.machine.id, id);
      const progress = latestOf(id);
      const measured = progress === null ? NOT_MEASURED : await readMeasured(records, progress.id);
      const sheet = makeSheet(document, job, plan, progress?.values ?? {});
      // another job may have been asked for meanwhile
      if (opening !== null && opening.id !== id) return;
      set({ open: { job, plan, sheet }, progress, measured, opening: 'no' });
    } catch {
      set({ opening: 'failed' });
    }
  }

  let summing: Promise<void> | null = null;
  /** Works out time, lifts and what comes off of every job of the list, one after the other. */
  async function sumUp(): Promise<void> {
    await load();
    const { document } = store.getState();
    if (document === null) return;
    for (const job of jobs().list) {
      if (jobs().summaries[job.id] !== undefined) continue;
      try {
        const { plan } = await ports.jobs.loadPlan(document.machine.id, job.id);
        if (jobs().machineId !== document.machine.id) return;
        const summary = summaryOf(makeSheet(document, job, plan, {}), plan);
        set({ summaries: { ...jobs().summaries, [job.id]: summary } });
      } catch {
        // a job whose plan cannot be had says so when it is opened
      }
    }
  }

  /** Opens a job with the newest sheet under way of it. */
  function open(id: string): Promise<void> {
    if (jobs().open?.job.id === id && jobs().machineId === store.getState().document?.machine.id)
      return Promise.resolve();
    if (opening?.id !== id) {
      const done = fetchJob(id).finally(() => {
        if (opening?.done === done) opening = null;
      });
      opening = { id, done };
    }
    return opening.done;
  }

  /** Measured amplitude and rate against what this machine's exciter should do. */
  function verdict(measured: MeasuredJob): JobVerdict | null {
    const { document } = store.getState();
    return document === null ? null : jobVerdict(jobBase(document).study, measured);
  }

  /** Files the open sheet in the history, finished or not; nothing of it is lost. */
  async function file(): Promise<boolean> {
    const { open: now, measured } = jobs();
    const progress = begun();
    const judged = verdict(measured);
    if (now === null || progress === null || judged === null) return false;
    const entry = historyEntry(now.sheet, progress, measured, judged, Date.now());
    const keptSafely = await keepEntry(records, entry);
    set({ history: addToHistory(jobs().history, entry), keptSafely });
    // only what the history holds leaves the sheets under way
    if (keptSafely) await records.remove(JOB_RECORDS, progress.id);
    set({ kept: jobs().kept.filter((p) => p.id !== progress.id), measured: NOT_MEASURED });
    put(null);
    return true;
  }

  /** Checks a file against its job's sheet; the open job stays as it is. */
  async function readProgressFile(fileName: string, text: string): Promise<JobImport> {
    const report = (part: Partial<JobImport>): JobImport => ({
      fileName,
      faults: [],
      result: 'refused',
      offered: null,
      entries: 0,
      jobId: null,
      ...part,
    });
    const { document } = store.getState();
    const first = importProgress(text, undefined, fileName);
    const job = jobs().list.find((each) => each.id === first.progress?.jobId);
    if (document === null || first.progress === null) return report({ faults: first.faults });
    if (job === undefined) {
      const unknown: Fault = {
        file: fileName,
        ...placeInJson(text, ['progress', 'jobId']),
        expected: message('fault.job.known-job'),
        found: printFound(first.progress.jobId),
      };
      return report({ faults: [...first.faults, unknown] });
    }
    const { open: now } = jobs();
    let plan = now?.job.id === job.id ? now.plan : null;
    if (now?.job.id !== job.id) {
      try {
        ({ plan } = await ports.jobs.loadPlan(document.machine.id, job.id));
      } catch {
        const missing: Fault = {
          file: fileName,
          ...placeInJson(text, ['progress', 'jobId']),
          expected: message('fault.job.can-be-loaded'),
          found: printFound(job.id),
        };
        return report({ faults: [...first.faults, missing] });
      }
    }
    const sheet = makeSheet(document, job, plan, first.progress.values);
    const { progress, faults } = importProgress(text, sheet, fileName);
    if (progress === null || progress.machineId !== document.machine.id) return report({ faults });
    const whole = faults.every((f) => f.level === 'note');
    if (!whole) return report({ faults, result: 'in-part', offered: progress, jobId: job.id });
    takeOver(progress);
    return report({ faults, result: 'taken', jobId: job.id });
  }

  /** Keeps a progress that came from a file; one that is here already under its id, but differs, stays beside it. */
  function takeOver(found: JobProgress): void {
    const twin = jobs().kept.find((p) => p.id === found.id);
    const same = twin !== undefined && exportProgress(twin) === exportProgress(found);
    const progress = same ? twin : { ...found, id: freshId(found.id) };
    keep(progress);
    if (jobs().open?.job.id === progress.jobId) put(progress);
  }

  function readHistoryFile(fileName: string, text: string): JobImport {
    const { entries, faults } = importHistory(text, fileName);
    const known = jobs().history;
    const fresh = entries.filter((e) => !known.some((k) => k.id === e.id && k.at_ms === e.at_ms));
    let history = known;
    for (const entry of fresh) {
      const own = { ...entry, id: known.some((k) => k.id === entry.id) ? freshId(entry.id) : entry.id };
      history = addToHistory(history, own);
      void keepEntry(records, own);
    }
    set({ history });
    const result = faults.length === 0 ? 'taken' : fresh.length > 0 ? 'in-part' : 'refused';
    return { fileName, faults, result, offered: null, entries: fresh.length, jobId: null };
  }

  return {
    load,
    open,
    loadSummaries: (): Promise<void> => (summing ??= sumUp().finally(() => (summing = null))),
    /** Something happened on the open sheet; the first event begins it. False when the rule of hold points forbids it. */
    happen(event: JobEvent): boolean {
      const { open: now } = jobs();
      const before = begun();
      if (now === null || before === null) return false;
      const after = reduceProgress(now.sheet, before, { ...event, at_ms: Date.now() } as ProgressEvent);
      if (after === before) return false;
      keep(after);
      put(after);
      return true;
    },
    fill(fieldId: string, value: FieldValue | null): void {
      this.happen({ type: 'fill', fieldId, value });
    },
    /** Takes up one of several sheets under way. */
    async takeUp(id: string): Promise<void> {
      const progress = jobs().kept.find((p) => p.id === id);
      if (progress === undefined) return;
      await open(progress.jobId);
      const measured = await readMeasured(records, id);
      put(progress);
      set({ measured });
    },
    /** Takes a filed job up again: its sheet comes back as it was, and its entry stays. */
    async reopen(id: string): Promise<void> {
      const entry = jobs().history.find((e) => e.id === id);
      if (entry === undefined) return;
      const { progress } = entry;
      const { high, low } = entry.measured;
      if (!jobs().kept.some((p) => p.id === id)) keep({ ...progress, changed_ms: Date.now() });
      await records.write(JOB_MEASURED, id, JSON.stringify({ high, low }));
      await this.takeUp(id);
    },
    /** A fresh sheet beside those under way. */
    startAnew(): void {
      const { open: now } = jobs();
      if (now === null) return;
      put(null);
      const progress = begun();
      if (progress === null) return;
      set({ measured: NOT_MEASURED });
      keep(progress);
      put(progress);
    },
    measure(measured: MeasuredJob): void {
      const progress = begun();
      if (progress === null) return;
      if (jobs().progress === null) {
        keep(progress);
        put(progress);
      }
      set({ measured });
      void records.write(JOB_MEASURED, progress.id, JSON.stringify(measured));
    },
    verdict,
    file,
    exportText(): string | null {
      const progress = jobs().progress;
      return progress === null ? null : exportProgress(progress);
    },
    historyText: (): string => exportHistory(jobs().history),
    async importFile(fileName: string, text: string): Promise<void> {
      await load();
      let format: unknown;
      try {
        format = (JSON.parse(text) as { format?: unknown } | null)?.format;
      } catch {
        format = undefined;
      }
      const imported =
        format === HISTORY_FORMAT ? readHistoryFile(fileName, text) : await readProgressFile(fileName, text);
      set({ imported });
    },
    /** Takes over what could be read of a damaged file. */
    takeOffered(): void {
      const { imported } = jobs();
      if (imported?.offered == null) return;
      takeOver(imported.offered);
      set({ imported: { ...imported, offered: null, result: 'taken', faults: [] } });
    },
    closeImport: (): void => set({ imported: null }),
    async forgetDamaged(key: string): Promise<void> {
      await records.remove(JOB_DAMAGED, key);
      set({ damaged: jobs().damaged.filter((d) => d.key !== key) });
    },
    setPaper: (paper: PaperSize): void => set({ paper }),
    /** Shows a step of the open sheet (from 1) on the stage. */
    show(number: number): void {
      const { document } = store.getState();
      const { open: now } = jobs();
      if (document === null || now === null) return;
      const plan = now.plan ?? jobs().stage?.plan ?? noPlan(document);
      const index = Math.min(now.sheet.steps.length, Math.max(1, number)) - 1;
      const at = stageAt(now.sheet, index);
      const explode = now.plan === null ? document.explode : explodeOf(document, now.job, plan);
      keepStage(store);
      transient.explode = 0;
      store.setState({
        jobs: { ...jobs(), stage: { plan, explode, ...at } },
        teardown: {
          open: now.plan !== null,
          step: at.step,
          playing: false,
          reverse: now.sheet.steps[index]?.phase === 'together',
        },
        ...stageLook(now.job),
        selectedPart: at.partIds[0] ?? null,
      });
      requestFrame();
    },
    leaveStage(): void {
      if (jobs().stage === null) return;
      set({ stage: null });
      giveStageBack(store, commands);
    },
  };

  /** Nothing cut, hidden or exploded; options as the job needs them. */
  function stageLook(job: Job) {
    const { document } = store.getState();
    const machine = document === null ? null : machineFor(document.machine, job);
    const { section } = store.getState();
    return {
      hiddenParts: new Set<string>(),
      ghostedParts: new Set<string>(),
      isolatedParts: null,
      explode: 0,
      spinning: false,
      balloons: true,
      section: { ...section, on: false },
      optionsOn: machine === null ? {} : defaultOptions(machine),
    };
  }
}
