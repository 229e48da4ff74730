/** The page: bar, parts list, stage, panel or place, teardown strip, arranged for desktop, tablet or phone. */
import { lazy, Suspense, useEffect, useRef, useState } from 'react';
import { useApp, useCommands, useSpeech } from '../view/bind';
import {
  Announcer,
  Boundary,
  FirstSteps,
  type Layout,
  LoadingNotice,
  PartsList,
  PhoneSheet,
  PlaceContent,
  placeWidth,
  type PlaceWidth,
  preloadPanels,
  type SheetHeight,
  SheetFrame,
  ShotClock,
  SidePanel,
  StageFoot,
  StageLegend,
  StageTools,
  TeardownStrip,
  TopBar,
  useFileDrop,
  useLayout,
} from '../view/panels';
import { useAddress, useAppearance, useEscape } from './page';
import { UpdateNotice } from './UpdateNotice';
import './shell.css';

// The stage brings three with it: a chunk of its own, so that the first paint need not wait.
const Stage = lazy(() => import('../view/scene/Stage'));
const DrawingStage = lazy(() => import('../view/panels/exports/DrawingStage'));

export function StageColumn({ layout }: { readonly layout: Layout }) {
  const { t } = useSpeech();
  const ready = useApp((s) => s.document !== null);
  return (
    <section className="stage-column" id="stage" tabIndex={-1} aria-label={t('stage-tools.stage')}>
      <div>
        <StageTools layout={layout} />
        <FirstSteps />
      </div>
      <div className="stage-sheet">
        <SheetFrame />
        <div className="stage-canvas">
          {ready && (
            <Boundary words="stage-fault">
              <Suspense fallback={<p className="stage-wait">{t('loading.stage')}</p>}>
                <Stage instead={<DrawingStage />} />
              </Suspense>
            </Boundary>
          )}
        </div>
        {layout !== 'phone' && <StageLegend />}
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

/** The open place beside the stage; part, exciter, machine and settings come over it and go again. */
function PlaceSide({ layout }: { readonly layout: Layout }) {
  const { t } = useSpeech();
  const commands = useCommands();
  const place = useApp((s) => s.route.place);
  const covered = useApp((s) => layout === 'desktop' && s.sheet === 'panel');
  const name = t(`places.${place}`);
  return (
    <aside className="side panel place-side" aria-label={covered ? t('panel.title') : name}>
      {covered && (
        <>
          <button type="button" className="button sheet-close" onClick={() => commands.openSheet('none')}>
            {t('places.back', { place: name })}
          </button>
          <SidePanel />
        </>
      )}
      {/* Stays mounted under a panel, so that nothing begun in it is lost. */}
      <div className="place-hold" hidden={covered}>
        <PlaceContent />
      </div>
    </aside>
  );
}

function Work({ layout, width }: { readonly layout: Layout; readonly width: PlaceWidth | null }) {
  const bench = width === null;
  const roomForParts = bench || width === 'panel' || (layout === 'tablet' && width !== 'page');
  return (
    <main className="work">
      {roomForParts && <Side side="parts" layout={layout} />}
      <StageColumn layout={layout} />
      {!bench && (layout !== 'phone' || width === 'page') && <PlaceSide layout={layout} />}
      {(bench || layout === 'tablet') && <Side side="panel" layout={layout} />}
    </main>
  );
}

export function Shell() {
  const { t } = useSpeech();
  const layout = useLayout();
  const [height, setHeight] = useState<SheetHeight>('half');
  const dropping = useFileDrop();
  const width = useApp((s) => placeWidth(s.route));
  const sheet = layout === 'phone' && width !== 'page';
  useAppearance();
  useAddress();
  useEscape();
  useEffect(preloadPanels, []);
  return (
    <div
      className="shell"
      data-layout={layout}
      data-place-width={width ?? undefined}
      data-sheet={sheet ? height : undefined}
    >
      <a className="skip" href="#stage">
        {t('app.skip')}
      </a>
      <TopBar layout={layout} />
      <Work layout={layout} width={width} />
      {sheet ? <PhoneSheet height={height} onHeight={setHeight} /> : width === null && <TeardownStrip />}
      {dropping && (
        <div className="drop-veil">
          <p>{t('import.drop-here')}</p>
        </div>
      )}
      <UpdateNotice />
      <ShotClock />
      <Announcer />
    </div>
  );
}
