/** Binds React to the store: one provider hands over store and commands, `useApp` reads, `useCommands` writes. */
import { createContext, type ReactNode, useContext } from 'react';
import { useStore } from 'zustand';
import type { AppState, AppStore, Commands } from '../../store';

interface Bound {
  readonly store: AppStore;
  readonly commands: Commands;
}

const BindContext = createContext<Bound | null>(null);

export function BindProvider({ store, commands, children }: Bound & { readonly children: ReactNode }) {
  return <BindContext.Provider value={{ store, commands }}>{children}</BindContext.Provider>;
}

function useBound(): Bound {
  const bound = useContext(BindContext);
  if (bound === null) throw new Error('bind/useApp: no BindProvider above this component');
  return bound;
}

/** Reads a slow value; the selector returns a primitive or a stable reference. */
export const useApp = <T,>(selector: (state: AppState) => T): T => useStore(useBound().store, selector);

/** The commands: the only way to change the store. */
export const useCommands = (): Commands => useBound().commands;

/** The store itself, for the frame loop, which reads without subscribing. */
export const useAppStore = (): AppStore => useBound().store;
