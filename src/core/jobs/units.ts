/** How the value of a field is shown: its SI unit to the quantity that the unit table knows. */
import type { Quantity } from '../kernel';
import type { FieldUnit, JobField } from './schema';

const QUANTITY: Readonly<Record<FieldUnit, Quantity>> = {
  m: 'length-small',
  kg: 'mass',
  N: 'force-large',
  Nm: 'torque',
  Pa: 'pressure',
  degC: 'temperature',
  Hz: 'frequency',
  'rad/s': 'rotation',
  rad: 'angle',
  m3: 'volume',
  s: 'time',
  IRHD: 'plain',
  count: 'count',
  share: 'share',
};

export const quantityOf = (field: Pick<JobField, 'unit' | 'fine'>): Quantity | null =>
  field.unit === undefined
    ? null
    : field.unit === 'm' && field.fine === true
      ? 'length-fine'
      : QUANTITY[field.unit];
