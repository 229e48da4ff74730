/**
 * The blocking graph of a prepared machine, and its form on the disk. It is read only where someone asks what blocks
 * what, so it lies beside the document and not in it.
 */
import { type BlockingGraph, buildGraph } from '../assembly';
import { type BlockForm, decodeBlock, encodeBlock } from './block';
import type { MachineDocument } from './types';

/** What the graph is built from: a document without what only drawing needs. */
export type GraphSource = Pick<MachineDocument, 'machine' | 'masses'> & {
  readonly solids: Parameters<typeof buildGraph>[1];
};

/** Leaves out drawing meshes, so that little is handed to a worker. */
export function graphSource({ machine, masses, solids }: MachineDocument): GraphSource {
  return {
    machine,
    masses,
    solids: Object.fromEntries(
      Object.entries(solids).map(([kind, bodies]) => [
        kind,
        { bodies: bodies.map(({ name, finish, section, solid }) => ({ name, finish, section, solid })) },
      ]),
    ),
  };
}

/** Builds the graph; `onProgress` gets the share of the work done, 0 to 1. */
export const documentGraph = (source: GraphSource, onProgress?: (share: number) => void): BlockingGraph =>
  buildGraph(source.machine, source.solids, source.masses, onProgress === undefined ? {} : { onProgress });

/** Raise the format whenever the graph's form or what it means changes: kept graphs of older forms are built anew. */
const FORM: BlockForm = { name: 'a blocking graph', magic: 0x474d5244, format: 1 };

interface KeptGraph {
  readonly hash: string;
  readonly graph: BlockingGraph;
}

/** The graph as bytes, with the hash of the machine's source files. */
export const encodeGraph = (graph: BlockingGraph, hash: string): Uint8Array<ArrayBuffer> =>
  encodeBlock(FORM, { hash, graph } satisfies KeptGraph);

/** The graph of a block made by `encodeGraph`; null when it is of another machine; throws on anything else. */
export function decodeGraph(buffer: ArrayBuffer, hash: string): BlockingGraph | null {
  const kept = decodeBlock(FORM, buffer) as KeptGraph;
  return kept.hash === hash ? kept.graph : null;
}
