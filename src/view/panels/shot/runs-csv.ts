/** The runs as a table for a spreadsheet: SI, comma separated, one head line (RFC 4180). */
import type { ShotRun } from '../../../store';

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

const cell = (value: string | number | boolean | null): string => {
  if (value === null) return '';
  const text = typeof value === 'number' ? String(Number(value.toPrecision(6))) : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

export function runsCsv(runs: readonly ShotRun[]): string {
  const lines = runs.map((run) => {
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
    ]
      .map(cell)
      .join(',');
  });
  return [HEAD.join(','), ...lines, ''].join('\r\n');
}
