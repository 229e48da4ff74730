import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bolt, jointSlip, nutFactor, starSequence } from '../../src/core/mechanics';
import { faultPaths, noteKeys, valueOf } from './value-of';

const SEED = { seed: 898, numRuns: 60 };
const m24 = { diameter_m: 0.024, pitch_m: 0.003, proof_Pa: 830e6, preload_fraction: 0.75, K: 0.2 };

describe('bolt', () => {
  it('the loaded stress rises by the share C of the outside load, until the joint opens', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 4e5, noNaN: true }), (external_load_N) => {
        const result = valueOf(bolt({ ...m24, external_load_N, joint_stiffness_ratio: 0.25 }));
        const carried = (result.stress_loaded_Pa ?? NaN) * result.stress_area_m2;
        const opens = external_load_N > (result.separation_load_N ?? NaN);
        expect(carried).toBeCloseTo(opens ? external_load_N : result.preload_N + 0.25 * external_load_N, 3);
        expect(carried).toBeGreaterThanOrEqual(external_load_N - 1e-6);
      }),
      SEED,
    );
  });

  it('has no loaded stress without an outside load, and notes stress above proof', () => {
    expect(valueOf(bolt(m24))).toMatchObject({
      stress_loaded_Pa: null,
      proof_ratio: 0.75,
      separation_load_N: null,
    });
    const hard = { ...m24, external_load_N: 3.2e5, joint_stiffness_ratio: 0.2 };
    expect(noteKeys(bolt(hard))).toEqual(['mechanics.note.joint-opens', 'mechanics.note.above-proof']);
  });

  it('refuses two answers to one question', () => {
    expect(faultPaths(bolt({ ...m24, stress_area_m2: 353e-6, preload_N: 1 }))).toEqual([
      'stress_area_m2 / pitch_m',
      'preload_fraction / preload_N',
    ]);
    expect(faultPaths(bolt({ ...m24, pitch_m: 0.03, external_load_N: 1 }))).toEqual([
      'pitch_m',
      'joint_stiffness_ratio',
    ]);
  });
});

describe('nut factor', () => {
  it('rises with friction and refuses friction that locks the thread', () => {
    const at = (thread_friction: number) =>
      nutFactor({ diameter_m: 0.02, pitch_m: 0.0025, thread_friction, collar_friction: 0.1 });
    expect(valueOf(at(0.2)).K).toBeGreaterThan(valueOf(at(0.1)).K);
    expect(faultPaths(at(30))).toEqual(['thread_friction']);
  });
});

describe('star sequence', () => {
  it('visits each bolt once, for any count', () => {
    for (let count = 1; count <= 60; count += 1) {
      const { order } = valueOf(starSequence({ count }));
      expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i + 1));
    }
  });

  it('even counts: every second bolt is opposite the one before', () => {
    for (let count = 2; count <= 40; count += 2) {
      const { order } = valueOf(starSequence({ count }));
      for (let i = 0; i < count; i += 2) {
        expect(Math.abs((order[i] ?? 0) - (order[i + 1] ?? 0))).toBe(count / 2);
      }
    }
  });

  it('odd counts: every step crosses at least a third of the ring from 5 on', () => {
    for (let count = 5; count <= 41; count += 2) {
      const { order } = valueOf(starSequence({ count }));
      for (let i = 1; i < count; i += 1) {
        const gap = Math.abs((order[i] ?? 0) - (order[i - 1] ?? 0));
        expect(Math.min(gap, count - gap) / count).toBeGreaterThan(1 / 3);
      }
    }
  });

  it('four quarters come first', () => {
    expect(valueOf(starSequence({ count: 4 })).order).toEqual([1, 3, 2, 4]);
    expect(valueOf(starSequence({ count: 8 })).order.slice(0, 4)).toEqual([1, 5, 3, 7]);
    expect(valueOf(starSequence({ count: 12 })).order).toEqual([1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12]);
    expect(valueOf(starSequence({ count: 4 })).angles_deg).toEqual([0, 180, 90, 270]);
  });

  it('refuses no bolts and part of a bolt', () => {
    for (const count of [0, -4, 2.5, NaN, 1001])
      expect(faultPaths(starSequence({ count }))).toEqual(['count']);
  });
});

describe('joint slip', () => {
  const joint = { count: 16, preload_N: 2e5, friction: 0.12, radius_m: 0.3 };

  it('adds force and torque, and slips from 1 on', () => {
    const result = valueOf(jointSlip({ ...joint, force_N: 192e3, torque_Nm: 57600 }));
    expect(result).toMatchObject({ slip_force_N: 384000, slip_torque_Nm: 115200, use: 1, slips: true });
    expect(valueOf(jointSlip({ ...joint, faces: 2, force_N: 192e3 })).use).toBeCloseTo(0.25, 12);
  });

  it('holds nothing without friction; a torque needs a radius', () => {
    expect(valueOf(jointSlip({ ...joint, friction: 0 }))).toMatchObject({
      slip_force_N: 0,
      use: null,
      slips: null,
    });
    expect(faultPaths(jointSlip({ count: 4, preload_N: 1, friction: 0.1, torque_Nm: 5 }))).toEqual([
      'radius_m',
    ]);
  });
});
