// @vitest-environment jsdom
import { act, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import { EXPERIMENTS, parametersOf, selectExciterStudy, shotBase, shotTransient } from '../../src/store';
import { housingPaths } from '../../src/view/panels/common/housing-paths';
import { ExciterPanel } from '../../src/view/panels/exciter/ExciterPanel';
import english from '../../src/words/en';
import { show } from '../panels/fixture';
import { due, exciterDocument, fakeWorker, stillTake } from './fixture';

let document: MachineDocument;
beforeAll(async () => {
  document = await exciterDocument();
  vi.stubGlobal(
    'ResizeObserver',
    class {
      observe(): void {}
      disconnect(): void {}
    },
  );
  HTMLCanvasElement.prototype.getContext = () => null;
});

async function watching() {
  const base = shotBase(document)!;
  const worker = fakeWorker({
    high: stillTake(parametersOf(base, { ...base.own, direction: 'high' }), 0.1),
    low: stillTake(parametersOf(base, base.own), 0.05),
  });
  const shown = await show(<ExciterPanel />, { document }, { shot: worker.port });
  const user = userEvent.setup();
  await user.click(screen.getByRole('radio', { name: 'Watch the shot' }));
  await act(due);
  return { ...shown, worker, user };
}

describe('watch the shot in the panel', () => {
  it('shows the slice, what is read off it, and both runs as built side by side', async () => {
    const { store, user } = await watching();
    expect(screen.getByRole('img', { name: /Slice of the chamber/ })).toBeTruthy();
    const table = screen.getByRole('heading', { name: 'Runs side by side' }).parentElement!;
    expect(within(table).getAllByRole('row')).toHaveLength(3);
    const U = store.getState().shot.own.high!.outcome.U_kgm;
    expect(screen.getByTestId('shot-U').textContent).toBe(`${Number(U.toPrecision(3))}\u202fkg m`);
    await user.click(within(table).getByRole('button', { name: /As built, LOW/ }));
    expect(store.getState().exciter.direction).toBe('low');
    expect(shotTransient.take).toBe(store.getState().shot.own.low!.take);
  });

  it('reads the balls at the playhead', async () => {
    const { container, store } = await watching();
    const slider = screen.getByRole('slider', { name: 'Time of the run' });
    expect(slider.getAttribute('aria-valuetext')).toBe('0.00 / 1.00 s');
    act(() => slider.focus());
    await act(async () => {
      const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!;
      set.call(slider, '1');
      slider.dispatchEvent(new Event('input', { bubbles: true }));
      await new Promise((resolve) => setTimeout(resolve, 300));
    });
    // At 1 s of a soft start to 30 Hz in 4 s: 30 / 16 Hz = 112.5 rpm, and 30 (1/3) / 16 turns.
    expect(container.querySelector('[data-reading="rotation"]')?.textContent).toBe('113\u202frpm');
    expect(container.querySelector('[data-reading="turns"]')?.textContent).toBe('0.625');
    // Centre of mass, unbalance vector and packing are those of the balls themselves.
    const { readings } = store.getState().shot.own.high!.take;
    const last = readings[readings.length - 1]!;
    const shown = (word: string): number =>
      Number.parseFloat(container.querySelector(`[data-reading="${word}"]`)!.textContent!);
    expect(shown('arm')).toBeCloseTo(1e3 * Math.hypot(...last.centre_m), 0);
    expect(shown('packing')).toBeCloseTo(100 * last.packing, 0);
    expect(shown('below')).toBeCloseTo(100 * last.captured_below_spill, 0);
    expect(Number.isFinite(shown('unbalance-angle'))).toBe(true);
  });

  it('asks for a prediction before it runs, and sets it against what came', async () => {
    const { user, worker } = await watching();
    await user.click(screen.getByRole('button', { name: 'Half the shot lost' }));
    const run = screen.getByRole<HTMLButtonElement>('button', { name: 'Run it' });
    expect(run.disabled).toBe(true);
    await user.click(screen.getByRole('radio', { name: 'More' }));
    await user.click(screen.getByRole('button', { name: 'Run it' }));
    expect(screen.getByRole('progressbar')).toBeTruthy();
    act(() => worker.progress(0.5, 7.2));
    expect(screen.getByText('about 7 s left')).toBeTruthy();
    await act(async () => {
      worker.answer(0.1);
      await due();
    });
    const result = screen.getByRole('region', { name: 'What came of it' });
    expect(result.textContent).toContain('You said more; it came otherwise.');
    expect(result.textContent).toContain('It shakes less');
  });

  it('stops a run on request', async () => {
    const { user, store } = await watching();
    await user.click(screen.getByRole('button', { name: 'Gravity off' }));
    await user.click(screen.getByRole('radio', { name: 'Less' }));
    await user.click(screen.getByRole('button', { name: 'Run it' }));
    await user.click(screen.getByRole('button', { name: 'Cancel the run' }));
    await act(due);
    expect(store.getState().shot.job).toBeNull();
    expect(screen.getByRole('button', { name: 'Run it' })).toBeTruthy();
  });
});

describe('words of the experiments', () => {
  it('name each, say what it changes, and why it came as it did in either direction', () => {
    const keys = EXPERIMENTS.flatMap((id) => [
      `shot.run-${id}`,
      `shot.what-${id}`,
      `shot.why-${id}-high`,
      `shot.why-${id}-low`,
    ]);
    expect(keys.filter((key) => !(key in english))).toEqual([]);
  });
});

describe('the settled drawing', () => {
  it('fills the level surface with balls where it is held for true, and dashes it where it is not', async () => {
    const { container, store } = await show(<ExciterPanel />, { document });
    const count = (of: string): number =>
      container.querySelectorAll(`.exciter-drawing svg > path.${of}`).length;
    const user = userEvent.setup();
    const of = (name: RegExp): HTMLElement => screen.getAllByRole('radio', { name })[0]!;
    await user.click(of(/^HIGH/));
    expect(store.getState().exciter.direction).toBe('high');
    expect([count('d-shot'), count('d-level')]).toEqual([1, 0]);
    expect(screen.queryByTestId('key-level')).toBeNull();
    await user.click(of(/^LOW/));
    const bodies = selectExciterStudy(store.getState())!.low.shot.length;
    expect(bodies).toBeGreaterThan(1);
    expect([count('d-shot'), count('d-level')]).toEqual([0, bodies]);
    expect(screen.getByTestId('key-level').textContent).toContain('not where the shot lies');
  });
});

describe('outline of the housing', () => {
  it('is the section of the body frame: +x down the page, +y to the right, in millimetres', () => {
    const square: (readonly [number, number])[] = [
      [0, 0],
      [0.02, 0],
      [0.02, 0.01],
    ];
    const paths = housingPaths({
      outer: square,
      inner: square,
      baffle: null,
      fixed: [square],
      centre_m: [0, 0],
      reach_m: 0.02,
    });
    expect(paths.chamber).toBe('M0.00 0.00L0.00 20.00L10.00 20.00Z');
    expect(paths.shell).toBe(paths.chamber.repeat(2));
    expect(paths.fixed).toEqual([paths.chamber]);
    expect(paths.baffle).toBeNull();
  });
});
