/** Where a link of a text, or a jump of a result, leads. */
import { partsNamed, type About, type LinkTarget } from '../../../core/quiz';
import { PLACES, type PanelName, type Place } from '../../../store';
import { useAppStore, useCommands } from '../../bind';

const isPlace = (name: string): name is Place => PLACES.some((place) => place === name);
const BENCH_PANELS: readonly PanelName[] = ['exciter', 'part', 'machine'];

export interface Links {
  follow(target: LinkTarget): void;
  /** Shows a part: selected, in the camera's view. */
  showPart(ref: string): void;
  showTerm(id: string): void;
  showStep(step: NonNullable<About['step']>): void;
  showPlace(path: readonly string[]): void;
}

export function useLinks(): Links {
  const commands = useCommands();
  const store = useAppStore();
  const links: Links = {
    showPart(ref) {
      const { document } = store.getState();
      const first = document === null ? undefined : partsNamed(document.machine, ref)[0];
      if (first === undefined) return;
      commands.select(first);
      commands.lookAt('fit', first);
    },
    showTerm: (id) => commands.go('lessons', 'glossary', id),
    showStep: ({ topic, step }) => commands.go('lessons', topic, step),
    showPlace([place, ...rest]) {
      if (place === undefined || !isPlace(place)) return;
      const panel = BENCH_PANELS.find((each) => each === rest[0]);
      if (place === 'bench' && panel !== undefined) {
        commands.openPanel(panel);
        commands.go('bench');
      } else commands.go(place, ...rest);
    },
    follow(target) {
      if (target.to === 'part') links.showPart(target.ref);
      else if (target.to === 'term') links.showTerm(target.id);
      else if (target.to === 'step') links.showStep(target);
      else links.showPlace(target.path);
    },
  };
  return links;
}
