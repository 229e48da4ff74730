/** What the chosen view of the stage shows, worked out from the machine: read by the stage and by the legend. */
import { kindSolids, type MachineDocument } from '../../core/document';
import { isPresent, type Part } from '../../core/machine';
import {
  type DriveTorque,
  driveTorque,
  forceOnEach_N,
  type ForcePath,
  forcePath,
  type FrameLoads,
  frameLoads,
  groundPart,
  groupMeetings,
  type GroupMeeting,
  loadSource,
  type MovingGroup,
  movingGroups,
  rollerBasis,
  torqueSource,
  vibrationStudy,
  type Wetted,
} from '../../core/studies';
import { selectExciterStudy } from '../selectors';
import { partLook } from '../shown';
import type { AppState, SpinDirection } from '../state';
import { shakeOf } from '../studies/shake';
import type { StudyStage } from '../studies/state';
import type { StageView } from './state';

export interface ShakeFacts {
  readonly direction: SpinDirection;
  readonly frequency_Hz: number;
  /** Half the stroke of drum and frame, true; the frame's null where it is not known. */
  readonly drum_m: number;
  readonly frame_m: number | null;
  /** How many times larger it is drawn; one scale for both directions. */
  readonly times: number;
  readonly soil_stiffness_N_m: number;
  readonly stage: StudyStage;
}

/** A way of a force; `path` is null where parts that carry it are off. */
export interface Way {
  readonly end: 'left' | 'right' | null;
  readonly path: ForcePath | null;
}

export type ViewPicture =
  | {
      readonly view: 'moves';
      readonly groups: readonly MovingGroup[];
      readonly meetings: readonly GroupMeeting[];
    }
  | {
      readonly view: 'shakes';
      readonly inside: readonly string[];
      readonly isolators: readonly string[];
      readonly outside: readonly string[];
      /** Null where the exciter's unbalance is not known for what is set. */
      readonly facts: ShakeFacts | null;
    }
  | {
      readonly view: 'load';
      readonly ways: readonly Way[];
      readonly loads: FrameLoads | null;
      /** What stands on the ground. */
      readonly ground: string | null;
    }
  | {
      readonly view: 'torque';
      readonly ways: readonly Way[];
      readonly drive: DriveTorque | null;
      /** Parts that share the torque on a circle, and the force on each. */
      readonly shared: readonly { readonly partIds: readonly string[]; readonly force_N: number }[];
    }
  | { readonly view: 'wetted'; readonly fluids: readonly Wetted[] | null };

type Inputs = readonly unknown[];
let last: { inputs: Inputs; picture: ViewPicture | null } | undefined;

/** The view that the stage has room for: a study, a job, practice or the watched shot comes first. */
export const selectStageView = (s: AppState): StageView | null =>
  s.studies.stage !== null || s.jobs.stage !== null || s.practice.stage !== null || s.shot.open
    ? null
    : s.views.show;

/** The picture of the chosen view; the same object as long as nothing that it depends on changes. */
export function selectViewPicture(state: AppState): ViewPicture | null {
  const view = selectStageView(state);
  const { document } = state;
  if (view === null || document === null) return null;
  const inputs: Inputs = [
    view,
    document,
    state.hiddenParts,
    state.isolatedParts,
    state.optionsOn,
    state.showContext,
    state.teardown.open ? state.teardown.step : -1,
    ...(view === 'shakes' ? [state.exciter, state.studies.vibration] : []),
    ...(view === 'wetted' ? [state.views.wetted] : []),
  ];
  if (last === undefined || last.inputs.some((input, i) => input !== inputs[i]))
    last = { inputs, picture: pictureOf(view, document, state) };
  return last.picture;
}

function pictureOf(view: StageView, document: MachineDocument, state: AppState): ViewPicture | null {
  const { machine } = document;
  const shows = (part: Part): boolean => partLook(part, state) !== 'hidden';
  switch (view) {
    case 'moves':
      return { view, groups: movingGroups(machine, shows), meetings: groupMeetings(machine, shows) };
    case 'shakes': {
      const of = (side: Part['side']): string[] =>
        machine.parts.filter((part) => part.side === side && shows(part)).map((part) => part.id);
      return {
        view,
        inside: of('vibrating'),
        isolators: of('isolator'),
        outside: of('still'),
        facts: shakeFacts(document, state),
      };
    }
    case 'load':
    case 'torque':
      return forcePicture(view, document, state);
    case 'wetted': {
      const { wetted } = state.views;
      return { view, fluids: wetted?.hash === document.hash ? wetted.fluids : null };
    }
  }
}

/** Parts that a force can go through now: neither hidden, nor left out, nor taken off by the teardown. */
function presence(document: MachineDocument, state: AppState): (partId: string) => boolean {
  const { machine, teardown } = document;
  const off = new Set<string>();
  if (state.teardown.open)
    for (const step of teardown.steps.slice(0, state.teardown.step + 1))
      if (step.kind === 'remove') for (const unit of step.unitIds) off.add(unit);
  const here = new Set<string>();
  for (const part of machine.parts) {
    const shown = state.isolatedParts === null || state.isolatedParts.has(part.id);
    if (isPresent(part, state.optionsOn) && shown && !state.hiddenParts.has(part.id) && !off.has(part.unit))
      here.add(part.id);
  }
  return (partId) => here.has(partId);
}

function forcePicture(view: 'load' | 'torque', document: MachineDocument, state: AppState): ViewPicture {
  const { machine, masses } = document;
  const solids = kindSolids(document);
  const present = presence(document, state);
  const whole = (partId: string): boolean =>
    isPresent(
      machine.parts.find((p) => p.id === partId)!,
      state.optionsOn,
    );
  // Ends of the ways are those of the whole machine: what is taken off does not move them.
  const ground = groundPart(machine, solids, whole);
  if (view === 'torque') {
    const from = torqueSource(machine, whole);
    const path =
      from === null || ground === null ? null : forcePath(machine, 'torque', from, ground, present);
    const drive = driveTorque(machine);
    const shared = (path?.stages ?? []).flatMap((partIds) => {
      const force_N = drive === null ? null : forceOnEach_N(machine, partIds, drive.torque_Nm);
      return partIds.length > 1 && force_N !== null ? [{ partIds, force_N }] : [];
    });
    return { view, ways: [{ end: null, path }], drive, shared };
  }
  const basis = rollerBasis(machine, solids, masses);
  const from = loadSource(machine, masses, whole);
  if (from === null || ground === null) return { view, ways: [], loads: null, ground };
  if (basis === null)
    return {
      view,
      ways: [{ end: null, path: forcePath(machine, 'load', from, ground, present) }],
      loads: null,
      ground,
    };
  const ends = [...new Set(basis.isolators.map((set) => set.end))];
  const ways = ends.map((end): Way => {
    // The way over this end: the other end's isolators are no way.
    const others = new Set(basis.isolators.filter((set) => set.end !== end).flatMap((set) => set.partIds));
    const open = (partId: string): boolean => present(partId) && !others.has(partId);
    return { end, path: forcePath(machine, 'load', from, ground, open) };
  });
  // With a way cut off the beam stands on one support: its numbers are for the whole machine only.
  const loads = ways.every((way) => way.path !== null) ? frameLoads(machine, masses, basis, from) : null;
  return { view, ways, loads, ground };
}

function shakeFacts(document: MachineDocument, state: AppState): ShakeFacts | null {
  const { machine, masses } = document;
  const basis = rollerBasis(machine, kindSolids(document), masses);
  const exciter = selectExciterStudy(state);
  if (basis === null || exciter === null) return null;
  const { soil_stiffness_N_m, soil_damping_Ns_m, hardness_IRHD } = state.studies.vibration;
  const studyOf = (direction: SpinDirection) => {
    const { value, frequency_Hz } = exciter[direction];
    if (value === null) return null;
    const study = vibrationStudy(basis, {
      unbalance_kgm: value.U_kgm,
      frequency_Hz,
      soil_stiffness_N_m,
      soil_damping_Ns_m,
      hardness_IRHD: hardness_IRHD ?? basis.isolation.hardness_IRHD,
    });
    return study === null ? null : { study, frequency_Hz };
  };
  const { direction } = state.exciter;
  const now = studyOf(direction);
  if (now === null) return null;
  const other = studyOf(direction === 'high' ? 'low' : 'high');
  // One scale for both, so that the smaller amplitude looks smaller.
  const times = Math.min(shakeOf(now.study).times, other === null ? Infinity : shakeOf(other.study).times);
  const { time, linear } = now.study;
  const drum_m = time?.drum_amplitude_m ?? linear.drum_amplitude_m;
  if (drum_m === null) return null;
  return {
    direction,
    frequency_Hz: now.frequency_Hz,
    drum_m,
    frame_m: time?.frame_amplitude_m ?? linear.frame_amplitude_m,
    times,
    soil_stiffness_N_m,
    stage: shakeOf(now.study, times).stage,
  };
}
