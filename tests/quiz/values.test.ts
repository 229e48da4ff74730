/** Named values of workshop, ground and practice against formulas written out here. */
import { describe, expect, it } from 'vitest';
import { buildGraph, planOnGraph } from '../../src/core/assembly';
import { type Subject, valuesOf } from '../../src/core/quiz';
import { CALCULATIONS } from '../../src/edge/cli/registry';
import { runCalc } from '../../src/edge/cli/run-calc';
import { rollerBasis, SOILS, vibrationStudy } from '../../src/core/studies';
import { fit, machine, masses, solids } from '../models/alder-one';

const graph = buildGraph(machine, solids, masses);
const subject: Subject = { machine, solids, masses, fit, graph, teardown: planOnGraph(machine, graph) };
const values = valuesOf(subject);
const si = (name: string): number => {
  const value = values.get(name);
  if (value === undefined || !('si' in value)) throw new Error(`no number ${name}`);
  return value.si;
};

describe('values of the workshop', () => {
  it('fits: P6 at 215 is 11 to 70 micrometres tight on a ring of 0 to -30 (ISO 286, ISO 492, from memory)', () => {
    expect(si('seat.exciter-bearing-right.bearing-carrier-right.tight_least_m')).toBeCloseTo(11e-6, 9);
    expect(si('seat.exciter-bearing-right.bearing-carrier-right.tight_most_m')).toBeCloseTo(70e-6, 9);
    // f6 at 100: -36 to -58 under a bore of 0 to -20
    expect(si('seat.exciter.exciter-bearing-right.loose_least_m')).toBeCloseTo(16e-6, 9);
    expect(si('seat.exciter.exciter-bearing-right.loose_most_m')).toBeCloseTo(58e-6, 9);
    // (70 + 50) micrometres on 215 at 11e-6 (iron) or 12e-6 (steel), from 20 degrees
    const hot = si('seat.exciter-bearing-right.bearing-carrier-right.heat_housing_C');
    expect(hot).toBeGreaterThan(20 + 120e-6 / (12.1e-6 * 0.215));
    expect(hot).toBeLessThan(20 + 120e-6 / (10.9e-6 * 0.215));
  });

  it('clearance: the wrong class leaves less, fitting takes some away', () => {
    for (const side of ['left', 'right']) {
      const of = (name: string): number => si(`clearance.exciter-bearing-${side}.${name}`);
      expect(of('C4.fitted_min_m')).toBeLessThan(of('C4.clearance_min_m'));
      expect(of('CN.fitted_min_m')).toBeLessThan(of('C3.fitted_min_m'));
      expect(of('C3.fitted_min_m')).toBeLessThan(of('C4.fitted_min_m'));
    }
  });

  it('joint of the hub: 16 x 0.12 x 0.75 x 830 MPa x 353 mm2, above the force in HIGH', () => {
    expect(si('joint.hub-bolts.slip_N')).toBeCloseTo(16 * 0.12 * 0.75 * 830e6 * 353e-6, -4);
    expect(si('joint.hub-bolts.slip_N')).toBeGreaterThan(si('study.exciter.high.force_N'));
  });

  it('lifts: a leg at 60 degrees carries half over its sine; the crib carries a corner of the frame', () => {
    const mass_kg = si('plan.lifted_with.hub_kg');
    expect(si('lift.hub.legs-60.leg_mass_kg')).toBeCloseTo(mass_kg / 2 / Math.sin(Math.PI / 3), 6);
    expect(si('lift.hub.legs-30.leg_mass_kg')).toBeCloseTo(mass_kg, 6);
    expect(si('support.side-plate-right.crib_N')).toBeGreaterThan(8000);
    expect(si('lift.hub.units')).toBe(13);
  });
});

describe('values of drum and ground', () => {
  it('load: weight over width; blows: speed over frequency', () => {
    expect(si('study.compaction.static_linear_N_m')).toBeCloseTo(
      (machine.operation.drum_axle_mass_kg * 9.80665) / machine.drumWidth_m,
      3,
    );
    expect(si('study.compaction.impacts.spacing_m')).toBeCloseTo(4 / 3.6 / 30, 9);
  });

  it('isolators: harder ones hang higher and let more through; one gone hangs lower there', () => {
    for (const side of ['left', 'right']) {
      const of = (state: string, what: string): number => si(`study.isolators.${state}.${side}.${what}`);
      expect(of('hard', 'sag_m')).toBeLessThan(of('sound', 'sag_m'));
      expect(of('hard', 'frame_amplitude_m')).toBeGreaterThan(of('sound', 'frame_amplitude_m'));
    }
    expect(si('study.isolators.one-gone.left.sag_m')).toBeGreaterThan(si('study.isolators.sound.left.sag_m'));
  });

  it('ballast: more load on the line, less amplitude', () => {
    expect(si('study.ballast-tonne.linear_load_N_m')).toBeGreaterThan(si('machine.linear_load_N_m'));
    expect(si('study.ballast-tonne.amplitude_m')).toBeCloseTo(
      si('study.exciter.high.U_kgm') / (si('study.exciter.vibratingMass_kg') + 1000),
      9,
    );
    const shells_kg = 3 * si('unit.pad-segment-1.mass_kg');
    expect(si('study.pad-shells.mass_kg')).toBeCloseTo(shells_kg, 6);
    expect(si('study.pad-shells.amplitude_m')).toBeLessThan(si('study.exciter.high.nominalAmplitude_m'));
    expect(si('study.compaction.guidance.padded.lift_to_m')).toBeGreaterThan(
      si('study.compaction.guidance.padded.lift_from_m'),
    );
    expect(si('liquid.brine.freezing_C')).toBeLessThan(si('liquid.water.freezing_C'));
  });
});

// Lesson 9 says so in words.
describe('what the lesson on force and ground says of each ground', () => {
  const basis = rollerBasis(machine, solids, masses)!;
  const regime = (range: 'high' | 'low', id: string): string | undefined => {
    const soil = SOILS.find((each) => each.id === id)!;
    return vibrationStudy(basis, {
      unbalance_kgm: si(`study.exciter.${range}.U_kgm`),
      frequency_Hz: si(`study.exciter.${range}.frequency_Hz`),
      soil_stiffness_N_m: soil.stiffness_N_m,
      soil_damping_Ns_m: soil.damping_Ns_m,
      hardness_IRHD: basis.isolation.hardness_IRHD,
    })?.time?.regime;
  };
  it.each([
    ['high', 'loose', 'continuous-contact'],
    ['high', 'medium', 'partial-uplift'],
    ['high', 'firm', 'irregular'],
    ['low', 'firm', 'partial-uplift'],
    ['low', 'hard', 'double-jump'],
  ] as const)('%s on %s ground: %s', (range, id, wanted) => {
    expect(regime(range, id)).toBe(wanted);
  });

  it('are those of the command line', async () => {
    const calc = async (name: string, input: object): Promise<Record<string, unknown>> => {
      const typed = JSON.stringify({ model: 'alder-one', ...input });
      const printed = await runCalc(CALCULATIONS, [name], () => Promise.resolve(typed));
      expect(printed.stderr).toBe('');
      return JSON.parse(printed.stdout) as Record<string, unknown>;
    };
    const identify = await calc('identify', {});
    expect(si('study.identify.turning.outside_m')).toBeCloseTo(Number(identify['turning_outside_m']), 9);
    const slope = await calc('traction-study', {
      grade_percent: 25,
      drum_adhesion: 0.25,
      axle_adhesion: 0.45,
      rolling_resistance_N_per_N: 0.05,
    });
    const ways = slope['combinations'] as Record<string, number | string>[];
    for (const way of ways)
      expect(
        si(`study.slope.drum-${way['drum_range']}-axle-${way['axle_range']}.pressure_needed_Pa`) /
          Number(way['pressure_needed_Pa']),
      ).toBeCloseTo(1, 9);
    expect(ways).toHaveLength(4);
  });
});
