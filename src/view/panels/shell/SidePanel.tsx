/** The panel on the right: one of four, chosen by tabs. */
import { type KeyboardEvent, lazy, Suspense, useRef } from 'react';
import type { PanelName } from '../../../store';
import { useApp, useCommands, useSpeech } from '../../bind';

export const PANELS: readonly PanelName[] = ['exciter', 'part', 'machine', 'settings'];

const fetchPanels = () => import('./PanelContent');
const Content = lazy(fetchPanels);

/** Fetches the panels ahead of their first opening. */
export const preloadPanels = (): void => void fetchPanels();

/** A panel, waited for without a word: it is there within a blink of the first paint. */
export function PanelContent({ panel }: { readonly panel: PanelName }) {
  return (
    <Suspense fallback={null}>
      <Content panel={panel} />
    </Suspense>
  );
}

export function SidePanel() {
  const { t } = useSpeech();
  const commands = useCommands();
  const panel = useApp((s) => s.panel);
  const tabs = useRef<HTMLDivElement>(null);
  const onKey = (event: KeyboardEvent<HTMLDivElement>): void => {
    const at = PANELS.indexOf(panel);
    const to: Readonly<Record<string, number>> = {
      ArrowRight: (at + 1) % PANELS.length,
      ArrowLeft: (at - 1 + PANELS.length) % PANELS.length,
      Home: 0,
      End: PANELS.length - 1,
    };
    const next = to[event.key];
    if (next === undefined) return;
    event.preventDefault();
    commands.openPanel(PANELS[next]!);
    tabs.current?.querySelectorAll<HTMLElement>('[role="tab"]')[next]?.focus();
  };
  return (
    <div className="side-panel">
      <div className="tabs" role="tablist" aria-label={t('panel.title')} ref={tabs} onKeyDown={onKey}>
        {PANELS.map((name) => (
          <button
            key={name}
            type="button"
            role="tab"
            id={`tab-${name}`}
            aria-selected={name === panel}
            aria-controls="side-panel-body"
            tabIndex={name === panel ? 0 : -1}
            onClick={() => commands.openPanel(name)}
          >
            {t(`panel.${name}`)}
          </button>
        ))}
      </div>
      <div
        className="side-panel-body"
        id="side-panel-body"
        role="tabpanel"
        aria-labelledby={`tab-${panel}`}
        tabIndex={0}
        // A new panel, and a new part, begin at their top.
        key={panel}
      >
        <PanelContent panel={panel} />
      </div>
    </div>
  );
}
