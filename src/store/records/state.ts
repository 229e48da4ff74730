/** Slow state of the records: what this browser keeps. */
import type { AnswerSummary, WorkSummary } from '../../core/records';
import type { Fault } from '../../core/kernel';
import type { StorageSpace } from '../ports';

export interface RecordsState {
  readonly phase: 'idle' | 'loading' | 'ready';
  /** False: everything is gone when the page is closed. */
  readonly lasting: boolean;
  readonly space: StorageSpace | null;
  /** Records by collection. */
  readonly counts: Readonly<Record<string, number>>;
  /** Records that the browser's store could not give back. */
  readonly unreadable: number;
  readonly answers: AnswerSummary | null;
  readonly work: WorkSummary | null;
  readonly imported: {
    readonly file: string;
    readonly taken: number;
    /** There already, and left as it was. */
    readonly known: number;
    /** The browser refused to keep it. */
    readonly refused: number;
    readonly faults: readonly Fault[];
  } | null;
}

export const INITIAL_RECORDS: RecordsState = {
  phase: 'idle',
  lasting: true,
  space: null,
  counts: {},
  unreadable: 0,
  answers: null,
  work: null,
  imported: null,
};
