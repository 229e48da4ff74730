/** What blocks what on the machine at hand, as far as it is known. Fetched or found only when a place asks for it. */
import type { BlockingGraph } from '../../core/assembly';

export type GraphState =
  | { readonly phase: 'idle' }
  /** `share` of the work from 0 to 1. */
  | { readonly phase: 'working'; readonly share: number; readonly hash: string }
  /** `hash` is that of the machine's document: a graph is of one machine only. */
  | { readonly phase: 'ready'; readonly graph: BlockingGraph; readonly hash: string }
  | { readonly phase: 'failed'; readonly hash: string };

export const INITIAL_GRAPH: GraphState = { phase: 'idle' };
