/**
 * Cross-section of the housing seen from the machine's right, heavy side down as it hangs at rest: the settled shot,
 * wall and baffle cut and hatched, shaft axis, centre of mass of the shot, and the force as an arrow. The body frame's
 * +x points down on the page and +y to the right, so counter-clockwise stays counter-clockwise.
 */
import type { ExciterStudy } from '../../../core/studies';
import { useId, useMemo } from 'react';
import type { SpinDirection } from '../../../store';
import { useSpeech } from '../../bind';
import { housingPaths, PAGE_MM as MM, pagePath } from '../common/housing-paths';

interface Props {
  readonly study: ExciterStudy;
  readonly direction: SpinDirection;
}

export function ExciterDrawing({ study, direction }: Props) {
  const { t, quantity } = useSpeech();
  const id = useId().replace(/[^a-zA-Z0-9]/g, '');
  const { housing } = study;
  const paths = useMemo(() => housingPaths(housing), [housing]);
  const { shot, surface, value } = study[direction];
  const [cx] = housing.centre_m;
  const radius = housing.reach_m - cx;
  const least = Math.min(...[housing.outer, ...housing.fixed].flat().map(([x]) => x));
  const top = least * MM - 10;
  const bottom = housing.reach_m * MM + 14;
  const half = radius * MM + 34;
  // Both directions share one scale, so that the arrows compare: the longer one reaches the wall and a bit beyond.
  const force_N = value?.force_N ?? 0;
  const longest = Math.max(study.high.value?.force_N ?? 0, study.low.value?.force_N ?? 0) || 1;
  const force = value !== null && value.U_kgm > 0 ? value.total_kgm.map((c) => c / value.U_kgm) : [1, 0];
  const length = (force_N / longest) * (housing.reach_m * MM * 0.98);
  const tip = [force[1]! * length, force[0]! * length] as const;
  const centred = value !== null && study.shotMass_kg > 0 && value.shot_U_kgm > 0;
  const arm = centred ? value.shot_kgm.map((m) => (m / study.shotMass_kg) * MM) : [0, 0];
  const [comX, comY] = [arm[1]!, arm[0]!];
  // LOW is positive about machine +x, which points out of the page: counter-clockwise.
  const sweep = direction === 'low' ? 0 : 1;
  const ring = radius * MM + 16;
  const at = (deg: number): string => {
    const a = (deg * Math.PI) / 180;
    return `${(ring * Math.cos(a)).toFixed(2)} ${(cx * MM + ring * Math.sin(a)).toFixed(2)}`;
  };
  // Beside the trim bar, on the side from which the turn rises.
  const [from, to] = direction === 'low' ? [8, -58] : [172, 238];
  return (
    <figure className="exciter-drawing">
      <svg
        viewBox={`${-half} ${top} ${2 * half} ${bottom - top}`}
        role="img"
        aria-label={t('exciter.drawing', {
          direction: t(`exciter.${direction}`),
          captured: quantity(value?.captured, 'share'),
          unbalance: quantity(value?.U_kgm, 'unbalance'),
        })}
      >
        <defs>
          <pattern
            id={`${id}h`}
            width="4.5"
            height="4.5"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <rect width="4.5" height="4.5" className="d-steel" />
            <path d="M0 0V4.5" className="d-hatch" />
          </pattern>
          <pattern
            id={`${id}i`}
            width="3"
            height="3"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(-45)"
          >
            <rect width="3" height="3" className="d-steel" />
            <path d="M0 0V3" className="d-hatch" />
          </pattern>
          <pattern id={`${id}s`} width="12" height="10.4" patternUnits="userSpaceOnUse">
            <rect width="12" height="10.4" className="d-shot-ground" />
            {[
              [0, 0],
              [12, 0],
              [6, 5.2],
              [0, 10.4],
              [12, 10.4],
            ].map(([x, y]) => (
              <circle key={`${x},${y}`} cx={x} cy={y} r="5.1" className="d-ball" />
            ))}
          </pattern>
          <marker
            id={`${id}a`}
            viewBox="0 0 10 10"
            refX="8.5"
            refY="5"
            markerWidth="5"
            markerHeight="5"
            orient="auto"
          >
            <path d="M0 .8 10 5 0 9.2 2.4 5Z" className="d-accent-fill" />
          </marker>
          <marker
            id={`${id}t`}
            viewBox="0 0 10 10"
            refX="8"
            refY="5"
            markerWidth="6.5"
            markerHeight="6.5"
            orient="auto"
          >
            <path d="M0 1 9 5 0 9Z" className="d-ink-fill" />
          </marker>
        </defs>
        <path d={paths.chamber} className="d-void" />
        {shot.map((body, i) => {
          const d = pagePath([body.loop, ...body.holes]);
          // Only where the level surface is held for true do balls fill it.
          return surface === 'level' ? (
            <path key={i} d={d} fill={`url(#${id}s)`} className="d-shot" />
          ) : (
            <path key={i} d={d} className="d-level" />
          );
        })}
        <path d={paths.shell} fill={`url(#${id}h)`} fillRule="evenodd" className="d-line" />
        {paths.fixed.map((d, i) => (
          <path key={i} d={d} fill={`url(#${id}i)`} className="d-line" />
        ))}
        {paths.baffle !== null && <path d={paths.baffle} className="d-solid" />}
        {/* centre lines: shaft axis and the chamber's own */}
        <path d={`M${-half + 8} 0H${half - 8}M0 ${top + 6}V${bottom - 6}`} className="d-centre" />
        <path d={`M${-26} ${cx * MM}H26`} className="d-centre" />
        <circle r="4" className="d-axis" />
        <path
          d={`M${at(from)}A${ring} ${ring} 0 0 ${sweep} ${at(to)}`}
          className="d-turn"
          markerEnd={`url(#${id}t)`}
        />
        {force_N > 0 && (
          <path
            d={`M0 0L${tip[0].toFixed(2)} ${tip[1].toFixed(2)}`}
            className="d-force"
            markerEnd={`url(#${id}a)`}
          />
        )}
        {centred && (
          <g transform={`translate(${comX.toFixed(2)} ${comY.toFixed(2)})`}>
            <circle r="6.5" className="d-com" />
            <path d="M0-6.5A6.5 6.5 0 0 1 6.5 0H0ZM0 6.5A6.5 6.5 0 0 1-6.5 0H0Z" className="d-ink-fill" />
          </g>
        )}
      </svg>
      <figcaption>
        <ul className="drawing-key">
          {surface !== 'level' && (
            <li data-testid="key-level">
              <svg width="28" height="14" viewBox="0 0 28 14" aria-hidden="true">
                <rect x="1" y="1" width="26" height="12" className="d-level" />
              </svg>
              <span>{t('exciter.key-level')}</span>
            </li>
          )}
          <li>
            <svg width="28" height="14" viewBox="0 0 28 14" aria-hidden="true">
              <path d="M1 7H21" className="d-force" />
              <path d="M18 2 27 7l-9 5Z" className="d-accent-fill" />
            </svg>
            <span>
              {t('exciter.key-force')} <b className="mono">{quantity(value?.force_N, 'force-large')}</b>
            </span>
          </li>
          <li>
            <svg width="16" height="16" viewBox="-8 -8 16 16" aria-hidden="true">
              <circle r="6.5" className="d-com" />
              <path d="M0-6.5A6.5 6.5 0 0 1 6.5 0H0ZM0 6.5A6.5 6.5 0 0 1-6.5 0H0Z" className="d-ink-fill" />
            </svg>
            <span>{t('exciter.key-com')}</span>
          </li>
          <li>
            <svg width="28" height="10" viewBox="0 0 28 10" aria-hidden="true">
              <path d="M0 5H28" className="d-centre" />
            </svg>
            <span>{t('exciter.key-axis')}</span>
          </li>
        </ul>
        <p className="small faint">
          {t('exciter.drawing-note')} {surface !== 'level' && t(`exciter.drawing-${surface}`)}
        </p>
      </figcaption>
    </figure>
  );
}
