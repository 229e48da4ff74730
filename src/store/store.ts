/** The one store: vanilla, so that React is only one of its readers. */
import { createStore, type StoreApi } from 'zustand/vanilla';
import { type AppState, INITIAL_STATE } from './state';

export type AppStore = StoreApi<AppState>;

export const appStore: AppStore = createStore<AppState>(() => INITIAL_STATE);

/** A store of its own for tests. */
export const createAppStore = (state: Partial<AppState> = {}): AppStore =>
  createStore<AppState>(() => ({ ...INITIAL_STATE, ...state }));
