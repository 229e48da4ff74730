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
  type Commands,
  createAppStore,
  createCommands,
  type Ports,
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
  const commands = createCommands(store, {
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
    keep: { read: () => null, write: () => true },
    ...ports,
  } as Ports);
  const rendered = render(
    <BindProvider store={store} commands={commands}>
      {node}
    </BindProvider>,
  );
  return { ...rendered, store, commands };
}
