/** What the store asks of the world; app/wire hands over the implementations. */
import type { MachineDocument } from '../core/document';
import type { Result } from '../core/kernel';

export interface Ports {
  /** Loads the shipped machine; progress from 0 to 1. */
  loadShipped(onProgress: (share: number) => void): Promise<MachineDocument>;
  /** Reads, checks and prepares dropped files; every fault is listed at once. */
  importFiles(
    files: readonly { readonly name: string; readonly text: string }[],
    onProgress: (phase: 'solids' | 'order', share: number) => void,
  ): Promise<Result<MachineDocument>>;
  /** Small settings that survive a reload; may refuse (private mode), then nothing is kept. */
  readonly keep: { read(key: string): string | null; write(key: string, value: string): boolean };
}
