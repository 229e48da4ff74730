/** Asks for the blocking graph of the machine at hand. */
import type { BlockingGraph } from '../../core/assembly';
import type { Ports } from '../ports';
import type { AppState } from '../state';
import type { AppStore } from '../store';

interface Running {
  readonly hash: string;
  readonly result: Promise<BlockingGraph | null>;
  cancel(): void;
}

const running = new WeakMap<AppStore, Running>();
/** Graphs by hash of machines seen in this visit, the latest last: one that comes back is not worked out again. */
const kept = new WeakMap<AppStore, Map<string, BlockingGraph>>();
const KEPT_MOST = 4;

/** The graph of the machine at hand, or null while it is not known. */
export function selectGraph(s: AppState): BlockingGraph | null {
  return s.graph.phase === 'ready' && s.graph.hash === s.document?.hash ? s.graph.graph : null;
}

/**
 * Makes sure that the graph of the machine at hand is there, and hands it over: at once when it is known, else when
 * it has been fetched or found in the worker (`state.graph` tells how far it is). Null when no machine is there, when
 * it failed (`state.graph.phase` is 'failed'; calling again tries again), was cancelled, or when another machine came
 * meanwhile. Calls at the same time share one job.
 */
export async function ensureGraph(
  store: AppStore,
  ports: Pick<Ports, 'graph'>,
): Promise<BlockingGraph | null> {
  const { document } = store.getState();
  if (document === null) return null;
  const { hash } = document;
  const found = kept.get(store)?.get(hash);
  if (found !== undefined) {
    if (selectGraph(store.getState()) === null)
      store.setState({ graph: { phase: 'ready', graph: found, hash } });
    return found;
  }
  const before = running.get(store);
  if (before?.hash === hash) return before.result;
  before?.cancel();

  const mine = (): boolean => running.get(store) === job;
  const set = (graph: AppState['graph']): void => store.setState({ graph });
  set({ phase: 'working', share: 0, hash });
  const port = ports.graph(document, (share) => {
    if (mine()) set({ phase: 'working', share, hash });
  });
  const work = async (): Promise<BlockingGraph | null> => {
    const result = await port.result.catch(() => undefined);
    if (!mine()) return null;
    running.delete(store);
    if (result?.ok === true) {
      remember(store, hash, result.value);
      set({ phase: 'ready', graph: result.value, hash });
      return result.value;
    }
    set(result === null ? { phase: 'idle' } : { phase: 'failed', hash });
    return null;
  };
  const job: Running = { hash, cancel: port.cancel, result: Promise.resolve().then(work) };
  running.set(store, job);
  return job.result;
}

/** Stops work on the graph; what `ensureGraph` promised becomes null. */
export function cancelGraph(store: AppStore): void {
  running.get(store)?.cancel();
}

function remember(store: AppStore, hash: string, graph: BlockingGraph): void {
  const graphs = kept.get(store) ?? new Map<string, BlockingGraph>();
  kept.set(store, graphs.set(hash, graph));
  for (const oldest of graphs.keys()) if (graphs.size > KEPT_MOST) graphs.delete(oldest);
}
