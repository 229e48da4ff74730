/**
 * The travel circuit with symbols after ISO 1219-1: variable pump for both directions, two motors of two displacements
 * in parallel, charge pump with its check valve, relief valves. Flow moves along the lines at the computed rate; with
 * reduced motion the arrows and numbers stand for it.
 */
import type { CSSProperties } from 'react';
import type { Combination, TwoSpeedStudy } from '../../../core/studies';
import { useSpeech } from '../../bind';

interface Props {
  readonly study: TwoSpeedStudy;
  readonly now: Combination;
  readonly relief_Pa: number;
}

/** Dashes a second of a flow, so that half the flow moves half as fast. */
const SECONDS_AT_FULL = 0.7;

/** Arrowheads on the lines: place, and the way they point. */
const ARROWS = [
  [60, 84, -90],
  [150, 40, 0],
  [245, 40, 0],
  [190, 74, 90],
  [290, 74, 90],
  [190, 196, 90],
  [290, 196, 90],
  [240, 230, 180],
  [90, 230, 180],
  [60, 204, -90],
] as const;

export function Circuit({ study, now, relief_Pa }: Props) {
  const { t, quantity } = useSpeech();
  const { traction } = now;
  const pump_m3_s = now.drum_flow_m3_s + now.axle_flow_m3_s;
  const high_Pa = Math.min(traction.pressure_needed_Pa, traction.slip_pressure_Pa, relief_Pa);
  const flow = (m3_s: number): CSSProperties =>
    m3_s > 0
      ? { animationDuration: `${((SECONDS_AT_FULL * study.pump_flow_m3_s) / m3_s).toFixed(2)}s` }
      : { animation: 'none', opacity: 0 };
  const line = (d: string, m3_s: number) => (
    <>
      <path d={d} className="h-line" />
      <path d={d} className="h-flow" style={flow(m3_s)} />
    </>
  );
  const state = traction.climbs
    ? t('studies.circuit-climbs')
    : t(`studies.circuit-stops-${traction.limit === 'relief' ? 'relief' : traction.slips_first}`);
  return (
    <figure className="circuit">
      <svg
        viewBox="0 0 340 300"
        role="img"
        aria-label={t('studies.circuit-label', {
          pressure: quantity(high_Pa, 'pressure'),
          charge: quantity(study.charge_Pa, 'pressure'),
          drum: quantity(now.drum_flow_m3_s, 'flow'),
          axle: quantity(now.axle_flow_m3_s, 'flow'),
          state,
        })}
      >
        {/* high side, above; low side, below */}
        {line('M60 128V40H120H190V100', pump_m3_s > 0 ? now.drum_flow_m3_s : 0)}
        {line('M60 128V40H190H290V100', now.axle_flow_m3_s)}
        {line('M190 152V230H120H60V172', now.drum_flow_m3_s)}
        {line('M290 152V230H190H60V172', now.axle_flow_m3_s)}
        {pump_m3_s > 0 &&
          ARROWS.map(([x, y, deg]) => (
            <path
              key={`${x} ${y}`}
              d="M-6 -4.5 6 0 -6 4.5Z"
              transform={`translate(${x} ${y}) rotate(${deg})`}
              className="h-fill"
            />
          ))}
        <circle cx="190" cy="40" r="2.4" className="h-fill" />
        <circle cx="190" cy="230" r="2.4" className="h-fill" />
        {/* variable pump, both directions of flow */}
        <g transform="translate(60 150)">
          <circle r="22" className="h-body" />
          <path d="M-6 -12 0 -22 6 -12Z" className="h-fill" />
          <path d="M-6 12 0 22 6 12Z" className="h-fill" />
          <path d="M-26 24 26 -24" className="h-line" />
          <path d="M26 -24 17 -21 22 -15Z" className="h-fill" />
          <path d="M-50 0H-22" className="h-line" />
          <text x="-56" y="34" className="h-name">
            {t('studies.circuit-pump')}
          </text>
        </g>
        {(['drum', 'axle'] as const).map((end) => {
          const x = end === 'drum' ? 190 : 290;
          const range = end === 'drum' ? now.drum_range : now.axle_range;
          const m3_s = end === 'drum' ? now.drum_flow_m3_s : now.axle_flow_m3_s;
          const slips = !traction.climbs && traction.limit === 'slip' && traction.slips_first === end;
          return (
            <g key={end} transform={`translate(${x} 126)`}>
              <circle r="24" className={slips ? 'h-body h-slips' : 'h-body'} />
              <path d="M-6 -24 0 -14 6 -24Z" className="h-fill" transform="translate(0 2)" />
              <path d="M-6 24 0 14 6 24Z" className="h-fill" transform="translate(0 -2)" />
              <path d="M-26 22 26 -22" className="h-line" />
              <path d="M26 -22 17 -19 22 -13Z" className="h-fill" />
              <path d="M24 0H38M38 -6V6" className="h-line" />
              <text x="-28" y="-30" textAnchor="end" className="h-name">
                {t(`studies.circuit-${end}`)}
              </text>
              <text x="-28" y="40" textAnchor="end">
                {t(`studies.range-${range}`)}
              </text>
              <text x="-28" y="54" textAnchor="end" className="mono">
                {quantity(m3_s, 'flow', 3)}
              </text>
              {slips && (
                <text x="0" y="4" textAnchor="middle" className="h-strong">
                  {t('studies.circuit-spins')}
                </text>
              )}
            </g>
          );
        })}
        {/* relief valve between the sides */}
        <g transform="translate(112 136)">
          <path d="M0 -96V-14M0 14V94" className="h-line" />
          <rect x="-14" y="-14" width="28" height="28" className="h-body" />
          <path d="M-6 -14V14" className="h-line" />
          <path d="M-6 14 -10 5 -2 5Z" className="h-fill" />
          <path d="M14 -8 20 -4 14 0 20 4 14 8" className="h-line" />
          <path d="M0 -34H-22V0H-14" className="h-pilot" />
          <text x="4" y="-22" className="mono">
            {quantity(relief_Pa, 'pressure')}
          </text>
        </g>
        {/* charge pump with check valve into the low side */}
        <g transform="translate(60 268)">
          <circle r="13" className="h-body" />
          <path d="M-4 -6 0 -13 4 -6Z" className="h-fill" />
          <path d="M0 -13V-38" className="h-line" />
          <path d="M-5 -21 0 -29 5 -21" className="h-line" />
          <circle cy="-24" r="3.4" className="h-body" />
          <path d="M0 13V22M-9 20V26H9V20" className="h-line" />
          <text x="20" y="5">
            {t('studies.circuit-charge', { pressure: quantity(study.charge_Pa, 'pressure') })}
          </text>
        </g>
        <text x="64" y="30" className="h-strong">
          {t('studies.circuit-high', { pressure: quantity(high_Pa, 'pressure') })}
        </text>
        <text x="334" y="246" textAnchor="end">
          {t('studies.circuit-low')}
        </text>
      </svg>
      <figcaption className="small">{state}</figcaption>
    </figure>
  );
}
