/** Slow state of the jobs: what ships, what is open, how far it is done, what was kept of earlier ones. */
import type { Explode, Plan } from '../../core/assembly';
import type { HistoryEntry, Job, JobProgress, JobSheet, MeasuredJob } from '../../core/jobs';
import type { Fault } from '../../core/kernel';

/** What the stage shows for the open job: its own plan, how far it is played, and what the step is about. */
export interface JobStage {
  readonly plan: Plan;
  readonly explode: Explode;
  /** Steps 0..step of the plan are done; -1: all is together. */
  readonly step: number;
  /** Step of the plan that is looked at; -1: none, a step of the job's own. */
  readonly leads: number;
  readonly partIds: readonly string[];
}

/** A job with its proven plan and the sheet made of them. */
export interface OpenJob {
  readonly job: Job;
  readonly plan: Plan | null;
  /** Made anew whenever a value changes. */
  readonly sheet: JobSheet;
}

/** What a person wants to know of a job before opening it. */
export interface JobSummary {
  readonly time_s: number;
  readonly people: number;
  readonly steps: number;
  readonly holds: number;
  /** Heaviest lift; null where nothing is lifted. */
  readonly heaviest: { readonly mass_kg: number; readonly byHand: boolean } | null;
  readonly plan: Plan | null;
}

/** What came of a chosen file. */
export interface JobImport {
  readonly fileName: string;
  readonly faults: readonly Fault[];
  /** 'taken': all of it; 'in-part': what could be read is offered; 'refused': nothing of it can be used. */
  readonly result: 'taken' | 'in-part' | 'refused';
  /** What could be read of a damaged sheet; kept only when a person says so. */
  readonly offered: JobProgress | null;
  /** Entries of a history that were taken over. */
  readonly entries: number;
  readonly jobId: string | null;
}

/** A kept record that does not read back whole; its text stays as it is. */
export interface DamagedRecord {
  readonly key: string;
  readonly text: string;
  readonly faults: readonly Fault[];
}

export type PaperSize = 'A4' | 'Letter';

export interface JobsState {
  /** Machine whose jobs these are; null before the first look. */
  readonly machineId: string | null;
  readonly phase: 'idle' | 'loading' | 'ready' | 'failed';
  readonly list: readonly Job[];
  /** By job id; filled one by one. */
  readonly summaries: Readonly<Record<string, JobSummary>>;
  readonly open: OpenJob | null;
  readonly opening: 'no' | 'loading' | 'failed';
  /** Progress of the open job; null until its first tick or value. */
  readonly progress: JobProgress | null;
  readonly measured: MeasuredJob;
  /** Every sheet under way, newest first. */
  readonly kept: readonly JobProgress[];
  /** Finished and ended jobs, newest last. */
  readonly history: readonly HistoryEntry[];
  readonly damaged: readonly DamagedRecord[];
  readonly imported: JobImport | null;
  /** False when the browser refused to keep the last change: it lives for this visit. */
  readonly keptSafely: boolean;
  readonly stage: JobStage | null;
  readonly paper: PaperSize;
}

export const NOT_MEASURED: MeasuredJob = { high: null, low: null };

export const INITIAL_JOBS: JobsState = {
  machineId: null,
  phase: 'idle',
  list: [],
  summaries: {},
  open: null,
  opening: 'no',
  progress: null,
  measured: NOT_MEASURED,
  kept: [],
  history: [],
  damaged: [],
  imported: null,
  keptSafely: true,
  stage: null,
  paper: 'A4',
};
