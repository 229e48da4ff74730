/** Values of drum and ground: compaction, the drum on soft ground, isolators that have failed, liquid ballast. */
import { STANDARD_GRAVITY } from '../../kernel';
import { brine, rollerResponse } from '../../mechanics';
import {
  compactionStudy,
  type ExciterStudy,
  GUIDANCE,
  isolationStudy,
  type IsolatorState,
  mountStiffness,
  type RollerBasis,
  SOILS,
} from '../../studies';
import type { Subject } from '../subject';
import { flatten, namedNumber, type NamedValue } from './quantity-of';

type Values = Generator<readonly [string, NamedValue]>;

/** What the compaction study stands for in texts; `study.compaction.choice.…` says so too. */
const TRAVEL = { speed_m_s: 4 / 3.6, lift_m: 0.3, pad_sink_m: 0.01 } as const;
const FILL = { soil_modulus_Pa: 30e6, soil_density_kg_m3: 1900 } as const;
const BRINE = { salt_mass_percent: 20, temperature_C: 15 } as const;
const WATER = { ...BRINE, salt_mass_percent: 0 } as const;
/** A round ballast that texts reckon with; how much the drum holds is the study's business. */
const BALLAST_kg = 1000;
const HARD_IRHD = 70;

export function* groundValues(subject: Subject, basis: RollerBasis, exciter: ExciterStudy): Values {
  const high = exciter.high.value;
  const low = exciter.low.value;
  if (high === null || low === null) return;
  yield* flatten('study.compaction.choice', TRAVEL);
  const compaction = compactionStudy(subject.machine, basis, {
    ...TRAVEL,
    ...FILL,
    force_N: high.force_N,
    frequency_Hz: exciter.high.frequency_Hz,
  });
  if (compaction !== null) yield* flatten('study.compaction', compaction);
  yield* drumOnGround(basis, exciter);
  yield* failedIsolators(basis, high.U_kgm, exciter.high.frequency_Hz);
  yield* ballast(basis, high.U_kgm);
  yield* padShells(subject, basis, high.U_kgm);
  for (const { roller, passes, ...lift } of GUIDANCE) {
    yield* flatten(`study.compaction.guidance.${roller}`, lift);
    yield [`study.compaction.guidance.${roller}.passes_from`, { si: passes[0], quantity: 'count' }];
    yield [`study.compaction.guidance.${roller}.passes_to`, { si: passes[1], quantity: 'count' }];
  }
}

/** The padded shell round the drum: what it weighs, and the amplitude that is left with it. */
function* padShells({ machine, masses }: Subject, basis: RollerBasis, unbalance_kgm: number): Values {
  const shells = machine.parts.filter(
    (part) => machine.kinds[part.kind]?.params.builder === 'pad-segment' && part.option !== null,
  );
  if (shells.length === 0) return;
  const mass_kg = shells.reduce((sum, part) => sum + (masses[part.kind]?.mass_kg ?? 0), 0);
  yield ['study.pad-shells.count', { si: shells.length, quantity: 'count' }];
  yield ['study.pad-shells.mass_kg', namedNumber('_kg', mass_kg)];
  const amplitude_m = unbalance_kgm / (basis.vibratingMass_kg + mass_kg);
  yield ['study.pad-shells.amplitude_m', namedNumber('_m', amplitude_m)];
  const linear = ((basis.drumAxleMass_kg + mass_kg) * STANDARD_GRAVITY) / basis.drumWidth_m;
  yield ['study.pad-shells.linear_load_N_m', namedNumber('linear_N_m', linear)];
}

/** Drum and soil where the soil always carries; elsewhere the linear answer does not hold and nothing is named. */
function* drumOnGround(basis: RollerBasis, exciter: ExciterStudy): Values {
  const mount = mountStiffness(basis);
  for (const { id, stiffness_N_m, damping_Ns_m } of SOILS)
    for (const range of ['high', 'low'] as const) {
      const { value, frequency_Hz } = exciter[range];
      const response = rollerResponse({
        drum_mass_kg: basis.vibratingMass_kg,
        frame_mass_kg: basis.frameMass_kg,
        unbalance_kgm: value?.U_kgm ?? 0,
        frequency_Hz,
        mount_stiffness_N_m: mount.moving_N_m,
        mount_damping_Ns_m: mount.damping_Ns_m,
        soil_stiffness_N_m: stiffness_N_m,
        soil_damping_Ns_m: damping_Ns_m,
      });
      if (response.ok && response.value.contact !== 'lost')
        yield* flatten(`study.ground.${id}.${range}`, response.value);
    }
}

/** The isolation study on loose ground: as built, a set gone hard, one block torn out. */
function* failedIsolators(basis: RollerBasis, unbalance_kgm: number, frequency_Hz: number): Values {
  const soil = SOILS.find(({ id }) => id === 'loose')!;
  const own = basis.isolation.hardness_IRHD;
  const torn = basis.isolators.find(({ end }) => end === 'left')?.partIds[0];
  const cases: Readonly<Record<string, readonly [number, Readonly<Record<string, IsolatorState>>]>> = {
    sound: [own, {}],
    hard: [HARD_IRHD, {}],
    'one-gone': [own, torn === undefined ? {} : { [torn]: 'missing' }],
  };
  yield ['study.isolators.hard.hardness', { si: HARD_IRHD, quantity: 'plain' }];
  for (const [name, [hardness, states]] of Object.entries(cases)) {
    const study = isolationStudy(basis, {
      unbalance_kgm,
      frequency_Hz,
      soil_stiffness_N_m: soil.stiffness_N_m,
      soil_damping_Ns_m: soil.damping_Ns_m,
      hardness_left_IRHD: hardness,
      hardness_right_IRHD: hardness,
      states,
      crack_share: 0,
      hours_a_day: 8,
    });
    if (study === null) continue;
    yield* flatten(`study.isolators.${name}`, study);
    for (const end of study.ends) yield* flatten(`study.isolators.${name}.${end.end}`, end);
  }
}

/** What a tonne of liquid does, and when it freezes. */
function* ballast(basis: RollerBasis, unbalance_kgm: number): Values {
  yield ['study.ballast-tonne.mass_kg', { si: BALLAST_kg, quantity: 'mass' }];
  const loaded_kg = basis.vibratingMass_kg + BALLAST_kg;
  yield ['study.ballast-tonne.amplitude_m', namedNumber('_m', unbalance_kgm / loaded_kg)];
  yield ['study.ballast-tonne.amplitude_loss', namedNumber('loss', BALLAST_kg / loaded_kg)];
  const linear = ((basis.drumAxleMass_kg + BALLAST_kg) * STANDARD_GRAVITY) / basis.drumWidth_m;
  yield ['study.ballast-tonne.linear_load_N_m', namedNumber('linear_N_m', linear)];
  for (const [name, liquid] of Object.entries({ brine: BRINE, water: WATER })) {
    const found = brine(liquid);
    if (found.ok) yield* flatten(`liquid.${name}`, { ...liquid, ...found.value });
  }
}
