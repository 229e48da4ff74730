/** Messages between the page and the worker that prepares machines. */
import type { Fault } from '../../core/kernel';
import type { SourceFile } from '../../core/machine';

export interface PrepareRequest {
  readonly files: readonly SourceFile[];
}

export type PrepareReply =
  | { readonly type: 'progress'; readonly phase: 'solids' | 'order'; readonly share: number }
  | { readonly type: 'faults'; readonly faults: readonly Fault[] }
  | { readonly type: 'document'; readonly bytes: ArrayBuffer }
  | { readonly type: 'broken'; readonly reason: string };
