/** The machine on the fault bench, for questions about readings; its faults are fetched when a sheet is first drawn. */
import { kindSolids } from '../../core/document';
import { createPlant } from '../../core/faults';
import type { Ports } from '../ports';
import type { AppStore } from '../store';
import { knownPlants } from './subject';

/** Where no faults ship with the machine nothing is asked about them. */
export async function ensurePlant(store: AppStore, ports: Pick<Ports, 'loadFaults'>): Promise<void> {
  const { document } = store.getState();
  if (document === null || knownPlants.has(document)) return;
  const book = await ports.loadFaults(document.machine.id);
  const { machine, masses, fit } = document;
  knownPlants.set(
    document,
    book === null ? null : createPlant(machine, kindSolids(document), masses, fit, book),
  );
}
