/** Spin-up laws: speed is the slope of the angle, acceleration that of the speed, and the time found is the time reached. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spinUpAt, timeToReach, type SpinUp, type Turning } from '../../src/core/shot';

const LAWS: readonly SpinUp[] = [
  { kind: 'linear', frequency_Hz: 30, time_s: 2 },
  { kind: 'quadratic', frequency_Hz: 30, time_s: 4 },
  {
    kind: 'table',
    points: [
      { time_s: 0, frequency_Hz: 0 },
      { time_s: 0.5, frequency_Hz: 3 },
      { time_s: 1.7, frequency_Hz: 3 },
      { time_s: 2.5, frequency_Hz: 30 },
    ],
  },
];
const at = (law: SpinUp, t: number): Turning => {
  const out = { angle_rad: 0, speed_rad_s: 0, acceleration_rad_s2: 0 };
  spinUpAt(law, t, out);
  return out;
};

describe.each(LAWS)('spin-up, $kind', (law) => {
  it('has speed as the slope of angle and acceleration as that of speed', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 6, noNaN: true }), (t) => {
        const d = 1e-5;
        const [a, b, c] = [at(law, t - d), at(law, t), at(law, t + d)];
        expect((c.angle_rad - a.angle_rad) / (2 * d)).toBeCloseTo(b.speed_rad_s, 2);
        const slope = (c.speed_rad_s - a.speed_rad_s) / (2 * d);
        // A corner of the law lies within d of hardly any time; there the slope is between both.
        if (Math.abs(a.acceleration_rad_s2 - c.acceleration_rad_s2) < 1)
          expect(slope).toBeCloseTo(b.acceleration_rad_s2, 1);
      }),
      { numRuns: 60, seed: 1 },
    );
  });

  it('reaches a frequency at the time found, and never more than its top', () => {
    for (const f of [0.5, 2.9, 3, 6, 29])
      expect(at(law, timeToReach(law, f)!).speed_rad_s).toBeCloseTo(2 * Math.PI * f, 6);
    expect(timeToReach(law, 31)).toBeNull();
  });
});
