/**
 * Lines over an axis: told apart by dash and by a letter at the line, so that it reads in black and white; the same
 * numbers as a table, and as a file.
 */
import { useId } from 'react';
import type { Quantity } from '../../../core/kernel';
import { useSpeech } from '../../bind';
import { csvText, saveText } from '../common/csv';
import { toShown } from '../../../core/kernel';
import { letterPlaces, type PagePoint } from './plot-letters';
import { logBounds, makeScale } from './plot-scale';

export interface PlotLine {
  readonly name: string;
  /** Column of the file, with its unit. */
  readonly key: string;
  readonly values: readonly (number | null)[];
}

export interface PlotMark {
  readonly at: number;
  readonly name: string;
}

interface Axis {
  readonly name: string;
  readonly key: string;
  readonly quantity: Quantity;
  readonly log?: boolean;
  readonly low?: number;
  readonly high?: number;
}

export interface PlotProps {
  readonly title: string;
  readonly file: string;
  readonly x: Axis & { readonly values: readonly number[] };
  readonly y: Axis;
  readonly lines: readonly PlotLine[];
  /** Upright lines with a name. */
  readonly marks?: readonly PlotMark[];
  /** Level lines with a name. */
  readonly levels?: readonly PlotMark[];
  /** Where the answer does not hold: for each value of x. */
  readonly void?: { readonly name: string; readonly at: readonly boolean[] };
  /** A depth: x goes down the page and y across. */
  readonly downwards?: boolean;
}

const WIDTH = 340;
const HEIGHT = 232;
const LEFT = 50;
const RIGHT = 14;
const TOP = 22;
const BOTTOM = 40;
const DASHES = ['', '7 4', '2 3', '10 3 2 3', '4 2 1 2 1 2'];
const LETTERS = 'ABCDE';

export function Plot(props: PlotProps) {
  const { title, file, x, y, lines, marks = [], levels = [], downwards = false } = props;
  const { t, number, symbol, units } = useSpeech();
  const id = useId().replace(/[^a-zA-Z0-9]/g, '');
  const shownX = x.values.map((value) => toShown(value, x.quantity, units));
  const shownY = lines.map((line) =>
    line.values.map((value) => (value === null ? null : toShown(value, y.quantity, units))),
  );
  const all = [
    ...shownY.flat().filter((value): value is number => value !== null),
    ...levels.map((level) => toShown(level.at, y.quantity, units)),
  ];
  const lowest = y.low === undefined ? Math.min(...all) : toShown(y.low, y.quantity, units);
  const highest = y.high === undefined ? Math.max(...all) : toShown(y.high, y.quantity, units);
  const [yLow, yHigh] =
    y.log === true ? logBounds(lowest, highest) : [Math.min(0, lowest * 1.06), highest * 1.06 || 1];
  const [xLow, xHigh] = [Math.min(...shownX), Math.max(...shownX)];
  const foot = HEIGHT - BOTTOM;
  const edge = WIDTH - RIGHT;
  const across = downwards
    ? makeScale(yLow, yHigh, LEFT, edge, y.log === true)
    : makeScale(xLow, xHigh, LEFT, edge, x.log === true, 6);
  const up = downwards
    ? makeScale(xLow, xHigh, TOP, foot, x.log === true, 6)
    : makeScale(yLow, yHigh, foot, TOP, y.log === true);
  const point = (i: number, value: number): readonly [number, number] =>
    downwards ? [across.at(value), up.at(shownX[i]!)] : [across.at(shownX[i]!), up.at(value)];
  const pathOf = (values: readonly (number | null)[]): string => {
    let pen = false;
    return values
      .map((value, i) => {
        if (value === null) {
          pen = false;
          return '';
        }
        const [px, py] = point(i, value);
        const step = `${pen ? 'L' : 'M'}${px.toFixed(1)} ${py.toFixed(1)}`;
        pen = true;
        return step;
      })
      .join('');
  };
  const markPlaces = marks.flatMap((mark, i) => {
    const at = toShown(mark.at, x.quantity, units);
    if (at < xLow || at > xHigh) return [];
    const place = downwards ? up.at(at) : across.at(at);
    const late = place > (LEFT + edge) / 2;
    return [{ name: mark.name, place, late, nameY: downwards ? place - 4 : TOP + 9 + 11 * (i % 3) }];
  });
  const letters = letterPlaces(
    shownY.map((values) => values.flatMap((value, i) => (value === null ? [] : [point(i, value)]))),
    markPlaces.flatMap(({ name, place, late, nameY }): PagePoint[] =>
      downwards
        ? [[edge - 16, place - 6]]
        : [0.15, 0.5, 0.85].map((share) => [place + (late ? -1 : 1) * share * 6 * name.length, nameY - 4]),
    ),
    downwards ? [] : markPlaces.map(({ place }) => place),
  );
  const bands = props.void === undefined ? [] : runsOf(props.void.at);
  const tick = new Intl.NumberFormat(undefined, { maximumSignificantDigits: 3 });
  const unit = (axis: Axis): string =>
    symbol(axis.quantity) === '' ? axis.name : `${axis.name}, ${symbol(axis.quantity)}`;
  const [acrossName, upName] = downwards ? [unit(y), unit(x)] : [unit(x), unit(y)];
  const save = (): void =>
    saveText(
      `${file}.csv`,
      csvText(
        [x.key, ...lines.map((line) => line.key)],
        x.values.map((value, i) => [value, ...lines.map((line) => line.values[i] ?? null)]),
      ),
    );
  return (
    <figure className="study-plot">
      <figcaption id={`${id}t`}>{title}</figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={`${id}t ${id}d`}>
        <desc id={`${id}d`}>
          {t('studies.plot-desc', { across: acrossName, up: upName, lines: lines.map((line) => line.name) })}
        </desc>
        <defs>
          <pattern
            id={`${id}v`}
            width="6"
            height="6"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path d="M0 0V6" className="p-hatch" />
          </pattern>
        </defs>
        {bands.map(([from, to]) => {
          const half = (shownX[1]! - shownX[0]!) / 2;
          const a = across.at(Math.max(xLow, shownX[from]! - half));
          const b = across.at(Math.min(xHigh, shownX[to]! + half));
          return (
            <rect
              key={from}
              x={a}
              y={TOP}
              width={Math.max(0, b - a)}
              height={foot - TOP}
              fill={`url(#${id}v)`}
            />
          );
        })}
        {up.ticks.map((value) => (
          <g key={value}>
            <path d={`M${LEFT} ${up.at(value)}H${edge}`} className="p-rule" />
            <text x={LEFT - 5} y={up.at(value) + 3.5} textAnchor="end">
              {tick.format(value)}
            </text>
          </g>
        ))}
        {across.ticks.map((value) => (
          <g key={value}>
            <path d={`M${across.at(value)} ${TOP}V${foot}`} className="p-rule" />
            <text
              x={across.at(value)}
              y={foot + 14}
              textAnchor={across.at(value) > edge - 8 ? 'end' : 'middle'}
            >
              {tick.format(value)}
            </text>
          </g>
        ))}
        <text x={4} y={12}>
          {upName}
        </text>
        <text x={(LEFT + edge) / 2} y={HEIGHT - 8} textAnchor="middle">
          {acrossName}
        </text>
        <path d={`M${LEFT} ${TOP}V${foot}H${edge}`} className="p-frame" />
        {levels.map((level) => {
          const at = toShown(level.at, y.quantity, units);
          return (
            <g key={level.name}>
              <path
                d={downwards ? `M${across.at(at)} ${TOP}V${foot}` : `M${LEFT} ${up.at(at)}H${edge}`}
                className="p-level"
              />
              <text x={LEFT + 4} y={up.at(at) - 4} className="p-name">
                {level.name}
              </text>
            </g>
          );
        })}
        {lines.map((line, i) => (
          <path key={line.key} d={pathOf(shownY[i]!)} className="p-line" strokeDasharray={DASHES[i]} />
        ))}
        {markPlaces.map(({ name, place, late, nameY }) => (
          <g key={name}>
            <path
              d={downwards ? `M${LEFT} ${place}H${edge}` : `M${place} ${TOP}V${foot}`}
              className="p-mark"
            />
            <text
              x={downwards ? edge - 2 : place + (late ? -3 : 3)}
              y={nameY}
              textAnchor={downwards || late ? 'end' : 'start'}
              className="p-name"
            >
              {name}
            </text>
          </g>
        ))}
        {lines.length > 1 &&
          lines.map((line, i) => {
            const at = letters[i] ?? null;
            return (
              at !== null && (
                <g key={line.key} transform={`translate(${at[0].toFixed(1)} ${at[1].toFixed(1)})`}>
                  <circle r="7" className="p-letter" />
                  <text textAnchor="middle" y="3.6" className="p-letter-text">
                    {LETTERS[i]}
                  </text>
                </g>
              )
            );
          })}
      </svg>
      <ul className="plot-key small">
        {lines.map((line, i) => (
          <li key={line.key}>
            <svg width="40" height="14" viewBox="0 0 40 14" aria-hidden="true">
              <path d="M0 7H40" className="p-line" strokeDasharray={DASHES[i]} />
              {lines.length > 1 && <circle cx="20" cy="7" r="6.5" className="p-letter" />}
              {lines.length > 1 && (
                <text x="20" y="10.4" textAnchor="middle" className="p-letter-text">
                  {LETTERS[i]}
                </text>
              )}
            </svg>
            <span>{line.name}</span>
          </li>
        ))}
        {props.void !== undefined && bands.length > 0 && (
          <li>
            <svg width="40" height="14" viewBox="0 0 40 14" aria-hidden="true">
              <rect width="40" height="14" fill={`url(#${id}v)`} />
            </svg>
            <span>{props.void.name}</span>
          </li>
        )}
      </ul>
      <div className="plot-foot">
        <button
          type="button"
          className="button"
          onClick={save}
          aria-label={t('studies.save-csv-of', { name: title })}
        >
          {t('studies.save-csv')}
        </button>
        <details className="plot-table">
          <summary>{t('studies.table')}</summary>
          <div
            className="table-scroll"
            tabIndex={0}
            role="region"
            aria-label={t('studies.table-of', { name: title })}
          >
            <table>
              <thead>
                <tr>
                  <th scope="col">{unit(x)}</th>
                  {lines.map((line) => (
                    <th key={line.key} scope="col">
                      {symbol(y.quantity) === '' ? line.name : `${line.name}, ${symbol(y.quantity)}`}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {thinned(x.values.length).map((i) => (
                  <tr key={i}>
                    <th scope="row" className="mono">
                      {number(x.values[i], x.quantity, 4)}
                    </th>
                    {lines.map((line) => (
                      <td key={line.key} className="mono">
                        {number(line.values[i], y.quantity, 3)}
                      </td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        </details>
      </div>
    </figure>
  );
}

/** At most about 40 rows of a table; the file has them all. */
const thinned = (count: number): number[] => {
  const step = Math.max(1, Math.ceil(count / 40));
  return Array.from({ length: Math.ceil(count / step) }, (_, i) => i * step);
};

/** Unbroken runs of true, as first and last index. */
function runsOf(at: readonly boolean[]): (readonly [number, number])[] {
  const runs: [number, number][] = [];
  at.forEach((on, i) => {
    if (!on) return;
    const last = runs.at(-1);
    if (last !== undefined && last[1] === i - 1) last[1] = i;
    else runs.push([i, i]);
  });
  return runs;
}
