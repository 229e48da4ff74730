/**
 * Practice by doing: what a run remembers, what a try answers. A run is plain data (ids, counts, seconds), so that it
 * can be kept and taken up again; what is off and what is on follows from its moves.
 */
import type { Message } from '../../kernel';
import type { Step } from '../types';

export type PracticeMode = 'take-apart' | 'put-together';

/** What the run is about: everything, or one unit freed (and back in, when putting together). */
export type PracticeGoal = { readonly kind: 'all' } | { readonly kind: 'unit'; readonly unitId: string };

/** One move made: bodies (by id) that left or went in together. */
export interface PracticeMove {
  /** The body that was tried. */
  readonly lead: string;
  readonly bodies: readonly string[];
  /** They stay one piece after it: a subassembly to be split on the bench, or a part with its seals. */
  readonly together: boolean;
  /** Putting together: a body of the piece that it went onto; null: what it left follows from where it was. */
  readonly onto: string | null;
}

export interface WrongTry {
  readonly unitId: string;
  readonly reason: Message;
  /** Moves made before it. */
  readonly after: number;
}

export interface HintTaken {
  readonly unitId: string;
  /** 1 region, 2 kind, 3 part. */
  readonly level: HintLevel;
  readonly after: number;
}

export type HintLevel = 1 | 2 | 3;

export interface PracticeState {
  readonly machineId: string;
  /** Hash of the machine's files: a run of another version is refused. */
  readonly modelHash: string;
  readonly mode: PracticeMode;
  readonly goal: PracticeGoal;
  readonly moves: readonly PracticeMove[];
  readonly wrong: readonly WrongTry[];
  readonly hints: readonly HintTaken[];
  /** Moves taken back. */
  readonly undone: number;
  /** Time spent, given from outside. */
  readonly elapsed_s: number;
}

export interface Legal {
  readonly kind: 'legal';
  readonly move: PracticeMove;
  /** Its true way out (reversed when putting together), tools and cautions. */
  readonly step: Step;
  /** What must be held or drained first, to be confirmed by the learner. */
  readonly before: readonly Step[];
  /** What follows at once: a fluid let out through the opened drain. */
  readonly after: readonly Step[];
  /** Why others come along; null when it moves alone. */
  readonly note: Message | null;
  readonly done: boolean;
}

export interface Refused {
  readonly kind: 'refused';
  readonly reason: Message;
  /** Units that stand in the way or hold it. */
  readonly blockers: readonly string[];
  /** False when it is no mistake (what stays, what is off already). */
  readonly counts: boolean;
}

export type Outcome = Legal | Refused;

/** Message keys that practice hands out, with their parameters (ids of units, lists of them). */
export const practiceMessageKeys = [
  { key: 'practice.why.covered', params: ['part', 'by'] },
  { key: 'practice.why.clamped', params: ['part', 'by'] },
  { key: 'practice.why.thread', params: ['part', 'by'] },
  { key: 'practice.why.hose', params: ['part', 'by'] },
  { key: 'practice.why.drain', params: ['part', 'by'] },
  { key: 'practice.why.tool', params: ['part', 'by'] },
  { key: 'practice.why.tight', params: ['part', 'by'] },
  { key: 'practice.why.no-way', params: ['part'] },
  { key: 'practice.why.with', params: ['part', 'lead', 'by'] },
  { key: 'practice.why.stays', params: ['part'] },
  { key: 'practice.why.off', params: ['part'] },
  { key: 'practice.why.in', params: ['part'] },
  { key: 'practice.why.way-shut', params: ['part', 'by'] },
  { key: 'practice.why.before', params: ['part', 'by'] },
  { key: 'practice.why.no-seat', params: ['part', 'by'] },
  { key: 'practice.note.together', params: ['part', 'members'] },
  { key: 'practice.note.pressed', params: ['part', 'other'] },
  { key: 'practice.note.onto', params: ['part', 'other'] },
  { key: 'practice.hint.region', params: ['region'] },
  { key: 'practice.hint.kind', params: ['kind'] },
  { key: 'practice.hint.part', params: ['part'] },
  { key: 'practice.saved.schema', params: ['found'] },
  { key: 'practice.saved.machine', params: ['found'] },
  { key: 'practice.saved.model', params: [] },
  { key: 'practice.saved.broken', params: [] },
  { key: 'practice.saved.moves', params: ['move'] },
] as const;
