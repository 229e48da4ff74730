/** What the store asks of the world; app/wire hands over the implementations. */
import type { BlockingGraph } from '../core/assembly';
import type { MachineDocument } from '../core/document';
import type { Result } from '../core/kernel';
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
  /** Small settings that survive a reload; may refuse (private mode), then nothing is kept. */
  readonly keep: { read(key: string): string | null; write(key: string, value: string): boolean };
}
