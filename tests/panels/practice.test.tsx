// @vitest-environment jsdom
/** The panel of practice: choosing, the list that equals the stage, reasons in words, confirming, score. */
import { fireEvent, screen, waitFor, within } from '@testing-library/react';
import { beforeAll, describe, expect, it } from 'vitest';
import type { BlockingGraph } from '../../src/core/assembly';
import { documentGraph, graphSource, type MachineDocument } from '../../src/core/document';
import { ok } from '../../src/core/kernel';
import { type Ports, PRACTICE_RECORDS } from '../../src/store';
import PracticePlace from '../../src/view/panels/practice/PracticePlace';
import { memoryRecords, show, smallDocument } from './fixture';
import { course } from './learn-fixture';

let document: MachineDocument;
let graph: BlockingGraph;
beforeAll(async () => {
  document = await smallDocument();
  graph = documentGraph(graphSource(document));
});

const at = (path: readonly string[] = []) => ({ route: { place: 'practice' as const, path } });
const ports = (): Partial<Ports> => ({
  graph: () => ({ result: Promise.resolve(ok(graph)), cancel: () => undefined }),
  course,
  records: memoryRecords(),
});

const open = async (of: MachineDocument = document, own: Partial<Ports> = ports()) => {
  const shown = await show(<PracticePlace />, { document: of, ...at() }, own);
  await screen.findByText(/Moves: at least 3/);
  return shown;
};
const begin = async (of?: MachineDocument) => {
  const shown = await open(of);
  fireEvent.click(screen.getByRole('button', { name: 'Start' }));
  await screen.findByText('Your turn.');
  return shown;
};
const list = () => within(screen.getByRole('region', { name: 'Parts to try' }));
const take = (name: RegExp) => {
  fireEvent.click(list().getByRole('button', { name }));
  const hand = screen.getByRole('region', { name: 'In hand' });
  fireEvent.click(within(hand).getByRole('button', { name: 'Take off' }));
};
const said = () => screen.getByRole('group', { name: 'Answer' }).textContent ?? '';

describe('choosing a task', () => {
  it('tells how many moves each goal takes, and what stands open is empty at first', async () => {
    await open();
    expect(screen.getByText(/Nothing begun yet/)).toBeTruthy();
    fireEvent.click(screen.getByRole('radio', { name: /^One part/ }));
    const start = screen.getByRole('button', { name: 'Start' }) as HTMLButtonElement;
    expect(start.disabled).toBe(true);
    const select = screen.getByRole('combobox', { name: /Part to free/ });
    fireEvent.change(select, { target: { value: 'end-right' } });
    expect(screen.getByText('Moves: at least 2')).toBeTruthy();
    expect(start.disabled).toBe(false);
  });

  it('lists a kept run and says in words why it cannot be gone on with', async () => {
    const own = ports();
    const first = await open(document, own);
    fireEvent.click(screen.getByRole('button', { name: 'Start' }));
    await screen.findByText('Your turn.');
    take(/bolt/i);
    fireEvent.click(screen.getByRole('button', { name: 'Leave' }));
    await screen.findByRole('button', { name: /^Go on: Take apart: everything/ });
    expect(await own.records!.list(PRACTICE_RECORDS)).toHaveLength(1);
    first.unmount();

    await open({ ...document, hash: 'another' }, own);
    fireEvent.click(await screen.findByRole('button', { name: /^Go on:/ }));
    const alert = await screen.findByRole('alert');
    expect(alert.textContent).toMatch(/its files have changed since/);
    fireEvent.click(screen.getByRole('button', { name: /^Remove:/ }));
    expect(screen.getByText(/Nothing begun yet/)).toBeTruthy();
  });
});

describe('a run', () => {
  it('says in one sentence why not, names what is in the way, and ends with the sum and the order', async () => {
    const { store } = await begin();
    take(/^2 ?End/i);
    expect(said()).toMatch(/^Not yet\. What still holds the .*bolt/);
    expect(screen.getByRole('button', { name: /^Show .*bolt/ })).toBeTruthy();
    await waitFor(() =>
      expect(store.getState().announcement).toMatchObject({
        key: 'practice.said',
        params: { text: expect.stringMatching(/^Not yet/) },
      }),
    );
    take(/bolt/i);
    expect(said()).toMatch(/^Off: .*bolt/);
    take(/End/i);
    take(/foot/i);
    const sum = await screen.findByRole('table');
    expect(within(sum).getByRole('row', { name: /Wrong tries 1 × 3 3/ })).toBeTruthy();
    expect(within(sum).getByRole('row', { name: /Points lost 3/ })).toBeTruthy();
    const wrong = within(screen.getByRole('region', { name: 'What went wrong' }));
    expect(wrong.getByText(/^Not yet/)).toBeTruthy();
    await wrong.findByText('No lesson shows it yet.');
    expect(screen.getAllByText(/least plan: [123]/)).toHaveLength(3);
    expect(globalThis.document.activeElement?.textContent).toBe('Done');
  });

  it('searches its list, and names where a part is', async () => {
    await begin();
    expect(screen.getByRole('group', { name: 'On the machine' })).toBeTruthy();
    fireEvent.change(screen.getByRole('searchbox', { name: 'Search parts' }), { target: { value: 'foot' } });
    expect(list().getAllByRole('button')).toHaveLength(1);
    fireEvent.change(screen.getByRole('searchbox', { name: 'Search parts' }), { target: { value: 'zz' } });
    expect(screen.getByText('Nothing here by that name.')).toBeTruthy();
  });

  it('asks to confirm each caution before the part moves', async () => {
    const { machine } = document;
    const units = machine.units.map((unit) => ({
      ...unit,
      entries: unit.entries.map((entry) => ({ ...entry, cautions: ['lock-out', 'lift-heavy'] })),
    }));
    await begin({ ...document, machine: { ...machine, units } });
    take(/bolt/i);
    const card = within(screen.getByRole('region', { name: /^Before it moves/ }));
    const go = card.getByRole('button', { name: 'All done: take it off' }) as HTMLButtonElement;
    expect(go.disabled).toBe(true);
    const points = card.getAllByRole('checkbox');
    expect(points.map((point) => point.getAttribute('aria-label'))).toEqual([
      expect.stringMatching(/^I have seen to it: The machine can start/),
      expect.stringMatching(/^I have seen to it: A falling load/),
    ]);
    fireEvent.click(points[0]!);
    expect(go.disabled).toBe(true);
    fireEvent.click(card.getAllByRole('checkbox')[1]!);
    fireEvent.click(card.getByRole('button', { name: 'All done: take it off' }));
    expect(said()).toMatch(/^Off: .*bolt/);
  });

  it('stands still in a pause and can be ended there', async () => {
    const { store } = await begin();
    fireEvent.click(screen.getByRole('button', { name: 'Pause' }));
    expect(screen.getByText(/The clock stands/)).toBeTruthy();
    expect(screen.queryByRole('button', { name: 'Take off' })).toBeNull();
    fireEvent.click(screen.getByRole('button', { name: 'Go on' }));
    fireEvent.click(screen.getByRole('button', { name: 'Pause' }));
    fireEvent.click(screen.getByRole('button', { name: 'End here' }));
    await screen.findByText('Ended before the goal');
    expect(screen.getByText('Moves made: 0 of at least 3.')).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: 'Another task' }));
    expect(store.getState().route.path).toEqual([]);
    await screen.findByRole('button', { name: 'Start' });
  });
});
