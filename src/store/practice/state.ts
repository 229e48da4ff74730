/** Slow state of practice: the task chosen, the run under way, runs that were kept, what the stage shows of it. */
import type {
  Hint,
  Laid,
  Laying,
  Legal,
  PracticeBench,
  PracticeGoal,
  PracticeMode,
  PracticeScore,
  PracticeState,
  Step,
} from '../../core/assembly';
import type { Fault, Message, Vec3 } from '../../core/kernel';

/** 'guided' names the next part, 'free' hints when asked, 'exam' tells nothing before its end. */
export const PRACTICE_AIDS = ['guided', 'free', 'exam'] as const;
export type PracticeAid = (typeof PRACTICE_AIDS)[number];

export interface PracticeTask {
  readonly mode: PracticeMode;
  readonly goal: PracticeGoal;
  readonly aid: PracticeAid;
}

/** A move that was made, with all that is said about it. */
export interface MadeMove {
  readonly legal: Legal;
  /** Where everything lay before and lies after it. */
  readonly from: Laid;
  readonly laying: Laying;
}

/** What the last act of the learner came to. */
export type PracticeAnswer =
  | {
      readonly kind: 'refused';
      readonly unitId: string;
      /** Null in an exam: told at its end. */
      readonly reason: Message | null;
      readonly blockers: readonly string[];
      readonly counts: boolean;
    }
  | {
      readonly kind: 'moved';
      readonly unitIds: readonly string[];
      readonly note: Message | null;
      readonly after: readonly Step[];
    }
  | { readonly kind: 'back'; readonly unitIds: readonly string[] }
  | { readonly kind: 'hint'; readonly hint: Hint }
  | { readonly kind: 'begun' };

/** A legal move that waits until everything that it needs is confirmed. */
export interface PracticePending {
  readonly unitId: string;
  readonly legal: Legal;
  /** State of the run with the move made. */
  readonly next: PracticeState;
  /** Numbers of the points confirmed. */
  readonly confirmed: readonly number[];
}

export interface PracticeRun {
  readonly id: string;
  readonly task: PracticeTask;
  readonly started_ms: number;
  readonly bench: PracticeBench;
  readonly state: PracticeState;
  readonly made: readonly MadeMove[];
  readonly answer: PracticeAnswer;
  /** Rises with each answer: the same words twice are two answers. */
  readonly serial: number;
  readonly pending: PracticePending | null;
  /** The next part in a guided run. */
  readonly next: string | null;
  readonly paused: boolean;
  readonly score: PracticeScore | null;
}

/** A run as its record tells it, without the machine at hand. */
export interface KeptRun {
  readonly id: string;
  readonly task: PracticeTask;
  readonly machineId: string;
  readonly started_ms: number;
  readonly saved_ms: number;
  readonly moves: number;
  readonly leastMoves: number;
  readonly elapsed_s: number;
  /** Null: not finished. */
  readonly score: PracticeScore | null;
  /** The run itself, as core keeps it. */
  readonly run: string;
}

/** What the stage shows of the run. */
export interface PracticeStage {
  /** Another number: the motion begins anew. */
  readonly serial: number;
  /** Where everything lies before `laying`, and after it (or at rest where nothing moves). */
  readonly from: Laid;
  readonly to: Laid;
  readonly laying: Laying | null;
  /** Taken back: the motion runs the other way. */
  readonly back: boolean;
  /** Parts that tried to move and could not, and where to. */
  readonly stuck: { readonly parts: readonly number[]; readonly direction: Vec3 } | null;
  /** Parts that stand in the way. */
  readonly blockers: readonly number[];
  /** Parts to have in view; null: the camera stays. */
  readonly frame: readonly number[] | null;
}

/** What a hand on the stage has hold of. How far it is moved is a fast value: `transient.hand_m`. */
export interface PracticeHold {
  readonly partId: string;
  /** Number of the part under the hand. */
  readonly lead: number;
  /** Where everything lies as long as nothing has moved. */
  readonly laid: Laid;
  /** Numbers of all parts that go with the hand. */
  readonly parts: readonly number[];
  /** Where it goes first, or where a hand would pull. */
  readonly direction: Vec3;
  /** Null: it gives only a little, for it cannot go, or something must be confirmed first. */
  readonly way: Laying | null;
  /** Length of the way on which it comes clear, metres; Infinity: the whole of it. */
  readonly clear_m: number;
}

export interface PracticeSlice {
  readonly task: PracticeTask;
  /** 'opening': what blocks what is being fetched or found. */
  readonly phase: 'choose' | 'opening' | 'run' | 'failed';
  readonly run: PracticeRun | null;
  /** Null: not read yet. */
  readonly kept: readonly KeptRun[] | null;
  /** Why a kept run could not be taken up again. */
  readonly refused: { readonly id: string; readonly faults: readonly Fault[] } | null;
  /** False: runs are kept for this visit only. */
  readonly lasting: boolean;
  readonly stage: PracticeStage | null;
  /** A hand takes hold of a part on the stage; the number rises with each grip. */
  readonly grip: { readonly partId: string; readonly serial: number } | null;
  /** What it then has hold of. */
  readonly hold: PracticeHold | null;
  /** A part in hand was pulled on the stage; the number rises with each pull. */
  readonly pull: { readonly partId: string; readonly serial: number } | null;
}

export const INITIAL_PRACTICE: PracticeSlice = {
  task: { mode: 'take-apart', goal: { kind: 'all' }, aid: 'free' },
  phase: 'choose',
  run: null,
  kept: null,
  refused: null,
  lasting: true,
  stage: null,
  grip: null,
  hold: null,
  pull: null,
};
