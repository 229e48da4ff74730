/** The small machine, prepared, and panels rendered over a store of their own. */
import { cleanup, render, type RenderResult } from '@testing-library/react';
import type { ReactNode } from 'react';
import { type MachineDocument, prepareMachine } from '../../src/core/document';
import { loadSolidKernel } from '../../src/core/geometry';
import { fail, message } from '../../src/core/kernel';
import { parseMachine } from '../../src/core/machine';
import {
  type AppState,
  type AppStore,
  type ClassroomPort,
  type Commands,
  createAppStore,
  createCommands,
  type CoursePort,
  type JobPort,
  type Ports,
  type RecordPort,
} from '../../src/store';
import { BindProvider, loadLanguage } from '../../src/view/bind';
import { smallMachine } from '../machine/small-machine';

/** The small machine is made to fail its checks; with tapped holes and its feet tied on it passes them. */
const soundMachine = smallMachine
  .replace(
    'inner_m: 0.08, outer_m: 0.12 }',
    `inner_m: 0.08, outer_m: 0.12 }
      holes:
        - { diameter_m: 0.012, count: 4, radius_m: 0.1, from_x_m: 0.175, to_x_m: 0.2 }`,
  )
  .concat('  - { type: contact, parts: [foot, tube] }\n');

export async function smallDocument(): Promise<MachineDocument> {
  const parsed = parseMachine([{ name: 'small.yaml', text: soundMachine }]);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const prepared = prepareMachine(parsed.value, 'test', await loadSolidKernel());
  if (!prepared.ok) throw new Error(JSON.stringify(prepared.faults));
  return prepared.value;
}

/** Records that live as long as a test. */
export function memoryRecords(): RecordPort {
  const kept = new Map<string, { collection: string; key: string; text: string }>();
  const at = (collection: string, key: string): string => JSON.stringify([collection, key]);
  return {
    lasting: () => Promise.resolve(true),
    read: (collection, key) => Promise.resolve(kept.get(at(collection, key))?.text ?? null),
    write: (collection, key, text) => {
      kept.set(at(collection, key), { collection, key, text });
      return Promise.resolve(true);
    },
    remove: (collection, key) => {
      kept.delete(at(collection, key));
      return Promise.resolve();
    },
    list: (collection) =>
      Promise.resolve([...kept.values()].filter((record) => record.collection === collection)),
    all: () => Promise.resolve({ records: [...kept.values()], unreadable: 0 }),
    clear: () => {
      kept.clear();
      return Promise.resolve();
    },
    space: () => Promise.resolve(null),
    hold: () => Promise.resolve(false),
  };
}

/** No lessons to be had. */
export const noCourse: CoursePort = {
  loadCourse: () => Promise.reject(new Error('not in this test')),
  loadTopic: () => Promise.reject(new Error('not in this test')),
  loadGlossary: () => Promise.reject(new Error('not in this test')),
};

/** No jobs that ship. */
export const noJobs: JobPort = {
  loadJobs: () => Promise.resolve([]),
  loadPlan: () => Promise.reject(new Error('not in this test')),
};

/** A page that no class host served. */
export const noClass: ClassroomPort = {
  greet: () => Promise.resolve(null),
  link: () => Promise.reject(new Error('not in this test')),
};

/** No record store to send to, and no built app to pack. */
export const noSchool: Pick<Ports, 'recordStore' | 'packages'> = {
  recordStore: { send: () => Promise.resolve({ status: null, text: '' }) },
  packages: {
    files: () => Promise.resolve(null),
    make: () => Promise.reject(new Error('not in this test')),
  },
};

export interface Rendered extends RenderResult {
  readonly store: AppStore;
  readonly commands: Commands;
}

/** Renders over a fresh store that holds `state`. */
export async function show(
  node: ReactNode,
  state: Partial<AppState>,
  ports: Partial<Ports> = {},
): Promise<Rendered> {
  cleanup();
  await loadLanguage('en');
  const store = createAppStore(state);
  const all = {
    loadShipped: () => Promise.reject(new Error('not in this test')),
    importFiles: () =>
      Promise.resolve(
        fail([
          {
            file: 'bad.yaml',
            line: 41,
            path: 'parts[3].bore_m',
            expected: message('fault.greater', { limit: 0 }),
            found: '-0.012',
          },
        ]),
      ),
    course: noCourse,
    jobs: noJobs,
    classroom: noClass,
    records: memoryRecords(),
    ...noSchool,
    keep: { read: () => null, write: () => true },
    ...ports,
  } as Ports;
  const commands = createCommands(store, all);
  const rendered = render(
    <BindProvider store={store} commands={commands} ports={all}>
      {node}
    </BindProvider>,
  );
  return { ...rendered, store, commands };
}
