// @vitest-environment jsdom
/** Packages and the record store in the place of records: what is said, what is handed over, what is kept. */
import { cleanup, fireEvent, within } from '@testing-library/react';
import { unzipSync } from 'fflate';
import { afterEach, expect, it, vi } from 'vitest';
import { type PackageSettings, readPackageSettings } from '../../src/core/records';
import { zipPackage } from '../../src/edge/school';
import { DELIVERY_NOTE, type Ports, TEST_RECORDS, visitKeep } from '../../src/store';
import RecordsPlace from '../../src/view/panels/records/RecordsPlace';
import { memoryRecords, show } from '../panels/fixture';
import { course } from '../panels/learn-fixture';

afterEach(cleanup);

const APP: Readonly<Record<string, string>> = {
  'index.html':
    '<html lang="en"><head><title>Drumbench</title></head><body><div id="root"></div></body></html>',
  'assets/app-12345678.js': 'app()',
  'baked/lessons/en/course.json': '{}',
  'baked/lessons/en/topic-small.json': '{"small":1}',
  'baked/lessons/en/topic-other.json': '{"other":1}',
  'service-worker.js': 'worker()',
};
const files = Object.entries(APP).map(([url, text]) => ({ url, bytes: text.length }));
const bytesOf = (url: string): Promise<Uint8Array> => {
  const text = APP[url];
  return text === undefined
    ? Promise.reject(new Error(url))
    : Promise.resolve(new TextEncoder().encode(text));
};

it('packs the lesson that is chosen, and says what it holds', async () => {
  const made: { settings: PackageSettings; blob: Blob }[] = [];
  const packages: Ports['packages'] = {
    files: () => Promise.resolve(files),
    make: async (list, settings, words, onProgress) => {
      const blob = await zipPackage({ files: list, read: bytesOf }, settings, words, onProgress);
      made.push({ settings, blob });
      return blob;
    },
  };
  const saved = vi.fn();
  Object.assign(URL, { createObjectURL: saved.mockReturnValue('blob:x'), revokeObjectURL: () => {} });
  const shown = await show(<RecordsPlace />, {}, { packages, course });
  fireEvent.click(await shown.findByText('Packages for a school’s system'));
  const holds = await shown.findByTestId('package-holds');
  expect(holds.textContent).toContain('5 files');
  fireEvent.change(shown.getByLabelText('Standard that the system asks for'), {
    target: { value: 'scorm2004' },
  });
  const mark = shown.getByLabelText('Right answers that pass, in percent');
  fireEvent.change(mark, { target: { value: '120' } });
  expect(shown.getByRole('button', { name: 'Make the package' })).toHaveProperty('disabled', true);
  fireEvent.change(mark, { target: { value: '75' } });
  fireEvent.click(shown.getByRole('button', { name: 'Make the package' }));
  await shown.findByText(/drumbench-small-scorm2004\.zip is saved/);
  expect(saved).toHaveBeenCalledTimes(1);
  expect(made[0]!.settings).toEqual({
    standard: 'scorm2004',
    lesson: 'small',
    language: 'en',
    mastery: 0.75,
  });
  const bytes = await new Promise<ArrayBuffer>((resolve) => {
    const reader = new FileReader();
    reader.onload = () => resolve(reader.result as ArrayBuffer);
    reader.readAsArrayBuffer(made[0]!.blob);
  });
  const inside = unzipSync(new Uint8Array(bytes));
  expect(Object.keys(inside).sort()).toEqual([
    'assets/app-12345678.js',
    'baked/lessons/en/course.json',
    'baked/lessons/en/topic-small.json',
    'imsmanifest.xml',
    'launch.html',
  ]);
  const text = (name: string): string => new TextDecoder().decode(inside[name]);
  expect(text('assets/app-12345678.js')).toBe('app()');
  const page = new DOMParser().parseFromString(text('launch.html'), 'text/html');
  const meta = page.querySelector<HTMLMetaElement>('meta[name="drumbench-package"]')!;
  expect(readPackageSettings(meta.content)).toEqual(made[0]!.settings);
  expect(text('imsmanifest.xml')).toContain('2004 4th Edition');
});

it('says that a development server has no list of files, and which file could not be read', async () => {
  const none = await show(<RecordsPlace />, {}, { course });
  fireEvent.click(await none.findByText('Packages for a school’s system'));
  await none.findByText(/list of the app’s files is not there/);
  const broken: Ports['packages'] = {
    files: () => Promise.resolve([...files, { url: 'baked/gone.bin', bytes: 1 }]),
    make: (list, ...rest) => zipPackage({ files: list, read: bytesOf }, ...rest),
  };
  const shown = await show(<RecordsPlace />, {}, { packages: broken, course });
  fireEvent.click(await shown.findByText('Packages for a school’s system'));
  fireEvent.click(await shown.findByRole('button', { name: 'Make the package' }));
  await shown.findByText(/could not be read \(baked\/gone\.bin\)/);
});

it('sends to the record store that was typed, keeps the secret only when asked, and says what is wrong', async () => {
  const sent: object[][] = [];
  let status: number | null = 200;
  const recordStore: Ports['recordStore'] = {
    send: (_access, statements) => {
      if (status === 200) sent.push([...statements]);
      return Promise.resolve({ status, text: 'as told' });
    },
  };
  const [records, keep] = [memoryRecords(), visitKeep()];
  const test = {
    version: 1,
    topics: ['small'],
    count: 4,
    right: 4,
    mark: 8,
    best: 12,
    seed: 1,
    began_ms: 1,
    at_ms: 2,
  };
  await records.write(TEST_RECORDS, 'k', JSON.stringify(test));
  const shown = await show(<RecordsPlace />, {}, { recordStore, records, keep, course });
  expect((await shown.findByTestId('work')).textContent).toContain('100%, 100%');
  fireEvent.click(shown.getByText('Send to a school’s record store (xAPI)'));
  const form = within(shown.getByRole('button', { name: 'Start sending' }).closest('form')!);
  expect(shown.getByRole('button', { name: 'Start sending' })).toHaveProperty('disabled', true);
  for (const label of [
    'Address of the record store',
    'Name (key) for the store',
    'Secret for the store',
    'Address of your school or training centre',
    'Your name or number there',
  ])
    fireEvent.change(form.getByLabelText(label), {
      target: { value: label.startsWith('Address') ? 'https://school.example/xapi' : 'geheim' },
    });
  fireEvent.click(shown.getByRole('button', { name: 'Start sending' }));
  await shown.findByText(/Everything is sent\. 2 sent, 0 waiting, 0 refused\./);
  expect(sent).toHaveLength(1);
  expect(JSON.parse(keep.read(DELIVERY_NOTE)!)).toMatchObject({ secret: '', user: 'geheim' });
  status = 401;
  await records.write(TEST_RECORDS, 'l', JSON.stringify({ ...test, right: 1 }));
  fireEvent.click(shown.getByRole('button', { name: 'Send now' }));
  await shown.findByText(/does not know this name and secret/);
  await shown.findByText('The store says: 401 as told');
  fireEvent.click(shown.getByRole('button', { name: 'Stop sending' }));
  expect(keep.read(DELIVERY_NOTE)).toBe('');
});
