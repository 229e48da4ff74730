/**
 * Values of common practice (no source) that texts name, so that they too are shown in the reader's units and stand in
 * one place. None of them is a value of a real machine: there the manual decides.
 */
import { BEARING_HEATING_C } from '../../mechanics';
import { namedNumber, type NamedValue } from './quantity-of';

export const PRACTICE = {
  /** Gap of a scraper bar on soil. */
  scraper_gap_least_m: 0.01,
  scraper_gap_most_m: 0.025,
  /** Largest difference between the corner gaps of drum and frame. */
  corner_gaps_m: 0.003,
  /** Squeeze of both isolator sets together. */
  squeeze_m: 0.002,
  /** An exciter bearing above this, or so much warmer than the other side, is stopped. */
  bearing_stop_C: 110,
  bearing_sides_K: 20,
  /** Wheel bearing hub after a drive without vibration. */
  hub_warm_C: 80,
  /** Depth of a crack that rejects an isolator. */
  crack_depth_m: 0.003,
  /** Wheel bearings set to end play. */
  end_play_least_m: 0.00003,
  end_play_most_m: 0.0001,
  /** Float of the exciter between its bearings. */
  float_least_m: 0.0005,
  float_most_m: 0.0015,
  /** Travel on soil while vibrating. */
  travel_slow_m_s: 3 / 3.6,
  travel_fast_m_s: 5 / 3.6,
  /** Share of the measured value that amplitude and vibration rate may be off. */
  amplitude_share: 0.1,
  rate_share: 0.03,
  /** Workshop, and the room that a cold ring needs to drop in. */
  shop_C: 20,
  slide_in_m: 0.00005,
  ring_heating_C: BEARING_HEATING_C.target,
  ring_heating_limit_C: BEARING_HEATING_C.limit,
} as const;

export function* practiceValues(): Generator<readonly [string, NamedValue]> {
  for (const [name, value] of Object.entries(PRACTICE))
    // both ends of the span of end play in one unit
    yield name.startsWith('end_play')
      ? [`practice.${name}`, { si: value, quantity: 'length-fine' }]
      : [`practice.${name}`, namedNumber(name, value)];
}
