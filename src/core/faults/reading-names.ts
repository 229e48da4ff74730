/** Readings in numbers that the bench can compute, and what each measures. */
import type { Quantity } from '../kernel';

export const QUANTITY_OF = {
  'amplitude-high': 'length-small',
  'amplitude-low': 'length-small',
  'vpm-high': 'vibration-rate',
  'vpm-low': 'vibration-rate',
  'frame-left': 'acceleration',
  'frame-right': 'acceleration',
  'spin-up-time': 'time',
  'temperature-left': 'temperature-difference',
  'temperature-right': 'temperature-difference',
  'brake-temperature': 'temperature-difference',
  'vibration-pressure': 'pressure',
  'charge-pressure': 'pressure',
  'relief-pressure': 'pressure',
  'travel-pressure': 'pressure',
  'case-drain': 'flow',
  drift: 'length-small',
  'gap-spread': 'length-small',
  squeeze: 'length-small',
  'sag-left': 'length-small',
  'sag-right': 'length-small',
  'oil-level': 'length-small',
  'level-rise': 'length-small',
  'scraper-gap': 'length-small',
  'end-play': 'length-fine',
} as const satisfies Record<string, Quantity>;

export type ReadingName = keyof typeof QUANTITY_OF;
export const READING_NAMES = Object.keys(QUANTITY_OF) as readonly ReadingName[];

/** Signs that the bench computes itself; all others come from the chances in the fault book. */
export const COMPUTED_SIGNS = { grade: ['climbs', 'drum-spins', 'axle-spins', 'stops'], 'bolt-marks': ['in-line', 'moved'] } as const; // prettier-ignore
export type ComputedSign = keyof typeof COMPUTED_SIGNS;
