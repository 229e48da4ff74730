/** Slow state of "watch the shot": what is shown and how, the run that is set up, and the runs made so far. */
import type { Direction, Recording } from '../core/shot';
import type { Fault } from '../core/kernel';
import type { ShotSetup } from '../core/studies';

export type { BaffleState, ShotSetup, SpinUpKind } from '../core/studies';

/** A run that can be looked at, at any time of it. */
export type ShotTake = Recording;

export type ExperimentId =
  | 'other-way'
  | 'too-fast'
  | 'too-much'
  | 'half-lost'
  | 'baffle-off'
  | 'baffle-mirrored'
  | 'no-gravity'
  | 'sticky';
export const EXPERIMENTS: readonly ExperimentId[] = [
  'other-way',
  'too-fast',
  'too-much',
  'half-lost',
  'baffle-off',
  'baffle-mirrored',
  'no-gravity',
  'sticky',
];

export type Prediction = 'more' | 'same' | 'less';
export const PREDICTIONS: readonly Prediction[] = ['more', 'same', 'less'];

/** What came of a run, at its end. */
export interface ShotOutcome {
  readonly captured: number;
  /** Shot and housing together. */
  readonly U_kgm: number;
  readonly shot_U_kgm: number;
  /** U over that of the machine's own run in HIGH, and over that of what the run was compared with. */
  readonly ofOwnHigh: number | null;
  readonly ofCompared: number | null;
  /** U with shot that finds its level; null where it does not apply. */
  readonly level_U_kgm: number | null;
  /** U that the machine's table of simulated runs tells for the setting, with its band; null where it tells nothing. */
  readonly settled: { readonly U_kgm: number; readonly band_kgm: number } | null;
}

export interface ShotRun {
  readonly id: string;
  /** 'own': as the machine is; 'free': set by hand. */
  readonly experiment: ExperimentId | 'own' | 'free';
  readonly setup: ShotSetup;
  /** Direction of the machine's own run that this one is compared with. */
  readonly comparedWith: Direction;
  readonly prediction: Prediction | null;
  readonly outcome: ShotOutcome;
  readonly take: ShotTake;
}

/** A run under way in the worker. */
export interface ShotJob {
  readonly id: string;
  readonly share: number;
  /** Time left by the clock on the wall; null until it can be told. */
  readonly left_s: number | null;
}

export interface ShotState {
  /** The shot is watched: in the panel, and on the stage with the exciter opened. */
  readonly open: boolean;
  readonly playing: boolean;
  /** How many times slower than life. */
  readonly slow: number;
  /** 'housing': the eye turns with the housing; 'room': it stands still. */
  readonly eye: 'housing' | 'room';
  /** On the stage: the slice repeated along the chamber, or the slice alone. */
  readonly along: 'repeated' | 'alone';
  /** Chart over time or over w^2 r / g. */
  readonly chartOver: 'time' | 'gravity';
  /** Id of the run shown; null: the machine's own in the direction of the lever. */
  readonly shown: string | null;
  readonly runs: readonly ShotRun[];
  readonly own: Readonly<Record<Direction, ShotRun | null>>;
  readonly loading: 'no' | 'busy' | 'failed' | 'none-shipped';
  /** The run being set up; null until an experiment or "free" is chosen. */
  readonly draft: {
    readonly experiment: ExperimentId | 'free';
    readonly setup: ShotSetup;
    readonly comparedWith: Direction;
    readonly prediction: Prediction | null;
  } | null;
  readonly job: ShotJob | null;
  readonly faults: readonly Fault[];
  /** Parts hidden, ghosted and isolated before the exciter was opened on the stage. */
  readonly before: {
    readonly hidden: ReadonlySet<string>;
    readonly ghosted: ReadonlySet<string>;
    readonly isolated: ReadonlySet<string> | null;
  } | null;
}

export const SLOW_FACTORS = [1, 5, 20] as const;

export const INITIAL_SHOT: ShotState = {
  open: false,
  playing: false,
  slow: 5,
  eye: 'housing',
  along: 'repeated',
  chartOver: 'time',
  shown: null,
  runs: [],
  own: { high: null, low: null },
  loading: 'no',
  draft: null,
  job: null,
  faults: [],
  before: null,
};

/** Runs kept side by side; the oldest goes when there are more. */
export const MOST_RUNS = 12;

/** Two results within this share of each other count as the same: the scatter of the low arm between seeds. */
export const SAME_WITHIN = 0.1;

/** How a result compares with what it was predicted against. */
export function verdict(ofCompared: number): Prediction {
  if (ofCompared > 1 + SAME_WITHIN) return 'more';
  return ofCompared < 1 - SAME_WITHIN ? 'less' : 'same';
}

/** An experiment: the machine's own setting with one thing changed. */
export function experimentSetup(id: ExperimentId, own: ShotSetup): ShotSetup {
  switch (id) {
    case 'other-way':
      return { ...own, direction: own.direction === 'low' ? 'high' : 'low' };
    case 'too-fast':
      // The same top speed in half the time and with full push from the start.
      return { ...own, spinUp: 'linear', spinUpTime_s: own.spinUpTime_s / 2 };
    case 'too-much':
      return { ...own, fill: Math.min(0.6, own.fill * 1.5) };
    case 'half-lost':
      return { ...own, fill: own.fill / 2 };
    case 'baffle-off':
      return { ...own, baffle: 'off' };
    case 'baffle-mirrored':
      return { ...own, baffle: 'mirrored' };
    case 'no-gravity':
      return { ...own, gravity: false };
    case 'sticky':
      return { ...own, friction: 0.8 };
  }
}
