/** Inside the canvas: builds the machine's view, and in each frame moves, shows, cuts, lights and frames it. */
import { OrbitControls } from '@react-three/drei';
import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useMemo, useRef } from 'react';
import { Color, type PerspectiveCamera } from 'three';
import type { MachineDocument } from '../../core/document';
import { offerStagePicture, onFrameRequest } from '../../store';
import { useApp, useAppStore, useCommands } from '../bind';
import { type Controls } from './camera/camera-rig';
import { inkUniforms } from './machine/surface-material';
import { screenSize } from './machine/edge-material';
import { STAGE_PALETTES } from './palette';
import { ShotStage } from './shot/ShotStage';
import { stageDirector } from './stage-director';
import { stagePictureOf } from './stage-offer';
import type { StageLink } from './stage-link';
import type { TierLook } from './tier';

interface Props {
  readonly document: MachineDocument;
  readonly look: TierLook;
  readonly reduced: boolean;
  readonly link: StageLink;
  /** Time of a frame within an unbroken run, or null at rest. */
  readonly onFrameTime: (ms: number | null) => void;
}

/** Opening of the lens, degrees from top to bottom: long, as for a product photograph. */
export const LENS_DEG = 27;

export function StageScene({ document, look, reduced, link, onFrameTime }: Props) {
  const store = useAppStore();
  const commands = useCommands();
  const theme = useApp((s) => s.settings.theme);
  const gl = useThree((s) => s.gl);
  const scene = useThree((s) => s.scene);
  const camera = useThree((s) => s.camera) as PerspectiveCamera;
  const size = useThree((s) => s.size);
  const dpr = useThree((s) => s.viewport.dpr);
  const invalidate = useThree((s) => s.invalidate);
  const controls = useRef<Controls>(null);
  const palette = STAGE_PALETTES[theme];

  const director = useMemo(
    () => stageDirector({ document, fine: look.fine, store, commands, link }),
    [document, look.fine, store, commands, link],
  );
  useEffect(() => () => director.dispose(), [director]);

  useEffect(() => {
    inkUniforms.inkColour.value.copy(new Color(palette.edge).convertLinearToSRGB());
    inkUniforms.groundInkColour.value.copy(new Color(palette.ink).convertLinearToSRGB());
    inkUniforms.accentColour.value.copy(new Color(palette.accent).convertLinearToSRGB());
    inkUniforms.inkStrength.value = palette.edgeStrength;
    director.look(scene, palette, look.shadows);
    invalidate();
  }, [director, scene, palette, look.shadows, invalidate]);

  useEffect(() => {
    screenSize.value.set(size.width * dpr, size.height * dpr);
    inkUniforms.pixelRatio.value = dpr;
    inkUniforms.pen.value = Math.min(1, Math.max(0.6, Math.min(size.width, size.height * 1.4) / 800));
    link.width = size.width;
    link.height = size.height;
    director.resized();
    invalidate();
  }, [director, size, dpr, link, invalidate]);

  useEffect(() => {
    link.invalidate = invalidate;
    return onFrameRequest(invalidate);
  }, [link, invalidate]);

  useEffect(
    () => offerStagePicture(stagePictureOf({ gl, scene, camera, link, palette })),
    [gl, scene, camera, link, palette],
  );

  useEffect(() => {
    const canvas = gl.domElement;
    const restore = (): void => {
      director.restore();
      invalidate();
    };
    canvas.addEventListener('webglcontextrestored', restore);
    return () => canvas.removeEventListener('webglcontextrestored', restore);
  }, [gl, director, invalidate]);

  const last = useRef(0);
  useFrame(() => {
    const now = performance.now();
    const gap = now - last.current;
    // After a rest the clock starts anew; a hitch makes things step, not jump.
    const running = last.current > 0;
    const dt_s = running ? Math.min(gap / 1000, 0.4) : 1 / 60;
    last.current = now;
    if (controls.current === null) return;
    const moving = director.frame(dt_s, { gl, scene, camera, controls: controls.current, reduced });
    onFrameTime(running && moving ? gap : null);
    if (moving) invalidate();
    else last.current = 0;
  });

  return (
    <>
      <primitive object={director.group} />
      <ShotStage link={link} palette={palette} />
      <OrbitControls
        ref={controls as never}
        makeDefault
        enableDamping={!reduced}
        dampingFactor={0.12}
        zoomToCursor
        rotateSpeed={0.85}
        zoomSpeed={0.9}
        onStart={() => director.held()}
      />
    </>
  );
}
