/** What the fault bench keeps over a reload, as JSON; what does not read back as itself is left out. */
import type { Signatures } from '../../core/faults';
import type { ClosedCase, EnteredReading } from './state';

export const COLLECTION = 'faults';
export const KEY = { readings: 'readings', run: 'run', closed: 'closed/' } as const;

const parsed = (text: string | null): unknown => {
  if (text === null) return null;
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
};

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Readings of measurements that the book still has, each of the kind it takes. */
export function readReadings(
  text: string | null,
  signatures: Signatures,
): { readings: Record<string, EnteredReading>; barred: string[] } {
  const found = parsed(text);
  const readings: Record<string, EnteredReading> = {};
  if (!isObject(found)) return { readings, barred: [] };
  const kept = isObject(found['readings']) ? found['readings'] : {};
  for (const m of signatures.measurements) {
    const one = kept[m.id];
    if (!isObject(one)) continue;
    const { value, sd, method } = one;
    const fits =
      m.kind === 'look'
        ? typeof value === 'string' && m.outcomes.includes(value)
        : typeof value === 'number' && Number.isFinite(value);
    if (!fits) continue;
    readings[m.id] = {
      value: value as number | string,
      sd: typeof sd === 'number' && sd > 0 ? sd : null,
      method: m.kind === 'number' && typeof method === 'number' && m.methods[method] ? method : 0,
    };
  }
  const barred = Array.isArray(found['barred']) ? (found['barred'] as unknown[]) : [];
  return { readings, barred: signatures.measurements.map((m) => m.id).filter((id) => barred.includes(id)) };
}

export function readClosed(text: string): ClosedCase | null {
  const found = parsed(text);
  if (!isObject(found)) return null;
  const { seed, truth, committed, right, brier, minutes } = found;
  const numbers = [seed, brier, minutes].every((n) => typeof n === 'number' && Number.isFinite(n));
  return numbers && typeof truth === 'string' && typeof committed === 'string' && typeof right === 'boolean'
    ? (found as unknown as ClosedCase)
    : null;
}
