/** What the canvas hands to the layers over it (labels, balloons) and to the pointer: one mutable object a stage. */
import type { PerspectiveCamera, Vector3 } from 'three';
import type { CameraRig, Controls } from './camera/camera-rig';
import type { PartTable } from './machine/part-table';
import type { StageMoment } from '../../store';
import type { PickCut } from './pick/pick';
import type { StageStats } from './stats';

export interface StageLink {
  camera: PerspectiveCamera | null;
  rig: CameraRig | null;
  /** Turning, moving and zooming by hand; off while a hand holds a part. */
  controls: Controls | null;
  /** What the eye turns about. */
  target: Vector3 | null;
  table: PartTable | null;
  cut: PickCut | null;
  /** Balloons as they were last drawn, and the radius of one. */
  balloons: StageMoment['balloons'];
  balloonRadius: number;
  /** Size of the stage in CSS pixels. */
  width: number;
  height: number;
  readonly stats: StageStats;
  /** Called in each frame after the camera moved; `settled` is false while parts or camera still move. */
  onFrame: ((settled: boolean) => void) | null;
  /** Asks the canvas for a frame. */
  invalidate: () => void;
  /** Camera kept over a new canvas (a change of tier, a lost context). */
  kept: { position: [number, number, number]; target: [number, number, number] } | null;
}

export const newLink = (stats: StageStats): StageLink => ({
  camera: null,
  rig: null,
  controls: null,
  target: null,
  table: null,
  cut: null,
  balloons: [],
  balloonRadius: 0,
  width: 1,
  height: 1,
  stats,
  onFrame: null,
  invalidate: () => undefined,
  kept: null,
});
