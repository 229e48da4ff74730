/** The playhead: places between frames, what counts as held, readings between recorded ones. */
import { describe, expect, it } from 'vitest';
import { openRecording, recordShot, type Recording } from '../../src/core/shot';
import { BALL_STRIDE, playShot, readingAt, shotTransient, showShot, turningAt } from '../../src/store';
import { ALDER_ONE } from '../shot/worlds';

/** A true run, short and thin. */
const parameters = {
  ...ALDER_ONE,
  slice: { dimension: 3, depth_m: 0.04, ends: 'periodic' },
  stop_Hz: 2,
} as const;

function record(): Recording {
  const run = recordShot(parameters, 20);
  let next = run.next();
  while (next.done !== true) next = run.next();
  const opened = openRecording(next.value);
  if (!opened.ok) throw new Error(JSON.stringify(opened.faults));
  return opened.value;
}

const take = record();

describe('a run that is played', () => {
  it('marks the balls that the recorded share counts', () => {
    for (const reading of take.readings) {
      showShot(take, reading.time_s);
      let held = 0;
      let all = 0;
      for (let i = 0; i < take.count; i++) {
        const mass = shotTransient.balls[i * BALL_STRIDE + 3]! ** 3;
        all += mass;
        if (shotTransient.held[i] === 1) held += mass;
      }
      // A ball on the pocket's very edge may fall on either side by the rounding of its place.
      expect(Math.abs(held / all - reading.captured)).toBeLessThan(0.008);
    }
  });

  it('has the centre of the recorded balls', () => {
    showShot(take, take.duration_s);
    let x = 0;
    let all = 0;
    for (let i = 0; i < take.count; i++) {
      const mass = shotTransient.balls[i * BALL_STRIDE + 3]! ** 3;
      x += mass * shotTransient.balls[i * BALL_STRIDE]!;
      all += mass;
    }
    expect(x / all).toBeCloseTo(take.readings.at(-1)!.centre_m[0], 5);
  });

  it('keeps every ball in the slice, and moves none across it between two frames', () => {
    const a = new Float32Array(take.count * BALL_STRIDE);
    const b = new Float32Array(take.count * BALL_STRIDE);
    const step = take.duration_s / 400;
    let farthest = 0;
    let outside = 0;
    for (let n = 0; n < 400; n++) {
      take.placeAt(n * step, a);
      take.placeAt((n + 1) * step, b);
      for (let i = 0; i < take.count; i++) {
        const z = b[i * BALL_STRIDE + 2]!;
        if (z < 0 || z > 0.04 + 1e-6) outside++;
        const dz = Math.abs(z - a[i * BALL_STRIDE + 2]!);
        farthest = Math.max(farthest, Math.min(dz, 0.04 - dz));
      }
    }
    expect(outside).toBe(0);
    expect(farthest).toBeLessThan(0.006);
  });

  it('turns by its own spin-up law, and runs slowed to its end', () => {
    expect(turningAt(take, take.duration_s).speed_rad_s).toBeCloseTo(2 * Math.PI * 2, 5);
    showShot(take, 0);
    expect(playShot(1, 5)).toBe(false);
    expect(shotTransient.time_s).toBeCloseTo(0.2, 12);
    const before = shotTransient.version;
    expect(playShot(100, 1)).toBe(true);
    expect(shotTransient.time_s).toBe(take.duration_s);
    expect(shotTransient.version).toBe(before + 1);
  });

  it('reads between two recorded readings', () => {
    const [a, b] = [take.readings[10]!, take.readings[11]!];
    const middle = readingAt(take, (a.time_s + b.time_s) / 2);
    expect(middle.captured).toBeCloseTo((a.captured + b.captured) / 2, 12);
    expect(readingAt(take, a.time_s).captured).toBeCloseTo(a.captured, 12);
    expect(readingAt(take, 1e9)).toBe(take.readings.at(-1));
    expect(readingAt(take, -1)).toBe(take.readings[0]);
  });
});
