/** The runs as a table for a spreadsheet: SI, comma separated, one head line (RFC 4180). */
import type { ShotRun } from '../../../store';
import { csvText } from '../common/csv';

const HEAD = [
  'run',
  'experiment',
  'direction',
  'fill',
  'spin_up',
  'spin_up_time_s',
  'friction',
  'baffle',
  'gravity',
  'seed',
  'balls',
  'stop_Hz',
  'captured',
  'shot_U_kgm',
  'U_kgm',
  'level_U_kgm',
  'U_over_own_high',
  'predicted',
  'U_over_compared',
] as const;

export function runsCsv(runs: readonly ShotRun[]): string {
  const rows = runs.map((run) => {
    const { setup, outcome, take } = run;
    return [
      run.id,
      run.experiment,
      setup.direction,
      setup.fill,
      setup.spinUp,
      setup.spinUpTime_s,
      setup.friction,
      setup.baffle,
      setup.gravity ? 'on' : 'off',
      setup.seed,
      take.count,
      take.parameters.stop_Hz,
      outcome.captured,
      outcome.shot_U_kgm,
      outcome.U_kgm,
      outcome.level_U_kgm,
      outcome.ofOwnHigh,
      run.prediction,
      outcome.ofCompared,
    ];
  });
  return csvText(HEAD, rows);
}
