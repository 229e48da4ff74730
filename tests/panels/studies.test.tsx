// @vitest-environment jsdom
import { act, fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { join, resolve } from 'node:path';
import { readFileSync } from 'node:fs';
import type { MachineDocument } from '../../src/core/document';
import { parseFit } from '../../src/core/studies';
import { CALCULATIONS } from '../../src/edge/cli/registry';
import { runCalc } from '../../src/edge/cli/run-calc';
import { type AppState, STUDIES } from '../../src/store';
import StudiesPlace from '../../src/view/panels/studies/StudiesPlace';
import { machine, masses, solids } from '../models/alder-one';
import { show } from './fixture';

const fit = parseFit({
  name: 'fit.yaml',
  text: readFileSync(join(resolve(import.meta.dirname, '../..'), 'models/alder-one/fit.yaml'), 'utf8'),
});
/** Alder One as the studies need it: order and drawing meshes play no part in them. */
const document = {
  machine,
  masses,
  solids: Object.fromEntries(Object.entries(solids).map(([id, solid]) => [id, solid.bodies])),
  hash: 'test',
  ...(fit.ok ? { fit: fit.value } : {}),
} as unknown as MachineDocument;

const open = (study: string, state: Partial<AppState> = {}) =>
  show(<StudiesPlace />, { document, route: { place: 'studies', path: [study] }, ...state });

async function calc(name: string, input: object): Promise<Record<string, never>> {
  const printed = await runCalc(CALCULATIONS, [name], () => Promise.resolve(JSON.stringify(input)));
  expect(printed.stderr).toBe('');
  return JSON.parse(printed.stdout) as Record<string, never>;
}

/** SI value of a shown number. */
const si = (id: string): number => Number(screen.getByTestId(id).dataset['si']);

/** Types a number, in the shown unit, into the field of this name. */
function type(field: RegExp, value: number): void {
  fireEvent.change(screen.getByRole('spinbutton', { name: field }), { target: { value: String(value) } });
}

describe('the list', () => {
  it('opens every study, each with its limits, assumptions and checks, and the way back', async () => {
    const { store } = await show(<StudiesPlace />, { document, route: { place: 'studies', path: [] } });
    expect(screen.getAllByRole('listitem')).toHaveLength(STUDIES.length);
    for (const name of STUDIES) {
      act(() => store.setState({ route: { place: 'studies', path: [] } }));
      const heading = screen.getAllByRole('listitem')[STUDIES.indexOf(name)]!;
      await userEvent.click(within(heading).getByRole('button'));
      expect(store.getState().route.path).toEqual([name]);
      const notes = within(screen.getByRole('region', { name: 'Limits, assumptions, checks' }));
      expect(notes.getAllByRole('listitem').length).toBeGreaterThan(3);
      expect(notes.getByRole('heading', { name: 'Checked against' })).toBeTruthy();
      // no key without words
      expect(window.document.body.textContent).not.toMatch(/stud(y|ies)\.[a-z]/);
    }
  });

  it('says so where there is nothing to study', async () => {
    await show(<StudiesPlace />, { route: { place: 'studies', path: ['vibration'] } });
    expect(screen.getByText('The machine is loading.')).toBeTruthy();
  });
});

describe('a panel says what its calculation says', () => {
  it('vibration, after another ground and frequency', async () => {
    await open('vibration');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Ground' }), 'loose');
    type(/^Frequency/, 26);
    const said = await calc('vibration-study', {
      model: 'alder-one',
      direction: 'high',
      frequency_Hz: 26,
      soil_stiffness_N_m: 15e6,
      soil_damping_Ns_m: 100e3,
    });
    expect(si('drum-amplitude-time')).toBeCloseTo(said['drum_amplitude_m']!, 9);
    expect(si('drum-amplitude-linear')).toBeCloseTo(said['linear_drum_amplitude_m']!, 9);
    expect(screen.queryByTestId('linear-void') === null).toBe(said['linear_contact'] === 'kept');
  });

  it('isolation, with an isolator taken out', async () => {
    const { store } = await open('isolation');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Right isolator 1' }), 'missing');
    expect(store.getState().studies.isolation.conditions).toEqual({ 'isolator-right-1': 'missing' });
    const said = await calc('isolation-study', {
      model: 'alder-one',
      direction: 'high',
      missing: ['isolator-right-1'],
    });
    const ends = said['ends'] as unknown as { sag_m: number; transmissibility: number }[];
    expect(si('sag-right')).toBeCloseTo(ends[1]!.sag_m, 9);
    expect(si('transmissibility-left')).toBeCloseTo(ends[0]!.transmissibility, 9);
  });

  it('two-speed traction, on another grade; the worked example to the digit', async () => {
    const { store } = await open('two-speed');
    type(/^Grade/, 18);
    const said = await calc('traction-study', {
      model: 'alder-one',
      grade_percent: 18,
      drum_adhesion: 0.25,
      axle_adhesion: 0.45,
      rolling_resistance_N_per_N: 0.05,
    });
    const ways = said['combinations'] as unknown as { pressure_needed_Pa: number }[];
    expect(si('needs-low-low')).toBeCloseTo(ways[0]!.pressure_needed_Pa, 3);
    expect(si('needs-high-low')).toBeCloseTo(ways[2]!.pressure_needed_Pa, 3);
    expect(screen.getByTestId('example-shares').textContent).toMatch(/^37\.5 \/ 62\.5/);
    expect(screen.getByTestId('example-ratio').textContent).toBe('0.6');
    await userEvent.click(screen.getByRole('radio', { name: /Drum high, axle low/ }));
    expect(store.getState().studies['two-speed']).toMatchObject({ drum_range: 'high', axle_range: 'low' });
    expect(screen.getByRole('img', { name: /Hydraulic circuit/ })).toBeTruthy();
  });

  it('compaction, at another speed, in miles an hour', async () => {
    await open('compaction', {
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
    type(/^Speed/, 3);
    const said = await calc('compaction-study', {
      model: 'alder-one',
      direction: 'high',
      speed_m_s: 3 * 0.44704,
    });
    expect(si('spacing')).toBeCloseTo(said['spacing_m']!, 9);
    expect(si('total-force')).toBeCloseTo(said['total_force_N']!, 3);
  });

  it('ballast, half full of brine', async () => {
    await open('ballast');
    type(/^Filled/, 50);
    const said = await calc('ballast-study', { model: 'alder-one', fill_share: 0.5, salt_mass_percent: 20 });
    expect(si('added')).toBeCloseTo(said['total_kg']!, 6);
    expect(si('amplitude-loss')).toBeCloseTo(said['amplitude_loss']!, 9);
  });

  it('identify, with pads', async () => {
    const { store } = await open('identify');
    await userEvent.click(screen.getByRole('checkbox', { name: 'Pad shells bolted on' }));
    expect(store.getState().optionsOn).toEqual({ pads: true });
    expect(screen.getByTestId('trade-words').textContent).toContain('84-inch padded-drum');
    const said = await calc('identify', { model: 'alder-one', pads: true });
    expect(si('turn-radius')).toBeCloseTo(said['turning_outside_m']!, 9);
  });
});

describe('fields, plots, stage', () => {
  it('a number out of bounds is marked and changes nothing', async () => {
    const { store } = await open('two-speed');
    type(/^Grade/, 99);
    expect(screen.getByRole('spinbutton', { name: /^Grade/ }).getAttribute('aria-invalid')).toBe('true');
    expect(store.getState().studies['two-speed'].grade_percent).toBe(25);
    fireEvent.blur(screen.getByRole('spinbutton', { name: /^Grade/ }));
    expect(screen.getByRole('spinbutton', { name: /^Grade/ }).getAttribute('aria-invalid')).toBe('false');
  });

  it('a plot is a picture with words, a table, and a file of SI numbers', async () => {
    await open('ballast');
    expect(screen.getByRole('img', { name: /Load gained, amplitude lost/ })).toBeTruthy();
    expect(screen.getAllByRole('columnheader', { hidden: true }).length).toBeGreaterThan(2);
    const made: Blob[] = [];
    URL.createObjectURL = vi.fn((blob: Blob) => (made.push(blob), 'blob:test'));
    URL.revokeObjectURL = vi.fn();
    const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
    await userEvent.click(screen.getByRole('button', { name: /Save as CSV: Load gained/ }));
    click.mockRestore();
    const lines = (await made[0]!.text()).split('\r\n');
    expect(lines[0]).toBe('fill_share,linear_load,amplitude');
    expect(lines[1]).toBe('0,1,1');
    expect(lines).toHaveLength(23);
  });

  it('the stage shakes, shows the sides, bends, and forgets it when the study is left', async () => {
    const { store } = await open('vibration');
    await userEvent.click(screen.getByRole('button', { name: 'Shake the drum on the stage' }));
    const shake = store.getState().studies.stage;
    expect(shake).toMatchObject({ kind: 'shake', samples_a_turn: 64 });
    if (shake?.kind !== 'shake') throw new Error('no shake');
    const reach = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
    expect(reach(shake.drum_m)).toBeLessThan(0.11);
    expect(reach(shake.drum_m)).toBeGreaterThan(8 * reach(shake.frame_m));
    act(() => store.setState({ route: { place: 'studies', path: ['isolation'] } }));
    expect(store.getState().studies.stage).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: 'Show the sides on the stage' }));
    expect(store.getState().studies.stage).toEqual({ kind: 'sides' });
    act(() => store.setState({ route: { place: 'studies', path: ['identify'] } }));
    await userEvent.click(screen.getByRole('button', { name: 'Show the joint on the stage' }));
    type(/^Steering angle/, 20);
    const bent = store.getState().studies.stage;
    expect(bent?.kind === 'joint' ? bent.steering_deg : null).toBeCloseTo(20, 9);
  });
});

beforeEach(() => expect(fit.ok).toBe(true));
