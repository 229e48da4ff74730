/** Binds React to the store: one provider hands over store and commands, `useApp` reads, `useCommands` writes. */
import { createContext, type ReactNode, useContext, useMemo } from 'react';
import { useStore } from 'zustand';
import type { AppState, AppStore, Commands, Ports } from '../../store';

interface Bound {
  readonly store: AppStore;
  readonly commands: Commands;
  readonly ports: Ports;
}

/** Makes the commands of one place; called once for a store. */
type MakeCommands<T> = (store: AppStore, ports: Ports, commands: Commands) => T;

const made = new WeakMap<AppStore, Map<MakeCommands<unknown>, unknown>>();

const BindContext = createContext<Bound | null>(null);

export function BindProvider({ children, ...bound }: Bound & { readonly children: ReactNode }) {
  const { store, commands, ports } = bound;
  const value = useMemo(() => ({ store, commands, ports }), [store, commands, ports]);
  return <BindContext.Provider value={value}>{children}</BindContext.Provider>;
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

/** Commands of one place, which come with that place's chunk: `usePlaceCommands(createJobCommands)`. */
export function usePlaceCommands<T>(make: MakeCommands<T>): T {
  const { store, ports, commands } = useBound();
  const own = made.get(store) ?? new Map<MakeCommands<unknown>, unknown>();
  made.set(store, own);
  if (!own.has(make)) own.set(make, make(store, ports, commands));
  return own.get(make) as T;
}
