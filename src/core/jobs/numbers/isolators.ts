/** Numbers of isolators: how stiff a set is, how it hangs and what it lets through; matching; shims. */
import { message, STANDARD_GRAVITY } from '../../kernel';
import { kindNamed, partsOfRef } from '../../machine';
import { alignment, rubberMount, setMatch, singleDof } from '../../mechanics';
import type { NumberSpec } from '../number-specs';
import type { SheetNumber } from '../sheet-types';
import { basisOf, numberOf, type NumberContext, valueOf, valuesOf, WAITS } from './context';

type SpecOf<N extends NumberSpec['number']> = Extract<NumberSpec, { number: N }>;

export function isolatorNumbers(context: NumberContext, spec: SpecOf<'isolators'>): SheetNumber[] {
  const { machine } = context;
  const basis = basisOf(context);
  if (basis === null) return [];
  const { hardness_IRHD, dynamic_factor, damping_ratio } = basis.isolation;
  return spec.sets.flatMap((set) => {
    const params = kindNamed(machine, set)?.params;
    if (params?.builder !== 'isolator') return [];
    const mount = rubberMount({
      shape: 'disc',
      d_m: params.rubber_diameter_m,
      t_m: params.rubber_length_m,
      hardness_IRHD,
    });
    if (!mount.ok) return [];
    const count = partsOfRef(machine, set).length;
    const shear = count * mount.value.shear_N_m;
    // half of the frame's share rests on each end
    const mass_kg = basis.frameMass_kg / 2;
    const stiffness_N_m = shear * dynamic_factor;
    const omega_rad_s = 2 * Math.PI * machine.operation.frequency_high_Hz;
    const swing = singleDof({
      mass_kg,
      stiffness_N_m,
      damping_Ns_m: 2 * damping_ratio * Math.sqrt(stiffness_N_m * mass_kg),
      omega_rad_s,
    });
    const label = { set, count, hardness_IRHD };
    const rubber = { params: label, source: 'rubber', calculation: 'rubber-mount' } as const;
    return [
      numberOf({ ...rubber, name: 'set-shear', value: shear, quantity: 'stiffness' }),
      numberOf({
        ...rubber,
        name: 'set-compression',
        value: count * mount.value.compression_N_m,
        quantity: 'stiffness',
      }),
      numberOf({
        ...rubber,
        name: 'set-sag',
        value: (mass_kg * STANDARD_GRAVITY) / shear,
        quantity: 'length-small',
      }),
      ...(swing.ok
        ? [
            numberOf({
              ...rubber,
              name: 'set-natural',
              value: swing.value.natural_rad_s / (2 * Math.PI),
              quantity: 'frequency',
              source: 'single-dof',
              calculation: 'single-dof',
            }),
            numberOf({
              ...rubber,
              name: 'set-passes',
              value: swing.value.transmissibility,
              quantity: 'share',
              source: 'single-dof',
              calculation: 'single-dof',
            }),
          ]
        : []),
    ];
  });
}

export function setMatchNumbers(context: NumberContext, spec: SpecOf<'set-match'>): SheetNumber[] {
  const params = kindNamed(context.machine, spec.set)?.params;
  if (params?.builder !== 'isolator') return [];
  const values = spec.fields.map((id) => valueOf(context, id));
  const found = values.some((v) => v === null)
    ? null
    : setMatch({
        hardness_IRHD: values as number[],
        d_m: params.rubber_diameter_m,
        t_m: params.rubber_length_m,
      });
  const base = { params: { set: spec.set }, source: 'rubber', calculation: 'isolator-set' } as const;
  if (found === null || !found.ok) {
    const notes = found === null ? [WAITS] : found.faults.map((f) => f.expected);
    return [
      numberOf({ ...base, name: 'set-spread', value: null, quantity: 'plain', verdict: 'unknown', notes }),
    ];
  }
  const { value } = found;
  return [
    numberOf({
      ...base,
      name: 'set-spread',
      value: value.spread_IRHD,
      quantity: 'plain',
      verdict: value.matched ? 'good' : 'bad',
      notes: value.notes,
    }),
    numberOf({ ...base, name: 'set-stiffest', value: value.stiffest_over_mean, quantity: 'plain' }),
  ];
}

export function shimNumbers(context: NumberContext, spec: SpecOf<'shims'>): SheetNumber[] {
  const gaps_m = valuesOf(context, spec.fields);
  const base = { source: 'corner-shims', calculation: 'alignment', quantity: 'length-small' } as const;
  const found =
    gaps_m === null ? null : alignment({ gaps_m, shim_step_m: spec.step_m, tolerance_m: spec.tolerance_m });
  if (found === null || !found.ok) {
    const notes = found === null ? [WAITS] : found.faults.map((f) => f.expected);
    return [numberOf({ ...base, name: 'gap-spread', value: null, verdict: 'unknown', notes })];
  }
  const { value } = found;
  return [
    numberOf({
      ...base,
      name: 'gap-spread',
      value: value.spread_before_m,
      verdict: value.spread_before_m <= (spec.tolerance_m ?? 0.003) ? 'good' : 'bad',
    }),
    ...(Object.entries(value.shims_m) as [string, number][]).map(([corner, shim]) =>
      numberOf({ ...base, name: 'shim', params: { corner: message(`job.corner.${corner}`) }, value: shim }),
    ),
    numberOf({
      ...base,
      name: 'gap-spread-after',
      value: value.spread_after_m,
      verdict: value.within_tolerance ? 'good' : 'bad',
      notes: value.notes,
    }),
    numberOf({ ...base, name: 'gap-twist', value: Math.abs(value.twist_m) }),
  ];
}
