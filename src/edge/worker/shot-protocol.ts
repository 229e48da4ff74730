/** Messages between the page and the worker that runs the loose shot. */
import type { Fault } from '../../core/kernel';
import type { Readings, ShotParameters } from '../../core/shot';

export interface ShotRequest {
  readonly parameters: ShotParameters;
}

/** Frames of a run: places of all balls at each reading's time, x y z after one another, metres in the body frame. */
export interface ShotFrames {
  readonly parameters: ShotParameters;
  readonly count: number;
  readonly radii_m: Float32Array;
  readonly places_m: Float32Array;
  readonly readings: readonly Readings[];
}

export type ShotReply =
  | { readonly type: 'progress'; readonly share: number; readonly left_s: number | null }
  | { readonly type: 'faults'; readonly faults: readonly Fault[] }
  | { readonly type: 'frames'; readonly frames: ShotFrames }
  | { readonly type: 'broken'; readonly reason: string };
