// @vitest-environment jsdom
/** The fault bench's place: readings to a ranking, a training case that survives a reload, a fault shown. */
import { act, fireEvent, screen, waitFor, within } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import FaultsPlace from '../../src/view/panels/faults/FaultsPlace';
import type { Ports, Route } from '../../src/store';
import { plant } from '../faults/bench-of-alder-one';
import { machine, masses, solids } from '../models/alder-one';
import { memoryRecords, show } from './fixture';

const document_ = {
  machine,
  masses,
  solids: Object.fromEntries(Object.entries(solids).map(([id, solid]) => [id, solid.bodies])),
  fit: plant.fit,
  hash: 'test',
} as unknown as MachineDocument;

const at = (...path: string[]): Route => ({ place: 'faults', path });

async function place(route: Route, ports: Partial<Ports> = {}) {
  const rendered = await show(
    <FaultsPlace />,
    { document: document_, route },
    { loadFaults: () => Promise.resolve(plant.book), ...ports },
  );
  await waitFor(() => expect(rendered.container.querySelector('[data-phase="ready"]')).not.toBeNull(), {
    timeout: 10_000,
  });
  return rendered;
}

const firstFault = (container: HTMLElement) =>
  container.querySelector('.fault-ranking > li')?.getAttribute('data-fault');

describe('find a fault', () => {
  it('names the fault that the readings fit, says why, and keeps them', async () => {
    const records = memoryRecords();
    const { container } = await place(at('find'), { records });
    fireEvent.change(screen.getByLabelText('Reading of Vibrations a minute in HIGH in vpm'), {
      target: { value: '1480' },
    });
    fireEvent.change(screen.getByLabelText('Noise', { selector: 'select' }), { target: { value: 'even' } });
    await waitFor(() => expect(firstFault(container)).toBe('motor-weak'));
    await waitFor(() =>
      expect(screen.getAllByText(/Vibrations a minute in HIGH speaks strongly for it/)).toBeTruthy(),
    );
    expect(container.querySelector('[data-next]')).not.toBeNull();
    expect(await records.read('faults', 'readings')).toContain('vpm-high');
    const again = await place(at('find'), { records });
    await waitFor(() => expect(firstFault(again.container)).toBe('motor-weak'));
    fireEvent.click(screen.getByText('Clear all readings'));
    await waitFor(() => expect(firstFault(again.container)).toBe('no-fault'));
  });
  it('tells a bad number apart from a reading', async () => {
    const { store } = await place(at('find'));
    const field = screen.getByLabelText('Reading of Amplitude in HIGH in mm');
    fireEvent.change(field, { target: { value: 'about two' } });
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(store.getState().faults.readings['amplitude-high']).toBeUndefined();
    fireEvent.change(field, { target: { value: '1,9' } });
    expect(store.getState().faults.readings['amplitude-high']?.value).toBeCloseTo(1.9e-3, 9);
  });
});

describe('training', () => {
  it('takes readings at a cost, marks, and comes back after a reload', async () => {
    const records = memoryRecords();
    const first = await place(at('train'), { records });
    fireEvent.change(screen.getByLabelText(/Case number/), { target: { value: '4' } });
    fireEvent.click(screen.getByText('Start a new case'));
    fireEvent.click(screen.getByLabelText('Measure Noise, 3 min'));
    fireEvent.click(screen.getByLabelText('Measure Walk round, 5 min'));
    expect(first.container.querySelector('[data-minutes="8"]')).not.toBeNull();
    const read = first.container.querySelector('[data-own="noise"] dd')?.textContent;
    const { container } = await place(at('train'), { records });
    expect(container.querySelector('[data-minutes="8"]')).not.toBeNull();
    expect(container.querySelector('[data-own="noise"] dd')?.textContent).toBe(read);
    fireEvent.change(screen.getByLabelText('What is it?'), {
      target: { value: 'shot-lost' },
    });
    await act(async () => {
      fireEvent.click(screen.getByText('Commit'));
      await Promise.resolve();
    });
    await waitFor(() => expect(container.querySelector('[data-truth]')).not.toBeNull());
    await waitFor(() => expect(container.querySelectorAll('.fault-path > li').length).toBeGreaterThan(1));
    expect((await records.list('faults')).some(({ key }) => key.startsWith('closed/'))).toBe(true);
  });
});

describe('show a fault', () => {
  it('puts what changes beside the sound machine and the part on the stage', async () => {
    const { container, store } = await place(at('show'));
    fireEvent.change(screen.getByLabelText('Fault'), { target: { value: 'hoses-swapped' } });
    const row = container.querySelector('[data-reading="amplitude-high"]') as HTMLElement;
    expect(within(row).getByText(/out of the ordinary/)).toBeTruthy();
    expect(container.querySelector('[data-reading="scraper-gap"]')).toBeNull();
    expect(store.getState().selectedPart).toBe('exciter-motor');
  });
});
