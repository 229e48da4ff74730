import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dormandPrince,
  naturalFrequencies,
  rollerInTime,
  rollerResponse,
  STEP_ERROR,
  type RollerInTimeInput,
} from '../../src/core/mechanics';
import { STANDARD_GRAVITY as G } from '../../src/core/kernel';
import { expectWithin, faultPaths, noteKeys, valueOf } from './value-of';

// required, not imported: the package ships sources that this project's compiler options do not accept
const { Solver } = createRequire(import.meta.url)('odex') as {
  Solver: new (size: number) => {
    absoluteTolerance: number;
    relativeTolerance: number;
    maxSteps: number;
    solve(
      slope: (t: number, y: number[]) => number[],
      from: number,
      y: number[],
      to: number,
    ): { readonly y: number[] };
  };
};

const roller = {
  drum_mass_kg: 4000,
  frame_mass_kg: 2500,
  unbalance_kgm: 5,
  frequency_Hz: 30,
  mount_stiffness_N_m: 4e6,
  mount_damping_Ns_m: 8e3,
  soil_stiffness_N_m: 20e6,
  soil_damping_Ns_m: 1e5,
};
/** A heavier shake on stiffer ground. */
const hard = { ...roller, unbalance_kgm: 7.03, frame_mass_kg: 2900, soil_damping_Ns_m: 2e5 };

describe('steps of Dormand and Prince', () => {
  it('are of order 5: half the step, a 32nd of the error', () => {
    // a bound that no step meets or misses by itself: the first step is kept over the whole way
    const error = (steps: number): number => {
      const y = Float64Array.of(1, 0);
      const turn = (_: number, [x, v]: Float64Array, out: Float64Array): void => {
        out[0] = v!;
        out[1] = -x!;
      };
      for (let i = 0; i < steps; i++) {
        const solver = dormandPrince(turn, Float64Array.of(1e9, 1e9), 1 / steps, 1);
        expect(solver.advance(y, i / steps, (i + 1) / steps)).toBe(true);
      }
      return Math.hypot(y[0]! - Math.cos(1), y[1]! + Math.sin(1));
    };
    const order = Math.log2(error(4) / error(8));
    expect(order).toBeGreaterThan(4.7);
    expect(order).toBeLessThan(5.5);
  });

  it('say so when the steps run out', () => {
    const solver = dormandPrince((_, y, out) => void (out[0] = -1e9 * y[0]!), Float64Array.of(1e-9), 1, 50);
    expect(solver.advance(Float64Array.of(1), 0, 1)).toBe(false);
  });
});

describe('roller in time', () => {
  it('in continuous contact is the linear steady state within 1 %', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5e6, max: 25e6, noNaN: true }),
        fc.double({ min: 1, max: 5, noNaN: true }),
        fc.double({ min: 20, max: 36, noNaN: true }),
        (soil_stiffness_N_m, unbalance_kgm, frequency_Hz) => {
          const input = { ...roller, soil_stiffness_N_m, unbalance_kgm, frequency_Hz };
          const linear = valueOf(rollerResponse(input));
          fc.pre(linear.contact === 'kept');
          const time = valueOf(rollerInTime(input));
          expect(time.regime).toBe('continuous-contact');
          for (const [a, b] of [
            [time.drum_first_m, linear.drum_amplitude_m],
            [time.frame_first_m, linear.frame_amplitude_m],
            [(time.soil_force_max_N - time.soil_force_min_N) / 2, linear.soil_force_amplitude_N],
          ] as const)
            expectWithin(a, b ?? NaN, 1);
          expect(time.drum_phase_deg).toBeCloseTo(linear.drum_phase_deg ?? NaN, 0);
        },
      ),
      { seed: 6, numRuns: 25 },
    );
  });

  it('loses contact just where the linear soil force passes the static load', () => {
    const linear = (soil_stiffness_N_m: number) => valueOf(rollerResponse({ ...roller, soil_stiffness_N_m }));
    for (const soil_stiffness_N_m of [20e6, 28e6, 36e6, 44e6])
      expect(valueOf(rollerInTime({ ...roller, soil_stiffness_N_m })).contact).toBe(
        linear(soil_stiffness_N_m).contact,
      );
  });

  it.each([
    ['in contact', roller],
    ['lifting off', { ...hard, soil_stiffness_N_m: 40e6 }],
    ['jumping', { ...hard, soil_stiffness_N_m: 50e6 }],
  ])('agrees with an independent solver (extrapolation method of Hairer and Wanner), %s', (_, input) => {
    // a short run from the same start: long jumping runs part by nature
    const settle_s = 0.5;
    const ours = valueOf(rollerInTime({ ...input, settle_s }));
    const theirs = odexTrace(input, settle_s + 20 / input.frequency_Hz, 4);
    const span = Math.max(...ours.trace.drum_m) - Math.min(...ours.trace.drum_m);
    ours.trace.drum_m.forEach((z, i) => {
      if (i % 16 === 0) expect(Math.abs(z - theirs[i / 16]!)).toBeLessThan(1e-4 * span);
    });
  });

  it('accounts for all energy', () => {
    for (const soil_stiffness_N_m of [10e6, 20e6, 40e6, 50e6, 80e6, 150e6]) {
      const run = valueOf(rollerInTime({ ...hard, soil_stiffness_N_m }));
      expect(Math.abs(run.energy_residual)).toBeLessThan(1e-6);
    }
    // where all repeats, what the exciter gives is what soil and mounts take
    const steady = valueOf(rollerInTime({ ...hard, soil_stiffness_N_m: 40e6 }));
    expectWithin(steady.soil_power_W + steady.mount_power_W, steady.exciter_power_W, 0.01);
  });

  it('carries the whole weight on average, and the soil never pulls', () => {
    for (const soil_stiffness_N_m of [20e6, 40e6]) {
      const run = valueOf(rollerInTime({ ...hard, soil_stiffness_N_m }));
      expectWithin(run.soil_force_mean_N, run.static_load_N, 0.2);
      expect(run.soil_force_min_N).toBeGreaterThanOrEqual(0);
    }
  });

  it('goes from contact over uplift to the double jump as the soil stiffens, and on to no repeat', () => {
    const low = { ...hard, unbalance_kgm: 3.6, frequency_Hz: 34, mount_stiffness_N_m: 5e6 };
    const at = (MN_m: number) => rollerInTime({ ...low, soil_stiffness_N_m: MN_m * 1e6 });
    expect(valueOf(at(30)).regime).toBe('continuous-contact');
    const lift = valueOf(at(60));
    expect(lift).toMatchObject({ regime: 'partial-uplift', repeats_after_turns: 1, contact: 'lost' });
    expect(lift.half_frequency_share).toBeLessThan(1e-3);
    const jump = valueOf(at(90));
    expect(jump).toMatchObject({ regime: 'double-jump', repeats_after_turns: 2 });
    expect(jump.half_frequency_share).toBeGreaterThan(0.5);
    expect(valueOf(at(130))).toMatchObject({ regime: 'irregular', repeats_after_turns: null });
    expect(noteKeys(at(130))).toEqual(['mechanics.note.does-not-repeat']);
  });

  it('stands still without unbalance', () => {
    const still = rollerInTime({ ...roller, unbalance_kgm: 0 });
    expect(valueOf(still)).toMatchObject({
      drum_phase_deg: null,
      half_frequency_share: null,
      contact: 'kept',
    });
    expect(valueOf(still).drum_amplitude_m).toBeLessThan(STEP_ERROR);
    expect(noteKeys(still)).toEqual(['mechanics.note.no-motion']);
  });

  it('refuses what it cannot step through', () => {
    expect(faultPaths(rollerInTime({ ...roller, soil_stiffness_N_m: 0, frequency_Hz: 0.5 }))).toEqual([
      'frequency_Hz',
      'soil_stiffness_N_m',
    ]);
    expect(faultPaths(rollerInTime({ ...roller, soil_damping_Ns_m: 1e10 }))).toEqual([
      'soil_stiffness_N_m / mount_stiffness_N_m',
    ]);
  });
});

describe('natural frequencies', () => {
  it('are where the undamped response has its peaks', () => {
    const { lower_Hz, upper_Hz } = valueOf(naturalFrequencies(roller));
    const still = { ...roller, mount_damping_Ns_m: 0, soil_damping_Ns_m: 0 };
    for (const peak of [lower_Hz, upper_Hz]) {
      const at = (frequency_Hz: number) =>
        valueOf(rollerResponse({ ...still, frequency_Hz })).drum_amplitude_m ?? Infinity;
      expect(at(peak * 1.0001)).toBeGreaterThan(100 * at(peak * 1.2));
    }
  });

  it('without soil: the two float, and swing against each other', () => {
    const free = valueOf(naturalFrequencies({ ...roller, soil_stiffness_N_m: 0 }));
    expect(free.lower_Hz).toBe(0);
    expect(free.upper_Hz).toBeCloseTo(Math.sqrt(4e6 * (1 / 4000 + 1 / 2500)) / (2 * Math.PI), 12);
  });
});

/** Drum over its standing place at 4 samples a turn over the last `turns`, by the other solver. */
function odexTrace(
  input: Required<Omit<RollerInTimeInput, 'settle_s'>>,
  from_s: number,
  turns: number,
): number[] {
  const { drum_mass_kg: md, frame_mass_kg: mf, mount_stiffness_N_m: k, mount_damping_Ns_m: c } = input;
  const { soil_stiffness_N_m: ks, soil_damping_Ns_m: cs } = input;
  const w = 2 * Math.PI * input.frequency_Hz;
  const sink = ((md + mf) * G) / ks;
  const solver = new Solver(4);
  solver.absoluteTolerance = 1e-11;
  solver.relativeTolerance = 1e-11;
  solver.maxSteps = 1e6;
  const slope = (t: number, [z = 0, zv = 0, f = 0, fv = 0]: number[]): number[] => {
    const mount = k * (z - f) + c * (zv - fv);
    const soil = Math.max(0, ks * z + cs * zv);
    return [
      zv,
      (md * G + input.unbalance_kgm * w * w * Math.cos(w * t) - mount - soil) / md,
      fv,
      (mf * G + mount) / mf,
    ];
  };
  let y: number[] = [sink, 0, sink + (mf * G) / k, 0];
  let at = 0;
  const out: number[] = [];
  for (let i = 0; i < 4 * turns; i++) {
    const next = from_s + i / (4 * input.frequency_Hz);
    y = solver.solve(slope, at, y, next).y;
    at = next;
    out.push(y[0]! - sink);
  }
  return out;
}
