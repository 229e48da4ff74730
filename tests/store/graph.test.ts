import { describe, expect, it } from 'vitest';
import type { BlockingGraph } from '../../src/core/assembly';
import type { MachineDocument } from '../../src/core/document';
import { fail, ok, type Result } from '../../src/core/kernel';
import { cancelGraph, createAppStore, ensureGraph, type Ports, selectGraph } from '../../src/store';

const documentOf = (hash: string): MachineDocument => ({ hash }) as MachineDocument;
const graphOf = (machineId: string): BlockingGraph => ({ machineId }) as BlockingGraph;

interface Asked {
  readonly hash: string;
  tell(share: number): void;
  end(result: Result<BlockingGraph> | null): void;
}

function bench() {
  const store = createAppStore({ document: documentOf('one') });
  const asked: Asked[] = [];
  const ports: Pick<Ports, 'graph'> = {
    graph: ({ hash }, tell) => {
      let end: Asked['end'] = () => undefined;
      const result = new Promise<Result<BlockingGraph> | null>((resolve) => (end = resolve));
      asked.push({ hash, tell, end });
      return { result, cancel: () => end(null) };
    },
  };
  return { store, ports, asked };
}

describe('the blocking graph of the machine at hand', () => {
  it('is asked for once, tells how far it is, and is known from then on', async () => {
    const { store, ports, asked } = bench();
    expect(selectGraph(store.getState())).toBeNull();
    const first = ensureGraph(store, ports);
    const second = ensureGraph(store, ports);
    asked[0]!.tell(0.4);
    expect(store.getState().graph).toEqual({ phase: 'working', share: 0.4, hash: 'one' });
    const graph = graphOf('one');
    asked[0]!.end(ok(graph));
    expect(await first).toBe(graph);
    expect(await second).toBe(graph);
    expect(await ensureGraph(store, ports)).toBe(graph);
    expect(selectGraph(store.getState())).toBe(graph);
    expect(asked).toHaveLength(1);
  });

  it('is never that of another machine, and comes back with its own', async () => {
    const { store, ports, asked } = bench();
    const first = ensureGraph(store, ports);
    const one = graphOf('one');
    asked[0]!.end(ok(one));
    await first;
    store.setState({ document: documentOf('two') });
    expect(selectGraph(store.getState())).toBeNull();
    const late = ensureGraph(store, ports);
    store.setState({ document: documentOf('three') });
    const third = ensureGraph(store, ports);
    // The work for the machine that left was stopped.
    expect(await late).toBeNull();
    asked[2]!.end(ok(graphOf('three')));
    expect((await third)?.machineId).toBe('three');
    store.setState({ document: documentOf('one') });
    expect(selectGraph(store.getState())).toBeNull();
    expect(await ensureGraph(store, ports)).toBe(one);
    expect(selectGraph(store.getState())).toBe(one);
    expect(asked.map((a) => a.hash)).toEqual(['one', 'two', 'three']);
  });

  it('can be cancelled, and fails openly; both may be tried again', async () => {
    const { store, ports, asked } = bench();
    const first = ensureGraph(store, ports);
    cancelGraph(store);
    expect(await first).toBeNull();
    expect(store.getState().graph.phase).toBe('idle');
    const second = ensureGraph(store, ports);
    asked[1]!.end(fail([{ path: '(graph)', expected: { key: 'fault.worker' }, found: 'out of memory' }]));
    expect(await second).toBeNull();
    expect(store.getState().graph.phase).toBe('failed');
    const third = ensureGraph(store, ports);
    asked[2]!.end(ok(graphOf('one')));
    expect(await third).not.toBeNull();
  });
});
