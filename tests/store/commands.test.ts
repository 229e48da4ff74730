import { describe, expect, it } from 'vitest';
import { createAppStore, createCommands, DEFAULT_SETTINGS, type Ports, transient } from '../../src/store';
import { memoryRecords, noSchool, noCourse, noClass, noJobs } from '../panels/fixture';

function bench(kept: string | null = null) {
  const written: Record<string, string> = {};
  const ports: Ports = {
    loadShipped: () => Promise.reject(new Error('not in this test')),
    importFiles: () =>
      Promise.resolve({
        ok: false,
        faults: [{ path: 'parts[0]', expected: { key: 'fault.shape' }, found: '?' }],
      }),
    shot: {
      loadRecordings: () => Promise.resolve(null),
      run: () => ({ result: Promise.resolve(null), cancel: () => undefined }),
    },
    graph: () => ({ result: Promise.resolve(null), cancel: () => undefined }),
    loadFaults: () => Promise.resolve(null),
    course: noCourse,
    jobs: noJobs,
    classroom: noClass,
    records: memoryRecords(),
    ...noSchool,
    keep: {
      read: () => kept,
      write: (key, value) => {
        written[key] = value;
        return true;
      },
    },
  };
  const store = createAppStore();
  return { store, commands: createCommands(store, ports), written };
}

describe('commands of the store', () => {
  it('reads kept settings and drops what does not fit', async () => {
    const { store, commands } = bench(
      JSON.stringify({
        settings: { units: 'us', theme: 7, glove: true, extra: 1 },
        exciter: { direction: 'low', fill: 0.4 },
      }),
    );
    await commands.start();
    expect(store.getState().settings).toEqual({ ...DEFAULT_SETTINGS, units: 'us', glove: true });
    expect(store.getState().exciter).toMatchObject({ direction: 'low', fill: 0.4, bafflePsi_deg: null });
    expect(store.getState().loading.phase).toBe('failed');
  });

  it('survives a damaged note of settings', async () => {
    const { store, commands } = bench('{not json');
    await commands.start();
    expect(store.getState().settings).toEqual(DEFAULT_SETTINGS);
  });

  it('keeps what was changed', () => {
    const { commands, written } = bench();
    commands.change({ units: 'us' });
    commands.setExciter({ direction: 'low' });
    expect(JSON.parse(Object.values(written)[0]!)).toMatchObject({
      settings: { units: 'us' },
      exciter: { direction: 'low' },
    });
  });

  it('backs out from the innermost thing first', () => {
    const { store, commands } = bench();
    commands.select('hub');
    commands.isolate(['hub']);
    commands.openSheet('panel');
    commands.back();
    expect(store.getState()).toMatchObject({ sheet: 'none', selectedPart: 'hub' });
    commands.back();
    expect(store.getState()).toMatchObject({ isolatedParts: null, selectedPart: 'hub' });
    commands.back();
    expect(store.getState().selectedPart).toBe(null);
  });

  it('hides, ghosts and shows all again', () => {
    const { store, commands } = bench();
    commands.hide(['hub', 'shell']);
    commands.ghost(['shell']);
    commands.hide(['hub', 'shell']);
    expect([...store.getState().hiddenParts]).toEqual([]);
    commands.hide(['hub']);
    commands.showAll();
    expect(store.getState().hiddenParts.size + store.getState().ghostedParts.size).toBe(0);
  });

  it('leaves the machine alone when a dropped file has faults', async () => {
    const { store, commands } = bench();
    const before = store.getState().document;
    await commands.importFiles([{ name: 'broken.yaml', text: 'x' }]);
    expect(store.getState().document).toBe(before);
    expect(store.getState().importReport).toMatchObject({ fileName: 'broken.yaml', accepted: false });
    expect(store.getState().importReport?.faults).toHaveLength(1);
  });

  it('hands fast values to the frame loop', () => {
    const { commands } = bench();
    const before = transient.version;
    commands.setExplode(0.4);
    expect(transient.explode).toBe(0.4);
    expect(transient.version).toBeGreaterThan(before);
  });
});
