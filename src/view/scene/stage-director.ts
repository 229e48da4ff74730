/** Runs the stage from frame to frame: one object a document, without React, so that the order of work is plain to see. */
import { Group, type PerspectiveCamera, type Scene, Vector3, type WebGLRenderer } from 'three';
import type { MachineDocument } from '../../core/document';
import type { ShotBodyOutline } from '../../core/studies';
import { type AppState, type AppStore, type Commands, selectStageView, transient } from '../../store';
import { type Bounds, cameraRig, type CameraRig, type Controls } from './camera/camera-rig';
import { uncovered } from './camera/uncovered';
import { viewDirection } from './camera/views';
import { lighting } from './light/lighting';
import { leftOf, roomy, shownReach, sphereOf } from './machine/bounds';
import { centreLine } from './machine/centre-line';
import { endOutlines } from './machine/end-outlines';
import { forceLines } from './machine/force-lines';
import { machineView } from './machine/machine-view';
import { HIDDEN } from './machine/part-table';
import { writePoses } from './machine/poses';
import { removalPaths } from './machine/removal-paths';
import { inkUniforms } from './machine/surface-material';
import { shotBodies, shotOutlines, shotPlace } from './machine/shot-body';
import { viewMarks, type ViewMarks } from './machine/view-marks';
import { writeShown } from './machine/visibility';
import { practiceFollower } from './motion/practice-follower';
import { stageMotion } from './motion/stage-motion';
import { teardownFollower } from './motion/teardown-follower';
import type { StagePalette } from './palette';
import { cutFor, sectionFollower } from './section/section-follower';
import { sectionView } from './section/section-view';
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
  /** A hand took hold of the camera. */
  held(): void;
  /** One frame; returns whether another is wanted. */
  frame(dt_s: number, of: FrameOf): boolean;
  dispose(): void;
}

/** Half width of what a flight to one small part keeps in view, metres. */
const ROOM_FOR_PART_M = 0.22;
/** Width that a legend takes of the stage with its gap, and from which width on it leaves room, CSS pixels. */
const LEGEND_PX = 312;
const ROOM_FOR_LEGEND_PX = 560;
/** An eye so far out that only its direction matters. */
const FAR_M = 100;
const NO_PASS = { calls: 0, triangles: 0 };

export function stageDirector({ document, fine, store, commands, link }: Setting): StageDirector {
  const view = machineView(document, fine);
  const { table } = view;
  const section = sectionView(table);
  const light = lighting();
  const paths = removalPaths();
  const axis = centreLine();
  const force = forceLines();
  const ends = endOutlines();
  const marksOf = viewMarks(table);
  let shownMarks: ViewMarks | null = null;
  let wasReduced = false;
  const motion = stageMotion(document);
  const teardown = teardownFollower(table, motion, paths);
  const practice = practiceFollower(table, paths);
  const sections = sectionFollower(section, (on) => view.setCut(on));
  const group = new Group();
  group.add(view.group, section.group, light.group, paths.mesh, axis.mesh, force.group, ends.group);

  let rig: CameraRig | null = null;
  let bounds: Bounds = { centre: new Vector3(), radius: 1.5, ground: -document.machine.drumRadius_m };
  let seen: AppState | null = null;
  let wish = -1;
  let refit = false;
  /** Distance and target at the end of the last frame: what differs at the start of the next was a hand's doing. */
  let lastDistance = 0;
  const lastTarget = new Vector3();
  let fresh = true;
  let reported = 0;
  let shadowed = false;
  const place = shotPlace(document);
  let shotShown: readonly ShotBodyOutline[] | null = null;

  const margins = (): { left: number; right: number; top: number; bottom: number } => {
    const crowded = transient.explode > 0.02 || store.getState().teardown.open;
    const side = Math.min(0.2, (crowded && store.getState().balloons ? 78 : 44) / Math.max(1, link.width));
    const end = Math.min(0.16, 44 / Math.max(1, link.height));
    // A view's legend stands over the left of a stage that has room for it (panels/views/views.css).
    const legend =
      selectStageView(store.getState()) !== null && link.width >= ROOM_FOR_LEGEND_PX ? LEGEND_PX : 0;
    const left = Math.max(side, legend / Math.max(1, link.width));
    return { left, right: side, top: end, bottom: end };
  };

  const measure = (): void => {
    const corners = shownReach(table);
    const sphere = sphereOf(corners);
    if (sphere !== null) bounds = { ...sphere, ground: bounds.ground };
    if (corners.length > 0) axis.place(corners);
  };

  /**
   * Flies to the view that is wished for. Where the section is set with it (a step of a lesson), what is left of the cut
   * is framed; returns the eye that the side cut away is chosen for then, null where there is no such wish.
   */
  const answerWish = (state: AppState, of: FrameOf): Vector3 | null => {
    const { view: name, partId, serial } = state.cameraWish;
    const first = wish === -1;
    if (serial === wish && !(first && rig !== null)) return null;
    wish = serial;
    if (first && link.kept !== null) {
      of.camera.position.set(...link.kept.position);
      of.controls.target.set(...link.kept.target);
      of.controls.update();
      return null;
    }
    const one = partId === null ? undefined : table.indexOf.get(partId);
    const from = viewDirection(
      first && name === 'fit' ? 'home' : name,
      of.camera.aspect,
      motion.explodeShown,
    );
    const eye = from !== null && seen?.section !== state.section ? from.clone().multiplyScalar(FAR_M) : null;
    const points = leftOf(
      shownReach(table, (part) => one === undefined || part === one),
      eye === null ? link.cut : cutFor(state, eye),
    );
    if (points.length === 0) return eye;
    rig!.frame(
      one === undefined ? points : roomy(points, ROOM_FOR_PART_M),
      one === undefined || from !== null ? from : uncovered(table, [one], towardsEye(of), link.cut),
      margins(),
      of.reduced || first,
      one === undefined,
    );
    return eye;
  };

  return {
    group,
    look(scene, palette, shadows) {
      light.look(scene, palette, shadows);
      section.look(palette.card);
      force.look(palette.force);
    },
    resized() {
      refit = true;
    },
    restore() {
      light.restore();
      fresh = true;
    },
    held() {
      rig?.interrupt();
    },
    frame(dt_s, of) {
      const started = performance.now();
      const { camera, controls, scene, gl } = of;
      if (rig === null || link.camera !== camera) {
        rig = cameraRig(camera, controls);
        Object.assign(link, { rig, camera, controls, table, target: controls.target });
        scene.onAfterRender = (_gl, _scene, seenBy) => {
          if (seenBy !== camera) return;
          readInfo(link.stats, gl, shadowed ? view.casters() : NO_PASS);
          link.stats.frames++;
          link.stats.script_ms = performance.now() - reported;
        };
      }
      reported = started;
      const distance = camera.position.distanceTo(controls.target);
      if (lastDistance > 0)
        if (Math.abs(distance / lastDistance - 1) > 0.002 || lastTarget.distanceTo(controls.target) > 0.001)
          rig.heldByHand();
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
      const pictured = marksOf(state);
      const viewChanged = pictured !== shownMarks;
      const showChanged =
        (seen === null || viewChanged || shownDiffers(seen, state)) &&
        writeShown(table, state, pictured.ghosts);
      const changed = moved.changed || fresh;
      if (changed) writePoses(table, motion);
      const marks =
        seen === null ||
        viewChanged ||
        seen.selectedPart !== state.selectedPart ||
        seen.hoveredPart !== state.hoveredPart ||
        seen.studies.stage !== state.studies.stage ||
        seen.jobs.stage !== state.jobs.stage ||
        seen.practice.stage !== state.practice.stage;
      if (changed || showChanged || marks) {
        const selected = numberOf(state.selectedPart);
        view.write(
          selected,
          numberOf(state.hoveredPart),
          state.studies.stage?.kind === 'sides',
          markedOf(state),
          state.practice.stage?.blockers,
          pictured.states,
        );
        section.choose(selected);
      }
      const legendMoved = seen !== null && (shownMarks?.picture == null) !== (pictured.picture === null);
      if (viewChanged) {
        section.tint(tinted(pictured) ? pictured.states : null);
        shownMarks = pictured;
      }
      if (changed || showChanged || viewChanged || of.reduced !== wasReduced) {
        wasReduced = of.reduced;
        force.write(table, pictured.links, pictured.down);
        ends.write(table, of.reduced ? strokeOf(pictured) : null);
      }
      const running = pictured.links.length > 0 && !of.reduced;
      if (running) force.run(dt_s);
      // Spin alone leaves the bounds: a turning box would make shadows tremble.
      if (moved.placed || fresh || showChanged) measure();
      if (changed || showChanged) light.stale();
      fresh = false;

      const eye = answerWish(state, of);
      const framed = rig;
      // Who wishes for a view together with a step of the teardown means that view.
      const lookAt = (
        points: readonly number[] | null,
        from: Vector3 | null,
        about: readonly number[] = [],
      ): void => {
        if (eye !== null) return;
        framed.frame(
          points ?? shownReach(table),
          points === null
            ? viewDirection('home', camera.aspect, 0)
            : about.length > 0
              ? uncovered(table, about, from ?? towardsEye(of), link.cut)
              : from,
          margins(),
          of.reduced,
          points === null,
        );
      };
      const practised = state.practice.stage;
      if (practised === null) teardown.follow(state, changed || showChanged, lookAt);
      // The camera stays as long as a hand holds a part.
      else if (!transient.handHolds)
        practice.follow(practised, motion.teardown, changed || showChanged, lookAt);
      if ((refit || moved.spread) && rig.framing && seen !== null)
        rig.frame(leftOf(shownReach(table), link.cut), null, margins(), true, true);
      refit = false;

      let flying = rig.advance(dt_s, bounds);
      const cut = sections.follow(
        state,
        eye ?? camera.position,
        changed || showChanged || viewChanged,
        eye !== null,
      );
      link.cut = sections.cut;
      if (cut.cut) light.stale();
      if ((cut.toggled || legendMoved) && rig.framing && eye === null) {
        rig.frame(leftOf(shownReach(table), link.cut), null, margins(), of.reduced, true);
        flying = true;
      }
      lastDistance = camera.position.distanceTo(controls.target);
      lastTarget.copy(controls.target);
      const tall = 2 * Math.tan((camera.fov * Math.PI) / 360);
      if (link.cut !== null) section.density((tall * lastDistance) / Math.max(1, link.height));
      camera.updateMatrixWorld();
      // A finer pen on a small stage goes with less detail.
      view.thin(camera.position, (link.height / tall) * inkUniforms.pen.value);
      shadowed = light.update(gl, scene, bounds);
      link.stats.parts = table.shown.reduce((n, s) => n + (s === HIDDEN ? 0 : 1), 0);
      link.stats.capTriangles = section.stats.triangles;
      link.kept = { position: camera.position.toArray(), target: controls.target.toArray() };
      seen = state;
      const moving = moved.moving || flying || running;
      link.onFrame?.(!moving);
      return moving;
    },
    dispose() {
      view.dispose();
      section.dispose();
      light.dispose();
      paths.dispose();
      axis.dispose();
      force.dispose();
      ends.dispose();
      link.table = null;
    },
  };

  /** Parts that the open step of a job is about; in practice the whole of the unit in hand. */
  function markedOf({ jobs, practice: { stage, run }, selectedPart }: AppState): ReadonlySet<number> {
    if (stage !== null && run !== null && selectedPart !== null)
      return new Set(run.bench.graph.bodies[run.bench.bodyOf(selectedPart)]?.parts);
    return new Set((jobs.stage?.partIds ?? []).map((id) => numberOf(id)));
  }

  function numberOf(id: string | null): number {
    return id === null ? -1 : (table.indexOf.get(id) ?? -1);
  }
}

/** Views that mark surfaces tint the cut faces alike. */
const tinted = ({ picture }: ViewMarks): boolean =>
  picture !== null && picture.view !== 'load' && picture.view !== 'torque';

/** Highest and lowest place of what shakes, as far as it is drawn. */
function strokeOf({ picture }: ViewMarks): [number, number] | null {
  const stage = picture?.view === 'shakes' ? picture.facts?.stage : null;
  return stage?.kind === 'shake' ? [Math.max(...stage.drum_m), Math.min(...stage.drum_m)] : null;
}

const towardsEye = ({ camera, controls }: FrameOf): Vector3 =>
  new Vector3().subVectors(camera.position, controls.target).normalize();

const shownDiffers = (a: AppState, b: AppState): boolean =>
  a.hiddenParts !== b.hiddenParts ||
  a.ghostedParts !== b.ghostedParts ||
  a.isolatedParts !== b.isolatedParts ||
  a.showContext !== b.showContext ||
  a.optionsOn !== b.optionsOn;
