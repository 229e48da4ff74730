/** Values of the workshop: fits and heat of seats, clearance, threads, what a joint holds, lifts, supports. */
import { STANDARD_GRAVITY } from '../../kernel';
import { findUnit, type Machine } from '../../machine';
import {
  fittedClearance,
  heatingForGrowth,
  jointSlip,
  proofStrength_Pa,
  sling,
  stressArea,
} from '../../mechanics';
import { type Seat, seatLimits, tightRingSeat, wallOutside_m } from '../../studies';
import type { Subject } from '../subject';
import { PRACTICE } from './practice';
import { flatten, namedNumber, type NamedValue } from './quantity-of';

type Values = Generator<readonly [string, NamedValue]>;

const FRICTION = 0.12;
/** Share of proof load that a bolt is tightened to (J. E. Shigley, from memory). */
const PRELOAD_SHARE = 0.75;
const SLING_DEG = [60, 45, 30] as const;
/** Below this nobody looks for a sling. */
const HEAVY_kg = 25;

export function* workshopValues(subject: Subject): Values {
  const { machine } = subject;
  const seats = machine.relations.filter((r): r is Seat => r.type === 'seat');
  for (const seat of seats) yield* seatValues(machine, seat);
  yield* clearanceValues(machine, seats);
  for (const relation of machine.relations)
    if (relation.type === 'thread')
      yield [`thread.${relation.male}.pitch_m`, namedNumber('_m', relation.pitch_m)];
  for (const [id, { alpha_per_K }] of Object.entries(machine.materials))
    if (alpha_per_K !== undefined)
      yield [`material.${id}.growth_per_million`, { si: alpha_per_K * 1e6, quantity: 'plain' }];
  for (const unit of machine.units)
    if (unit.group !== null) yield* flatten(`joint.${unit.id}`, frictionJoint(machine, unit.id));
  yield* liftValues(subject);
}

/** Of a tight seat: least and greatest interference; of a loose one: clearance. */
function* seatValues(machine: Machine, seat: Seat): Values {
  const name = `seat.${seat.inner}.${seat.outer}`;
  yield [`${name}.fit`, { text: seat.fit }];
  if (seat.diameter_m !== undefined) yield [`${name}.diameter_m`, namedNumber('_m', seat.diameter_m)];
  const limits = seatLimits(machine, seat);
  if (limits === null) return;
  const [least, most] = limits.clearance_m;
  const tight = most <= 0;
  const word = tight ? 'tight' : 'loose';
  yield [`${name}.${word}_least_m`, { si: tight ? -most : least, quantity: 'length-fine' }];
  yield [`${name}.${word}_most_m`, { si: tight ? -least : most, quantity: 'length-fine' }];
  const ring = tight ? tightRingSeat(machine, seat.inner, seat.outer) : null;
  if (ring === null) return;
  const heat = heatingForGrowth({
    diameter_m: ring.diameter_m,
    growth_m: ring.interference_m + PRACTICE.slide_in_m,
    alpha_per_K: alphaOf(machine, seat.outer),
    start_C: PRACTICE.shop_C,
  });
  if (heat.ok && heat.value.temperature_C !== null)
    yield [`${name}.heat_housing_C`, namedNumber('_C', heat.value.temperature_C)];
}

const alphaOf = (machine: Machine, id: string): number => {
  const part = machine.parts.find((p) => p.id === id);
  return machine.materials[machine.kinds[part?.kind ?? '']?.material ?? '']?.alpha_per_K ?? 12e-6;
};

/** Clearance of a vibrating bearing: as bought, fitted, and in each smaller class. */
function* clearanceValues(machine: Machine, seats: readonly Seat[]): Values {
  for (const part of machine.parts) {
    const params = machine.kinds[part.kind]?.params;
    const housing = seats.find((s) => s.inner === part.id);
    const shaft = seats.find((s) => s.outer === part.id);
    if (params?.builder !== 'spherical-roller-bearing' || housing === undefined || shaft === undefined)
      continue;
    const wall_m = wallOutside_m(machine, housing.outer, params.outside_m);
    for (const clearance_class of ['CN', 'C3', 'C4'] as const) {
      const found = fittedClearance({
        type: 'spherical-roller',
        clearance_class,
        bore_m: params.bore_m,
        outside_m: params.outside_m,
        shaft: shaft.fit,
        housing: housing.fit,
        ...(wall_m === null ? {} : { housing_outside_m: wall_m }),
      });
      if (!found.ok) continue;
      const { clearance_min_m, clearance_max_m, fitted_min_m, fitted_max_m } = found.value;
      const fine = { clearance_min_m, clearance_max_m, fitted_min_m, fitted_max_m };
      for (const [key, si] of Object.entries(fine))
        yield [`clearance.${part.id}.${clearance_class}.${key}`, { si, quantity: 'length-fine' }];
    }
  }
}

/** What a bolted joint holds by friction alone; null for fasteners without a property class. Training value, no torque. */
export function frictionJoint(machine: Machine, id: string, preload_share = 1) {
  const unit = findUnit(machine, id);
  const thread = unit?.group?.thread;
  const proof_Pa =
    thread === undefined || thread.class === null ? null : proofStrength_Pa(thread.class, thread.diameter_m);
  if (unit === undefined || thread === undefined || proof_Pa === null) return null;
  const preload_N = preload_share * PRELOAD_SHARE * proof_Pa * stressArea(thread.diameter_m, thread.pitch_m);
  const slip = jointSlip({ count: unit.partIds.length, preload_N, friction: FRICTION });
  return slip.ok ? { preload_N, slip_N: slip.value.slip_force_N } : null;
}

/** How many leave together; what a sling's leg carries of it; what must be held up, and how hard. */
function* liftValues({ machine, masses, teardown }: Subject): Values {
  const kinds = new Map(machine.parts.map((p) => [p.id, p.kind]));
  for (const step of teardown.steps) {
    for (const { what, kind, force_N } of step.supports) {
      yield [`support.${what}.${kind}_N`, namedNumber('_N', force_N)];
      yield [`support.${what}.${kind}_kg`, namedNumber('_kg', force_N / STANDARD_GRAVITY)];
    }
    if (step.kind !== 'remove') continue;
    const parts = step.unitIds.flatMap((id) => findUnit(machine, id)?.partIds ?? []);
    const mass_kg = parts.reduce((sum, id) => sum + (masses[kinds.get(id) ?? '']?.mass_kg ?? 0), 0);
    for (const id of step.unitIds) {
      yield [`lift.${id}.units`, { si: step.unitIds.length, quantity: 'count' }];
      if (mass_kg < HEAVY_kg) continue;
      for (const angle_from_horizontal_deg of SLING_DEG) {
        const legs = sling({ mass_kg, legs: 2, angle_from_horizontal_deg });
        if (legs.ok)
          yield* flatten(`lift.${id}.legs-${angle_from_horizontal_deg}`, {
            leg_mass_kg: legs.value.leg_mass_kg,
            factor: legs.value.factor,
          });
      }
    }
  }
}
