// @vitest-environment jsdom
import { fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, it } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import { PartsList } from '../../src/view/panels';
import { show, smallDocument } from './fixture';

let document: MachineDocument;
beforeAll(async () => {
  document = await smallDocument();
});

const rowNames = (): readonly (string | null)[] =>
  screen.getAllByRole('row').map((row) => row.querySelector('.row-name')?.textContent ?? null);

describe('parts list', () => {
  it('lists families and kinds with counts and the total mass', async () => {
    await show(<PartsList />, { document });
    expect(rowNames()).toEqual([null, 'Drum', 'tube', 'end', 'Frame', 'foot', 'Fasteners', 'end-bolt']);
    const total = Object.entries(document.masses).reduce(
      (sum, [kind, mass]) =>
        sum + mass.mass_kg * document.machine.parts.filter((p) => p.kind === kind).length,
      0,
    );
    expect(screen.getByText('4 kinds, 9 parts').parentElement?.textContent).toContain(total.toPrecision(4));
  });

  it('finds by name, item number and id, without regard to accents', async () => {
    const { commands } = await show(<PartsList />, { document });
    const user = userEvent.setup();
    const box = screen.getByRole('searchbox');
    await user.type(box, 'FÓOT');
    expect(rowNames()).toEqual([null, 'Frame', 'foot']);
    await user.clear(box);
    await user.type(box, '4');
    expect(rowNames()).toContain('end-bolt');
    await user.clear(box);
    await user.type(box, 'end-bolts/02');
    expect(rowNames()).toEqual([null, 'Fasteners', 'end-bolt']);
    await user.clear(box);
    await user.type(box, 'nothing like it');
    expect(screen.getByText(/No part matches/)).toBeTruthy();
    commands.setSearch('');
  });

  it('is worked with the keyboard alone', async () => {
    const { store } = await show(<PartsList />, { document });
    const user = userEvent.setup();
    const grid = screen.getByRole('treegrid');
    const stops = within(grid)
      .getAllByRole('row')
      .filter((row) => row.tabIndex === 0);
    expect(stops).toHaveLength(1);
    stops[0]!.focus();
    await user.keyboard('{End}{Enter}');
    expect(store.getState().selectedPart).toBe('end-bolts/01');
    expect(store.getState().cameraWish).toMatchObject({ view: 'fit', partId: 'end-bolts/01' });
    await user.keyboard('{ArrowRight}{ArrowDown}{ArrowDown}{Enter}');
    expect(store.getState().selectedPart).toBe('end-bolts/02');
    await user.keyboard(' ');
    expect([...store.getState().hiddenParts]).toEqual(['end-bolts/02']);
    await user.keyboard(' ');
    expect(store.getState().hiddenParts.size).toBe(0);
    await user.keyboard('{ArrowLeft}{ArrowLeft}');
    expect(rowNames().at(-1)).toBe('end-bolt');
    await user.keyboard('i');
    expect(store.getState().isolatedParts?.size).toBe(4);
    await user.keyboard('{Home}{ArrowLeft}');
    expect(rowNames()).not.toContain('tube');
  });

  it('follows a selection made on the stage, and opens a folded family for it', async () => {
    const { commands } = await show(<PartsList />, { document });
    fireEvent.click(screen.getByText('Drum'));
    expect(rowNames()).not.toContain('tube');
    commands.select('tube');
    const row = (await screen.findByText('tube', { selector: '.row-name' })).closest('tr');
    expect(row?.getAttribute('aria-selected')).toBe('true');
  });

  it('hides, ghosts and isolates the whole group of a fastener, and shows all again', async () => {
    const { store, commands } = await show(<PartsList />, { document });
    commands.select('end-bolts/03');
    const user = userEvent.setup();
    const bar = (await screen.findByText('end-bolt (all 4)')).parentElement!;
    await user.click(within(bar).getByRole('button', { name: /^Ghost/ }));
    expect(store.getState().ghostedParts.size).toBe(4);
    await user.click(screen.getByRole('button', { name: 'Show everything again' }));
    expect(store.getState().ghostedParts.size).toBe(0);
  });
});
