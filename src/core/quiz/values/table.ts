/**
 * The named values that texts and questions may use, all computed from the model: `machine.…` and `operation.…` from
 * its file, `part.<kind>.…` and `unit.<id>.…` from its solids, `fastener.<group>.…`, `plan.…`, and `study.<name>.…`
 * under the names that the studies give their results. Seats, lifts, supports and joints are `workshop.ts`, drum and
 * ground `ground.ts`, common practice `practice.ts`.
 */
import { STANDARD_GRAVITY } from '../../kernel';
import { defaultOptions, isPresent } from '../../machine';
import { bearingLife } from '../../mechanics';
import {
  exciterStudy,
  type ExciterChoice,
  identifyStudy,
  isolationStudy,
  OWN_CHOICE,
  rollerBasis,
  SOILS,
} from '../../studies';
import type { Subject } from '../subject';
import { driveValues } from './drive';
import { sizeValues } from './sizes';
import { groundValues } from './ground';
import { practiceValues } from './practice';
import { flatten, namedNumber, type NamedValue } from './quantity-of';
import { workshopValues } from './workshop';

export type ValueTable = ReadonlyMap<string, NamedValue>;

const tables = new WeakMap<Subject, ValueTable>();

/** The table of a subject; worked out once. */
export function valuesOf(subject: Subject): ValueTable {
  let table = tables.get(subject);
  if (table === undefined) {
    table = new Map([
      ...machineValues(subject),
      ...sizeValues(subject.machine),
      ...partValues(subject),
      ...planValues(subject),
      ...workshopValues(subject),
      ...practiceValues(),
      ...studyValues(subject),
    ]);
    tables.set(subject, table);
  }
  return table;
}

/** Values under `now.exciter.…`: the same study with what a person has set. */
export function valuesNow(subject: Subject, choice: ExciterChoice): ValueTable {
  const { machine, solids, masses, fit } = subject;
  return new Map(exciterValues('now.exciter', exciterStudy(machine, solids, masses, choice, fit)));
}

function* machineValues({ machine }: Subject): Generator<readonly [string, NamedValue]> {
  yield ['machine.name', { text: machine.name }];
  yield ['machine.drum_width_m', namedNumber('_m', machine.drumWidth_m)];
  yield ['machine.drum_radius_m', namedNumber('_m', machine.drumRadius_m)];
  yield ['machine.drum_diameter_m', namedNumber('_m', 2 * machine.drumRadius_m)];
  const { drum_axle_mass_kg, operating_mass_kg } = machine.operation;
  yield ['machine.rear_axle_mass_kg', namedNumber('_kg', operating_mass_kg - drum_axle_mass_kg)];
  yield [
    'machine.linear_load_N_m',
    namedNumber('linear_N_m', (drum_axle_mass_kg * STANDARD_GRAVITY) / machine.drumWidth_m),
  ];
  yield* flatten('operation', machine.operation);
  const { shot_mass_kg, shot_density_kg_m3, ball_diameter_m } = machine.operation;
  const ball_kg = (shot_density_kg_m3 * Math.PI * ball_diameter_m ** 3) / 6;
  yield ['operation.ball_count', { si: Math.round(shot_mass_kg / ball_kg), quantity: 'count' }];
  for (const relation of machine.relations)
    if (relation.type === 'fluid' && relation.volume_m3 !== undefined)
      yield [`fluid.${relation.fluid}.volume_m3`, namedNumber('_m3', relation.volume_m3)];
  yield* flatten('isolation', machine.isolation);
  yield* flatten('drive', machine.drive);
  yield* flatten('articulation', machine.articulation);
}

function* partValues({ machine, masses }: Subject): Generator<readonly [string, NamedValue]> {
  const options = defaultOptions(machine);
  const present = machine.parts.filter((p) => isPresent(p, options, true));
  const counts = new Map<string, number>();
  for (const part of present) counts.set(part.kind, (counts.get(part.kind) ?? 0) + 1);
  for (const [kind, count] of counts) {
    yield [`part.${kind}.count`, { si: count, quantity: 'count' }];
    const mass = masses[kind]?.mass_kg;
    if (mass !== undefined) yield [`part.${kind}.mass_kg`, { si: mass, quantity: 'mass' }];
    const item = machine.kinds[kind]?.item;
    if (item !== undefined) yield [`part.${kind}.item`, { si: item, quantity: 'count' }];
  }
  const kinds = new Map(machine.parts.map((p) => [p.id, p.kind]));
  for (const unit of machine.units) {
    yield [`unit.${unit.id}.count`, { si: unit.partIds.length, quantity: 'count' }];
    const mass = unit.partIds.reduce((sum, id) => sum + (masses[kinds.get(id) ?? '']?.mass_kg ?? 0), 0);
    yield [`unit.${unit.id}.mass_kg`, { si: mass, quantity: 'mass' }];
    if (unit.group === null) continue;
    const { thread, tool, pattern, engaged_m, grip_m } = unit.group;
    const name = `fastener.${unit.id}`;
    yield [`${name}.thread`, { text: thread.designation }];
    if (thread.class !== null) yield [`${name}.class`, { text: thread.class }];
    yield [`${name}.diameter_m`, { si: thread.diameter_m, quantity: 'length-small' }];
    yield [`${name}.tool_m`, { si: tool.size_m, quantity: 'length-small' }];
    yield [`${name}.engaged_m`, { si: engaged_m, quantity: 'length-small' }];
    yield [`${name}.grip_m`, { si: grip_m, quantity: 'length-small' }];
    if (pattern.type === 'circle')
      yield [`${name}.circle_radius_m`, { si: pattern.radius_m, quantity: 'length-small' }];
  }
}

function* planValues({ teardown }: Subject): Generator<readonly [string, NamedValue]> {
  yield ['plan.steps', { si: teardown.steps.length, quantity: 'count' }];
  let last = 0;
  for (const step of teardown.steps) {
    last += step.time_s;
    for (const id of step.unitIds) {
      yield [`plan.step_of.${id}`, { si: step.index + 1, quantity: 'count' }];
      // The first step that takes it off the machine: what it leaves with is lifted too.
      if (step.kind === 'remove') yield [`plan.lifted_with.${id}_kg`, { si: step.mass_kg, quantity: 'mass' }];
    }
  }
  yield ['plan.time_s', { si: last, quantity: 'time' }];
}

/** What the exposure of the isolation study is counted for. */
const HOURS_A_DAY = 8;

function* studyValues(subject: Subject): Generator<readonly [string, NamedValue]> {
  const { machine, solids, masses, fit } = subject;
  const exciter = exciterStudy(machine, solids, masses, OWN_CHOICE, fit);
  yield* exciterValues('study.exciter', exciter);
  yield* lifeValues(machine.operation.bearings, exciter);
  yield* driveValues(machine);
  const basis = rollerBasis(machine, solids, masses);
  if (basis === null) return;
  yield* flatten('study.roller', basis);
  yield* flatten('study.identify', identifyStudy(machine, basis, false));
  if (exciter !== null) yield* groundValues(subject, basis, exciter);
  const high = exciter?.high.value;
  if (high === undefined || high === null) return;
  const { stiffness_N_m, damping_Ns_m } = SOILS.find((soil) => soil.id === 'medium')!;
  const isolation = isolationStudy(basis, {
    unbalance_kgm: high.U_kgm,
    frequency_Hz: machine.operation.frequency_high_Hz,
    soil_stiffness_N_m: stiffness_N_m,
    soil_damping_Ns_m: damping_Ns_m,
    hardness_left_IRHD: basis.isolation.hardness_IRHD,
    hardness_right_IRHD: basis.isolation.hardness_IRHD,
    states: {},
    crack_share: 0,
    hours_a_day: HOURS_A_DAY,
  });
  if (isolation === null) return;
  yield* flatten('study.isolation', isolation);
  for (const end of isolation.ends) yield* flatten(`study.isolation.${end.end}`, end);
}

/** Rating life of each exciter bearing in each range, hours under `_h`. */
function* lifeValues(
  { C_N }: Subject['machine']['operation']['bearings'],
  exciter: ReturnType<typeof exciterStudy>,
): Generator<readonly [string, NamedValue]> {
  for (const range of ['high', 'low'] as const) {
    const half = exciter?.[range];
    if (half?.value === undefined || half.value === null) continue;
    for (const side of ['left', 'right'] as const) {
      const life = bearingLife({
        C_N,
        P_N: side === 'left' ? half.value.bearing_left_N : half.value.bearing_right_N,
        p: 'roller',
        speed_rpm: 60 * half.frequency_Hz,
      });
      if (life.ok && life.value.L10_h !== null)
        yield [`study.bearing-life.${range}.${side}_h`, { si: life.value.L10_h, quantity: 'plain' }];
    }
  }
}

function* exciterValues(
  name: string,
  study: ReturnType<typeof exciterStudy>,
): Generator<readonly [string, NamedValue]> {
  if (study === null) return;
  const { housing: _drawing, ...numbers } = study;
  yield* flatten(name, numbers);
  for (const direction of ['high', 'low'] as const) {
    const half = study[direction];
    yield [`${name}.${direction}.speed_rpm`, { si: 2 * Math.PI * half.frequency_Hz, quantity: 'rotation' }];
    const amplitude_m = half.value?.nominalAmplitude_m ?? null;
    if (amplitude_m !== null)
      yield [`${name}.${direction}.doubleAmplitude_m`, namedNumber('_m', 2 * amplitude_m)];
  }
}
