/**
 * The machine as a line drawing in the stage's place, where the browser cannot draw in 3-D: the named view, exploded or
 * taken down as the state says, hidden and ghosted parts as they are. A press on a part or a balloon selects it; the parts
 * list does the same by keyboard. Fills its parent, which must be positioned.
 */
import { type MouseEvent, useEffect, useMemo, useRef, useState } from 'react';
import { drawingSvg, drawSheet, type SheetDrawing } from '../../../core/exports';
import { useApp, useAppStore, useCommands, useSpeech } from '../../bind';
import { kindName } from '../common/names';
import { inSlices } from './in-slices';
import { requestOfState } from './sheet-request';
import { viewText } from './sheet-words';
import './exports.css';

interface Props {
  /** Called when a drawing stands, and with what is told where it could not be made. */
  readonly onDrawn?: (fault: string | null) => void;
}

/** Rest after a change before the drawing is made anew, ms. */
const REST_MS = 150;

export default function DrawingStage({ onDrawn }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const store = useAppStore();
  const commands = useCommands();
  const subject = useSubject();
  const selected = useApp((s) => s.selectedPart);
  const [made, setMade] = useState<{ readonly sheet: SheetDrawing; readonly svg: string } | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const told = useRef(onDrawn);
  useEffect(() => {
    told.current = onDrawn;
  });
  useEffect(() => {
    const stop = new AbortController();
    const draw = async (): Promise<void> => {
      const state = store.getState();
      const { document } = state;
      if (document === null) return;
      try {
        const work = drawSheet(requestOfState(speech, document, state));
        const sheet = await inSlices(work, () => undefined, stop.signal);
        if (sheet === null || stop.signal.aborted) return;
        const view = viewText(speech, { ...state, section: { ...state.section, on: false } });
        const { name } = document.machine;
        const svg = drawingSvg(sheet, {
          title: t('export.sheet.title', { name, view }),
          description: t('export.sheet.description', { name, view, count: sheet.items.length }),
          nameOf: (kind) => kindName(speech, document.machine, kind),
        });
        setMade({ sheet, svg });
        setFault(null);
        told.current?.(null);
      } catch (error) {
        const reason = t('export.fault.broken', { reason: (error as Error).message });
        setFault(reason);
        told.current?.(reason);
      }
    };
    const timer = setTimeout(() => void draw(), REST_MS);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [subject, speech, store, t]);

  const choose = (event: MouseEvent<HTMLDivElement>): void => {
    if (made === null) return;
    const balloon = (event.target as Element).closest('.balloon')?.getAttribute('data-part');
    commands.select(balloon ?? partAt(event, made.sheet));
  };
  const html = useMemo(() => ({ __html: made?.svg ?? '' }), [made]);
  return (
    <div
      className="drawing-stage"
      data-testid="drawing-stage"
      role="group"
      aria-label={t('export.stage.label')}
    >
      {selected !== null && (
        <style>{`.drawing-stage #drawing [data-part=${JSON.stringify(selected)}] { stroke: #b34700; stroke-width: 0.6px; }`}</style>
      )}
      {made === null ? (
        <p className="drawing-stage-wait" role="status">
          {fault ?? t('export.stage.drawing')}
        </p>
      ) : (
        // The text is made by core and escaped there.
        <div style={{ display: 'contents' }} onClick={choose} dangerouslySetInnerHTML={html} />
      )}
    </div>
  );
}

/** The part that is seen where the pointer is; null beside the machine. */
function partAt(event: MouseEvent<HTMLDivElement>, { drawing, area, px_mm }: SheetDrawing): string | null {
  const svg = event.currentTarget.querySelector('svg');
  const toScreen = svg?.getScreenCTM();
  if (toScreen === null || toScreen === undefined) return null;
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(toScreen.inverse());
  const x = Math.floor((at.x - area.x) / px_mm);
  const y = Math.floor((at.y - area.y) / px_mm);
  if (x < 0 || y < 0 || x >= drawing.width || y >= drawing.height) return null;
  return drawing.parts[drawing.owner[y * drawing.width + x]!]?.id ?? null;
}

/** Changes when the drawing must be made anew. */
function useSubject(): object {
  const document = useApp((s) => s.document);
  const view = useApp((s) => s.cameraWish.view);
  const explode = useApp((s) => s.explode);
  const teardown = useApp((s) => s.teardown);
  const hidden = useApp((s) => s.hiddenParts);
  const ghosted = useApp((s) => s.ghostedParts);
  const isolated = useApp((s) => s.isolatedParts);
  const context = useApp((s) => s.showContext);
  const options = useApp((s) => s.optionsOn);
  const balloons = useApp((s) => s.balloons);
  return useMemo(
    () => ({ document, view, explode, teardown, hidden, ghosted, isolated, context, options, balloons }),
    [document, view, explode, teardown, hidden, ghosted, isolated, context, options, balloons],
  );
}
