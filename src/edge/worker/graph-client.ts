/** The blocking graph of a prepared machine, found in a worker of its own: progress, cancel. */
import type { BlockingGraph } from '../../core/assembly';
import { graphSource, type MachineDocument } from '../../core/document';
import { fail, message, ok, type Result } from '../../core/kernel';
import type { GraphReply, GraphRequest } from './graph-protocol';

export interface GraphJob {
  /** Null when it was cancelled. */
  readonly result: Promise<Result<BlockingGraph> | null>;
  cancel(): void;
}

export function findGraph(document: MachineDocument, onProgress: (share: number) => void): GraphJob {
  let cancel = (): void => undefined;
  const result = new Promise<Result<BlockingGraph> | null>((resolve) => {
    const broken = (reason: string): Result<never> =>
      fail([{ path: '(graph)', expected: message('fault.worker'), found: reason }]);
    let worker: Worker;
    try {
      worker = new Worker(new URL('./graph.worker.ts', import.meta.url), { type: 'module' });
    } catch (error) {
      resolve(broken((error as Error).message));
      return;
    }
    const end = (value: Result<BlockingGraph> | null): void => {
      worker.terminate();
      resolve(value);
    };
    cancel = () => end(null);
    worker.onerror = (event) => end(broken(event.message));
    worker.onmessage = (event: MessageEvent<GraphReply>) => {
      const reply = event.data;
      if (reply.type === 'progress') onProgress(reply.share);
      else if (reply.type === 'graph') end(ok(reply.graph));
      else end(broken(reply.reason));
    };
    worker.postMessage(graphSource(document) satisfies GraphRequest);
  });
  return { result, cancel: () => cancel() };
}
