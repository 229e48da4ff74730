/** Words of the fault bench: names, shares, readings and signs as a person reads them. */
import { type Quantity } from '../../../core/kernel';
import {
  INPUT_QUANTITIES,
  type InputName,
  type Measurement,
  QUANTITY_OF,
  type ReadingName,
} from '../../../core/faults';
import type { Speech } from '../../bind';

export const faultName = (speech: Speech, id: string): string => speech.t(`fault-bench.fault.${id}`);
export const measureName = (speech: Speech, id: string): string => speech.t(`fault-bench.measure.${id}`);

/** What a reading in numbers measures. */
export const quantityOf = (id: string): Quantity => QUANTITY_OF[id as ReadingName];

export function readingText(speech: Speech, m: Measurement, value: number | string | null): string {
  if (value === null) return speech.t('fault-bench.show.unknown');
  if (m.kind === 'look') return speech.t(`fault-bench.outcome.${m.id}.${value}`);
  return speech.quantity(Number(value), quantityOf(m.id), 3);
}

/** A chance in per cent; what is nearly sure or nearly ruled out is never told as sure. */
export function shareText(speech: Speech, p: number): string {
  if (p > 0.99) return speech.t('fault-bench.over', { share: speech.quantity(0.99, 'share') });
  if (p < 0.01) return speech.t('fault-bench.under', { share: speech.quantity(0.01, 'share') });
  return speech.quantity(p, 'share');
}

const CHANCES = [
  [0.9, 'almost-sure'],
  [0.5, 'likely'],
  [0.15, 'possible'],
  [0.03, 'unlikely'],
] as const;

export const chanceWord = (speech: Speech, p: number): string =>
  speech.t(`fault-bench.chance.${CHANCES.find(([from]) => p >= from)?.[1] ?? 'hardly'}`);

/** An input's value: flags as yes or no, all else with its unit. */
export function inputText(speech: Speech, input: string, value: number): string {
  if (['baffle_fitted', 'hoses_swapped', 'spline_intact'].includes(input))
    return speech.t(value > 0.5 ? 'fault-bench.yes' : 'fault-bench.no');
  return speech.quantity(value, INPUT_QUANTITIES[input as InputName], 3);
}

/** Where a measurement stands in the lists. */
export const GROUPS: readonly (readonly [string, readonly string[]])[] = [
  ['look', ['noise', 'outside', 'magnet', 'oil-look', 'bolt-marks']],
  [
    'vibration',
    ['amplitude-high', 'amplitude-low', 'vpm-high', 'vpm-low', 'spin-up-time', 'frame-left', 'frame-right'],
  ],
  [
    'exciter',
    [
      'temperature-left',
      'temperature-right',
      'oil-level',
      'level-rise',
      'vibration-pressure',
      'charge-pressure',
      'case-drain',
    ],
  ],
  ['mounts', ['sag-left', 'sag-right', 'squeeze', 'gap-spread', 'end-play', 'scraper-gap']],
  ['travel', ['grade', 'travel-pressure', 'relief-pressure', 'brake-temperature', 'drift']],
];

/** The measurements of each group, in its order; what no group names stands with the looks. */
export function grouped(
  measurements: readonly Measurement[],
): readonly (readonly [string, readonly Measurement[]])[] {
  const named = new Set(GROUPS.flatMap(([, ids]) => ids));
  return GROUPS.map(([group, ids], i) => [
    group,
    [
      ...ids.flatMap((id) => measurements.filter((m) => m.id === id)),
      ...(i === 0 ? measurements.filter((m) => !named.has(m.id)) : []),
    ],
  ]);
}
