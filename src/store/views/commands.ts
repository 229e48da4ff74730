/** Looks for what each fluid wets, in turns, so that the stage stays in hand. Comes with the legend's own chunk. */
import { kindSolids } from '../../core/document';
import { defaultOptions, isPresent } from '../../core/machine';
import { wettedParts } from '../../core/studies';
import type { AppStore } from '../store';
import { requestFrame } from '../transient';

export function createViewCommands(store: AppStore) {
  let searching: string | null = null;
  return {
    /** Once a machine; nothing while it is on its way or known. */
    findWetted(): void {
      const { document, views } = store.getState();
      if (document === null || views.wetted?.hash === document.hash || searching === document.hash) return;
      const { hash, machine } = document;
      searching = hash;
      const options = defaultOptions(machine);
      const search = wettedParts(machine, kindSolids(document), (part) => isPresent(part, options));
      const turn = (): void => {
        if (store.getState().document !== document) return;
        const next = search.next();
        if (next.done !== true) {
          setTimeout(turn, 0);
          return;
        }
        searching = null;
        store.setState({ views: { ...store.getState().views, wetted: { hash, fluids: next.value } } });
        requestFrame();
      };
      setTimeout(turn, 0);
    },
  };
}
