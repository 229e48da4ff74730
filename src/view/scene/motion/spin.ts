/**
 * Spin in slow motion: drum and exciter turn at their true ratio, slowed so far that the eye can follow the exciter.
 * Signs about machine +x (seen from the right-hand side): exciter LOW positive, HIGH negative; the drum of a roller that
 * drives forward turns negative.
 */
import type { SpinDirection } from '../../../store';

/** Rolling speed while compacting, metres a second (4 km/h, common practice, no source). */
export const ROLLING_SPEED_M_S = 4 / 3.6;

/** Turns a second at which the exciter is shown. */
export const SHOWN_EXCITER_HZ = 0.5;

/** How many times slower than life the picture runs. */
export const slowFactor = (frequency_Hz: number): number => frequency_Hz / SHOWN_EXCITER_HZ;

export interface SpinRates {
  /** Radians a second of shown time, about machine +x. */
  readonly drum_rad_s: number;
  readonly exciter_rad_s: number;
}

export function spinRates(direction: SpinDirection, frequency_Hz: number, drumRadius_m: number): SpinRates {
  const slow = slowFactor(frequency_Hz);
  return {
    drum_rad_s: -ROLLING_SPEED_M_S / drumRadius_m / slow,
    exciter_rad_s: ((direction === 'low' ? 1 : -1) * 2 * Math.PI * frequency_Hz) / slow,
  };
}
