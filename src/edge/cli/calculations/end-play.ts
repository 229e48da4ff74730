/** `calc end-play`: how far to turn the nut for the wanted bearing end play. */
import { z } from 'zod';
import { endPlay } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { choice, notNegative, outNumber, positive, whole } from '../fields';

export default defineCalculation({
  name: 'end-play',
  answers: 'calc.end-play.answers',
  source: 'geometry of the thread; bands: common practice, no source',
  input: z.object({
    end_play_m: notNegative('m'),
    target_min_m: notNegative('m'),
    target_max_m: positive('m'),
    thread_pitch_m: positive('m'),
    lock_places: whole(1).optional(),
  }),
  output: z.object({
    verdict: choice('too-tight', 'within', 'too-loose'),
    turn_deg: outNumber('deg'),
    turn_places: outNumber('1'),
    end_play_after_m: outNumber('m'),
  }),
  example: {
    end_play_m: 0.00022,
    target_min_m: 0.00003,
    target_max_m: 0.0001,
    thread_pitch_m: 0.002,
    lock_places: 36,
  },
  run: endPlay,
});
