/**
 * The stage: the one canvas of the app with its labels and balloons. Loaded lazily, so that lists and panels stand
 * before three is fetched. Fills its parent, which must be positioned.
 */
import { Canvas } from '@react-three/fiber';
import { type ReactNode, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { NeutralToneMapping, type WebGLRenderer } from 'three';
import { useApp, useSpeech, useReducedMotion } from '../bind';
import { projectSeen, seenPoints } from './balloons/anchors';
import { STAGE_PALETTES } from './palette';
import { StageBalloons } from './StageBalloons';
import { StageBoundary } from './StageBoundary';
import { StageLabel } from './StageLabel';
import { StageNotice } from './StageNotice';
import { LENS_DEG, StageScene } from './StageScene';
import { newLink, type StageLink } from './stage-link';
import { newStats } from './stats';
import { askedTier, type Tier, tierFor, tierMeter, TIERS } from './tier';
import { useStagePointer } from './use-stage-pointer';
import { webglRenderer } from './webgl';

interface Props {
  /** What stands in the stage's place where there is none to show. */
  readonly instead?: ReactNode;
}

export default function Stage({ instead }: Props) {
  const renderer = useMemo(() => webglRenderer(), []);
  const [broken, setBroken] = useState(false);
  if (renderer === null || broken) return <StageNotice>{instead}</StageNotice>;
  return (
    <StageBoundary onError={() => setBroken(true)}>
      <DrawnStage renderer={renderer} />
    </StageBoundary>
  );
}

function DrawnStage({ renderer }: { readonly renderer: string }) {
  const { t } = useSpeech();
  const document = useApp((s) => s.document);
  const theme = useApp((s) => s.settings.theme);
  const reduced = useReducedMotion();
  const [tier, onFrameTime] = useTier(renderer);
  const look = TIERS[tier];
  const palette = STAGE_PALETTES[theme];
  const stage = useRef<HTMLDivElement>(null);
  const pointer = useRef<{ x: number; y: number } | null>(null);
  const link = useMemo(() => newLink(newStats()), []);
  useStagePointer(stage, link, pointer);
  useProbe(link, tier, renderer);
  // A context that does not come back by itself gets a new canvas.
  const [life, setLife] = useState(0);
  const renew = useCallback(() => setLife((n) => n + 1), []);

  return (
    <div
      ref={stage}
      role="application"
      tabIndex={0}
      aria-label={t('stage.label')}
      data-testid="stage"
      style={{
        position: 'absolute',
        inset: 0,
        overflow: 'hidden',
        background: palette.paper,
        touchAction: 'none',
      }}
    >
      <Canvas
        key={`${String(look.antialias)} ${life}`}
        frameloop="demand"
        dpr={[1, look.maxDpr]}
        shadows="percentage"
        camera={{ fov: LENS_DEG, near: 0.1, far: 60, position: [3, 2, -4] }}
        gl={{ antialias: look.antialias, powerPreference: 'high-performance', stencil: false }}
        onCreated={({ gl }) => {
          gl.toneMapping = NeutralToneMapping;
          prepareCanvas(gl, renew);
        }}
      >
        {document !== null && (
          <StageScene
            key={document.hash}
            document={document}
            look={look}
            reduced={reduced}
            link={link}
            onFrameTime={onFrameTime}
          />
        )}
      </Canvas>
      <StageBalloons link={link} palette={palette} />
      <StageLabel pointer={pointer} palette={palette} />
    </div>
  );
}

/** Time in which a lost context should be back, ms. */
const CONTEXT_PATIENCE_MS = 4000;

function prepareCanvas(gl: WebGLRenderer, renew: () => void): void {
  const { domElement } = gl;
  domElement.dataset['testid'] = 'stage-canvas';
  let timer: ReturnType<typeof setTimeout> | undefined;
  domElement.addEventListener('webglcontextlost', () => {
    timer = setTimeout(() => {
      if (domElement.isConnected) renew();
    }, CONTEXT_PATIENCE_MS);
  });
  domElement.addEventListener('webglcontextrestored', () => clearTimeout(timer));
}

/** The tier to draw with: asked for, or found by measuring. */
function useTier(renderer: string): [Tier, (ms: number | null) => void] {
  const setting = useApp((s) => s.settings.drawTier);
  const asked = askedTier(setting, location.search);
  const [found, setFound] = useState<Tier>(() => tierFor(renderer));
  const meter = useMemo(() => tierMeter(), []);
  const tier = asked ?? found;
  const onFrameTime = useCallback(
    (ms: number | null) => {
      if (asked !== null) return;
      if (ms === null) meter.rest();
      else setFound((now) => meter.frame(ms, now));
    },
    [asked, meter],
  );
  return [tier, onFrameTime];
}

/** Hands figures and places to tests and the benchmark. */
function useProbe(link: StageLink, tier: Tier, renderer: string): void {
  useEffect(() => {
    link.stats.tier = tier;
    link.stats.renderer = renderer;
    window.__drumbench = {
      ...window.__drumbench,
      stats: link.stats,
      screenOf: (partId) => {
        const { camera, table, cut, width, height } = link;
        const part = table?.indexOf.get(partId);
        if (camera === null || table === null || part === undefined) return null;
        for (const seen of seenPoints(table, camera, cut, { parts: [part], kinds: [] })) {
          if (seen === null) return null;
          const at = projectSeen(table, seen, camera, width, height);
          const box = document.querySelector('[data-testid="stage-canvas"]')?.getBoundingClientRect();
          return at === null || box === undefined ? null : { x: at.x + box.left, y: at.y + box.top };
        }
        return null;
      },
    };
  }, [link, tier, renderer]);
}
