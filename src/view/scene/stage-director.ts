/** Runs the stage from frame to frame: one object a document, without React, so that the order of work is plain to see. */
import { Group, Mesh, BufferGeometry, PerspectiveCamera, type Scene, Vector3, type WebGLRenderer } from 'three';
import type { MachineDocument } from '../../core/document';
import type { ShotBodyOutline } from '../../core/studies';
import { type AppState, type AppStore, type Commands, transient } from '../../store';
import { type Bounds, cameraRig, type CameraRig, type Controls } from './camera/camera-rig';
import { viewDirection } from './camera/views';
import { lighting } from './light/lighting';
import { leftOf, roomy, shownReach, sphereOf } from './machine/bounds';
import { lineMaterial, setSegments } from './machine/edge-material';
import { machineView } from './machine/machine-view';
import { HIDDEN } from './machine/part-table';
import { writePoses } from './machine/poses';
import { removalPaths } from './machine/removal-paths';
import { shotBodies, shotOutlines, shotPlace } from './machine/shot-body';
import { writeShown } from './machine/visibility';
import { stageMotion } from './motion/stage-motion';
import { stepPoints } from './motion/step-framing';
import { stepAt } from './motion/teardown-clock';
import type { StagePalette } from './palette';
import { AXIS_NORMAL, sectionView } from './section/section-view';
import type { StageLink } from './stage-link';
import { readInfo } from './stats';

interface Setting {
  readonly document: MachineDocument;
  readonly fine: boolean;
  readonly store: AppStore;
  readonly commands: Commands;
  readonly link: StageLink;
}

export interface FrameOf {
  readonly gl: WebGLRenderer;
  readonly scene: Scene;
  readonly camera: PerspectiveCamera;
  readonly controls: Controls;
  /** Cuts instead of flights. */
  readonly reduced: boolean;
}

export interface StageDirector {
  readonly group: Group;
  look(scene: Scene, palette: StagePalette, shadows: boolean): void;
  resized(): void;
  restore(): void;
  /** A hand took hold of the camera, moved it, let go. */
  held(): void;
  handMoved(): void;
  released(): void;
  /** One frame; returns whether another is wanted. */
  frame(dt_s: number, of: FrameOf): boolean;
  dispose(): void;
}

/** Half width of what a flight to one small part keeps in view, metres. */
const ROOM_FOR_PART_M = 0.22;
const ROOM_FOR_STEP_M = 0.75;
const NO_PASS = { calls: 0, triangles: 0 };

export function stageDirector({ document, fine, store, commands, link }: Setting): StageDirector {
  const view = machineView(document, fine);
  const { table } = view;
  const section = sectionView(table);
  const light = lighting();
  const paths = removalPaths();
  const axis = centreLine();
  const motion = stageMotion(document);
  const group = new Group();
  group.add(view.group, section.group, light.group, paths.mesh, axis.mesh);

  let rig: CameraRig | null = null;
  let bounds: Bounds = { centre: new Vector3(), radius: 1.5, ground: -document.machine.drumRadius_m };
  let seen: AppState | null = null;
  let wish = -1;
  let framedStep = -1;
  let cutOn = false;
  let cutSide: 1 | -1 = 1;
  let cutKey = '';
  let refit = false;
  let byHand = false;
  let lastDistance = 0;
  let fresh = true;
  let reported = 0;
  let shadowed = false;
  const place = shotPlace(document);
  let shotShown: readonly ShotBodyOutline[] | null = null;

  const margins = (): { left: number; right: number; top: number; bottom: number } => {
    const crowded = transient.explode > 0.02 || store.getState().teardown.open;
    const side = Math.min(0.2, (crowded && store.getState().balloons ? 78 : 44) / Math.max(1, link.width));
    const end = Math.min(0.16, 44 / Math.max(1, link.height));
    return { left: side, right: side, top: end, bottom: end };
  };

  const measure = (): void => {
    const corners = shownReach(table);
    const sphere = sphereOf(corners);
    if (sphere !== null) bounds = { ...sphere, ground: bounds.ground };
    if (corners.length > 0) axis.place(corners);
  };

  const answerWish = (state: AppState, of: FrameOf): void => {
    const { view: name, partId, serial } = state.cameraWish;
    const first = wish === -1;
    if (serial === wish && !(first && rig !== null)) return;
    wish = serial;
    if (first && link.kept !== null) {
      of.camera.position.set(...link.kept.position);
      of.controls.target.set(...link.kept.target);
      of.controls.update();
      return;
    }
    const one = partId === null ? undefined : table.indexOf.get(partId);
    const points = leftOf(
      shownReach(table, (part) => one === undefined || part === one),
      link.cut,
    );
    if (points.length === 0) return;
    const from = viewDirection(first ? 'home' : name, of.camera.aspect);
    rig!.frame(
      one === undefined ? points : roomy(points, ROOM_FOR_PART_M),
      from,
      margins(),
      of.reduced || first,
      one === undefined,
    );
  };

  /** Parts of a teardown step. */
  const partsOf = (step: number): number[] => {
    const ids = new Set(document.teardown.steps[step]?.unitIds ?? []);
    const out: number[] = [];
    document.machine.parts.forEach((part, i) => {
      if (ids.has(part.unit)) out.push(i);
    });
    return out;
  };

  const frameStep = (step: number, of: FrameOf): void => {
    if (motion.timeline === null) return;
    const points = stepPoints(table, motion.timeline, step, partsOf(step));
    if (points.length === 0) return;
    const way = document.teardown.steps[step]?.legs.at(-1)?.direction;
    const from =
      way !== undefined && Math.abs(way[0]) > 0.5
        ? new Vector3(Math.sign(way[0]) * 0.5, 0.36, -0.8).normalize()
        : null;
    rig!.frame(roomy(points, ROOM_FOR_STEP_M), from, margins(), of.reduced, false);
  };

  const followTeardown = (state: AppState, of: FrameOf, changed: boolean): void => {
    const { teardown } = state;
    if (!teardown.open || motion.timeline === null) {
      if (paths.mesh.visible) paths.write(table, []);
      framedStep = teardown.step;
      return;
    }
    const last = document.teardown.steps.length - 1;
    // While it plays the step under way leads, otherwise the one last done.
    const done = stepAt(motion.timeline, transient.teardownTime_s);
    const leads = teardown.playing ? Math.min(last, teardown.reverse ? Math.max(done, 0) : done + 1) : teardown.step;
    const turned = leads !== framedStep;
    if (turned) {
      framedStep = leads;
      if (leads >= 0) frameStep(leads, of);
      else rig!.frame(shownReach(table), viewDirection('home', of.camera.aspect), margins(), of.reduced, true);
    }
    if (turned || changed) paths.write(table, leads >= 0 ? partsOf(leads) : []);
  };

  const cutIfAsked = (state: AppState, camera: PerspectiveCamera, changed: boolean): void => {
    const { on, axis: along } = state.section;
    if (on !== cutOn) {
      cutOn = on;
      view.setCut(on);
      cutKey = '';
      if (!on) {
        section.off();
        link.cut = null;
        light.stale();
      }
    }
    if (!on) return;
    const offset = transient.sectionOffset_m;
    if (!cutKey.startsWith(along)) {
      // What lies towards the reader is cut away, and stays so while they walk round.
      const n = AXIS_NORMAL[along];
      const towards = camera.position.x * n[0] + camera.position.y * n[1] + camera.position.z * n[2] - offset;
      cutSide = towards >= 0 ? 1 : -1;
    }
    const key = `${along} ${offset} ${cutSide}`;
    if (key === cutKey && !changed) return;
    cutKey = key;
    section.cut(along, offset, cutSide);
    const [x, y, z] = AXIS_NORMAL[along];
    link.cut = { normal: [x * cutSide, y * cutSide, z * cutSide], distance_m: offset * cutSide };
    light.stale();
  };

  return {
    group,
    look(scene, palette, shadows) {
      light.look(scene, palette, shadows);
      section.look(palette.card);
    },
    resized() {
      refit = true;
    },
    restore() {
      light.restore();
      fresh = true;
    },
    held() {
      byHand = true;
      rig?.interrupt();
    },
    handMoved() {
      if (!byHand || link.camera === null || rig === null) return;
      const distance = link.camera.position.distanceTo(link.target!);
      if (lastDistance > 0 && Math.abs(distance / lastDistance - 1) > 0.004) rig.heldByHand();
      lastDistance = distance;
    },
    released() {
      byHand = false;
      lastDistance = 0;
    },
    frame(dt_s, of) {
      const started = performance.now();
      const { camera, controls, scene, gl } = of;
      if (rig === null || link.camera !== camera) {
        rig = cameraRig(camera, controls);
        Object.assign(link, { rig, camera, table, target: controls.target });
        scene.onAfterRender = (_gl, _scene, seenBy) => {
          if (seenBy !== camera) return;
          readInfo(link.stats, gl, shadowed ? view.casters() : NO_PASS);
          link.stats.frames++;
          link.stats.script_ms = performance.now() - reported;
        };
      }
      reported = started;
      const state = store.getState();

      const moved = motion.advance(dt_s, state, of.reduced);
      if (moved.reached !== null && state.teardown.playing)
        commands.goToStep(moved.reached, { playing: !moved.ended });
      else if (moved.ended && state.teardown.playing) commands.setPlaying(false, state.teardown.reverse);

      const outlines = place === null ? null : shotOutlines(state);
      if (outlines !== shotShown && place !== null) {
        shotShown = outlines;
        const bodies =
          outlines === null
            ? (document.solids[place.kind] ?? [])
            : shotBodies(outlines, place.from_x_m, place.to_x_m);
        view.replaceBodies(place.kind, bodies);
        section.forget();
        fresh = true;
      }
      const showChanged = (seen === null || shownDiffers(seen, state)) && writeShown(table, state);
      const changed = moved.changed || fresh;
      if (changed) writePoses(table, motion);
      const marks = seen === null || seen.selectedPart !== state.selectedPart || seen.hoveredPart !== state.hoveredPart;
      if (changed || showChanged || marks) {
        const selected = numberOf(state.selectedPart);
        view.write(selected, numberOf(state.hoveredPart));
        section.choose(selected);
      }
      // Spin alone leaves the bounds: a turning box would make shadows tremble.
      if (moved.placed || fresh || showChanged) measure();
      if (changed || showChanged) light.stale();
      fresh = false;

      answerWish(state, of);
      followTeardown(state, of, changed || showChanged);
      const explodeMoved = moved.placed && seen !== null && !state.teardown.open;
      if ((refit || explodeMoved) && rig.framing && seen !== null)
        rig.frame(leftOf(shownReach(table), link.cut), null, margins(), true, true);
      refit = false;

      const flying = rig.advance(dt_s, bounds);
      const wasCut = cutOn;
      cutIfAsked(state, camera, changed || showChanged);
      let reframed = false;
      if (cutOn !== wasCut && rig.framing) {
        rig.frame(leftOf(shownReach(table), link.cut), null, margins(), of.reduced, true);
        reframed = true;
      }
      if (cutOn) {
        const distance = camera.position.distanceTo(controls.target);
        section.density((2 * Math.tan((camera.fov * Math.PI) / 360) * distance) / Math.max(1, link.height));
      }
      camera.updateMatrixWorld();
      view.thin(camera.position, link.height / (2 * Math.tan((camera.fov * Math.PI) / 360)));
      shadowed = light.update(gl, scene, bounds);
      link.stats.parts = table.shown.reduce((n, s) => n + (s === HIDDEN ? 0 : 1), 0);
      link.stats.capTriangles = section.stats.triangles;
      link.kept = { position: camera.position.toArray(), target: controls.target.toArray() };
      seen = state;
      const moving = moved.moving || flying || reframed;
      link.onFrame?.(!moving);
      return moving;
    },
    dispose() {
      view.dispose();
      section.dispose();
      light.dispose();
      paths.dispose();
      axis.dispose();
      link.table = null;
    },
  };

  function numberOf(id: string | null): number {
    return id === null ? -1 : (table.indexOf.get(id) ?? -1);
  }
}

const shownDiffers = (a: AppState, b: AppState): boolean =>
  a.hiddenParts !== b.hiddenParts ||
  a.ghostedParts !== b.ghostedParts ||
  a.isolatedParts !== b.isolatedParts ||
  a.showContext !== b.showContext ||
  a.optionsOn !== b.optionsOn;

/** Centre line of the drum (long dash, dot), a little longer than what shows. */
function centreLine() {
  const material = lineMaterial({ kind: 'chain', width: 0.9, strength: 0.8 });
  const mesh = new Mesh(new BufferGeometry(), material);
  mesh.name = 'centre line';
  mesh.frustumCulled = false;
  mesh.renderOrder = 1;
  return {
    mesh,
    place(corners: readonly number[]): void {
      let least = Infinity;
      let most = -Infinity;
      for (let i = 0; i < corners.length; i += 3) {
        least = Math.min(least, corners[i]!);
        most = Math.max(most, corners[i]!);
      }
      const more = 0.12 + 0.04 * (most - least);
      mesh.geometry.dispose();
      mesh.geometry = new BufferGeometry();
      setSegments(mesh.geometry, Float32Array.from([least - more, 0, 0, most + more, 0, 0]));
    },
    dispose(): void {
      mesh.geometry.dispose();
      material.dispose();
    },
  };
}
