/**
 * A row of the benchmark: one figure of ours beside a named baseline of the same run.
 *
 * A topic is a file tests/bench/<topic>.ts that exports `measure(long)`; run.ts calls it, prints its rows and adds
 * them to tests/bench/results/<topic>.csv.
 */
import { appendFileSync, existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { dirname, join } from 'node:path';

export interface Row {
  readonly name: string;
  readonly unit: string;
  readonly ours: number;
  /** What ours is held against. */
  readonly baseline: string;
  /** Null when the baseline cannot reach what ours does; `note` then says so. */
  readonly baseline_value: number | null;
  /** Whether a greater figure is the better one; false for times. */
  readonly more_is_better: boolean;
  /** What was equal and what was not. */
  readonly note?: string;
}

/** A topic's rows; `long` asks for more seeds and finer steps. */
export type Measure = (long: boolean) => readonly Row[] | Promise<readonly Row[]>;

/** How many times better ours is than the baseline: above 1 ours is better; null where one of the two is 0. */
export function ratioOf({ ours, baseline_value, more_is_better }: Row): number | null {
  if (baseline_value === null) return null;
  const ratio = more_is_better ? ours / baseline_value : baseline_value / ours;
  return Number.isFinite(ratio) && ratio !== 0 ? ratio : null;
}

/** Median time of one call in ms, after one call that is not counted. */
export function median_ms(times: number, run: () => void): number {
  run();
  const all = Array.from({ length: times }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return all[times >> 1]!;
}

/** Says a row in one line. */
export function printRow(row: Row): void {
  const { name, unit, ours, baseline, baseline_value, note } = row;
  const ratio = ratioOf(row);
  const against =
    baseline_value === null
      ? `no figure of ${baseline}`
      : ratio === null
        ? `beside ${baseline} (${baseline_value.toPrecision(3)} ${unit})`
        : `${ratio.toPrecision(3)} times as good as ${baseline} (${baseline_value.toPrecision(3)} ${unit})`;
  console.log(`${name}: ${ours.toPrecision(3)} ${unit}, ${against}${note === undefined ? '' : `; ${note}`}`);
}

const HEAD = 'date,machine,load,name,unit,ours,baseline,baseline_value,ratio,note\n';

/** Adds rows to the topic's results, with the date, the machine and how busy it was in the last minute. */
export function keepRows(topic: string, rows: readonly Row[]): void {
  const file = join(import.meta.dirname, 'results', `${topic}.csv`);
  mkdirSync(dirname(file), { recursive: true });
  if (!existsSync(file)) writeFileSync(file, HEAD);
  const date = new Date().toISOString().slice(0, 10);
  const machine = `${cpus()[0]?.model.trim() ?? 'unknown'} x ${cpus().length}`;
  const number = (value: number | null): string => (value === null ? '' : String(+value.toPrecision(4)));
  const text = (value: string): string => `"${value.replaceAll('"', '""')}"`;
  for (const row of rows) {
    const { name, unit, ours, baseline, baseline_value, note } = row;
    const cells = [
      date,
      text(machine),
      loadavg()[0]!.toFixed(1),
      text(name),
      text(unit),
      number(ours),
      text(baseline),
      number(baseline_value),
      number(ratioOf(row)),
      text(note ?? ''),
    ];
    appendFileSync(file, `${cells.join(',')}\n`);
  }
}
