/** Commands: the only writers of the store. Panels and the stage call these with ids and numbers. */
import { transient, requestFrame } from './transient';
import { type Place, type Route, sameRoute } from './places';
import type { Ports } from './ports';
import {
  type AppState,
  type CameraView,
  DEFAULT_EXCITER,
  DEFAULT_SETTINGS,
  type ExciterSettings,
  type OfflineState,
  type PanelName,
  type SectionState,
  type Settings,
} from './state';
import { createShotCommands } from './shot-commands';
import type { AppStore } from './store';
import { CUT_OPEN, type StageView } from './views/state';

const KEPT = 'drumbench.kept.1';

/** Readers of the kept text: anything unknown or of the wrong type falls back to the default. */
function merged<T extends object>(defaults: T, found: unknown): T {
  if (typeof found !== 'object' || found === null) return defaults;
  const out: Record<string, unknown> = { ...(defaults as Record<string, unknown>) };
  for (const [key, standard] of Object.entries(defaults)) {
    const value = (found as Record<string, unknown>)[key];
    if (value === undefined) continue;
    const nullable = standard === null && (value === null || typeof value === 'number');
    const number = typeof standard === 'number' || standard === null;
    if (nullable || (typeof value === typeof standard && value !== null) || (number && value === null))
      out[key] = value;
  }
  return out as unknown as T;
}

export function createCommands(store: AppStore, ports: Ports) {
  const set = (part: Partial<AppState>): void => {
    store.setState(part);
    requestFrame();
  };
  const get = store.getState;
  const keepNow = (): void => {
    const { settings, exciter } = get();
    ports.keep.write(KEPT, JSON.stringify({ settings, exciter }));
  };
  const toggled = (from: ReadonlySet<string>, ids: readonly string[], on?: boolean): ReadonlySet<string> => {
    const next = new Set(from);
    const add = on ?? !ids.every((id) => next.has(id));
    for (const id of ids)
      if (add) next.add(id);
      else next.delete(id);
    return next;
  };

  return {
    ...createShotCommands(store, ports),
    /** Reads kept settings, then loads the shipped machine; `first` holds where nothing was kept yet. */
    async start(first: Partial<Settings> = {}): Promise<void> {
      set({ settings: { ...DEFAULT_SETTINGS, ...first } });
      const kept = ports.keep.read(KEPT);
      if (kept !== null) {
        let found: { settings?: unknown; exciter?: unknown } = {};
        try {
          found = JSON.parse(kept) as typeof found;
        } catch {
          // A damaged note of settings is no reason to stop: defaults serve.
        }
        set({
          settings: merged(get().settings, found.settings),
          exciter: merged(DEFAULT_EXCITER, found.exciter),
        });
      }
      set({ loading: { phase: 'fetch', share: 0 } });
      try {
        const document = await ports.loadShipped((share) => set({ loading: { phase: 'fetch', share } }));
        this.setDocument(document);
      } catch {
        set({ loading: { phase: 'failed', share: 0 } });
      }
    },
    setDocument(document: AppState['document']): void {
      const optionsOn: Record<string, boolean> = {};
      for (const [id, option] of Object.entries(document?.machine.options ?? {})) optionsOn[id] = option.on;
      transient.teardownTime_s = 0;
      transient.explode = 0;
      set({
        document,
        optionsOn,
        loading: { phase: 'ready', share: 1 },
        selectedPart: null,
        hoveredPart: null,
        hiddenParts: new Set(),
        ghostedParts: new Set(),
        isolatedParts: null,
        explode: 0,
        teardown: { open: get().teardown.open, step: -1, playing: false, reverse: false },
      });
      this.lookAt('home');
    },
    async importFiles(files: readonly { name: string; text: string }[]): Promise<void> {
      const fileName = files.map((f) => f.name).join(', ');
      set({ loading: { phase: 'solids', share: 0 }, importReport: null });
      const result = await ports.importFiles(files, (phase, share) => set({ loading: { phase, share } }));
      if (result.ok) {
        this.setDocument(result.value);
        set({ importReport: { fileName, faults: result.notes, accepted: true }, panel: 'machine' });
      } else {
        set({
          loading: { phase: 'ready', share: 1 },
          importReport: { fileName, faults: result.faults, accepted: false },
          panel: 'machine',
          sheet: 'panel',
        });
      }
    },
    closeImportReport: (): void => set({ importReport: null }),
    change(settings: Partial<Settings>): void {
      set({ settings: { ...get().settings, ...settings } });
      keepNow();
    },
    setExciter(exciter: Partial<ExciterSettings>): void {
      set({ exciter: { ...get().exciter, ...exciter } });
      keepNow();
    },
    resetExciter(): void {
      set({ exciter: { ...DEFAULT_EXCITER, direction: get().exciter.direction } });
      keepNow();
    },
    select(partId: string | null): void {
      if (partId === get().selectedPart) return;
      set(partId === null ? { selectedPart: null } : { selectedPart: partId, panel: 'part' });
    },
    hover(partId: string | null): void {
      if (partId !== get().hoveredPart) set({ hoveredPart: partId });
    },
    /** A hand takes hold of a part on the stage: practice answers with `practice.hold`. */
    grip(partId: string): void {
      const { practice } = get();
      const grip = { partId, serial: (practice.grip?.serial ?? 0) + 1 };
      set({ practice: { ...practice, grip, hold: null } });
    },
    /** A hand pulled at a part on the stage: practice takes it for a try. */
    pull(partId: string): void {
      const { practice } = get();
      set({ practice: { ...practice, pull: { partId, serial: (practice.pull?.serial ?? 0) + 1 } } });
    },
    /** Escape: closes the innermost thing that is open. */
    back(): void {
      const s = get();
      if (s.sheet !== 'none') set({ sheet: 'none' });
      else if (s.shot.open) this.watchShot(false);
      else if (s.teardown.playing) set({ teardown: { ...s.teardown, playing: false } });
      else if (s.isolatedParts !== null) set({ isolatedParts: null });
      else if (s.selectedPart !== null) set({ selectedPart: null });
      else if (s.views.show !== null) this.showView(null);
      else if (s.section.on) set({ section: { ...s.section, on: false } });
      else if (s.hiddenParts.size + s.ghostedParts.size > 0) this.showAll();
    },
    hide: (ids: readonly string[], on?: boolean): void =>
      set({ hiddenParts: toggled(get().hiddenParts, ids, on) }),
    ghost: (ids: readonly string[], on?: boolean): void =>
      set({ ghostedParts: toggled(get().ghostedParts, ids, on) }),
    isolate: (ids: readonly string[] | null): void =>
      set({ isolatedParts: ids === null ? null : new Set(ids) }),
    showAll: (): void => set({ hiddenParts: new Set(), ghostedParts: new Set(), isolatedParts: null }),
    setContext: (showContext: boolean): void => set({ showContext }),
    setOption: (id: string, on: boolean): void => set({ optionsOn: { ...get().optionsOn, [id]: on } }),
    setBalloons: (balloons: boolean): void => set({ balloons }),
    /** Explode slider, 0 to 1; leaves the teardown strip's step where it is but shows the exploded view. */
    setExplode(explode: number): void {
      transient.explode = explode;
      const { teardown } = get();
      set({ explode, teardown: teardown.playing ? { ...teardown, playing: false } : teardown });
    },
    setSection(section: Partial<SectionState>): void {
      const next = { ...get().section, ...section };
      transient.sectionOffset_m = next.offset_m;
      set({ section: next });
    },
    /** Shows a view of the stage, one at a time; one that looks inside opens the machine, and closes it again. */
    showView(show: StageView | null): void {
      const { views, section } = get();
      const open = show !== null && CUT_OPEN.has(show);
      // Whoever moved the cut since has made it their own.
      const mine = views.cut && section.on && section.axis === 'z' && section.offset_m === 0;
      const cut = open && (mine || !section.on);
      set({ views: { ...views, show, cut } });
      if (cut && !section.on) this.setSection({ on: true, axis: 'z', offset_m: 0 });
      else if (mine && !open) this.setSection({ on: false });
    },
    setSpinning: (spinning: boolean): void => set({ spinning }),
    lookAt(view: CameraView, partId: string | null = null): void {
      set({ cameraWish: { view, partId, serial: get().cameraWish.serial + 1 } });
    },
    openTeardown: (open: boolean): void =>
      set({ teardown: { ...get().teardown, open, playing: false }, ...(open ? { explode: 0 } : {}) }),
    /** Goes to a step: -1 assembled, k: steps 0..k done. The stage eases there. */
    goToStep(step: number, options: { playing?: boolean; reverse?: boolean } = {}): void {
      const count = get().document?.teardown.steps.length ?? 0;
      const clamped = Math.max(-1, Math.min(count - 1, step));
      const { teardown } = get();
      transient.explode = 0;
      set({
        explode: 0,
        teardown: {
          open: true,
          step: clamped,
          playing: options.playing ?? teardown.playing,
          reverse: options.reverse ?? teardown.reverse,
        },
      });
    },
    setPlaying(playing: boolean, reverse = false): void {
      set({ teardown: { ...get().teardown, open: true, playing, reverse }, explode: 0 });
    },
    /** Goes to a place, and to what is open within it. */
    go(place: Place, ...path: readonly string[]): void {
      this.setRoute({ place, path });
    },
    setRoute(route: Route): void {
      if (!sameRoute(route, get().route)) set({ route, sheet: 'none' });
    },
    setOffline: (offline: OfflineState): void => set({ offline }),
    openPanel: (panel: PanelName): void => set({ panel }),
    openSheet: (sheet: AppState['sheet']): void => set({ sheet }),
    setSearch: (search: string): void => set({ search }),
    announce(key: string, params: Readonly<Record<string, string | number>> = {}): void {
      set({ announcement: { key, params, serial: get().announcement.serial + 1 } });
    },
  };
}

export type Commands = ReturnType<typeof createCommands>;
