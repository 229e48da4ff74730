/** Finds what blocks what off the main thread; the large tables are handed over without copying. */
import { documentGraph } from '../../core/document';
import type { GraphReply, GraphRequest } from './graph-protocol';

/** Between two tellings of how far it is. */
const TELL_MS = 60;

const reply = (message: GraphReply, transfer: Transferable[] = []): void => {
  self.postMessage(message, { transfer });
};

self.onmessage = (event: MessageEvent<GraphRequest>) => {
  try {
    let told = -Infinity;
    const graph = documentGraph(event.data, (share) => {
      const now = performance.now();
      if (now - told < TELL_MS) return;
      told = now;
      reply({ type: 'progress', share });
    });
    reply(
      { type: 'graph', graph },
      [...graph.gaps_m, ...graph.lines].map((table) => table.buffer as ArrayBuffer),
    );
  } catch (error) {
    reply({ type: 'broken', reason: (error as Error).message });
  }
};
