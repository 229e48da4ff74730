/** Slow state of the views of the stage: which one is shown, and what had to be looked for. */
import type { Wetted } from '../../core/studies';

export const STAGE_VIEWS = ['moves', 'shakes', 'load', 'torque', 'wetted'] as const;
/** Who moves with whom, what shakes, load path, torque path, oil and grease. */
export type StageView = (typeof STAGE_VIEWS)[number];

export interface ViewsState {
  readonly show: StageView | null;
  /** The view turned the section on, and turns it off again. */
  readonly cut: boolean;
  /** What each fluid wets, and of which machine; null until it has been looked for. */
  readonly wetted: { readonly hash: string; readonly fluids: readonly Wetted[] } | null;
}

export const INITIAL_VIEWS: ViewsState = { show: null, cut: false, wetted: null };

/** Views that look inside: they open the machine along its axis. */
export const CUT_OPEN: ReadonlySet<StageView> = new Set(['moves', 'wetted']);
