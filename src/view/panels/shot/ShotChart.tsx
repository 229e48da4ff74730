/**
 * Captured share (solid, left scale) and U (dashed, right scale) over time or over w^2 r / g, with the playhead. Line
 * types and names at the lines make it readable in black and white.
 */
import { useEffect, useMemo, useRef } from 'react';
import {
  onFrameRequest,
  readingAt,
  shotTransient,
  type ShotBase,
  type ShotRun,
  totalMoment,
} from '../../../store';
import { fromShown } from '../../../core/kernel';
import { useApp, useCommands, useSpeech } from '../../bind';
import { Segmented } from '../common/Segmented';
import { CHART, chartPath, chartScale, type ChartOver } from './chart-lines';

export function ShotChart({ run, base }: { readonly run: ShotRun; readonly base: ShotBase }) {
  const { t, number, quantity, symbol, units } = useSpeech();
  const commands = useCommands();
  const over = useApp((s) => s.shot.chartOver);
  const head = useRef<SVGGElement>(null);
  const { take, setup, outcome } = run;
  const { readings } = take;
  const U = useMemo(
    () => readings.map((r) => Math.hypot(...totalMoment(base, setup.baffle, r.shot_kgm))),
    [readings, base, setup.baffle],
  );
  const scale = useMemo(
    () => chartScale(readings, U, over, outcome.level_U_kgm, fromShown(1, 'unbalance', units)),
    [readings, U, over, outcome.level_U_kgm, units],
  );

  useEffect(() => {
    const place = (): void => {
      if (shotTransient.take !== take) return;
      const now = readingAt(take, shotTransient.time_s);
      const x = scale.x({ time_s: shotTransient.time_s, gravity_ratio: now.gravity_ratio });
      const U_now = Math.hypot(...totalMoment(base, setup.baffle, now.shot_kgm));
      const g = head.current;
      if (g === null) return;
      g.setAttribute('transform', `translate(${x.toFixed(1)} 0)`);
      g.children[1]?.setAttribute('cy', scale.share(now.captured).toFixed(1));
      g.children[2]?.setAttribute('y', (scale.U(U_now) - 3.5).toFixed(1));
    };
    place();
    return onFrameRequest(place);
  }, [take, scale, base, setup.baffle]);

  const { width, height, left, right, top, bottom } = CHART;
  const foot = height - bottom;
  const edge = width - right;
  const last = U.length - 1;
  return (
    <figure className="shot-chart">
      <Segmented<ChartOver>
        legend={t('shot.chart-over')}
        choices={[
          { value: 'time', label: t('shot.chart-time') },
          { value: 'gravity', label: t('shot.chart-gravity') },
        ]}
        value={over}
        onChange={(chartOver) => commands.setShot({ chartOver })}
      />
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={t('shot.chart', {
          captured: quantity(outcome.captured, 'share'),
          unbalance: quantity(outcome.U_kgm, 'unbalance'),
          start: quantity(U[0], 'unbalance'),
        })}
      >
        {[0, 0.25, 0.5, 0.75, 1].map((share) => (
          <g key={share}>
            <path d={`M${left} ${scale.share(share)}H${edge}`} className="c-rule" />
            <text x={left - 5} y={scale.share(share) + 3.5} textAnchor="end">
              {number(share, 'share')}
            </text>
          </g>
        ))}
        {scale.U_ticks_kgm.map((kgm) => (
          <g key={kgm}>
            <path d={`M${edge} ${scale.U(kgm)}h4`} className="c-tick" />
            <text x={edge + 7} y={scale.U(kgm) + 3.5}>
              {number(kgm, 'unbalance')}
            </text>
          </g>
        ))}
        {scale.ticks.map(({ value, x }) => (
          <g key={value}>
            <path d={`M${x} ${foot}v4`} className="c-tick" />
            <text x={x} y={foot + 15} textAnchor="middle">
              {number(value, 'plain')}
            </text>
          </g>
        ))}
        <text x={left - 5} y={9} textAnchor="end">
          %
        </text>
        <text x={edge + 7} y={9}>
          {symbol('unbalance')}
        </text>
        <text x={(left + edge) / 2} y={height - 4} textAnchor="middle">
          {t(over === 'time' ? 'shot.axis-time' : 'shot.axis-gravity')}
        </text>
        <path d={`M${left} ${top}V${foot}H${edge}V${top}`} className="c-frame" />
        {scale.critical_x !== null && (
          <>
            <path d={`M${scale.critical_x} ${top}V${foot}`} className="c-critical" />
            <text x={scale.critical_x + 4} y={top + 9} className="c-name">
              {t('shot.critical')}
            </text>
          </>
        )}
        {outcome.level_U_kgm !== null && (
          <path d={`M${edge - 34} ${scale.U(outcome.level_U_kgm)}H${edge}`} className="c-level" />
        )}
        <path d={chartPath(readings, scale.x, (_, i) => scale.U(U[i]!))} className="c-unbalance" />
        <path d={chartPath(readings, scale.x, (r) => scale.share(r.captured))} className="c-captured" />
        <g ref={head}>
          <path d={`M0 ${top}V${foot}`} className="c-head" />
          <circle r="4" cy={scale.share(0)} className="c-head-captured" />
          <rect x="-3.5" y={scale.U(U[last] ?? 0)} width="7" height="7" className="c-head-unbalance" />
        </g>
      </svg>
      <figcaption>
        <ul className="drawing-key">
          <li>
            <svg width="34" height="10" viewBox="0 0 34 10" aria-hidden="true">
              <path d="M0 5H34" className="c-captured" />
              <circle cx="17" cy="5" r="4" className="c-head-captured" />
            </svg>
            <span>{t('shot.key-captured')}</span>
          </li>
          <li>
            <svg width="34" height="10" viewBox="0 0 34 10" aria-hidden="true">
              <path d="M0 5H34" className="c-unbalance" />
              <rect x="13.5" y="1.5" width="7" height="7" className="c-head-unbalance" />
            </svg>
            <span>{t('shot.key-unbalance')}</span>
          </li>
          {outcome.level_U_kgm !== null && (
            <li>
              <svg width="34" height="10" viewBox="0 0 34 10" aria-hidden="true">
                <path d="M0 5H34" className="c-level" />
              </svg>
              <span>{t('shot.key-level')}</span>
            </li>
          )}
        </ul>
      </figcaption>
    </figure>
  );
}
