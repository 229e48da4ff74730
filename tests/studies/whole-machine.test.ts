import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ballastStudy,
  compactionStudy,
  drumRoom,
  HEARD_DRUM_SHARE,
  identifyStudy,
  isolationSides,
  isolationStudy,
  type IsolationChoice,
  mountStiffness,
  rollerBasis,
  SOILS,
  turning,
  twoSpeedStudy,
  type TwoSpeedChoice,
  vibrationStudy,
  type VibrationChoice,
  workedExample,
} from '../../src/core/studies';
import { parseMachine } from '../../src/core/machine';
import { rollerResponse } from '../../src/core/mechanics';
import { expectWithin, valueOf } from '../mechanics/value-of';
import { smallMachine } from '../machine/small-machine';
import { machine, masses, solids } from '../models/alder-one';

const basis = rollerBasis(machine, solids, masses)!;

describe('what the studies share', () => {
  it('finds masses and stiffness of the design from solids and data', () => {
    // Design basis of the training roller: about 4.0 t inside, 2.9 t on the drum, 3.9 MN/m at rest, 5.7 Hz at rest.
    expectWithin(basis.vibratingMass_kg, 4000, 3);
    expectWithin(basis.frameMass_kg, 2900, 4);
    const mount = mountStiffness(basis);
    expectWithin(mount.static_N_m, 3.9e6, 1);
    expectWithin(Math.sqrt(mount.static_N_m / basis.frameMass_kg) / (2 * Math.PI), 5.7, 5);
    expect(basis.isolators.map((set) => [set.end, set.partIds.length])).toEqual([
      ['left', 8],
      ['right', 8],
    ]);
  });

  it('a machine without isolators has no such study', () => {
    const small = valueOf(parseMachine([{ name: 'small.yaml', text: smallMachine }])).machine;
    expect(rollerBasis(small, {}, masses)).toBeNull();
    expect(twoSpeedStudy(small, TRACTION)).toBeNull();
  });
});

const VIBRATION: VibrationChoice = {
  unbalance_kgm: 7.03,
  frequency_Hz: 30,
  soil_stiffness_N_m: 15e6,
  soil_damping_Ns_m: 100e3,
  hardness_IRHD: 60,
};

describe('vibration', () => {
  it('calls the formula that the calculation calls, and marks where the linear answer is void', () => {
    const study = vibrationStudy(basis, VIBRATION)!;
    expect(study.linear).toEqual(valueOf(rollerResponse(study.input)));
    for (const point of study.sweep.filter((each) => each.soil_force_N !== null))
      expect(point.holds).toBe(point.soil_force_N! <= point.static_load_N);
    expect(study.sweep.some((each) => each.holds)).toBe(true);
    expect(study.sweep.some((each) => !each.holds)).toBe(true);
  });

  it('the drum moves far more than the frame, on every ground', () => {
    for (const ground of SOILS.filter((each) => each.stiffness_N_m <= 30e6)) {
      const study = vibrationStudy(basis, {
        ...VIBRATION,
        soil_stiffness_N_m: ground.stiffness_N_m,
        soil_damping_Ns_m: ground.damping_Ns_m,
      })!;
      expect(study.linear.drum_amplitude_m! / study.linear.frame_amplitude_m!).toBeGreaterThan(10);
      expect(study.time === null).toBe(ground.id === 'hung');
    }
  });

  it('hung in the air with stiff mounts: drum and frame move as one mass', () => {
    const study = vibrationStudy(basis, { ...VIBRATION, soil_stiffness_N_m: 0, soil_damping_Ns_m: 0 })!;
    const stiff = valueOf(
      rollerResponse({ ...study.input, mount_stiffness_N_m: 1e13, mount_damping_Ns_m: 0 }),
    );
    const all_kg = basis.vibratingMass_kg + basis.frameMass_kg;
    expectWithin(stiff.drum_amplitude_m, 7.03 / all_kg, 0.01);
    expectWithin(stiff.frame_amplitude_m, 7.03 / all_kg, 0.01);
  });

  it('refuses a hardness outside the table', () => {
    expect(vibrationStudy(basis, { ...VIBRATION, hardness_IRHD: 80 })).toBeNull();
  });
});

const ISOLATION: IsolationChoice = {
  unbalance_kgm: 7.03,
  frequency_Hz: 30,
  soil_stiffness_N_m: 15e6,
  soil_damping_Ns_m: 100e3,
  hardness_left_IRHD: 60,
  hardness_right_IRHD: 60,
  states: {},
  crack_share: 0.5,
  hours_a_day: 8,
};
const isolation = (choice: Partial<IsolationChoice> = {}) =>
  isolationStudy(basis, { ...ISOLATION, ...choice })!;

describe('isolation', () => {
  it('sound: sags and transmissibility of the design', () => {
    const [left, right] = isolation().ends;
    expectWithin(left!.sag_m, 6.5e-3, 7);
    expectWithin(right!.sag_m, 9.1e-3, 7);
    for (const end of [left!, right!]) {
      expect(end.transmissibility).toBeGreaterThan(0.03);
      expect(end.transmissibility).toBeLessThan(0.08);
    }
  });

  it('harder rubber lets more through; a lost isolator makes its end sag and lets less through', () => {
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 69 }), (hardness) => {
        const at = (left: number) => isolation({ hardness_left_IRHD: left }).ends[0]!;
        expect(at(hardness + 1).transmissibility!).toBeGreaterThan(at(hardness).transmissibility!);
        expect(at(hardness + 1).sag_m!).toBeLessThan(at(hardness).sag_m!);
      }),
      { seed: 4, numRuns: 15 },
    );
    const id = basis.isolators[1]!.partIds[2]!;
    const [left, right] = isolation({ states: { [id]: 'missing' } }).ends;
    expect(right!.standing).toBe(7);
    expectWithin(right!.sag_m! / isolation().ends[1]!.sag_m!, 8 / 7, 1e-6);
    expect(left!.sag_m).toBe(isolation().ends[0]!.sag_m);
    const cracked = isolation({ states: { [id]: 'cracked' }, crack_share: 0.25 }).ends[1]!;
    expectWithin(cracked.static_N_m / isolation().ends[1]!.static_N_m, 7.75 / 8, 1e-6);
  });

  it('all isolators of an end gone: nothing there is claimed', () => {
    const states = Object.fromEntries(basis.isolators[0]!.partIds.map((id) => [id, 'missing' as const]));
    const study = isolation({ states });
    expect(study.ends[0]).toMatchObject({ standing: 0, sag_m: null, transmissibility: null, exposure: null });
    expect(study.level_difference_m).toBeNull();
  });

  it('every part lies on one side only', () => {
    const { inside, isolators, outside } = isolationSides(machine);
    const all = [...inside, ...isolators, ...outside];
    expect(new Set(all).size).toBe(all.length);
    for (const id of ['shell', 'exciter', 'hub'])
      expect(inside.some((each) => each.startsWith(id))).toBe(true);
    for (const id of ['drive-plate', 'side-plate-left', 'rear-frame']) expect(outside).toContain(id);
    expect(isolators).toHaveLength(16);
  });
});

const TRACTION: TwoSpeedChoice = {
  grade_percent: 30,
  drum_adhesion: 0.3,
  axle_adhesion: 0.6,
  rolling_resistance_N_per_N: 0.05,
  relief_Pa: 40e6,
  speed_m_s: 1,
};

describe('two-speed traction', () => {
  const study = (choice: Partial<TwoSpeedChoice> = {}) => twoSpeedStudy(machine, { ...TRACTION, ...choice })!;

  it('the drum in high range takes less of the pull, so that it no longer breaks loose', () => {
    const [both, , drumHigh] = study().combinations;
    expect(both!.traction).toMatchObject({ climbs: false, limit: 'slip', slips_first: 'drum' });
    expect(drumHigh!.traction.climbs).toBe(true);
    expect(drumHigh!.traction.drum_share).toBeLessThan(both!.traction.drum_share);
    expectWithin(drumHigh!.drum_slip_Pa / both!.drum_slip_Pa, 1 / 0.6, 1e-6);
  });

  it('the end with the lower own slip pressure is the one that slips first', () => {
    for (const { traction, drum_slip_Pa, axle_slip_Pa } of study({ relief_Pa: 200e6 }).combinations) {
      expect(traction.slip_pressure_Pa).toBe(Math.min(drum_slip_Pa, axle_slip_Pa));
      expect(traction.slips_first).toBe(drum_slip_Pa <= axle_slip_Pa ? 'drum' : 'axle');
    }
  });

  it('flows add up to what the pump gives at top speed, and are none where it does not climb', () => {
    const fast = study({ grade_percent: 0, speed_m_s: 100 });
    for (const each of fast.combinations)
      expectWithin(each.drum_flow_m3_s + each.axle_flow_m3_s, fast.pump_flow_m3_s, 1e-6);
    expect(study().combinations[0]).toMatchObject({ drum_flow_m3_s: 0, axle_flow_m3_s: 0, speed_m_s: 0 });
  });

  it('worked example (common practice, no source): ratio 0.6, shares 37.5 and 62.5 %', () => {
    const example = workedExample();
    expect(example.displacement_ratio).toBeCloseTo(0.6, 12);
    expect(example.changed_share).toBeCloseTo(0.375, 12);
    expect(example.other_share).toBeCloseTo(0.625, 12);
    expect(example).toMatchObject({ climbs_low: false, climbs_high: true });
    expect(HEARD_DRUM_SHARE).not.toBeCloseTo(example.changed_share, 2);
  });
});

describe('compaction', () => {
  const study = (speed_m_s = 4 / 3.6, force_N = 250e3) =>
    compactionStudy(machine, basis, {
      force_N,
      frequency_Hz: 30,
      speed_m_s,
      soil_modulus_Pa: 30e6,
      soil_density_kg_m3: 1900,
      lift_m: 0.3,
      pad_sink_m: 0.01,
    })!;

  it('static linear load of about 32 kg/cm; total force is load plus centrifugal force', () => {
    expectWithin(study().static_linear_N_m / 980.665, 32.4, 0.5);
    expect(study().total_force_N - study().static_load_N).toBeCloseTo(250e3, 6);
    expectWithin(study().impacts.per_foot, 8.2, 1);
  });

  it('stress fades with depth, and strip and line agree well below the contact', () => {
    const { depths, at_claim } = study();
    for (const key of ['line_static_Pa', 'strip_static_Pa', 'line_total_Pa', 'strip_total_Pa'] as const)
      for (let i = 1; i < depths.length; i++) expect(depths[i]![key]).toBeLessThan(depths[i - 1]![key]);
    const deep = depths.at(-1)!;
    expectWithin(deep.strip_static_Pa, deep.line_static_Pa, 0.1);
    // near the surface the line knows no width and gives too much
    expect(depths[0]!.line_static_Pa).toBeGreaterThan(depths[0]!.strip_static_Pa);
    // the claim of 30 ft: less than a tenth of the soil's own weight there, even with the whole rated force
    expect(at_claim.line_total_Pa).toBeLessThan(0.1 * at_claim.own_weight_Pa);
  });

  it('at the fade depth the stress is a fifth of the soil weight', () => {
    const { fade_static_m, static_linear_N_m } = study();
    expectWithin(
      (2 * static_linear_N_m) / (Math.PI * fade_static_m),
      0.2 * 1900 * 9.80665 * fade_static_m,
      1e-6,
    );
  });

  it('pads press harder than the smooth drum', () => {
    const { pads, contact_pressure_Pa } = study();
    expect(pads).toMatchObject({ pads: 123, in_contact: 5 });
    expect(pads!.static_Pa).toBeGreaterThan(2 * contact_pressure_Pa);
  });
});

describe('ballast', () => {
  const room = drumRoom(machine, solids)!;
  const study = (fill_share: number, salt_mass_percent = 0) =>
    ballastStudy(machine, basis, room, {
      unbalance_high_kgm: 7.03,
      unbalance_low_kgm: 3.6,
      fill_share,
      salt_mass_percent,
      temperature_C: 15,
    })!;

  it('room between shell and case, less tubes and beads, against the formula of a hollow cylinder', () => {
    const hollow = Math.PI * (0.722 ** 2 - 0.231 ** 2) * 1.43;
    expect(room.volume_m3).toBeLessThan(hollow);
    expectWithin(room.volume_m3, hollow, 0.3);
    expect(room.from_x_m).toBeCloseTo(-0.73, 3);
    expect(room.to_x_m).toBeCloseTo(0.7, 3);
  });

  it('three quarters of water: its load and its cost in amplitude', () => {
    const water = study(0.75);
    expectWithin(water.total_kg, room.volume_m3 * 0.75 * 999.1, 1e-4);
    expectWithin(water.amplitude_after_m!.high, 7.03 / (basis.vibratingMass_kg + water.total_kg!), 1e-6);
    expectWithin(water.amplitude_loss, 1 - water.amplitude_after_m!.low / water.amplitude_before_m.low, 1e-6);
    expect(water.linear_after_N_m! - water.linear_before_N_m).toBeCloseTo(
      (water.total_kg! * 9.80665) / 2.13,
      6,
    );
    expect(study(0).amplitude_loss).toBe(0);
  });

  it('frozen: no mass is claimed', () => {
    const cold = { fill_share: 0.75, salt_mass_percent: 10, temperature_C: -20 };
    const frozen = ballastStudy(machine, basis, room, {
      unbalance_high_kgm: 7,
      unbalance_low_kgm: 4,
      ...cold,
    })!;
    expect(frozen).toMatchObject({ density_kg_m3: null, total_kg: null, amplitude_after_m: null });
    expect(frozen.notes.map((note) => note.key)).toEqual(['mechanics.note.brine-frozen']);
  });
});

describe('identify', () => {
  it('says what the trade says', () => {
    expect(identifyStudy(machine, basis, false)).toMatchObject({
      width_class_in: 84,
      drum_type: 'smooth',
      mass_class_t: 12,
      mass_class: 'heavy',
      rear_axle_kg: 5300,
    });
    expect(identifyStudy(machine, basis, true).drum_type).toBe('padded');
  });

  it('turning: both axle lines meet in the centre of the turn', () => {
    const articulation = machine.articulation!;
    const { drum_radius_m, axle_radius_m } = turning(articulation, machine.drumWidth_m);
    // drum axle on x = 0; joint at (0, 1.35); rear axle 1.65 m behind it, turned by the lock angle
    const angle = (articulation.steering_limit_deg * Math.PI) / 180;
    const axle = [1.65 * Math.sin(angle), 1.35 + 1.65 * Math.cos(angle)] as const;
    const along = [Math.cos(angle), -Math.sin(angle)] as const;
    // the drum's axle line is z = 0
    const reach = axle[1] / Math.sin(angle);
    expect(axle[0] + along[0] * reach).toBeCloseTo(drum_radius_m, 9);
    expect(reach).toBeCloseTo(axle_radius_m, 9);
  });
});
