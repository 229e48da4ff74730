/** Fetches the fault book that ships with a machine. */
import type { FaultBook } from '../../core/faults';
import { fetchJson } from './fetch-json';

/** The book of a machine; null where none ships with it. */
export const loadFaults = async (machineId: string): Promise<FaultBook | null> =>
  (await fetchJson(`./baked/${machineId}/faults.json`)) as FaultBook | null;
