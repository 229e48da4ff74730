/** Numbers of seats: fits, pressing, heating and cooling, clearance that is left, which ring is tight. */
import { kindNamed, type Machine, type Material } from '../../machine';
import {
  BEARING_HEATING_C,
  fittedClearance,
  heatingForGrowth,
  interferenceFit,
  tightRing,
} from '../../mechanics';
import { message } from '../../kernel';
import { type Seat, seatBetween, seatLimits, tightRingSeat, wallOutside_m } from '../../studies';
import type { NumberSpec } from '../number-specs';
import type { SheetNumber } from '../sheet-types';
import { numberOf, type NumberContext } from './context';

type SpecOf<N extends NumberSpec['number']> = Extract<NumberSpec, { number: N }>;

/** Room to slide a cold ring in, of a workshop (common practice, no source). */
const ROOM_C = 20;
const FRICTION = 0.12;

const materialOf = (machine: Machine, id: string): Material | undefined =>
  machine.materials[kindNamed(machine, id)?.material ?? ''];

export function fitNumbers({ machine }: NumberContext, spec: SpecOf<'fit'>): SheetNumber[] {
  const seat = seatBetween(machine, spec.inner, spec.outer);
  if (seat === undefined) return [];
  const limits = seatLimits(machine, seat);
  const params = { inner: spec.inner, outer: spec.outer, fit: seat.fit };
  if (limits === null) {
    return seat.interference_m === undefined
      ? []
      : [
          numberOf({
            name: 'interference',
            params,
            value: seat.interference_m,
            quantity: 'length-fine',
            source: 'training-value',
            calculation: 'model',
          }),
        ];
  }
  const [least, most] = limits.clearance_m;
  const tight = most <= 0;
  return [
    numberOf({
      name: tight ? 'interference' : 'clearance-fit',
      params,
      value: tight ? [-most, -least] : [least, most],
      quantity: 'length-fine',
      source: limits.calculation === 'iso-fit' ? 'iso-286' : 'iso-286-492',
      calculation: limits.calculation,
    }),
  ];
}

export function pressNumbers({ machine }: NumberContext, spec: SpecOf<'press'>): SheetNumber[] {
  const seat = tightRingSeat(machine, spec.inner, spec.outer);
  if (seat === null) return [];
  const outside_m = wallOutside_m(machine, spec.outer, seat.diameter_m);
  const [ring, wall] = [materialOf(machine, spec.inner), materialOf(machine, spec.outer)];
  const { bearing } = seat;
  const fit = interferenceFit({
    // the ring ends at its raceway, a quarter of the way in (as in fitted clearance)
    inner_bore_m: bearing.outside_m - (bearing.outside_m - bearing.bore_m) / 4,
    fit_diameter_m: seat.diameter_m,
    outer_diameter_m: outside_m ?? seat.diameter_m * 1.2,
    E_inner_Pa: ring?.E_Pa ?? 208e9,
    E_outer_Pa: wall?.E_Pa ?? 210e9,
    nu_inner: ring?.poisson ?? 0.3,
    nu_outer: wall?.poisson ?? 0.3,
    interference_diametral_m: seat.interference_m,
    length_m: bearing.builder === 'tapered-roller-bearing' ? bearing.cup_width_m : bearing.width_m,
    friction: spec.friction ?? FRICTION,
  });
  if (!fit.ok) return [];
  const { value } = fit;
  const base = { source: 'thick-cylinder', calculation: 'interference-fit' } as const;
  const params = { inner: spec.inner, outer: spec.outer };
  const notes = [message('job.note.press-at-greatest', { friction: spec.friction ?? FRICTION })];
  return [
    numberOf({
      ...base,
      name: 'press-force',
      params,
      value: value.press_force_N,
      quantity: 'force-large',
      notes,
    }),
    numberOf({ ...base, name: 'seat-pressure', params, value: value.pressure_Pa, quantity: 'stress' }),
    numberOf({ ...base, name: 'hoop-stress', params, value: value.hoop_outer_at_fit_Pa, quantity: 'stress' }),
  ];
}

export function heatingNumbers({ machine }: NumberContext, spec: SpecOf<'heating'>): SheetNumber[] {
  const seat = tightRingSeat(machine, spec.inner, spec.outer);
  if (seat === null) return [];
  const start_C = spec.start_C ?? ROOM_C;
  const growth_m = seat.interference_m + spec.clearance_m;
  const params = { inner: spec.inner, outer: spec.outer };
  const base = { source: 'expansion', calculation: 'heating', params } as const;
  const of = (id: string): number => materialOf(machine, id)?.alpha_per_K ?? 12e-6;
  const warm = heatingForGrowth({
    diameter_m: seat.diameter_m,
    growth_m,
    alpha_per_K: of(spec.outer),
    start_C,
  });
  const cold = heatingForGrowth({ diameter_m: seat.diameter_m, growth_m, alpha_per_K: of(spec.inner) });
  const ceiling = numberOf({
    name: 'heating-ceiling',
    value: BEARING_HEATING_C.limit,
    quantity: 'temperature',
    source: 'common-practice',
    calculation: 'heating',
    training: false,
    notes: [message('job.note.no-flame')],
  });
  return [
    ...(warm.ok
      ? [
          numberOf({
            ...base,
            name: 'heat-outer',
            value: warm.value.temperature_C,
            quantity: 'temperature',
            notes: warm.value.notes,
          }),
        ]
      : []),
    ...(cold.ok
      ? [
          numberOf({
            ...base,
            name: 'cool-inner',
            value: start_C - cold.value.delta_T_K,
            quantity: 'temperature',
            notes: [message('job.note.frost')],
          }),
        ]
      : []),
    ceiling,
  ];
}

export function clearanceNumbers({ machine }: NumberContext, spec: SpecOf<'clearance'>): SheetNumber[] {
  const bearing = kindNamed(machine, spec.bearing)?.params;
  if (bearing?.builder !== 'spherical-roller-bearing') return [];
  const seats = machine.relations.filter((r): r is Seat => r.type === 'seat');
  const housing = seats.find((s) => s.inner === spec.bearing);
  const shaft = seats.find((s) => s.outer === spec.bearing);
  if (housing === undefined || shaft === undefined) return [];
  const outside_m = wallOutside_m(machine, housing.outer, bearing.outside_m);
  const found = fittedClearance({
    type: 'spherical-roller',
    clearance_class: spec.class,
    bore_m: bearing.bore_m,
    outside_m: bearing.outside_m,
    shaft: shaft.fit,
    housing: housing.fit,
    ...(outside_m === null ? {} : { housing_outside_m: outside_m }),
    temperature_difference_K: spec.warmer_K ?? 0,
  });
  if (!found.ok) return [];
  const { value } = found;
  const base = { params: { bearing: spec.bearing, class: spec.class }, quantity: 'length-fine' } as const;
  return [
    numberOf({
      ...base,
      name: 'clearance-bought',
      value: [value.clearance_min_m, value.clearance_max_m],
      source: 'iso-5753',
      calculation: 'fitted-clearance',
      training: false,
      notes: value.notes.slice(0, 1),
    }),
    numberOf({
      ...base,
      name: 'clearance-fitted',
      value: [value.fitted_min_m, value.fitted_max_m],
      source: 'fitted-clearance',
      calculation: 'fitted-clearance',
      verdict: value.fitted_min_m < 0 ? 'bad' : 'good',
      notes: value.notes.slice(1),
    }),
  ];
}

/** Answer in words: the value is null, the label says it. */
export function tightRingNumbers(_: NumberContext, spec: SpecOf<'tight-ring'>): SheetNumber[] {
  const found = tightRing({
    shaft_rpm: spec.turns === 'shaft' ? 1 : 0,
    housing_rpm: spec.turns === 'housing' ? 1 : 0,
    load_rpm: spec.load === 'with-shaft' ? 1 : 0,
  });
  if (!found.ok) return [];
  return [
    numberOf({
      name: `tight-ring-${found.value.tight}`,
      params: {
        shaft: found.value.shaft_classes.join(', '),
        housing: found.value.housing_classes.join(', '),
      },
      value: null,
      quantity: 'plain',
      source: 'ring-load',
      calculation: 'tight-ring',
      training: false,
      notes: [message(spec.load === 'with-shaft' ? 'job.note.load-turns' : 'job.note.load-stands')],
    }),
  ];
}
