/** What the sheet draws: the stage as it stands now, or, where there is no stage, the machine as the state has it. */
import { explodeOffsetsAt } from '../../../core/assembly';
import type { MachineDocument } from '../../../core/document';
import type { SheetRequest, ShownPart } from '../../../core/exports';
import type { EyePlace } from '../../../core/geometry';
import { cross, normalize, type Pose, rotate, scale, type Vec3 } from '../../../core/kernel';
import { findUnit } from '../../../core/machine';
import { type AppState, type CameraView, partLook, type StageMoment } from '../../../store';
import type { Speech } from '../../bind';

const FOOT_M = 0.3048;

const barUnit_m = ({ units }: Speech): number => (units === 'si' ? 1 : FOOT_M);

/** The stage's own view; balloons where they are switched on. */
export function requestOfStage(
  speech: Speech,
  document: MachineDocument,
  state: AppState,
  moment: StageMoment,
): SheetRequest {
  return {
    document,
    bodies: moment.bodies,
    parts: moment.parts,
    eye: moment.eye,
    aspect: moment.width / Math.max(1, moment.height),
    middle_m: moment.middle_m,
    cut: moment.cut,
    wanted: [
      ...(state.selectedPart === null ? [] : [state.selectedPart]),
      ...moment.balloons.map((balloon) => balloon.id),
    ],
    balloons: state.balloons,
    barUnit_m: barUnit_m(speech),
  };
}

/** From the machine towards the eye, as the stage's named views have it. */
const TOWARDS: Readonly<Record<CameraView, Vec3>> = {
  home: [0.66, 0.4, -0.8],
  front: [0, 0, -1],
  right: [1, 0, 0],
  left: [-1, 0, 0],
  top: [0, 1, -0.0015],
  axis: [0.94, 0.16, -0.3],
  fit: [0.66, 0.4, -0.8],
};
const APART: Vec3 = [0.8, 0.46, -0.62];
const LENS_DEG = 27;

/** Without a stage: the named view of all that shows, exploded or taken down as far as the state says; never cut. */
export function requestOfState(speech: Speech, document: MachineDocument, state: AppState): SheetRequest {
  const parts = placedParts(document, state);
  const home = state.cameraWish.view === 'home' || state.cameraWish.view === 'fit';
  const towards = normalize(home && state.explode > 0.3 ? APART : TOWARDS[state.cameraWish.view]);
  const right = normalize(cross([0, 1, 0], towards));
  const { middle, radius_m } = ballOf(document, parts);
  // just far enough for the lens to hold all of it
  const middle_m = (1.1 * radius_m) / Math.sin((LENS_DEG * Math.PI) / 360);
  const eye: EyePlace = {
    eye_m: [0, 1, 2].map((k) => middle[k as 0]! + towards[k as 0]! * middle_m) as unknown as Vec3,
    right,
    up: cross(towards, right),
    towards,
    fov_deg: LENS_DEG,
  };
  return {
    document,
    parts,
    eye,
    aspect: 1,
    middle_m,
    cut: null,
    wanted: state.selectedPart === null ? [] : [state.selectedPart],
    balloons: state.balloons,
    barUnit_m: barUnit_m(speech),
  };
}

/** Parts where the explode slider or the teardown's steps have them. */
function placedParts(document: MachineDocument, state: AppState): ShownPart[] {
  const { machine, teardown: plan } = document;
  const spread = new Float32Array(3 * machine.parts.length);
  explodeOffsetsAt(document.explode, state.explode, spread);
  const laid = new Float32Array(3 * machine.parts.length);
  const gone = new Set<string>();
  if (state.teardown.open && state.explode === 0) {
    explodeOffsetsAt(document.explode, 1, laid);
    for (const step of plan.steps.slice(0, state.teardown.step + 1))
      for (const unit of step.unitIds) for (const id of findUnit(machine, unit)?.partIds ?? []) gone.add(id);
  }
  return machine.parts.flatMap((part, i): ShownPart[] => {
    const look = partLook(part, state);
    if (look === 'hidden') return [];
    const offset = gone.has(part.id) ? laid : spread;
    const { position_m: p, rotation } = part.pose;
    const position_m: Vec3 = [p[0] + offset[3 * i]!, p[1] + offset[3 * i + 1]!, p[2] + offset[3 * i + 2]!];
    return [{ id: part.id, ghost: look === 'ghost', matrix: matrixOf({ position_m, rotation }) }];
  });
}

/** A pose as 16 numbers column by column. */
function matrixOf({ position_m, rotation }: Pose): number[] {
  const columns = [[1, 0, 0] as const, [0, 1, 0] as const, [0, 0, 1] as const].map((v) =>
    rotate(rotation, v),
  );
  return [...columns.flatMap((c) => [...c, 0]), ...position_m, 1];
}

/** A ball round the parts' boxes. */
function ballOf({ machine, masses }: MachineDocument, parts: readonly ShownPart[]) {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  const kindOf = new Map(machine.parts.map((part) => [part.id, part.kind]));
  for (const { id, matrix: m } of parts) {
    const box = masses[kindOf.get(id) ?? ''];
    if (box === undefined) continue;
    const reach = Math.hypot(
      ...scale([0, 1, 2].map((k) => box.max_m[k as 0] - box.min_m[k as 0]) as unknown as Vec3, 0.5),
    );
    for (const k of [0, 1, 2]) {
      low[k] = Math.min(low[k]!, m[12 + k]! - reach);
      high[k] = Math.max(high[k]!, m[12 + k]! + reach);
    }
  }
  if (low[0]! > high[0]!) return { middle: [0, 0, 0] as Vec3, radius_m: 1 };
  const middle = low.map((v, k) => (v + high[k]!) / 2) as unknown as Vec3;
  return { middle, radius_m: Math.hypot(...low.map((v, k) => (high[k]! - v) / 2)) };
}
