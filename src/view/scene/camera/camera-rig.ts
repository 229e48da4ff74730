/**
 * Moves the camera: eased flights that any touch interrupts, fits to parts, turns by keys. Orbit, pan and zoom by hand
 * are three's orbit controls; the rig keeps the eye above the paper and the near and far planes tight.
 */
import { type PerspectiveCamera, Spherical, Vector3 } from 'three';
import { easeInOut } from '../motion/teardown-clock';
import { type CameraPlace, fitCamera, type Margins } from './fit';
import { flightTime_ms } from './views';

/** What the rig needs of orbit controls. */
export interface Controls {
  enabled: boolean;
  readonly target: Vector3;
  minDistance: number;
  maxDistance: number;
  maxPolarAngle: number;
  update(): unknown;
}

export interface Bounds {
  readonly centre: Vector3;
  readonly radius: number;
  /** Height of the paper. */
  readonly ground: number;
}

export interface CameraRig {
  /** True while the view frames all parts by itself; a zoom or pan by hand ends it. */
  readonly framing: boolean;
  /** Frames points from a direction (null: the one of now); `cut`: at once. */
  frame(points: ArrayLike<number>, from: Vector3 | null, margins: Margins, cut: boolean, all: boolean): void;
  /** A hand took the camera. */
  interrupt(): void;
  heldByHand(): void;
  orbit(azimuth_rad: number, polar_rad: number): void;
  zoom(factor: number): void;
  /** Goes on with a flight; true while one runs. */
  advance(dt_s: number, bounds: Bounds): boolean;
}

/** The eye stays at least this far above the paper, metres. */
const CLEARANCE_M = 0.04;

export function cameraRig(camera: PerspectiveCamera, controls: Controls): CameraRig {
  let flight: { from: CameraPlace; to: CameraPlace; at_ms: number; takes_ms: number } | null = null;
  let framing = true;
  const spherical = new Spherical();
  const offset = new Vector3();

  const keepClear = (bounds: Bounds): void => {
    const distance = camera.position.distanceTo(controls.target);
    const room = bounds.ground + CLEARANCE_M - controls.target.y;
    controls.maxPolarAngle = Math.acos(Math.min(1, Math.max(-0.6, room / Math.max(distance, 1e-3))));
    controls.minDistance = Math.min(0.18, bounds.radius * 0.2);
    // Far enough for the whole machine on a stage twice as tall as wide.
    controls.maxDistance = Math.max(6, bounds.radius * 20);
    // A tight range of depth keeps faces that nearly touch apart.
    const toCentre = camera.position.distanceTo(bounds.centre);
    const near = Math.max(0.02, (toCentre - bounds.radius) * 0.85);
    const far = toCentre + bounds.radius * 3 + 4;
    if (Math.abs(near - camera.near) > near * 0.05 || Math.abs(far - camera.far) > far * 0.05) {
      camera.near = near;
      camera.far = far;
      camera.updateProjectionMatrix();
    }
  };

  return {
    get framing() {
      return framing;
    },
    frame(points, from, margins, cut, all) {
      offset.subVectors(camera.position, controls.target);
      const towards = from ?? offset.clone().normalize();
      const to = fitCamera(points, towards, camera.fov, camera.aspect, margins);
      framing = all;
      if (cut) {
        flight = null;
        camera.position.copy(to.position);
        controls.target.copy(to.target);
        controls.update();
        return;
      }
      const start = { position: camera.position.clone(), target: controls.target.clone() };
      const takes_ms = flightTime_ms(start.position, to.position, start.position.distanceTo(start.target));
      flight = { from: start, to, at_ms: 0, takes_ms };
    },
    interrupt() {
      flight = null;
    },
    heldByHand() {
      framing = false;
    },
    orbit(azimuth, polar) {
      flight = null;
      spherical.setFromVector3(offset.subVectors(camera.position, controls.target));
      spherical.theta += azimuth;
      spherical.phi = Math.min(controls.maxPolarAngle, Math.max(0.02, spherical.phi + polar));
      camera.position.copy(controls.target).add(offset.setFromSpherical(spherical));
      controls.update();
    },
    zoom(factor) {
      flight = null;
      framing = false;
      offset.subVectors(camera.position, controls.target);
      offset.setLength(
        Math.min(controls.maxDistance, Math.max(controls.minDistance, offset.length() * factor)),
      );
      camera.position.copy(controls.target).add(offset);
      controls.update();
    },
    advance(dt_s, bounds) {
      let flying = false;
      if (flight !== null) {
        flight.at_ms += dt_s * 1000;
        const s = easeInOut(Math.min(1, flight.at_ms / flight.takes_ms));
        between(flight.from, flight.to, s, camera.position, controls.target);
        if (flight.at_ms >= flight.takes_ms) flight = null;
        else flying = true;
      }
      keepClear(bounds);
      controls.update();
      return flying;
    },
  };
}

const a = new Spherical();
const b = new Spherical();
const v = new Vector3();

/** Between two places: targets on a line, eyes on an arc round them, distances by ratio. */
function between(from: CameraPlace, to: CameraPlace, s: number, position: Vector3, target: Vector3): void {
  a.setFromVector3(v.subVectors(from.position, from.target));
  b.setFromVector3(v.subVectors(to.position, to.target));
  let turn = b.theta - a.theta;
  if (turn > Math.PI) turn -= 2 * Math.PI;
  if (turn < -Math.PI) turn += 2 * Math.PI;
  a.theta += turn * s;
  a.phi += (b.phi - a.phi) * s;
  a.radius *= (b.radius / a.radius) ** s;
  target.lerpVectors(from.target, to.target, s);
  position.copy(target).add(v.setFromSpherical(a));
}
