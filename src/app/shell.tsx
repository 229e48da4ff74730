/** The page: bar, parts list, stage, panel, teardown strip, arranged for desktop, tablet or phone. */
import { lazy, Suspense, useEffect, useRef, useState } from 'react';
import { useApp, useCommands, useSpeech } from '../view/bind';
import {
  Announcer,
  type Layout,
  LoadingNotice,
  PartsList,
  PhoneSheet,
  preloadPanels,
  type SheetHeight,
  SheetFrame,
  ShotClock,
  SidePanel,
  StageFault,
  StageFoot,
  StageTools,
  TeardownStrip,
  TopBar,
  useFileDrop,
  useLayout,
} from '../view/panels';
import { useAppearance, useEscape } from './page';
import './shell.css';

// The stage brings three with it: a chunk of its own, so that the first paint need not wait.
const Stage = lazy(() => import('../view/scene/Stage'));

function StageColumn({ layout }: { readonly layout: Layout }) {
  const { t } = useSpeech();
  const ready = useApp((s) => s.document !== null);
  return (
    <section className="stage-column" id="stage" tabIndex={-1} aria-label={t('stage-tools.stage')}>
      <StageTools layout={layout} />
      <div className="stage-sheet">
        <SheetFrame />
        <div className="stage-canvas">
          {ready && (
            <StageFault>
              <Suspense fallback={<p className="stage-wait">{t('loading.stage')}</p>}>
                <Stage />
              </Suspense>
            </StageFault>
          )}
        </div>
        <LoadingNotice />
      </div>
      <StageFoot />
    </section>
  );
}

/** A list or panel beside the stage: in place on a desktop, over the stage's edge on a tablet. */
function Side(props: { readonly side: 'parts' | 'panel'; readonly layout: Layout }) {
  const { side, layout } = props;
  const { t } = useSpeech();
  const commands = useCommands();
  const open = useApp((s) => s.sheet === side);
  const box = useRef<HTMLElement>(null);
  const asSheet = layout === 'tablet';
  useEffect(() => {
    if (!asSheet || !open) return;
    const opener = document.activeElement;
    box.current?.querySelector<HTMLElement>('.sheet-close')?.focus();
    return () => {
      if (opener instanceof HTMLElement) opener.focus();
    };
  }, [asSheet, open]);
  if (layout === 'phone' || (asSheet && !open)) return null;
  return (
    <aside
      className={`side ${side}`}
      ref={box}
      aria-label={t(side === 'parts' ? 'parts.title' : 'panel.title')}
    >
      {asSheet && (
        <button type="button" className="button sheet-close" onClick={() => commands.openSheet('none')}>
          {t('sheet.close')}
        </button>
      )}
      {side === 'parts' ? <PartsList /> : <SidePanel />}
    </aside>
  );
}

export function Shell() {
  const { t } = useSpeech();
  const layout = useLayout();
  const [height, setHeight] = useState<SheetHeight>('half');
  const dropping = useFileDrop();
  useAppearance();
  useEscape();
  useEffect(preloadPanels, []);
  return (
    <div className="shell" data-layout={layout} data-sheet={layout === 'phone' ? height : undefined}>
      <a className="skip" href="#stage">
        {t('app.skip')}
      </a>
      <TopBar layout={layout} />
      <main className="work">
        <Side side="parts" layout={layout} />
        <StageColumn layout={layout} />
        <Side side="panel" layout={layout} />
      </main>
      {layout === 'phone' ? <PhoneSheet height={height} onHeight={setHeight} /> : <TeardownStrip />}
      {dropping && (
        <div className="drop-veil">
          <p>{t('import.drop-here')}</p>
        </div>
      )}
      <ShotClock />
      <Announcer />
    </div>
  );
}
