import { describe, expect, it } from 'vitest';
import type { Timeline } from '../../src/core/assembly';
import { slowFactor, spinRates } from '../../src/view/scene/motion/spin';
import { easeInOut, stepAt, stepTime, teardownClock } from '../../src/view/scene/motion/teardown-clock';

const timeline = {
  duration_s: 6,
  stepStart_s: Float64Array.from([0, 2, 4]),
  stepEnd_s: Float64Array.from([1.5, 3.5, 6]),
} as Timeline;

describe('spin in slow motion', () => {
  it('shows the exciter at half a turn a second in either direction', () => {
    for (const [direction, f] of [
      ['high', 30],
      ['low', 34],
    ] as const)
      expect(Math.abs(spinRates(direction, f, 0.75).exciter_rad_s)).toBeCloseTo(Math.PI, 12);
  });

  it('keeps the true ratio of drum and exciter', () => {
    const { drum_rad_s, exciter_rad_s } = spinRates('high', 30, 0.75);
    const trueDrum = 4 / 3.6 / 0.75;
    expect(drum_rad_s / exciter_rad_s).toBeCloseTo(trueDrum / (2 * Math.PI * 30), 12);
    expect(slowFactor(30)).toBe(60);
  });

  it('turns low positive and high negative about machine +x, the drum forward negative', () => {
    expect(spinRates('low', 34, 0.75).exciter_rad_s).toBeGreaterThan(0);
    expect(spinRates('high', 30, 0.75).exciter_rad_s).toBeLessThan(0);
    expect(spinRates('high', 30, 0.75).drum_rad_s).toBeLessThan(0);
  });
});

describe('teardown clock', () => {
  const still = { step: -1, playing: false, reverse: false };

  it('eases to the end of the chosen step and stays there', () => {
    const clock = teardownClock(timeline);
    let time = clock.advance(0, 0.016, still, false).time_s;
    let moving = true;
    let frames = 0;
    while (moving && frames++ < 200) {
      const next = clock.advance(time, 0.05, { ...still, step: 1 }, false);
      expect(next.time_s).toBeGreaterThanOrEqual(time);
      ({ time_s: time, moving } = next);
    }
    expect(time).toBe(3.5);
    expect(frames * 0.05).toBeLessThan(1.8);
    expect(clock.advance(time, 0.05, { ...still, step: 1 }, false).moving).toBe(false);
  });

  it('cuts at once with reduced motion', () => {
    const clock = teardownClock(timeline);
    clock.advance(0, 0.016, still, true);
    expect(clock.advance(0, 0.016, { ...still, step: 2 }, true)).toMatchObject({ time_s: 6, moving: false });
  });

  it('plays forward through the steps and ends after the last', () => {
    const clock = teardownClock(timeline);
    const reached: number[] = [];
    let state = { ...still, playing: true };
    let time = 0;
    for (let i = 0; i < 100; i++) {
      const next = clock.advance(time, 0.1, state, false);
      time = next.time_s;
      if (next.step !== state.step) reached.push(next.step);
      state = { ...state, step: next.step };
      if (next.ended) break;
    }
    expect(reached).toEqual([0, 1, 2]);
    expect(time).toBe(6);
  });

  it('plays backward to the assembled machine', () => {
    const clock = teardownClock(timeline);
    let state = { step: 2, playing: true, reverse: true };
    let time = 6;
    const reached: number[] = [];
    for (let i = 0; i < 100; i++) {
      const next = clock.advance(time, 0.1, state, false);
      time = next.time_s;
      if (next.step !== state.step) reached.push(next.step);
      state = { ...state, step: next.step };
      if (next.ended) break;
    }
    expect(reached).toEqual([1, 0, -1]);
    expect(time).toBe(0);
  });

  it('gives way to a hand that moves the time', () => {
    const clock = teardownClock(timeline);
    clock.advance(0, 0.016, still, false);
    const eased = clock.advance(0, 0.05, { ...still, step: 2 }, false);
    expect(eased.moving).toBe(true);
    const scrubbed = clock.advance(1.234, 0.05, { ...still, step: 2 }, false);
    expect(scrubbed).toMatchObject({ time_s: 1.234, moving: false });
  });

  it('knows the step at a time and the time of a step', () => {
    expect([-1, 0, 1, 2].map((s) => stepAt(timeline, stepTime(timeline, s)))).toEqual([-1, 0, 1, 2]);
    expect(stepAt(timeline, 3.4)).toBe(0);
    expect([easeInOut(0), easeInOut(0.5), easeInOut(1)]).toEqual([0, 0.5, 1]);
  });
});
