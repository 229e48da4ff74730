/** What blocks what on the machine at hand: as it ships, else found in the worker. */
import { ok } from '../core/kernel';
import { loadGraph } from '../edge/content';
import { findGraph } from '../edge/worker';
import type { Ports } from '../store';

export const graph: Ports['graph'] = (document, onProgress) => {
  const stop = new AbortController();
  let cancel = (): void => stop.abort();
  const result = loadGraph(document, stop.signal).then((shipped) => {
    if (stop.signal.aborted) return null;
    if (shipped !== null) return ok(shipped);
    const job = findGraph(document, onProgress);
    cancel = job.cancel;
    return job.result;
  });
  return { result, cancel: () => cancel() };
};
