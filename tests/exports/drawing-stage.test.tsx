// @vitest-environment jsdom
/** The line drawing in the stage's place: it stands without 3-D, follows the state, and parts can be chosen on it. */
import { act, waitFor } from '@testing-library/react';
import { beforeAll, describe, expect, it } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import { inSlices } from '../../src/view/panels/exports/in-slices';
import DrawingStage from '../../src/view/panels/exports/DrawingStage';
import { show, smallDocument } from '../panels/fixture';

let document: MachineDocument;
beforeAll(async () => {
  document = await smallDocument();
});

describe('the drawing in the stage’s place', () => {
  it('is drawn, selects by a press on a balloon, and leaves out what is hidden', async () => {
    const told: (string | null)[] = [];
    const { container, store, commands } = await show(
      <DrawingStage onDrawn={(fault) => told.push(fault)} />,
      {
        document,
      },
    );
    const part = (id: string): Element | null => container.querySelector(`#drawing [data-part="${id}"]`);
    await waitFor(() => expect(container.querySelector('svg')).not.toBeNull(), { timeout: 20000 });
    expect(told).toEqual([null]);
    expect(container.querySelector('[data-testid="drawing-stage"]')?.getAttribute('aria-label')).toMatch(
      /list/,
    );
    const balloon = container.querySelector('.balloon')!;
    const id = balloon.getAttribute('data-part')!;
    expect(part(id)).not.toBeNull();
    act(() => balloon.dispatchEvent(new MouseEvent('click', { bubbles: true })));
    expect(store.getState().selectedPart).toBe(id);
    expect(container.querySelector('style')?.textContent).toContain(id);
    act(() => commands.hide([id], true));
    await waitFor(() => expect(part(id)).toBeNull(), { timeout: 20000 });
  });
});

describe('long work in slices', () => {
  it('tells its share, gives its result, and stops when told to', async () => {
    let steps = 0;
    function* work(): Generator<number, string> {
      for (; steps < 100; steps++) {
        const until = performance.now() + 2;
        while (performance.now() < until);
        yield steps / 100;
      }
      return 'done';
    }
    const shares: number[] = [];
    expect(await inSlices(work(), (share) => shares.push(share), new AbortController().signal)).toBe('done');
    expect(shares.length).toBeGreaterThan(3);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    steps = 0;
    const stop = new AbortController();
    expect(await inSlices(work(), () => stop.abort(), stop.signal)).toBeNull();
    expect(steps).toBeLessThan(60);
  });
});
