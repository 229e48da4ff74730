/**
 * Axial end play of a pair of adjustable taper roller bearings, set with a nut: turning the nut by an angle moves
 * it by pitch x angle / 360, and the end play changes by as much. Source: geometry of the thread; the band is
 * common practice, no source (0.03 to 0.13 mm for wheel hubs), and the machine's own instructions govern.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  faultAt,
  finished,
  message,
  wholeWithin,
  type Message,
  type Result,
} from '../../kernel';

export interface EndPlayInput {
  /** End play read on the dial gauge, m, 0 or more (a gauge cannot read preload). */
  readonly end_play_m: number;
  /** Wanted band. */
  readonly target_min_m: number;
  readonly target_max_m: number;
  readonly thread_pitch_m: number;
  /** Places round the nut where the lock washer can hold it; left out: any angle. */
  readonly lock_places?: number | undefined;
}

export interface EndPlay {
  readonly verdict: 'too-tight' | 'within' | 'too-loose';
  /** Angle to turn the nut; positive tightens. 0 when the play is within the band. */
  readonly turn_deg: number;
  /** The same in steps of the lock, to the nearest; null without lock places. */
  readonly turn_places: number | null;
  /** End play to expect after that turn. */
  readonly end_play_after_m: number;
  readonly notes: readonly Message[];
}

/** Aims at the middle of the band. Noted: a reading of 0 may hide preload; no lock place may hit the band. */
export function endPlay(input: EndPlayInput): Result<EndPlay> {
  const { end_play_m, target_min_m, target_max_m, thread_pitch_m, lock_places } = input;
  const faults = checkNumbers(input, {
    end_play_m: atLeast(0),
    target_min_m: atLeast(0),
    target_max_m: above(0),
    thread_pitch_m: above(0),
    lock_places: wholeWithin(1, 1000),
  });
  if (target_max_m <= target_min_m) {
    faults.push(faultAt('target_max_m', message('expected.above', { limit: target_min_m }), target_max_m));
  }
  if (faults.length > 0) return fail(faults);

  const inBand = (play_m: number) => play_m >= target_min_m && play_m <= target_max_m;
  const verdict = inBand(end_play_m) ? 'within' : end_play_m < target_min_m ? 'too-tight' : 'too-loose';
  const excess_m = verdict === 'within' ? 0 : end_play_m - (target_min_m + target_max_m) / 2;
  const turn_deg = (excess_m / thread_pitch_m) * 360;
  const turn_places = lock_places === undefined ? null : 0 + Math.round((turn_deg * lock_places) / 360);
  const moved_m =
    lock_places === undefined || turn_places === null
      ? excess_m
      : (turn_places / lock_places) * thread_pitch_m;
  const end_play_after_m = end_play_m - moved_m;
  const notes: Message[] = [];
  if (turn_places === null) notes.push(message('mechanics.note.any-lock-angle'));
  if (end_play_m === 0) notes.push(message('mechanics.note.zero-may-be-preload'));
  if (!inBand(end_play_after_m)) notes.push(message('mechanics.note.no-lock-place-in-band'));
  return finished({ verdict, turn_deg, turn_places, end_play_after_m, notes });
}
