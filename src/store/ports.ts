/** What the store asks of the world; app/wire hands over the implementations. */
import type { BlockingGraph } from '../core/assembly';
import type { ClassGreeting, ClassLink, LinkListener } from '../core/classroom';
import type { MachineDocument } from '../core/document';
import type { FaultBook } from '../core/faults';
import type { Job, JobPlan } from '../core/jobs';
import type { Result } from '../core/kernel';
import type { CourseOutline, Glossary, Topic } from '../core/lessons';
import type { AppFile, KeptRecord, PackageSettings, PackageWords } from '../core/records';
import type { Direction, ShotParameters } from '../core/shot';
import type { ShotTake } from './shot';

/** Recordings and runs of the loose shot. */
export interface ShotPort {
  /** The recordings that ship with a machine, one a direction; null where none do. */
  loadRecordings(machineId: string): Promise<Readonly<Record<Direction, ShotTake>> | null>;
  /** Runs in the worker; progress from 0 to 1 with the seconds left when they can be told. Null when cancelled. */
  run(
    parameters: ShotParameters,
    onProgress: (share: number, left_s: number | null) => void,
  ): { readonly result: Promise<Result<ShotTake> | null>; cancel(): void };
}

/** How much the browser lets pages of this address keep; persisted: it does not clear it unasked. */
export interface StorageSpace {
  readonly used_bytes: number;
  readonly most_bytes: number;
  readonly persisted: boolean;
}

/** What a person's work leaves behind, as JSON texts by collection and key. */
export interface RecordPort {
  /** False in private mode: then records live for this visit only. */
  lasting(): Promise<boolean>;
  read(collection: string, key: string): Promise<string | null>;
  /** False when the browser refused (storage full); the text then lives for this visit. */
  write(collection: string, key: string, text: string): Promise<boolean>;
  remove(collection: string, key: string): Promise<void>;
  list(collection: string): Promise<readonly { readonly key: string; readonly text: string }[]>;
  /** Everything that can be read, and how many records cannot. */
  all(): Promise<{ readonly records: readonly KeptRecord[]; readonly unreadable: number }>;
  clear(): Promise<void>;
  /** Null where the browser does not tell. */
  space(): Promise<StorageSpace | null>;
  /** Asks the browser to keep these records even when space is short. */
  hold(): Promise<boolean>;
}

/** Lessons, question banks and glossary, in a language or else in English. */
export interface CoursePort {
  loadCourse(language: string): Promise<CourseOutline>;
  loadTopic(language: string, topic: string): Promise<Topic>;
  loadGlossary(language: string): Promise<Glossary>;
}

/** Jobs that ship with a machine, and the proven plan of each. */
export interface JobPort {
  /** In the order of their list; empty where none ship with it. */
  loadJobs(machineId: string): Promise<readonly Job[]>;
  loadPlan(machineId: string, jobId: string): Promise<JobPlan>;
}

/** The class host that served this page, where one did. */
export interface ClassroomPort {
  /** What it says of itself; null when the page comes from somewhere else. */
  greet(): Promise<ClassGreeting | null>;
  link(listener: LinkListener): Promise<ClassLink>;
}

/** A school's learning record store: statements sent, and the store's answer (status of HTTP; null: none came). */
export interface RecordStorePort {
  send(
    access: { readonly endpoint: string; readonly user: string; readonly secret: string },
    statements: readonly object[],
  ): Promise<{ readonly status: number | null; readonly text: string }>;
}

/** Makes packages of lessons for a school's system, from the files that the app itself is served from. */
export interface PackagePort {
  /** The files; null where no list of them was built. */
  files(): Promise<readonly AppFile[] | null>;
  make(
    files: readonly AppFile[],
    settings: PackageSettings,
    words: PackageWords,
    onProgress: (done: number, count: number) => void,
  ): Promise<Blob>;
}

export interface Ports {
  /** Loads the shipped machine; progress from 0 to 1. */
  loadShipped(onProgress: (share: number) => void): Promise<MachineDocument>;
  /** Reads, checks and prepares dropped files; every fault is listed at once. */
  importFiles(
    files: readonly { readonly name: string; readonly text: string }[],
    onProgress: (phase: 'solids' | 'order', share: number) => void,
  ): Promise<Result<MachineDocument>>;
  readonly shot: ShotPort;
  /** What blocks what on a machine; progress from 0 to 1 where it has to be worked out. Null when cancelled. */
  graph(
    document: MachineDocument,
    onProgress: (share: number) => void,
  ): { readonly result: Promise<Result<BlockingGraph> | null>; cancel(): void };
  /** The fault book that ships with a machine; null where none does. */
  loadFaults(machineId: string): Promise<FaultBook | null>;
  readonly records: RecordPort;
  readonly recordStore: RecordStorePort;
  readonly packages: PackagePort;
  readonly course: CoursePort;
  readonly jobs: JobPort;
  readonly classroom: ClassroomPort;
  /** Small settings that survive a reload; may refuse (private mode), then nothing is kept. */
  readonly keep: { read(key: string): string | null; write(key: string, value: string): boolean };
}
