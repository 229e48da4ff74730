/** Numbers of service work: end play, scrapers, oil, rigging, pull to tow. */
import { message } from '../../kernel';
import { endPlay, oilVolume, rigging, type ScraperEnds, scraperGap, traction } from '../../mechanics';
import { STANDARD_GRAVITY } from '../../kernel';
import { kindNamed } from '../../machine';
import type { NumberSpec } from '../number-specs';
import type { SheetNumber } from '../sheet-types';
import { numberOf, type NumberContext, valueOf, valuesOf, WAITS } from './context';

type SpecOf<N extends NumberSpec['number']> = Extract<NumberSpec, { number: N }>;

export function endPlayNumbers(context: NumberContext, spec: SpecOf<'end-play'>): SheetNumber[] {
  const thread = context.machine.relations.find(
    (r) => r.type === 'thread' && r.male === spec.male && r.female === spec.female,
  );
  const end_play_m = valueOf(context, spec.field);
  const base = { source: 'end-play', calculation: 'end-play' } as const;
  const band = numberOf({
    ...base,
    name: 'end-play-band',
    value: [spec.min_m, spec.max_m],
    quantity: 'length-fine',
    source: 'training-value',
  });
  if (thread?.type !== 'thread') return [band];
  const found =
    end_play_m === null
      ? null
      : endPlay({
          end_play_m,
          target_min_m: spec.min_m,
          target_max_m: spec.max_m,
          thread_pitch_m: thread.pitch_m,
          lock_places: spec.lock_places,
        });
  if (found === null || !found.ok) {
    const notes = found === null ? [WAITS] : found.faults.map((f) => f.expected);
    const waiting = numberOf({
      ...base,
      name: 'end-play-turn',
      value: null,
      quantity: 'angle',
      verdict: 'unknown',
      notes,
    });
    return [band, waiting];
  }
  const { value } = found;
  return [
    band,
    numberOf({
      ...base,
      name: `end-play-${value.verdict}`,
      value: end_play_m,
      quantity: 'length-fine',
      verdict: value.verdict === 'within' ? 'good' : 'bad',
      notes: value.notes,
    }),
    numberOf({
      ...base,
      name: 'end-play-turn',
      value: (value.turn_deg * Math.PI) / 180,
      quantity: 'angle',
      notes:
        value.turn_places === null ? [] : [message('job.note.lock-places', { places: value.turn_places })],
    }),
  ];
}

export function scraperNumbers(context: NumberContext, spec: SpecOf<'scrapers'>): SheetNumber[] {
  const gaps = valuesOf(context, spec.fields);
  const depths = spec.depths === undefined ? null : valuesOf(context, spec.depths);
  const base = { source: 'scrapers', calculation: 'scraper-gap', quantity: 'length-small' } as const;
  const found =
    gaps === null
      ? null
      : scraperGap({
          gaps_m: gaps as ScraperEnds,
          target_m: spec.target_m,
          tolerance_m: spec.tolerance_m,
          travel_m: spec.travel_m,
          depths_m: depths === null ? undefined : (depths as ScraperEnds),
          new_depth_m: spec.new_depth_m,
        });
  const target = numberOf({
    ...base,
    name: 'scraper-target',
    value: [spec.target_m - spec.tolerance_m, spec.target_m + spec.tolerance_m],
    source: 'training-value',
    calculation: 'model',
  });
  if (found === null || !found.ok) {
    const notes = found === null ? [WAITS] : found.faults.map((f) => f.expected);
    return [
      target,
      numberOf({
        ...base,
        name: 'scraper-uneven',
        params: { bar: '' },
        value: null,
        verdict: 'unknown',
        notes,
      }),
    ];
  }
  return [
    target,
    ...(['front', 'rear'] as const).flatMap((bar) => {
      const each = found.value[bar];
      const params = { bar: message(`job.bar.${bar}`), travel: message(`job.travel.${each.works_in}`) };
      return [
        numberOf({ ...base, name: 'scraper-move-left', params, value: each.move_left_m }),
        numberOf({ ...base, name: 'scraper-move-right', params, value: each.move_right_m }),
        numberOf({
          ...base,
          name: 'scraper-uneven',
          params,
          value: each.uneven_m,
          verdict: each.even && each.within ? 'good' : 'bad',
        }),
        ...(each.wear_left_m === null || each.wear_right_m === null
          ? []
          : [
              numberOf({
                ...base,
                name: 'scraper-wear',
                params,
                value: [
                  Math.min(each.wear_left_m, each.wear_right_m),
                  Math.max(each.wear_left_m, each.wear_right_m),
                ],
                verdict: each.worn_out === true ? 'bad' : 'good',
              }),
            ]),
      ];
    }),
  ];
}

export function oilNumbers({ machine }: NumberContext, spec: SpecOf<'oil'>): SheetNumber[] {
  const relation = machine.relations.find((r) => r.type === 'fluid' && r.fluid === spec.fluid);
  const params = kindNamed(machine, spec.case)?.params;
  const base = { params: { fluid: spec.fluid }, quantity: 'volume' } as const;
  const stated =
    relation?.type === 'fluid' && relation.volume_m3 !== undefined
      ? [
          numberOf({
            ...base,
            name: 'oil-stated',
            value: relation.volume_m3,
            source: 'training-value',
            calculation: 'model',
          }),
        ]
      : [];
  const radius_m = params?.builder === 'turned' ? params.stations[0]?.inner_m : undefined;
  if (radius_m === undefined) return stated;
  const found = oilVolume({
    radius_m,
    length_m: spec.to_x_m - spec.from_x_m,
    level_m: spec.level_m,
    displaced_m3: spec.displaced_m3,
    density_kg_m3: machine.materials['oil']?.density_kg_m3,
  });
  if (!found.ok) return stated;
  return [
    ...stated,
    numberOf({
      ...base,
      name: 'oil-to-level',
      value: found.value.volume_m3,
      source: 'segment',
      calculation: 'oil-volume',
    }),
    numberOf({
      ...base,
      name: 'oil-mass',
      value: found.value.mass_kg,
      quantity: 'mass',
      source: 'segment',
      calculation: 'oil-volume',
    }),
  ];
}

export function riggingNumbers(_: NumberContext, spec: SpecOf<'rigging'>): SheetNumber[] {
  const found = rigging({ angle_deg: 90 - spec.angle_from_horizontal_deg });
  if (!found.ok) return [];
  const params = { angle_deg: spec.angle_from_horizontal_deg };
  const base = { params, quantity: 'share', calculation: 'rigging', training: false } as const;
  return [
    numberOf({
      ...base,
      name: 'eye-share',
      value: found.value.eye_share,
      source: 'eye-table',
      notes: found.value.notes,
    }),
    numberOf({ ...base, name: 'shackle-share', value: found.value.shackle_share, source: 'shackle-table' }),
  ];
}

export function towPullNumbers({ machine }: NumberContext, spec: SpecOf<'tow-pull'>): SheetNumber[] {
  const { drive, operation } = machine;
  if (drive === undefined) return [];
  const load = (mass_kg: number): number => mass_kg * STANDARD_GRAVITY;
  const end = (which: 'drum' | 'axle', load_N: number) => {
    const { rolling_radius_m: radius_m, ...rest } = drive[which];
    return { ...rest, radius_m, load_N, adhesion: 0.5 };
  };
  const found = traction({
    drum: end('drum', load(operation.drum_axle_mass_kg)),
    axle: end('axle', load(operation.operating_mass_kg - operation.drum_axle_mass_kg)),
    drum_range: 'low',
    axle_range: 'low',
    grade_percent: spec.grade_percent,
    rolling_resistance_N_per_N: spec.rolling,
    relief_Pa: drive.relief_Pa,
  });
  if (!found.ok) return [];
  return [
    numberOf({
      name: 'tow-pull',
      params: { grade: spec.grade_percent, rolling: spec.rolling },
      value: found.value.pull_needed_N,
      quantity: 'force-large',
      source: 'grade-and-rolling',
      calculation: 'traction',
    }),
  ];
}
