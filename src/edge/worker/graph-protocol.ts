/** Messages between the page and the worker that finds what blocks what. */
import type { BlockingGraph } from '../../core/assembly';
import type { GraphSource } from '../../core/document';

export type GraphRequest = GraphSource;

export type GraphReply =
  | { readonly type: 'progress'; readonly share: number }
  | { readonly type: 'graph'; readonly graph: BlockingGraph }
  | { readonly type: 'broken'; readonly reason: string };
