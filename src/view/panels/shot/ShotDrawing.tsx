/** The slice end-on, drawn anew whenever the playhead moves, with its key. */
import { useEffect, useRef } from 'react';
import { rotationSense } from '../../../core/shot';
import type { ExciterStudy } from '../../../core/studies';
import {
  onFrameRequest,
  readingAt,
  shotTransient,
  type ShotBase,
  type ShotRun,
  totalMoment,
  turningAt,
} from '../../../store';
import { useApp, useSpeech } from '../../bind';
import { housingPaths } from '../common/housing-paths';
import { type DrawingInk, drawShot, type Outline } from './draw-shot';
import { useLongestForce } from './use-shot';

interface Props {
  readonly run: ShotRun;
  readonly base: ShotBase;
  readonly study: ExciterStudy;
}

function inkOf(node: Element): DrawingInk {
  const style = getComputedStyle(node);
  const of = (name: string): string => style.getPropertyValue(name).trim();
  return {
    ground: of('--ground'),
    card: of('--card'),
    ink: of('--steel-line'),
    faint: of('--faint'),
    steel: of('--steel'),
    accent: of('--accent'),
    held: of('--shot-held'),
  };
}

export function ShotDrawing({ run, base, study }: Props) {
  const { t, quantity } = useSpeech();
  const canvas = useRef<HTMLCanvasElement>(null);
  const eye = useApp((s) => s.shot.eye);
  const theme = useApp((s) => s.settings.theme);
  const longest = useLongestForce(base);
  const { housing } = study;
  useEffect(() => {
    const node = canvas.current;
    const c = node?.getContext('2d');
    if (node === null || c === null || c === undefined) return;
    let ink = inkOf(node);
    const { shell, fixed } = housingPaths(housing);
    const outline: Outline = {
      shell: new Path2D(shell),
      fixed: fixed.map((steel) => new Path2D(steel)),
      reach_m: housing.reach_m,
    };
    const { take, setup } = run;
    let drawn = -1;
    const draw = (): void => {
      if (shotTransient.take !== take) return;
      drawn = shotTransient.version;
      const { time_s } = shotTransient;
      const turning = turningAt(take, time_s);
      const now = { ...readingAt(take, time_s), ...turning };
      const [x, y] = totalMoment(base, setup.baffle, now.shot_kgm);
      const k = longest > 0 ? now.speed_rad_s ** 2 / longest : 0;
      drawShot(c, node.width, { take, outline, eye, now, force: [k * x, k * y], ink });
    };
    const fit = (): void => {
      const size = Math.round(node.clientWidth * Math.min(3, window.devicePixelRatio));
      if (size === 0) return;
      node.width = node.height = size;
      draw();
    };
    const watcher = new ResizeObserver(fit);
    watcher.observe(node);
    fit();
    // The page takes on a new theme's colours after this.
    const dyed = requestAnimationFrame(() => {
      ink = inkOf(node);
      draw();
    });
    const stop = onFrameRequest(() => {
      if (shotTransient.version !== drawn) draw();
    });
    return () => {
      stop();
      cancelAnimationFrame(dyed);
      watcher.disconnect();
    };
  }, [run, base, housing, eye, theme, longest]);

  return (
    <figure className="shot-drawing">
      <canvas
        ref={canvas}
        role="img"
        aria-label={t('shot.drawing', {
          direction: t(`exciter.${run.setup.direction}`),
          balls: run.take.count,
          captured: quantity(run.outcome.captured, 'share'),
          unbalance: quantity(run.outcome.U_kgm, 'unbalance'),
        })}
        data-sense={rotationSense(run.setup.direction)}
      />
      <figcaption>
        <ul className="drawing-key">
          <li>
            <svg width="16" height="16" viewBox="-8 -8 16 16" aria-hidden="true">
              <circle r="6.5" className="d-loose" />
            </svg>
            <span>{t('shot.key-loose')}</span>
          </li>
          <li>
            <svg width="16" height="16" viewBox="-8 -8 16 16" aria-hidden="true">
              <circle r="6.5" className="d-held" />
              <circle r="2.4" className="d-ink-fill" />
            </svg>
            <span>{t('shot.key-held')}</span>
          </li>
          <li>
            <svg width="16" height="16" viewBox="-8 -8 16 16" aria-hidden="true">
              <circle r="6.5" className="d-com" />
              <path d="M0-6.5A6.5 6.5 0 0 1 6.5 0H0ZM0 6.5A6.5 6.5 0 0 1-6.5 0H0Z" className="d-ink-fill" />
            </svg>
            <span>{t('exciter.key-com')}</span>
          </li>
          <li>
            <svg width="28" height="14" viewBox="0 0 28 14" aria-hidden="true">
              <path d="M1 7H21" className="d-force" />
              <path d="M18 2 27 7l-9 5Z" className="d-accent-fill" />
            </svg>
            <span>{t('shot.key-force')}</span>
          </li>
          <li>
            <svg width="14" height="14" viewBox="-7 -7 14 14" aria-hidden="true">
              <path d="M-5-5H5L0 6Z" className="d-ink-fill" />
            </svg>
            <span>{t('shot.key-down')}</span>
          </li>
        </ul>
      </figcaption>
    </figure>
  );
}
