/** Numbers that come from the exciter's force: bearing lives, a joint's grip, amplitude to expect. */
import { message } from '../../kernel';
import { findUnit } from '../../machine';
import { bearingLife, bearingSystem, jointSlip, proofStrength_Pa, stressArea } from '../../mechanics';
import type { NumberSpec } from '../number-specs';
import type { SheetNumber } from '../sheet-types';
import { numberOf, type NumberContext } from './context';

type SpecOf<N extends NumberSpec['number']> = Extract<NumberSpec, { number: N }>;
const DIRECTIONS = ['high', 'low'] as const;
/** Share of proof load that a bolt is tightened to (J. E. Shigley, from memory). */
const PRELOAD_SHARE = 0.75;

export function bearingLifeNumbers(context: NumberContext, spec: SpecOf<'bearing-life'>): SheetNumber[] {
  const { study, machine } = context;
  if (study === null) return [];
  const { C_N } = machine.operation.bearings;
  const out: SheetNumber[] = [];
  for (const direction of DIRECTIONS) {
    const { value, frequency_Hz } = study[direction];
    if (value === null) continue;
    const sides = (['left', 'right'] as const).filter((s) => spec.side === 'both' || spec.side === s);
    const lives: number[] = [];
    for (const side of ['left', 'right'] as const) {
      const P_N = Math.abs(side === 'left' ? value.bearing_left_N : value.bearing_right_N);
      const life = bearingLife({ C_N, P_N, p: 'roller', speed_rpm: frequency_Hz * 60 });
      if (!life.ok || life.value.L10_h === null) continue;
      lives.push(life.value.L10_h);
      if (!sides.includes(side)) continue;
      const params = { side: message(`job.side.${side}`), direction: message(`exciter.${direction}`) };
      out.push(
        numberOf({
          name: 'bearing-load',
          params,
          value: P_N,
          quantity: 'force-large',
          source: 'exciter-study',
          calculation: 'unbalance',
        }),
        numberOf({
          name: 'bearing-life',
          params,
          value: life.value.L10_h * 3600,
          quantity: 'time',
          source: 'iso-281',
          calculation: 'bearing-life',
          notes: life.value.notes,
        }),
      );
    }
    if (spec.side !== 'both' || lives.length < 2) continue;
    const pair = bearingSystem({ lives_h: lives, exponent: 'roller' });
    if (pair.ok)
      out.push(
        numberOf({
          name: 'pair-life',
          params: { direction: message(`exciter.${direction}`) },
          value: pair.value.life_h * 3600,
          quantity: 'time',
          source: 'lundberg-palmgren',
          calculation: 'bearing-system',
        }),
      );
  }
  return out;
}

export function jointSlipNumbers(context: NumberContext, spec: SpecOf<'joint-slip'>): SheetNumber[] {
  const unit = findUnit(context.machine, spec.group);
  const thread = unit?.group?.thread;
  const proof_Pa =
    thread === undefined || thread.class === null ? null : proofStrength_Pa(thread.class, thread.diameter_m);
  if (unit === undefined || thread === undefined || proof_Pa === null) return [];
  const force_N = spec.force_N ?? context.study?.high.value?.force_N ?? 0;
  const preload_N = PRELOAD_SHARE * proof_Pa * stressArea(thread.diameter_m, thread.pitch_m);
  const found = jointSlip({ count: unit.partIds.length, preload_N, friction: spec.friction, force_N });
  if (!found.ok) return [];
  const params = { group: spec.group, friction: spec.friction };
  const base = { params, quantity: 'force-large', source: 'joint-slip', calculation: 'joint-slip' } as const;
  return [
    numberOf({ ...base, name: 'slip-force', value: found.value.slip_force_N }),
    numberOf({
      ...base,
      name: 'joint-force',
      value: force_N,
      source: spec.force_N === undefined ? 'exciter-study' : 'training-value',
      calculation: spec.force_N === undefined ? 'unbalance' : 'model',
      verdict: found.value.slips === null ? 'unknown' : found.value.slips ? 'bad' : 'good',
    }),
  ];
}

export function amplitudeNumbers({ study }: NumberContext): SheetNumber[] {
  if (study === null) return [];
  return DIRECTIONS.flatMap((direction) => {
    const { value, simulated, frequency_Hz, surface } = study[direction];
    const amplitude = value?.nominalAmplitude_m ?? null;
    const band = surface === 'settled' ? (simulated?.band.nominalAmplitude_m ?? 0) : 0;
    const params = { direction: message(`exciter.${direction}`) };
    return [
      numberOf({
        name: 'expected-amplitude',
        params,
        value: amplitude === null ? null : band > 0 ? [amplitude - band, amplitude + band] : amplitude,
        quantity: 'length-small',
        source: 'exciter-study',
        calculation: 'unbalance',
        notes: amplitude === null ? [message('job.note.low-not-known')] : [message('job.note.drum-free')],
      }),
      numberOf({
        name: 'expected-rate',
        params,
        value: 2 * Math.PI * frequency_Hz,
        quantity: 'rotation',
        source: 'training-value',
        calculation: 'model',
      }),
    ];
  });
}
