/**
 * Script of one frame while the shot is watched: places between recorded frames, what counts as held, and the instance
 * data of the stage, for 1,000 balls. What the graphics card does with them is not in it: no laptop's GPU was tried.
 */
import { openRecording, recordShot } from '../../src/core/shot';
import { shotTransient, showShot } from '../../src/store';
import { ballBatch } from '../../src/view/scene/shot/ball-batch';
import { ALDER_ONE } from '../shot/worlds';
import type { Measure } from './row';

const FRAMES = 600;

export const measure: Measure = () => {
  const depth_m = (0.06 * 1000) / 480;
  const run = recordShot({ ...ALDER_ONE, slice: { ...ALDER_ONE.slice, depth_m }, stop_Hz: 2 });
  let next = run.next();
  while (next.done !== true) next = run.next();
  const opened = openRecording(next.value);
  if (!opened.ok) throw new Error('bench/shot-frame: the recording does not open');
  const take = opened.value;
  const batch = ballBatch();
  const times: number[] = [];
  for (let n = 0; n < 2 * FRAMES; n++) {
    const start = performance.now();
    showShot(take, ((n % FRAMES) / FRAMES) * take.duration_s);
    batch.write(shotTransient, { from_x_m: 0, to_x_m: 1.05, depth_m });
    // The first time through warms up the compiler.
    if (n >= FRAMES) times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  const at = (share: number): number => times[Math.floor(share * times.length)]!;
  return [
    {
      name: 'script of a frame of the watched shot',
      unit: 'ms',
      ours: at(0.95),
      baseline: 'wanted at most',
      baseline_value: 2,
      more_is_better: false,
      note: `${take.count} balls, ${FRAMES} frames: median ${at(0.5).toFixed(3)} ms, 95th percentile as given; no laptop GPU was tried`,
    },
  ];
};
