/** Ball-steps a second of the loose shot of Alder One, against discrete elements with tangential history. */
import type * as ShotModule from '../../src/core/shot';
import { overlapsOf } from '../shot/rapier-housing';
import { ALDER_ONE } from '../shot/worlds';
import { built } from './built';
import type { Measure } from './row';

type Shot = typeof ShotModule;

interface Timed {
  readonly ball_steps_s: number;
  /** Simulated seconds a second of processor time. */
  readonly speed: number;
  readonly overlap: string;
}

/** One spin-up in low, settling left out; time by the processor's, so that other work counts less. */
function spinUp(shot: Shot, reference: boolean): Timed {
  const sim = shot.createSimulation(ALDER_ONE);
  const elements = reference ? shot.createReference(sim) : null;
  const start = process.cpuUsage();
  if (elements === null) shot.advance(sim, sim.end_s);
  else shot.advanceReference(sim, elements, sim.end_s);
  const spent_s = process.cpuUsage(start).user / 1e6;
  const { overlap_mean, overlap_p95 } = overlapsOf(sim.world.balls, sim.world.period_m);
  return {
    ball_steps_s: (sim.steps * sim.world.balls.count) / spent_s,
    speed: sim.end_s / spent_s,
    overlap: `${(100 * overlap_mean).toFixed(2)} % mean, ${(100 * overlap_p95).toFixed(2)} % p95`,
  };
}

export const measure: Measure = async () => {
  const shot = await built<Shot>('core/shot/index.ts');
  const best = (reference: boolean, times: number): Timed =>
    Array.from({ length: times }, () => spinUp(shot, reference)).reduce((a, b) =>
      b.speed > a.speed ? b : a,
    );
  const ours = best(false, 4);
  const theirs = best(true, 2);
  const note = `480 balls of Alder One spun up in low; overlap at the end, ours ${ours.overlap}, theirs ${theirs.overlap}`;
  return [
    {
      name: 'ball-steps a second',
      unit: 'million/s',
      ours: ours.ball_steps_s / 1e6,
      baseline: 'wanted',
      baseline_value: 3,
      more_is_better: true,
      note: `${note}; best of 4 runs, built as for the browser`,
    },
    {
      name: 'simulated time a second of processor time',
      unit: 's/s',
      ours: ours.speed,
      baseline: 'our discrete elements made for the same bound on the overlap',
      baseline_value: theirs.speed,
      more_is_better: true,
      note,
    },
  ];
};
