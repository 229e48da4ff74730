/** The sheet at the foot of a phone: steps or the open place, parts and panels, in three heights by drag or by button. */
import { type PointerEvent, useRef, useState } from 'react';
import type { AppState } from '../../../store';
import { useApp, useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { partName } from '../common/names';
import { PartsList } from '../parts/PartsList';
import { PlaceContent } from '../places/PlaceContent';
import { TeardownStrip } from '../teardown/TeardownStrip';
import { StageLegend } from '../views/StageLegend';
import { PanelContent, PANELS } from './SidePanel';

export type SheetHeight = 'low' | 'half' | 'full';
const HEIGHTS: readonly SheetHeight[] = ['low', 'half', 'full'];

const TABS = ['steps', 'parts', ...PANELS] as const;
type Tab = (typeof TABS)[number];

const tabOf = (s: AppState): Tab => (s.sheet === 'none' ? 'steps' : s.sheet === 'parts' ? 'parts' : s.panel);

interface Props {
  readonly height: SheetHeight;
  readonly onHeight: (height: SheetHeight) => void;
}

export function PhoneSheet({ height, onHeight }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const tab = useApp(tabOf);
  const place = useApp((s) => s.route.place);
  const machine = useApp((s) => s.document?.machine);
  const selected = useApp((s) => s.selectedPart);
  const from = useRef<number | null>(null);
  const [drag, setDrag] = useState(0);
  const step = (by: number): void => {
    const next = HEIGHTS[HEIGHTS.indexOf(height) + by];
    if (next !== undefined) onHeight(next);
  };
  const open = (next: Tab): void => {
    if (height === 'low') onHeight('half');
    if (next === 'steps') commands.openSheet('none');
    else if (next === 'parts') commands.openSheet('parts');
    else {
      commands.openPanel(next);
      commands.openSheet('panel');
    }
  };
  const release = (event: PointerEvent<HTMLDivElement>): void => {
    if (from.current === null) return;
    const moved = event.clientY - from.current;
    from.current = null;
    setDrag(0);
    if (Math.abs(moved) > 40) step(moved < 0 ? 1 : -1);
    if (moved < -260) onHeight('full');
    if (moved > 260) onHeight('low');
  };
  return (
    <section
      className="phone-sheet"
      data-height={height}
      aria-label={t('sheet.title')}
      style={drag === 0 ? undefined : { translate: `0 ${Math.max(0, drag)}px` }}
    >
      <div
        className="sheet-grip"
        onPointerDown={(event) => {
          if ((event.target as HTMLElement).closest('button') !== null) return;
          from.current = event.clientY;
          event.currentTarget.setPointerCapture(event.pointerId);
        }}
        onPointerMove={(event) => from.current !== null && setDrag(event.clientY - from.current)}
        onPointerUp={release}
        onPointerCancel={release}
      >
        <button
          type="button"
          className="button plain icon"
          aria-label={t('sheet.lower')}
          disabled={height === 'low'}
          onClick={() => step(-1)}
        >
          <Icon name="down" />
        </button>
        {machine !== undefined && selected !== null && tab !== 'part' ? (
          <button type="button" className="button plain sheet-selected" onClick={() => open('part')}>
            {partName(speech, machine, selected)}
          </button>
        ) : (
          <span className="sheet-bar" aria-hidden="true" />
        )}
        <button
          type="button"
          className="button plain icon"
          aria-label={t('sheet.raise')}
          disabled={height === 'full'}
          onClick={() => step(1)}
        >
          <Icon name="up" />
        </button>
      </div>
      <nav className="sheet-tabs" aria-label={t('panel.title')}>
        {TABS.map((name) => (
          <button
            key={name}
            type="button"
            aria-current={name === tab ? 'true' : undefined}
            onClick={() => open(name)}
          >
            {name === 'steps' && place !== 'bench' ? t(`places.${place}`) : t(`panel.${name}`)}
          </button>
        ))}
      </nav>
      <div className="sheet-body" key={tab}>
        {tab === 'steps' && <StageLegend onSheet />}
        {tab === 'steps' ? (
          place === 'bench' ? (
            <TeardownStrip tall />
          ) : (
            <PlaceContent />
          )
        ) : tab === 'parts' ? (
          <PartsList />
        ) : (
          <PanelContent panel={tab} />
        )}
      </div>
    </section>
  );
}
