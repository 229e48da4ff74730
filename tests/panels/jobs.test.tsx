// @vitest-environment jsdom
/** The place of jobs over the small machine: list, steps, hold points, fields in both unit systems, files, paper. */
import { act, fireEvent, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import { JOB_RECORDS } from '../../src/store';
import JobsPlace from '../../src/view/panels/jobs/JobsPlace';
import { smallJobs } from '../store/small-job';
import { memoryRecords, show, smallDocument } from './fixture';

let document: MachineDocument;
beforeAll(async () => {
  document = await smallDocument();
});
beforeEach(() => vi.restoreAllMocks());

async function at(...path: string[]) {
  const records = memoryRecords();
  const shown = await show(
    <JobsPlace />,
    { document, route: { place: 'jobs', path } },
    { jobs: smallJobs(document), records },
  );
  await waitFor(() => expect(shown.store.getState().jobs.phase).toBe('ready'));
  const jobs = () => shown.store.getState().jobs;
  if (path[0] !== undefined && path[0] !== 'history') await waitFor(() => expect(jobs().open).not.toBeNull());
  return {
    ...shown,
    records,
    jobs,
    step: (n: number) => act(() => shown.commands.go('jobs', 'end-off', 'step', String(n))),
  };
}
const confirm = () => userEvent.click(screen.getByRole('button', { name: 'Confirm the hold point' }));
const type = (name: RegExp, text: string) =>
  fireEvent.change(screen.getByRole('textbox', { name }), { target: { value: text } });
/** No key without its words. */
const allSaid = (): void => expect(window.document.body.textContent).not.toMatch(/\bjobs?\.[a-z]/);

describe('the list', () => {
  it('says by family what a job takes and what comes off, and opens it', async () => {
    const { store, jobs } = await at();
    await waitFor(() => expect(jobs().summaries['end-off']).toBeDefined());
    const row = screen.getByRole('button', { name: /^Take the right end off/ });
    expect(row.textContent).toMatch(/\d+ min1 personlift [\d.]+.kgOff: [Ee]nd, right\./);
    expect(screen.getByRole('heading', { name: 'Drum' })).toBeTruthy();
    allSaid();
    await userEvent.click(row);
    expect(store.getState().route.path).toEqual(['end-off']);
  });

  it('a job’s page says how sure its order is and what can hurt', async () => {
    const { jobs } = await at('end-off');
    const { plan, steps } = jobs().open!.sheet;
    expect(plan?.provenLeast).toBe(true);
    expect(screen.getByText(/no way with fewer steps exists/)).toBeTruthy();
    expect(screen.getByText('DANGER')).toBeTruthy();
    expect(screen.getByText(`${steps.length}, 3 of them hold points`)).toBeTruthy();
    allSaid();
  });
});

describe('a step', () => {
  it('has its cautions before its fields, and a hold point is not passed without them', async () => {
    const { store, jobs, container } = await at('end-off', 'step', '1');
    const order = [...container.querySelectorAll('.signal, .job-steps h2, [data-field], .job-tick')].map(
      (e) => e.className.split(' ')[0] || e.tagName,
    );
    expect(order.slice(0, 4)).toEqual(['signal', 'signal', 'H2', 'job-field']);
    expect(order.at(-1)).toBe('job-tick');
    expect(container.querySelector('.signal')?.textContent).toMatch(/^DANGER/);
    await confirm();
    expect(store.getState().announcement.key).toBe('jobs.said.held');
    expect(store.getState().route.path[2]).toBe('1');
    expect(jobs().progress).toBeNull();
    expect(screen.getByText('The field Locked out is still empty.')).toBeTruthy();
    await userEvent.click(screen.getByRole('checkbox', { name: /^Locked out/ }));
    await confirm();
    expect(jobs().progress?.done).toEqual(['secure']);
    expect(store.getState().route.path).toEqual(['end-off', 'step', '2']);
    allSaid();
  });

  it('may be looked at ahead of its time, but not ticked', async () => {
    const { jobs } = await at('end-off', 'step', '3');
    await userEvent.click(screen.getByRole('button', { name: 'Done, next step' }));
    expect(jobs().progress).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: 'Go to the hold point of step 1' }));
    expect(screen.getByText('Step 1 of', { exact: false })).toBeTruthy();
  });

  it('shows on the stage what it is about', async () => {
    const { jobs, unmount } = await at('end-off', 'step', '2');
    const { stage, open } = jobs();
    expect(stage?.partIds).toEqual(open?.sheet.steps[1]?.partIds);
    unmount();
    expect(jobs().stage).toBeNull();
  });
});

describe('fields', () => {
  const numberOf = (steps: readonly { id: string }[], id: string): string =>
    String(1 + steps.findIndex((s) => s.id === id));

  it('take numbers in the person’s units and keep SI: hours, rpm, millimetres, inches', async () => {
    const { jobs, store, step } = await at('end-off', 'step', '1');
    type(/^Hour meter/, '1234,5');
    expect(jobs().progress?.values['hours']).toBeCloseTo(1234.5 * 3600, 6);
    await step(Number(numberOf(jobs().open!.sheet.steps, 'look')));
    type(/^Speed/, '1800');
    expect(jobs().progress?.values['speed']).toBeCloseTo(60 * Math.PI, 9);
    type(/^Rim/, '20');
    expect(jobs().progress?.values['rim']).toBeCloseTo(0.02, 12);
    fireEvent.blur(screen.getByRole('textbox', { name: /^Rim/ }));
    act(() => store.setState({ settings: { ...store.getState().settings, units: 'us' } }));
    expect((screen.getByRole('textbox', { name: /^Rim/ }) as HTMLInputElement).value).toBe('0.7874016');
    type(/^Rim/, '0.79');
    expect(jobs().progress?.values['rim']).toBeCloseTo(0.79 * 0.0254, 12);
  });

  it('say what is wrong beside the field; what is no number is never kept', async () => {
    const { jobs, step } = await at('end-off', 'step', '1');
    await step(Number(numberOf(jobs().open!.sheet.steps, 'look')));
    type(/^Rim/, '20');
    for (const text of ['abc', '1e999', '--2', '0x10', 'NaN', '1.2.3', '2 0']) {
      type(/^Rim/, text);
      expect(jobs().progress?.values).toEqual({});
      const input = screen.getByRole('textbox', { name: /^Rim/ });
      expect(input.getAttribute('aria-invalid')).toBe('true');
      const about = window.document.getElementById(input.getAttribute('aria-describedby')!);
      expect(about?.textContent).toContain('This is no number');
    }
    type(/^Rim/, '21');
    expect(screen.getByText(/^Outside its limits \(19\.9 to 20\.1.mm\)\.$/)).toBeTruthy();
  });

  it('a value outside its limits passes only when signed for', async () => {
    const { jobs, step, commands } = await at('end-off', 'step', '1');
    await userEvent.click(screen.getByRole('checkbox', { name: /^Locked out/ }));
    await confirm();
    const { steps } = jobs().open!.sheet;
    await step(Number(numberOf(steps, 'look')));
    type(/^Rim/, '21');
    fireEvent.change(screen.getByRole('combobox', { name: /^State/ }), { target: { value: 'sound' } });
    await confirm();
    expect(jobs().progress?.done).toEqual(['secure']);
    type(/^Signed for/, 'Instructor: within wear');
    await confirm();
    expect(jobs().progress?.done).toEqual(['secure', 'look']);
    // the next hold point asks for the torque of one's own machine
    act(() => commands.go('jobs', 'end-off', 'step', numberOf(steps, 'tighten')));
    await userEvent.click(screen.getByRole('checkbox', { name: /^Heads marked/ }));
    await confirm();
    expect(jobs().progress?.done).toHaveLength(2);
    type(/^Torque of the end-bolt/, '85');
    expect(screen.getByText(/25\.5.N m – 59\.5.N m – 85.N m/)).toBeTruthy();
    await confirm();
    expect(jobs().progress?.done).toContain('tighten');
    allSaid();
  });
});

describe('files', () => {
  const read = async (name: string, text: string): Promise<void> => {
    const input = window.document.querySelector<HTMLInputElement>('input[type=file]')!;
    await userEvent.upload(input, new File([text], name, { type: 'application/json' }));
  };

  it('a damaged file is one message with every fault; nothing changes until it is taken over', async () => {
    const { jobs, records } = await at('end-off');
    const progress = {
      machineId: 'small',
      jobId: 'end-off',
      id: 'from-elsewhere',
      started_ms: 1,
      changed_ms: 2,
      done: ['secure', 7],
      values: { 'locked-out': true, rim: null },
      notes: {},
      signed: {},
    };
    await read(
      'damaged.json',
      JSON.stringify({ format: 'drumbench-job-progress', schema_version: 1, progress }, null, 2),
    );
    const alert = await screen.findByRole('alert');
    expect(within(alert).getByRole('heading').textContent).toBe('damaged.json is damaged: 2 faults');
    const lines = within(alert)
      .getAllByRole('listitem')
      .map((li) => li.textContent);
    expect(lines).toEqual([
      expect.stringMatching(/^damaged\.json:12 progress\.done\[1\]: expected a text, found 7$/),
      expect.stringMatching(/^damaged\.json:16 progress\.values\.rim: expected .+, found null$/),
    ]);
    expect(jobs().kept).toEqual([]);
    await userEvent.click(within(alert).getByRole('button', { name: /^Take over/ }));
    expect(jobs().progress).toMatchObject({
      id: 'from-elsewhere',
      done: ['secure'],
      values: { 'locked-out': true },
    });
    await waitFor(async () => expect(await records.list(JOB_RECORDS)).toHaveLength(1));
    allSaid();
  });
});

describe('after the job', () => {
  it('files it, and the history gives it back', async () => {
    const { store, jobs } = await at('end-off', 'step', '1');
    await userEvent.click(screen.getByRole('checkbox', { name: /^Locked out/ }));
    act(() => store.setState({ route: { place: 'jobs', path: ['end-off', 'after'] } }));
    fireEvent.change(screen.getAllByRole('textbox', { name: /^Amplitude/ })[0]!, { target: { value: '-1' } });
    expect(screen.getByText('Type numbers above zero.')).toBeTruthy();
    await userEvent.click(screen.getByRole('button', { name: 'File this job' }));
    await screen.findByRole('heading', { name: 'Done on this machine' });
    expect(jobs().history).toHaveLength(1);
    allSaid();
    await userEvent.click(screen.getByRole('button', { name: 'Take this sheet up again' }));
    await waitFor(() => expect(jobs().progress?.values).toEqual({ 'locked-out': true }));
  });
});

describe('the sheet', () => {
  it('has every step in order, its pictures, blanks for the manual and signatures at hold points', async () => {
    const { jobs, container } = await at('end-off', 'sheet');
    await waitFor(() => expect(container.querySelector('[data-pictures="ready"]')).not.toBeNull());
    const { sheet } = jobs().open!;
    const numbers = [...container.querySelectorAll('.paper-step .paper-tick b')].map((b) =>
      Number(b.textContent),
    );
    expect(numbers).toEqual(sheet.steps.map((s) => s.number));
    const holds = [...container.querySelectorAll('.paper-step.hold')];
    expect(holds).toHaveLength(sheet.steps.filter((s) => s.hold).length);
    for (const hold of holds) expect(hold.textContent).toContain('Hold point signed');
    expect(container.querySelectorAll('figure svg').length).toBeGreaterThan(0);
    for (const svg of container.querySelectorAll('figure svg'))
      expect(svg.querySelectorAll('path')[1]?.getAttribute('d')?.length).toBeGreaterThan(100);
    // a balloon for every item of the step's picture
    const items = new Set([...container.querySelectorAll('figure text')].map((e) => Number(e.textContent)));
    for (const item of sheet.items) expect(items).toContain(item.item);
    expect(container.querySelector('.paper-table:has(.blank)')?.textContent).toContain('M12');
    allSaid();
  });

  it('as one file it holds everything, and asks for nothing from outside', async () => {
    const { container } = await at('end-off', 'sheet');
    await waitFor(() => expect(container.querySelector('[data-pictures="ready"]')).not.toBeNull());
    let saved: Blob | undefined;
    URL.createObjectURL = (blob) => {
      saved = blob as Blob;
      return 'blob:x';
    };
    URL.revokeObjectURL = () => undefined;
    await userEvent.click(screen.getByRole('button', { name: 'Save as one file to carry' }));
    const text = await saved!.text();
    expect(text).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(text).toContain('Tighten across.');
    expect(text).toContain('<svg');
    expect(text).not.toMatch(/(src|href)=|url\(|@import|<script/);
  });
});
