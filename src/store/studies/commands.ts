/** Commands of the studies. */
import { requestFrame } from '../transient';
import type { AppStore } from '../store';
import { INITIAL_STUDIES, type StudiesState, type StudyName, type StudyStage } from './state';

export function createStudyCommands(store: AppStore) {
  const set = (part: Partial<StudiesState>): void => {
    store.setState({ studies: { ...store.getState().studies, ...part } });
    requestFrame();
  };
  return {
    change<K extends StudyName>(study: K, part: Partial<StudiesState[K]>): void {
      set({ [study]: { ...store.getState().studies[study], ...part } });
    },
    reset: (study: StudyName): void => set({ [study]: INITIAL_STUDIES[study] }),
    /** What the stage shows of the open study; null: nothing of it. */
    show(stage: StudyStage | null): void {
      if (stage !== store.getState().studies.stage) set({ stage });
    },
  };
}
