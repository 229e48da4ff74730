// @vitest-environment jsdom
import { act, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, it } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import { Announcer, LoadingNotice, StageFoot, TeardownStrip } from '../../src/view/panels';
import { MachinePanel } from '../../src/view/panels/machine/MachinePanel';
import { PartCard } from '../../src/view/panels/part/PartCard';
import { SettingsPanel } from '../../src/view/panels/settings/SettingsPanel';
import { show, smallDocument } from './fixture';

let document: MachineDocument;
beforeAll(async () => {
  document = await smallDocument();
});

describe('part card', () => {
  it('says mass, side, fastener and what it touches, and leads on to that part', async () => {
    const { store } = await show(<PartCard />, { document, selectedPart: 'end-bolts/02' });
    expect(screen.getByText('Piece 2 of 4')).toBeTruthy();
    expect(screen.getByText('M12')).toBeTruthy();
    expect(screen.getByText('inside them: it shakes')).toBeTruthy();
    expect(screen.getByText('From its solid and the density of its material.')).toBeTruthy();
    const touches = screen.getByRole('heading', { name: 'Touches' }).parentElement!;
    await userEvent.click(within(touches).getAllByRole('button')[0]!);
    expect(store.getState().selectedPart).toBe('end-right');
    expect(screen.getByText('held by')).toBeTruthy();
  });
  it('gives wrench sizes in both units of a US reader, never a torque', async () => {
    await show(<PartCard />, {
      document,
      selectedPart: 'end-bolts/02',
      settings: {
        language: 'en',
        units: 'us',
        theme: 'paper',
        glove: false,
        motion: 'system',
        drawTier: 'auto',
        firstSteps: true,
      },
    });
    expect(screen.getByText(/18.mm \(11\/16 in\) socket/)).toBeTruthy();
    expect(screen.getByText(/service manual/)).toBeTruthy();
  });
});

describe('teardown strip', () => {
  it('steps on and back by button and by key, and tells the current step', async () => {
    const { store } = await show(<TeardownStrip />, { document });
    const user = userEvent.setup();
    const steps = document.teardown.steps.length;
    expect(steps).toBeGreaterThan(1);
    await user.click(screen.getByRole('button', { name: 'One step on' }));
    expect(store.getState().teardown).toMatchObject({ open: true, step: 0, playing: false });
    const list = screen.getByRole('list', { name: 'Steps of the teardown' });
    expect(within(list).getAllByRole('button')).toHaveLength(steps);
    expect(within(list).getByRole('button', { current: 'step' }).textContent).toContain('1');
    within(list).getByRole('button', { current: 'step' }).focus();
    await user.keyboard('{ArrowRight}');
    expect(store.getState().teardown.step).toBe(1);
    await user.keyboard('{End}');
    expect(store.getState().teardown.step).toBe(steps - 1);
    await user.keyboard('{Home}');
    expect(store.getState().teardown.step).toBe(-1);
    await user.click(screen.getByRole('radio', { name: 'Put together' }));
    expect(store.getState().teardown.reverse).toBe(true);
    await user.click(screen.getByRole('button', { name: 'Play the assembly' }));
    expect(store.getState().teardown).toMatchObject({ step: steps - 1, playing: true, reverse: true });
  });
});

describe('machine panel', () => {
  it('lists the faults of a broken file and leaves the machine alone', async () => {
    const { store } = await show(<MachinePanel />, { document });
    await userEvent.upload(
      screen.getByLabelText(/Choose machine files/),
      new File(['schema_version: 1'], 'bad.yaml', { type: 'text/yaml' }),
    );
    expect(
      await screen.findByText('bad.yaml:41 parts[3].bore_m: expected more than 0, found -0.012'),
    ).toBeTruthy();
    expect(screen.getByText('The machine on the stage, Small, is unchanged.')).toBeTruthy();
    expect(store.getState().document).toBe(document);
    await userEvent.click(screen.getByRole('button', { name: 'Close this list' }));
    expect(store.getState().importReport).toBeNull();
  });
});

describe('the rest of the page', () => {
  it('switches units everywhere at once', async () => {
    const { commands } = await show(<StageFoot />, {
      document,
      section: { on: true, axis: 'x', offset_m: 0.0254 },
    });
    expect(screen.getByText(/25.+mm/)).toBeTruthy();
    act(() => commands.change({ units: 'us' }));
    expect(screen.getByText(/^1.in$/)).toBeTruthy();
    expect(screen.getByText('US')).toBeTruthy();
  });
  it('offers another try when the machine did not arrive', async () => {
    const { store } = await show(<LoadingNotice />, { loading: { phase: 'failed', share: 0 } });
    await userEvent.click(screen.getByRole('button', { name: 'Try again' }));
    await screen.findByRole('alert');
    expect(store.getState().loading.phase).toBe('failed');
  });
  it('shows how far the load has come', async () => {
    await show(<LoadingNotice />, { loading: { phase: 'fetch', share: 0.43 } });
    expect(screen.getByRole('progressbar').getAttribute('value')).toBe('0.43');
  });
  it('speaks a selection politely', async () => {
    const { commands } = await show(<Announcer />, { document });
    act(() => commands.select('foot-1'));
    expect(screen.getByRole('status').textContent).toBe('foot 1 selected, item 3');
  });
  it('keeps settings', async () => {
    const kept: string[] = [];
    const { store } = await show(
      <SettingsPanel />,
      { document },
      { keep: { read: () => null, write: (_, value) => kept.push(value) > 0 } },
    );
    await userEvent.click(screen.getByRole('radio', { name: 'Night shift' }));
    await userEvent.click(screen.getByRole('checkbox', { name: /glove/i }));
    expect(store.getState().settings).toMatchObject({ theme: 'night', glove: true });
    expect(JSON.parse(kept.at(-1) ?? '{}')).toMatchObject({ settings: { theme: 'night', glove: true } });
  });
});
