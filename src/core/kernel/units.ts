/**
 * Quantities and the two unit systems a person can choose from. SI inside; this table is the one border.
 * Factors: exact by definition (inch 0.0254 m, pound 0.45359237 kg, standard gravity 9.80665 m/s2; NIST SP 811).
 */
export const STANDARD_GRAVITY = 9.80665;

export type UnitSystem = 'si' | 'us';

/** What a number measures; each has a shown unit in both systems. */
export type Quantity =
  | 'length'
  | 'length-small'
  | 'length-fine'
  | 'mass'
  | 'unbalance'
  | 'force'
  | 'force-large'
  | 'torque'
  | 'pressure'
  | 'stress'
  | 'speed'
  | 'frequency'
  | 'vibration-rate'
  | 'rotation'
  | 'angle'
  | 'temperature'
  | 'temperature-difference'
  | 'volume'
  | 'area'
  | 'density'
  | 'inertia'
  | 'stiffness'
  | 'linear-load'
  | 'power'
  | 'energy'
  | 'time'
  | 'share'
  | 'count'
  | 'plain'
  | 'acceleration'
  | 'flow'
  | 'displacement-volume'
  | 'damping'
  | 'hardness'
  | 'hours'
  | 'percent'
  | 'pressure-soil';

/** One shown unit: `shown = si * factor + offset`, with the symbol that follows the number. */
export interface ShownUnit {
  readonly symbol: string;
  readonly factor: number;
  readonly offset?: number;
  /** Significant figures that make sense for a reader. */
  readonly figures: number;
}

const INCH = 0.0254;
const POUND = 0.45359237;
const LBF = POUND * STANDARD_GRAVITY;
const PSI = LBF / (INCH * INCH);

const same = (unit: ShownUnit): Record<UnitSystem, ShownUnit> => ({ si: unit, us: unit });

export const UNITS: Readonly<Record<Quantity, Readonly<Record<UnitSystem, ShownUnit>>>> = {
  length: {
    si: { symbol: 'm', factor: 1, figures: 3 },
    us: { symbol: 'ft', factor: 1 / (12 * INCH), figures: 3 },
  },
  'length-small': {
    si: { symbol: 'mm', factor: 1e3, figures: 4 },
    us: { symbol: 'in', factor: 1 / INCH, figures: 4 },
  },
  'length-fine': {
    si: { symbol: 'µm', factor: 1e6, figures: 3 },
    us: { symbol: 'thou', factor: 1e3 / INCH, figures: 3 },
  },
  mass: { si: { symbol: 'kg', factor: 1, figures: 3 }, us: { symbol: 'lb', factor: 1 / POUND, figures: 3 } },
  unbalance: {
    si: { symbol: 'kg m', factor: 1, figures: 3 },
    us: { symbol: 'lb in', factor: 1 / (POUND * INCH), figures: 3 },
  },
  force: { si: { symbol: 'N', factor: 1, figures: 3 }, us: { symbol: 'lbf', factor: 1 / LBF, figures: 3 } },
  'force-large': {
    si: { symbol: 'kN', factor: 1e-3, figures: 3 },
    us: { symbol: 'lbf', factor: 1 / LBF, figures: 3 },
  },
  torque: {
    si: { symbol: 'N m', factor: 1, figures: 3 },
    us: { symbol: 'lbf ft', factor: 1 / (LBF * 12 * INCH), figures: 3 },
  },
  pressure: {
    si: { symbol: 'bar', factor: 1e-5, figures: 3 },
    us: { symbol: 'psi', factor: 1 / PSI, figures: 3 },
  },
  stress: {
    si: { symbol: 'MPa', factor: 1e-6, figures: 3 },
    us: { symbol: 'ksi', factor: 1 / (1e3 * PSI), figures: 3 },
  },
  speed: {
    si: { symbol: 'km/h', factor: 3.6, figures: 2 },
    us: { symbol: 'mph', factor: 3600 / (63360 * INCH), figures: 2 },
  },
  frequency: same({ symbol: 'Hz', factor: 1, figures: 3 }),
  'vibration-rate': same({ symbol: 'vpm', factor: 60, figures: 4 }),
  rotation: same({ symbol: 'rpm', factor: 60 / (2 * Math.PI), figures: 4 }),
  angle: same({ symbol: '°', factor: 180 / Math.PI, figures: 3 }),
  temperature: {
    si: { symbol: '°C', factor: 1, figures: 3 },
    us: { symbol: '°F', factor: 1.8, offset: 32, figures: 3 },
  },
  'temperature-difference': {
    si: { symbol: 'K', factor: 1, figures: 3 },
    us: { symbol: '°F', factor: 1.8, figures: 3 },
  },
  volume: {
    si: { symbol: 'L', factor: 1e3, figures: 3 },
    us: { symbol: 'US gal', factor: 1 / (231 * INCH ** 3), figures: 3 },
  },
  area: {
    si: { symbol: 'cm²', factor: 1e4, figures: 3 },
    us: { symbol: 'in²', factor: 1 / INCH ** 2, figures: 3 },
  },
  density: {
    si: { symbol: 'kg/m³', factor: 1, figures: 4 },
    us: { symbol: 'lb/ft³', factor: (12 * INCH) ** 3 / POUND, figures: 3 },
  },
  inertia: {
    si: { symbol: 'kg m²', factor: 1, figures: 3 },
    us: { symbol: 'lb ft²', factor: 1 / (POUND * (12 * INCH) ** 2), figures: 3 },
  },
  stiffness: {
    si: { symbol: 'N/mm', factor: 1e-3, figures: 3 },
    us: { symbol: 'lbf/in', factor: INCH / LBF, figures: 3 },
  },
  'linear-load': {
    si: { symbol: 'kg/cm', factor: 1 / (100 * STANDARD_GRAVITY), figures: 3 },
    us: { symbol: 'lb/in', factor: INCH / LBF, figures: 3 },
  },
  power: {
    si: { symbol: 'kW', factor: 1e-3, figures: 3 },
    us: { symbol: 'hp', factor: 1 / (550 * 12 * INCH * LBF), figures: 3 },
  },
  energy: {
    si: { symbol: 'J', factor: 1, figures: 2 },
    us: { symbol: 'ft\u00b7lbf', factor: 1 / (LBF * 12 * INCH), figures: 2 },
  },
  time: same({ symbol: 's', factor: 1, figures: 3 }),
  share: same({ symbol: '%', factor: 100, figures: 2 }),
  count: same({ symbol: '', factor: 1, figures: 6 }),
  plain: same({ symbol: '', factor: 1, figures: 3 }),
  acceleration: {
    si: { symbol: 'm/s²', factor: 1, figures: 3 },
    us: { symbol: 'ft/s²', factor: 1 / (12 * INCH), figures: 3 },
  },
  flow: {
    si: { symbol: 'L/min', factor: 6e4, figures: 3 },
    us: { symbol: 'US gal/min', factor: 60 / (231 * INCH ** 3), figures: 3 },
  },
  damping: {
    si: { symbol: 'kN s/m', factor: 1e-3, figures: 3 },
    us: { symbol: 'lbf s/in', factor: INCH / LBF, figures: 3 },
  },
  hardness: same({ symbol: 'IRHD', factor: 1, figures: 2 }),
  hours: same({ symbol: 'h', factor: 1, figures: 2 }),
  /** A number that is a percentage already (a grade, a share of salt). */
  percent: same({ symbol: '%', factor: 1, figures: 3 }),
  'pressure-soil': {
    si: { symbol: 'kPa', factor: 1e-3, figures: 3 },
    us: { symbol: 'psi', factor: 1 / PSI, figures: 3 },
  },
  'displacement-volume': {
    si: { symbol: 'cm³', factor: 1e6, figures: 3 },
    us: { symbol: 'in³', factor: 1 / INCH ** 3, figures: 3 },
  },
};

/** SI value as shown in `system`. */
export function toShown(si: number, quantity: Quantity, system: UnitSystem): number {
  const unit = UNITS[quantity][system];
  return si * unit.factor + (unit.offset ?? 0);
}

/** A shown value back to SI; the inverse of `toShown`. */
export function fromShown(shown: number, quantity: Quantity, system: UnitSystem): number {
  const unit = UNITS[quantity][system];
  return (shown - (unit.offset ?? 0)) / unit.factor;
}
