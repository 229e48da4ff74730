/** The places of the app, in the order of the bar. One line makes a place: its content comes as a chunk of its own. */
import { type ComponentType, lazy, type LazyExoticComponent } from 'react';
import type { Place, Route } from '../../../store';

/**
 * How much of the page a place takes: a panel beside the stage, with the parts list on the other side or (`alone`) with
 * a list of its own instead; a wide panel; or the whole page without the stage.
 */
export type PlaceWidth = 'panel' | 'alone' | 'wide' | 'page';

interface PlaceEntry {
  readonly content: LazyExoticComponent<ComponentType>;
  readonly width?: (path: Route['path']) => PlaceWidth;
}

export const PLACE_ENTRIES: Readonly<Partial<Record<Place, PlaceEntry>>> = {
  practice: {
    content: lazy(() => import('../practice/PracticePlace')),
    width: ([inner]) => (inner === 'run' ? 'alone' : 'panel'),
  },
  jobs: {
    content: lazy(() => import('../jobs/JobsPlace')),
    width: ([job, page]) => (page === 'sheet' ? 'page' : job === undefined ? 'panel' : 'wide'),
  },
  lessons: { content: lazy(() => import('../lessons/LessonsPlace')) },
  quiz: {
    content: lazy(() => import('../quiz/QuizPlace')),
    width: ([inner]) => (inner === 'paper' ? 'page' : 'panel'),
  },
  class: {
    content: lazy(() => import('../class/ClassPlace')),
    width: ([who, what]) =>
      who !== 'host' ? 'panel' : ['paper', 'results', 'wall'].includes(what ?? '') ? 'page' : 'wide',
  },
  faults: { content: lazy(() => import('../faults/FaultsPlace')), width: () => 'wide' },
  studies: {
    content: lazy(() => import('../studies/StudiesPlace')),
    width: ([study]) => (study === undefined ? 'panel' : 'wide'),
  },
  records: { content: lazy(() => import('../records/RecordsPlace')) },
};

/** The places that a person can go to. */
export const OPEN_PLACES: readonly Place[] = ['bench', ...(Object.keys(PLACE_ENTRIES) as Place[])];

/** Null at the bench, which has panels of its own. */
export const placeWidth = ({ place, path }: Route): PlaceWidth | null =>
  place === 'bench' ? null : (PLACE_ENTRIES[place]?.width?.(path) ?? 'panel');
