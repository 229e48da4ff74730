/** What of a part shows: hidden, isolated, ghosted, context and options, read from the state. */
import type { Part } from '../core/machine';
import type { AppState } from './state';

export type PartLook = 'hidden' | 'solid' | 'ghost';

export type ShownBy = Pick<
  AppState,
  'hiddenParts' | 'ghostedParts' | 'isolatedParts' | 'showContext' | 'optionsOn'
>;

/** Context parts stay ghosts: they are there to show where the drum belongs. */
export function partLook(part: Part, state: ShownBy): PartLook {
  if (part.option !== null && state.optionsOn[part.option] !== true) return 'hidden';
  if (state.hiddenParts.has(part.id)) return 'hidden';
  if (state.isolatedParts !== null) {
    if (!state.isolatedParts.has(part.id)) return 'hidden';
  } else if (part.context && !state.showContext) return 'hidden';
  if (state.ghostedParts.has(part.id)) return 'ghost';
  return part.context && state.isolatedParts === null ? 'ghost' : 'solid';
}
