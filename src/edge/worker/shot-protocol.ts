/** Messages between the page and the worker that runs the loose shot. */
import type { Fault } from '../../core/kernel';
import type { ShotParameters } from '../../core/shot';

export interface ShotRequest {
  readonly parameters: ShotParameters;
}

export type ShotReply =
  | { readonly type: 'progress'; readonly share: number; readonly left_s: number | null }
  | { readonly type: 'faults'; readonly faults: readonly Fault[] }
  /** A recording, handed over without copying. */
  | { readonly type: 'recording'; readonly bytes: ArrayBuffer }
  | { readonly type: 'broken'; readonly reason: string };
