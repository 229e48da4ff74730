/**
 * Questions about force, life, traction and load with numbers drawn anew each time. Answers come from core/mechanics;
 * wrong options are what the usual mistakes give (force taken as following speed alone, life as following load, ...).
 */
import { STANDARD_GRAVITY } from '../../kernel';
import {
  bearingLife,
  centrifugalForce,
  combinedUnbalance,
  impactSpacing,
  pullPerPressure,
  unbalanceOf,
} from '../../mechanics';
import { shuffled } from '../asking';
import type { Content } from '../content';
import type { Option } from '../item';
import { frameOf, type Generator, oneOf, phrase, randomOf } from './frame';

const BEVAN = 'T. Bevan, The Theory of Machines, ch. 15';
const ISO_281 = 'ISO 281:2007, L10 = (C/P)^(10/3) for roller bearings';
const NUNNALLY = 'S. W. Nunnally, Construction Methods and Management, ch. 4';

/** A share as a signed percentage of change. */
const share = (ratio: number): Content => ({ si: Math.abs(ratio - 1), quantity: 'share', figures: 2 });
const changeOption = (id: string, ratio: number, why?: Content): Option => {
  const says = phrase(
    Math.abs(ratio - 1) < 5e-3 ? 'gen.change.same' : ratio > 1 ? 'gen.change.more' : 'gen.change.less',
    { share: share(ratio) },
  );
  return why === undefined ? { id, says } : { id, says, why };
};

/** Options whose shown change differs by at least a percentage point each; the right one stays. */
function apart(options: readonly (readonly [string, number, Content?])[]): readonly Option[] {
  const kept: (readonly [string, number, Content?])[] = [];
  for (const each of options)
    if (kept.every(([, ratio]) => Math.abs(ratio - each[1]) >= 0.015)) kept.push(each);
  return kept.map(([id, ratio, why]) => changeOption(id, ratio, why));
}

/** 'The speed changes by so much. What does the force do?' */
export const forceBySpeed: Generator = (_subject, seed) => {
  const generator = 'force-by-speed';
  const random = randomOf(generator, seed);
  const change = oneOf([-0.3, -0.25, -0.2, -0.15, -0.1, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5], random);
  const k = 1 + change;
  const ratio = centrifugalForce(1, k) / centrifugalForce(1, 1);
  return {
    ...frameOf({
      generator,
      seed,
      difficulty: 2,
      source: BEVAN,
      place: 'bench/exciter',
      terms: ['centrifugal-force'],
    }),
    kind: 'choose-one',
    prompt: phrase(change > 0 ? 'gen.force.faster' : 'gen.force.slower', { share: share(k) }),
    options: shuffled(
      apart([
        ['square', ratio],
        ['linear', k, phrase('gen.force.why-linear')],
        ['cube', k ** 3, phrase('gen.force.why-cube')],
        ['same', 1, phrase('gen.force.why-same')],
        ['inverse', 1 / ratio, phrase('gen.force.why-inverse')],
      ]).slice(0, 4),
      random,
    ),
    right: 'square',
    keepOrder: false,
    explain: phrase('gen.force.explain', {
      speed: { si: k, quantity: 'plain' },
      force: { si: ratio, quantity: 'plain' },
    }),
  };
};

/** What follows speed, and which way. */
const FOLLOWS = {
  force: { up: 'more', down: 'less' },
  unbalance: { up: 'same', down: 'same' },
  weight: { up: 'same', down: 'same' },
  life: { up: 'less', down: 'more' },
} as const;

/** 'The exciter turns faster. What happens to ...?' */
export const whatFollowsSpeed: Generator = (_subject, seed) => {
  const generator = 'follows-speed';
  const random = randomOf(generator, seed);
  const what = oneOf(Object.keys(FOLLOWS) as (keyof typeof FOLLOWS)[], random);
  const way = oneOf(['up', 'down'] as const, random);
  const right = FOLLOWS[what][way];
  const opposite = way === 'up' ? 'less' : 'more';
  return {
    ...frameOf({
      generator,
      seed,
      difficulty: 2,
      source: what === 'life' ? ISO_281 : BEVAN,
      place: 'bench/exciter',
    }),
    kind: 'direction',
    set: 'change',
    prompt: phrase(`gen.follows.${what}-${way}`),
    right,
    why:
      right === 'same'
        ? {
            more: phrase(`gen.follows.why-${what}`),
            less: phrase(`gen.follows.why-${what}`),
          }
        : {
            same: phrase(`gen.follows.why-${what}`),
            [right === 'less' ? 'more' : opposite]: phrase(`gen.follows.why-${what}`),
          },
    explain: phrase(`gen.follows.explain-${what}`),
  };
};

/** 'So much unbalance, so many turns: how large is the force?' */
export const forceNumber: Generator = (_subject, seed) => {
  const generator = 'force-number';
  const random = randomOf(generator, seed);
  const mass_kg = 10 * (2 + random.index(9));
  const radius_m = 0.01 * (4 + random.index(7));
  const frequency_Hz = oneOf([25, 28, 30, 32, 34, 36], random);
  const force = centrifugalForce(unbalanceOf(mass_kg, radius_m), 2 * Math.PI * frequency_Hz);
  return {
    ...frameOf({ generator, seed, difficulty: 3, source: BEVAN, terms: ['centrifugal-force', 'unbalance'] }),
    kind: 'number',
    prompt: phrase('gen.force-number.ask', {
      mass: { si: mass_kg, quantity: 'mass' },
      radius: { si: radius_m, quantity: 'length-small' },
      frequency: { si: frequency_Hz, quantity: 'frequency' },
    }),
    quantity: 'force-large',
    right_si: force,
    tolerance_si: 0.03 * force,
    explain: phrase('gen.force-number.explain', {
      unbalance: { si: unbalanceOf(mass_kg, radius_m), quantity: 'unbalance' },
      force: { si: force, quantity: 'force-large' },
    }),
  };
};

/** Fixed and swinging weight: together, against each other, or square to each other. */
export const twoWeights: Generator = (_subject, seed) => {
  const generator = 'two-weights';
  const random = randomOf(generator, seed);
  const fixed = 0.5 * (4 + random.index(7));
  const swinging = 0.5 * (1 + random.index(Math.max(1, 2 * fixed - 2)));
  const how = oneOf(['together', 'against', 'square'] as const, random);
  const phase = { together: 0, against: Math.PI, square: Math.PI / 2 }[how];
  const total = combinedUnbalance(fixed, swinging, phase);
  return {
    ...frameOf({ generator, seed, difficulty: 3, source: BEVAN, terms: ['unbalance'] }),
    kind: 'number',
    prompt: phrase(`gen.two-weights.${how}`, {
      fixed: { si: fixed, quantity: 'unbalance' },
      swinging: { si: swinging, quantity: 'unbalance' },
    }),
    quantity: 'unbalance',
    right_si: total,
    tolerance_si: 0.03 * Math.max(total, 0.1),
    explain: phrase(`gen.two-weights.explain-${how}`, { total: { si: total, quantity: 'unbalance' } }),
  };
};

/** 'The load on a bearing rises by so much. How much of its life is left?' */
export const lifeByLoad: Generator = (_subject, seed) => {
  const generator = 'life-by-load';
  const random = randomOf(generator, seed);
  const k = 1 + oneOf([-0.3, -0.2, -0.1, 0.1, 0.2, 0.3, 0.5], random);
  const life = (P_N: number): number => {
    const found = bearingLife({ C_N: 100, P_N, p: 'roller' });
    return found.ok ? found.value.L10_Mrev : NaN;
  };
  const ratio = life(10 * k) / life(10);
  return {
    ...frameOf({ generator, seed, difficulty: 2, source: ISO_281, place: 'bench/exciter' }),
    kind: 'choose-one',
    prompt: phrase(k > 1 ? 'gen.life.heavier' : 'gen.life.lighter', { share: share(k) }),
    options: shuffled(
      apart([
        ['power', ratio],
        ['inverse', 1 / k, phrase('gen.life.why-linear')],
        ['same', 1, phrase('gen.life.why-same')],
        ['square', 1 / k ** 2, phrase('gen.life.why-square')],
        ['wrong-way', k, phrase('gen.life.why-way')],
      ]).slice(0, 4),
      random,
    ),
    right: 'power',
    keepOrder: false,
    explain: phrase('gen.life.explain'),
  };
};

/** 'At this pressure, how hard does the drum pull?' with the machine's own motor. */
export const drumPull: Generator = ({ machine }, seed) => {
  const generator = 'drum-pull';
  const random = randomOf(generator, seed);
  const { drive, operation } = machine;
  if (drive === undefined) return null;
  const range = oneOf(['low', 'high'] as const, random);
  const pressure_Pa = oneOf([100, 150, 200, 250, 300, 350], random) * 1e5;
  const { drum } = drive;
  const pull =
    pressure_Pa *
    pullPerPressure(
      {
        displacement_low_m3_rev: drum.displacement_low_m3_rev,
        displacement_high_m3_rev: drum.displacement_high_m3_rev,
        gear_ratio: drum.gear_ratio,
        radius_m: drum.rolling_radius_m,
        load_N: operation.drum_axle_mass_kg * STANDARD_GRAVITY,
        efficiency: drum.efficiency,
        adhesion: 1,
      },
      range,
    );
  return {
    ...frameOf({ generator, seed, difficulty: 3, source: NUNNALLY, place: 'studies/two-speed' }),
    kind: 'number',
    prompt: phrase('gen.pull.ask', {
      range: phrase(`gen.range.${range}`),
      displacement: {
        si: range === 'low' ? drum.displacement_low_m3_rev : drum.displacement_high_m3_rev,
        quantity: 'displacement-volume',
        figures: 4,
      },
      efficiency: { si: drum.efficiency, quantity: 'share' },
      radius: { si: drum.rolling_radius_m, quantity: 'length-small' },
      pressure: { si: pressure_Pa, quantity: 'pressure' },
    }),
    quantity: 'force-large',
    right_si: pull,
    tolerance_si: 0.03 * pull,
    explain: phrase('gen.pull.explain', { force: { si: pull, quantity: 'force-large' } }),
  };
};

/** 'The slope asks for more pull than one end can give. Which range pulls harder, and why?' */
export const rangeOnSlope: Generator = ({ machine }, seed) => {
  const generator = 'range-on-slope';
  const random = randomOf(generator, seed);
  if (machine.drive === undefined) return null;
  const end = oneOf(['drum', 'axle'] as const, random);
  const asks = oneOf(['pull', 'speed'] as const, random);
  const motor = machine.drive[end];
  const strong = motor.displacement_low_m3_rev > motor.displacement_high_m3_rev ? 'low' : 'high';
  const right = asks === 'pull' ? strong : strong === 'low' ? 'high' : 'low';
  return {
    ...frameOf({ generator, seed, difficulty: 1, source: NUNNALLY, place: 'studies/two-speed' }),
    kind: 'choose-one',
    prompt: phrase(`gen.slope.${asks}-${end}`),
    options: [
      {
        id: 'low',
        says: phrase('gen.range.low'),
        ...(right === 'low' ? {} : { why: phrase('gen.slope.why-low') }),
      },
      {
        id: 'high',
        says: phrase('gen.range.high'),
        ...(right === 'high' ? {} : { why: phrase('gen.slope.why-high') }),
      },
      { id: 'alike', says: phrase('gen.slope.alike'), why: phrase('gen.slope.why-alike') },
    ],
    right,
    keepOrder: true,
    explain: phrase('gen.slope.explain'),
  };
};

/** 'Drum axle so heavy, drum so wide: how large is the static linear load?' */
export const linearLoad: Generator = (_subject, seed) => {
  const generator = 'linear-load';
  const random = randomOf(generator, seed);
  const width_m = oneOf([1.2, 1.5, 1.68, 2.0, 2.13], random);
  // 1.5 to 3.5 tonnes a metre, as soil rollers have it.
  const mass_kg = 100 * Math.round(width_m * (15 + random.index(21)));
  const load = (mass_kg * STANDARD_GRAVITY) / width_m;
  return {
    ...frameOf({ generator, seed, difficulty: 2, source: 'common practice', place: 'studies/compaction' }),
    kind: 'number',
    prompt: phrase('gen.linear.ask', {
      mass: { si: mass_kg, quantity: 'mass', figures: 4 },
      width: { si: width_m, quantity: 'length' },
    }),
    quantity: 'linear-load',
    right_si: load,
    tolerance_si: 0.03 * load,
    explain: phrase('gen.linear.explain', { load: { si: load, quantity: 'linear-load' } }),
  };
};

/** 'So fast, so many blows a second: how far apart do they fall?' */
export const blowSpacing: Generator = (_subject, seed) => {
  const generator = 'blow-spacing';
  const random = randomOf(generator, seed);
  const frequency_Hz = oneOf([25, 28, 30, 32, 34, 40], random);
  const speed_m_s = oneOf([2, 3, 4, 5, 6], random) / 3.6;
  const found = impactSpacing({ frequency_Hz, speed_m_s });
  if (!found.ok) return null;
  return {
    ...frameOf({ generator, seed, difficulty: 2, source: 'common practice', place: 'studies/compaction' }),
    kind: 'number',
    prompt: phrase('gen.blows.ask', {
      speed: { si: speed_m_s, quantity: 'speed' },
      frequency: { si: frequency_Hz, quantity: 'frequency' },
    }),
    quantity: 'length-small',
    right_si: found.value.spacing_m,
    tolerance_si: 0.04 * found.value.spacing_m,
    explain: phrase('gen.blows.explain', {
      spacing: { si: found.value.spacing_m, quantity: 'length-small' },
    }),
  };
};
