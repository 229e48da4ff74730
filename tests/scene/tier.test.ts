import { describe, expect, it } from 'vitest';
import { askedTier, tierFor, tierMeter } from '../../src/view/scene/tier';

const run = (meter: ReturnType<typeof tierMeter>, ms: number, from: 'low' | 'middle' | 'full') => {
  let tier = from;
  for (let i = 0; i < 24; i++) tier = meter.frame(ms, tier) as typeof from;
  return tier;
};

describe('draw tier', () => {
  it('is what the address asks for, then what the person chose, else measured', () => {
    expect(askedTier('full', '?tier=low')).toBe('low');
    expect(askedTier('low', '')).toBe('low');
    expect(askedTier('auto', '?tier=nonsense')).toBeNull();
  });

  it('starts low on software drawing, full on a card', () => {
    expect(tierFor('ANGLE (Mesa, llvmpipe (LLVM 15.0.6))')).toBe('low');
    expect(tierFor('Google SwiftShader')).toBe('low');
    expect(tierFor('ANGLE (Some Vendor, Some Card)')).toBe('full');
  });

  it('steps down while frames are slow, one step a measurement', () => {
    const meter = tierMeter();
    expect(run(meter, 60, 'full')).toBe('middle');
    expect(run(meter, 60, 'middle')).toBe('low');
    expect(run(meter, 60, 'low')).toBe('low');
  });

  it('steps up when frames are easy, but never again after a step down', () => {
    expect(run(tierMeter(), 8, 'low')).toBe('middle');
    const meter = tierMeter();
    run(meter, 60, 'full');
    expect(run(meter, 8, 'middle')).toBe('middle');
  });

  it('does not count frames across a rest', () => {
    const meter = tierMeter();
    for (let i = 0; i < 23; i++) meter.frame(60, 'full');
    meter.rest();
    expect(meter.frame(60, 'full')).toBe('full');
  });
});
