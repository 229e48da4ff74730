/**
 * Which ring of a bearing needs the tight seat. A ring under a load that turns against it creeps in its seat unless it
 * is tight; a ring under a load that stands still against it may slide. An exciter is the reverse of an ordinary shaft:
 * its load turns with the shaft, so it stands still on the inner ring and runs round the outer one.
 * Source: T. A. Harris, Rolling Bearing Analysis (from memory); the classes named are common practice, no source.
 */
import { checkNumbers, fail, finite, finished, message, type Message, type Result } from '../../kernel';

export interface TightRingInput {
  /** Turning of shaft, housing and load direction, one sense positive, in any one unit; 0 stands still. */
  readonly shaft_rpm: number;
  readonly housing_rpm: number;
  readonly load_rpm: number;
}

export interface TightRing {
  readonly inner_load: 'rotating' | 'stationary';
  readonly outer_load: 'rotating' | 'stationary';
  /** 'none': nothing turns against the load. */
  readonly tight: 'inner' | 'outer' | 'both' | 'none';
  /** Usual ISO 286 classes of the two seats. */
  readonly shaft_classes: readonly string[];
  readonly housing_classes: readonly string[];
  readonly notes: readonly Message[];
}

/** Turning speeds closer than this count as one. */
const SAME = 1e-9;

/** Refused: speeds that are no numbers. */
export function tightRing(input: TightRingInput): Result<TightRing> {
  const faults = checkNumbers(input, { shaft_rpm: finite, housing_rpm: finite, load_rpm: finite });
  if (faults.length > 0) return fail(faults);
  const turns = (ring_rpm: number): 'rotating' | 'stationary' =>
    Math.abs(ring_rpm - input.load_rpm) > SAME * Math.max(1, Math.abs(ring_rpm), Math.abs(input.load_rpm))
      ? 'rotating'
      : 'stationary';
  const inner_load = turns(input.shaft_rpm);
  const outer_load = turns(input.housing_rpm);
  const tight =
    inner_load === 'rotating'
      ? outer_load === 'rotating'
        ? 'both'
        : 'inner'
      : outer_load === 'rotating'
        ? 'outer'
        : 'none';
  return finished({
    inner_load,
    outer_load,
    tight,
    shaft_classes: inner_load === 'rotating' ? ['k5', 'm6', 'n6', 'p6'] : ['f6', 'g6', 'h6'],
    housing_classes: outer_load === 'rotating' ? ['M7', 'N6', 'P6', 'P7'] : ['G7', 'H7', 'J7'],
    notes: tight === 'both' ? [message('mechanics.note.both-rings-tight')] : [],
  });
}
