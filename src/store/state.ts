/** The state of the app: slow values only (what a person chose, what is open). Fast values live in transient.ts. */
import type { MachineDocument } from '../core/document';
import type { Fault, UnitSystem } from '../core/kernel';
import { type ExciterChoice, OWN_CHOICE } from '../core/studies';
import { BENCH, type Route } from './places';
import { type ClassSlice, INITIAL_CLASS } from './class/state';
import { type DeliveryState, INITIAL_DELIVERY } from './delivery/state';
import { type FaultsState, INITIAL_FAULTS } from './faults/state';
import { type GraphState, INITIAL_GRAPH } from './graph/state';
import { INITIAL_JOBS, type JobsState } from './jobs/state';
import { INITIAL_LESSONS, type LessonsState } from './lessons/state';
import { INITIAL_PRACTICE, type PracticeSlice } from './practice/state';
import { INITIAL_QUIZ, type QuizState } from './quiz/state';
import { INITIAL_RECORDS, type RecordsState } from './records/state';
import type { SchoolSlice } from './school/state';
import { INITIAL_SHOT, type ShotState } from './shot';
import { INITIAL_STUDIES, type StudiesState } from './studies/state';
import { INITIAL_VIEWS, type ViewsState } from './views/state';

export type Theme = 'paper' | 'night' | 'projector';
export type SpinDirection = 'high' | 'low';
export type CameraView = 'home' | 'front' | 'right' | 'left' | 'top' | 'axis' | 'fit';
export type SectionAxis = 'x' | 'y' | 'z';
/** What the right-hand panel shows. */
export type PanelName = 'part' | 'exciter' | 'machine' | 'settings';
export type DrawTier = 'auto' | 'full' | 'low';

/** Kept over reloads. */
export interface Settings {
  readonly language: string;
  readonly units: UnitSystem;
  readonly theme: Theme;
  /** Targets of 64 px for gloved hands. */
  readonly glove: boolean;
  readonly motion: 'system' | 'reduced' | 'full';
  readonly drawTier: DrawTier;
  /** Whether the first things to do are shown over the stage. */
  readonly firstSteps: boolean;
}

/** What the exciter panel sets; null means the machine's own value. Kept over reloads. */
export interface ExciterSettings extends ExciterChoice {
  readonly direction: SpinDirection;
}

export interface SectionState {
  readonly on: boolean;
  /** Normal of the cutting plane in the machine's axes; the side that faces the reader is cut away. */
  readonly axis: SectionAxis;
  readonly offset_m: number;
}

/** Whether the app is kept in this browser: not asked yet, being kept, ready, a newer one waiting, or why it cannot be. */
export type OfflineState = 'unknown' | 'saving' | 'ready' | 'update' | 'none' | 'needs-host';

export interface AppState {
  readonly document: MachineDocument | null;
  readonly loading: {
    readonly phase: 'idle' | 'fetch' | 'solids' | 'order' | 'ready' | 'failed';
    readonly share: number;
  };
  /** Faults of the last dropped file; the machine on the stage stays as it was. */
  readonly importReport: {
    readonly fileName: string;
    readonly faults: readonly Fault[];
    readonly accepted: boolean;
  } | null;
  readonly settings: Settings;
  readonly exciter: ExciterSettings;

  readonly selectedPart: string | null;
  readonly hoveredPart: string | null;
  readonly hiddenParts: ReadonlySet<string>;
  readonly ghostedParts: ReadonlySet<string>;
  /** Only these are shown when not null. */
  readonly isolatedParts: ReadonlySet<string> | null;
  readonly showContext: boolean;
  readonly optionsOn: Readonly<Record<string, boolean>>;
  readonly balloons: boolean;

  /** 0 assembled, 1 fully apart. */
  readonly explode: number;
  readonly section: SectionState;
  readonly spinning: boolean;
  /** A wish for the camera; the number rises with each wish. */
  readonly cameraWish: { readonly view: CameraView; readonly partId: string | null; readonly serial: number };

  /** Teardown strip: step -1 is the assembled drum; step k means that steps 0..k are done. */
  readonly teardown: {
    readonly open: boolean;
    readonly step: number;
    readonly playing: boolean;
    readonly reverse: boolean;
  };
  readonly shot: ShotState;
  readonly studies: StudiesState;
  readonly views: ViewsState;
  readonly faults: FaultsState;
  readonly graph: GraphState;
  readonly lessons: LessonsState;
  readonly quiz: QuizState;
  readonly practice: PracticeSlice;
  readonly jobs: JobsState;
  readonly class: ClassSlice;
  readonly records: RecordsState;
  readonly school: SchoolSlice;
  readonly delivery: DeliveryState;
  readonly offline: OfflineState;
  /** What the person has come to do, and what is open within it. */
  readonly route: Route;
  readonly panel: PanelName;
  readonly search: string;
  /** Phone and tablet: which sheet is up. */
  readonly sheet: 'none' | 'parts' | 'panel';
  /** Last polite announcement for screen readers, with a serial so that repeats are spoken. */
  readonly announcement: {
    readonly key: string;
    readonly params: Readonly<Record<string, string | number>>;
    readonly serial: number;
  };
}

export const DEFAULT_SETTINGS: Settings = {
  language: 'en',
  units: 'si',
  theme: 'paper',
  glove: false,
  motion: 'system',
  drawTier: 'auto',
  firstSteps: true,
};

export const DEFAULT_EXCITER: ExciterSettings = {
  direction: 'high',
  ...OWN_CHOICE,
};

export const INITIAL_STATE: AppState = {
  document: null,
  loading: { phase: 'idle', share: 0 },
  importReport: null,
  settings: DEFAULT_SETTINGS,
  exciter: DEFAULT_EXCITER,
  selectedPart: null,
  hoveredPart: null,
  hiddenParts: new Set(),
  ghostedParts: new Set(),
  isolatedParts: null,
  showContext: false,
  optionsOn: {},
  balloons: true,
  explode: 0,
  section: { on: false, axis: 'z', offset_m: 0 },
  spinning: false,
  cameraWish: { view: 'home', partId: null, serial: 0 },
  teardown: { open: false, step: -1, playing: false, reverse: false },
  shot: INITIAL_SHOT,
  studies: INITIAL_STUDIES,
  views: INITIAL_VIEWS,
  faults: INITIAL_FAULTS,
  graph: INITIAL_GRAPH,
  lessons: INITIAL_LESSONS,
  quiz: INITIAL_QUIZ,
  practice: INITIAL_PRACTICE,
  jobs: INITIAL_JOBS,
  class: INITIAL_CLASS,
  records: INITIAL_RECORDS,
  school: null,
  delivery: INITIAL_DELIVERY,
  offline: 'unknown',
  route: BENCH,
  panel: 'exciter',
  search: '',
  sheet: 'none',
  announcement: { key: '', params: {}, serial: 0 },
};
