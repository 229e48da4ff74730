/** What can be saved of the stage: line drawing, picture, model; each with what it holds, its size, progress and a way to stop. */
import { useMemo, useRef, useState } from 'react';
import { drawSheet, glbSize, machineGlb, sheetSvg } from '../../../core/exports';
import { findPart, isPresent } from '../../../core/machine';
import { type AppState, partLook, stagePicture } from '../../../store';
import { type Speech, useApp, useAppStore, useCommands, useSpeech } from '../../bind';
import { saveFile, saveText } from '../common/csv';
import { kindName, partName, unitName } from '../common/names';
import { inSlices } from './in-slices';
import { pictureCanvas } from './picture-canvas';
import { requestOfStage } from './sheet-request';
import { pictureName, sheetWords, today, viewText } from './sheet-words';
import './exports.css';

/** Pixels of a picture to a CSS pixel. */
const FINE = 2;

type GlbOf = 'machine' | 'shown' | 'family' | 'part';

export default function ShareMenu() {
  const speech = useSpeech();
  const { t } = speech;
  const store = useAppStore();
  const commands = useCommands();
  const [share, setShare] = useState<number | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [saved, setSaved] = useState<string | null>(null);
  const stop = useRef<AbortController | null>(null);
  const wait = share !== null;

  /** Runs one export: tells what was saved, or in words why it could not be. */
  const attempt = async (make: () => Promise<string | null> | string | null): Promise<void> => {
    setFault(null);
    setSaved(null);
    try {
      const file = await make();
      if (file === null) commands.announce('export.said.cancelled');
      else {
        setSaved(t('export.said.saved', { file }));
        commands.announce('export.said.saved', { file });
      }
    } catch (error) {
      const key = error instanceof Refusal ? error.message : 'export.fault.broken';
      setFault(t(key, { reason: (error as Error).message }));
    } finally {
      setShare(null);
      stop.current = null;
    }
  };

  const saveSvg = (): Promise<void> =>
    attempt(async () => {
      const state = store.getState();
      const { document } = state;
      const stage = stagePicture();
      if (document === null || stage === null) throw new Refusal('export.fault.stage');
      stop.current = new AbortController();
      setShare(0);
      commands.announce('export.said.working');
      const work = drawSheet(requestOfStage(speech, document, state, stage.moment()));
      const sheet = await inSlices(work, setShare, stop.current.signal);
      if (sheet === null) return null;
      const name = pictureName(document.machine.id, state, 'svg');
      saveText(name, sheetSvg(sheet, sheetWords(speech, document, state, sheet)), 'image/svg+xml');
      return name;
    });

  const savePng = (block: boolean): Promise<void> =>
    attempt(async () => {
      const state = store.getState();
      const { document } = state;
      const stage = stagePicture();
      if (document === null || stage === null) throw new Refusal('export.fault.stage');
      const frame = stage.frame(FINE);
      if (frame === null) throw new Refusal('export.fault.frame');
      await globalThis.document.fonts.ready;
      const canvas = pictureCanvas(
        frame,
        stage.moment(),
        stage.ink(),
        FINE,
        state.selectedPart,
        block ? pictureText(speech, state) : null,
      );
      const file = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
      if (file === null) throw new Refusal('export.fault.frame');
      const name = pictureName(document.machine.id, state, 'png');
      saveFile(name, file);
      return name;
    });

  const saveGlb = (of: GlbOf): Promise<void> =>
    attempt(() => {
      const state = store.getState();
      const { document } = state;
      if (document === null) throw new Refusal('export.fault.stage');
      const { machine } = document;
      const bytes = machineGlb({
        document,
        partIds: partsOf(of, state),
        names: {
          title: machine.name,
          kind: (kind) => kindName(speech, machine, kind),
          part: (id) => partName(speech, machine, id),
          unit: (id) => unitName(speech, machine, id),
          material: (material, finish) =>
            speech.has(`material.${material}`) ? `${t(`material.${material}`)} – ${finish}` : finish,
        },
      });
      const name = glbName(of, state);
      saveFile(name, new Blob([bytes], { type: 'model/gltf-binary' }));
      return name;
    });

  return (
    <div className="share-menu">
      <SvgPart busy={wait} onSave={() => void saveSvg()} />
      {share !== null && (
        <div className="share-progress">
          <progress max={1} value={share} aria-label={t('export.drawing')} />
          <span className="small mono">
            {t('export.drawing.share', { share: speech.quantity(Math.round(50 * share) / 50, 'share') })}
          </span>
          <button type="button" className="button" onClick={() => stop.current?.abort()}>
            {t('export.cancel')}
          </button>
        </div>
      )}
      <PngPart busy={wait} onSave={(block) => void savePng(block)} />
      <GlbPart busy={wait} onSave={(of) => void saveGlb(of)} />
      {fault !== null && (
        <p className="share-fault" role="alert">
          {fault}
        </p>
      )}
      {saved !== null && <p className="small">{saved}</p>}
    </div>
  );
}

/** A reason in words: the message is a key of the catalogue. */
class Refusal extends Error {}

function SvgPart({ busy, onSave }: { readonly busy: boolean; readonly onSave: () => void }) {
  const speech = useSpeech();
  const { t } = speech;
  const view = useView();
  const balloons = useApp((s) => s.balloons);
  return (
    <section>
      <h3>{t('export.svg.title')}</h3>
      <p className="small">{t('export.svg.holds', { view: viewText(speech, view) })}</p>
      {!balloons && <p className="small">{t('export.svg.no-balloons')}</p>}
      <button type="button" className="button" disabled={busy} onClick={onSave}>
        {t('export.svg.save')}
      </button>
    </section>
  );
}

function PngPart({ busy, onSave }: { readonly busy: boolean; readonly onSave: (block: boolean) => void }) {
  const { t } = useSpeech();
  const [block, setBlock] = useState(true);
  const moment = stagePicture()?.moment();
  return (
    <section>
      <h3>{t('export.png.title')}</h3>
      {moment !== undefined && (
        <p className="small">
          {t('export.png.holds', {
            width: Math.round(FINE * moment.width),
            height: Math.round(FINE * moment.height),
          })}
        </p>
      )}
      <label className="check">
        <input type="checkbox" checked={block} onChange={(event) => setBlock(event.currentTarget.checked)} />
        <span>{t('export.png.block')}</span>
      </label>
      <button type="button" className="button" disabled={busy} onClick={() => onSave(block)}>
        {t('export.png.save')}
      </button>
    </section>
  );
}

function GlbPart({ busy, onSave }: { readonly busy: boolean; readonly onSave: (of: GlbOf) => void }) {
  const speech = useSpeech();
  const { t } = speech;
  const store = useAppStore();
  const document = useApp((s) => s.document);
  const selected = useApp((s) => s.selectedPart);
  const shown = useShown();
  const [wish, setWish] = useState<GlbOf>('machine');
  const kind = document?.machine.kinds[findPart(document.machine, selected ?? '')?.kind ?? ''];
  const choices: readonly (readonly [GlbOf, string])[] = [
    ['machine', t('export.glb.machine')],
    ['shown', t('export.glb.shown')],
    ...(kind === undefined || document === null || selected === null
      ? []
      : ([
          ['family', t('export.glb.family', { name: t(`family.${kind.family}`) })],
          ['part', t('export.glb.part', { name: partName(speech, document.machine, selected) })],
        ] as const)),
  ];
  const of = choices.some(([value]) => value === wish) ? wish : 'machine';
  const { count, bytes } = useMemo(() => {
    if (document === null) return { count: 0, bytes: 0 };
    const partIds = partsOf(of, store.getState());
    return { count: partIds.length, bytes: glbSize({ document, partIds }) };
    // eslint-disable-next-line react-hooks/exhaustive-deps -- read anew when what is shown or selected changes
  }, [document, of, store, selected, shown]);
  return (
    <section>
      <h3>{t('export.glb.title')}</h3>
      <fieldset className="share-choices">
        <legend className="small">{t('export.glb.of')}</legend>
        {choices.map(([value, label]) => (
          <label key={value} className="check">
            <input type="radio" name="glb-of" checked={of === value} onChange={() => setWish(value)} />
            <span>{label}</span>
          </label>
        ))}
      </fieldset>
      <p className="small">{t('export.glb.holds', { count, size: sizeText(speech, bytes) })}</p>
      <button type="button" className="button" disabled={busy || count === 0} onClick={() => onSave(of)}>
        {t('export.glb.save')}
      </button>
    </section>
  );
}

/** The view of now, told again when it changes. */
function useView(): Parameters<typeof viewText>[1] {
  const cameraWish = useApp((s) => s.cameraWish);
  const explode = useApp((s) => s.explode);
  const section = useApp((s) => s.section);
  const teardown = useApp((s) => s.teardown);
  const isolatedParts = useApp((s) => s.isolatedParts);
  const selectedPart = useApp((s) => s.selectedPart);
  return { cameraWish, explode, section, teardown, isolatedParts, selectedPart };
}

/** A value that changes when what is shown changes. */
function useShown(): object {
  const hidden = useApp((s) => s.hiddenParts);
  const isolated = useApp((s) => s.isolatedParts);
  const options = useApp((s) => s.optionsOn);
  const context = useApp((s) => s.showContext);
  return useMemo(() => ({ hidden, isolated, options, context }), [hidden, isolated, options, context]);
}

function partsOf(of: GlbOf, state: AppState): readonly string[] {
  const { document, optionsOn, showContext, selectedPart } = state;
  const machine = document?.machine;
  if (machine === undefined) return [];
  const family = machine.kinds[findPart(machine, selectedPart ?? '')?.kind ?? '']?.family;
  return machine.parts
    .filter((part) => {
      if (of === 'part') return part.id === selectedPart;
      if (of === 'shown') return partLook(part, state) !== 'hidden';
      if (!isPresent(part, optionsOn, showContext)) return false;
      return of === 'machine' || machine.kinds[part.kind]?.family === family;
    })
    .map((part) => part.id);
}

function glbName(of: GlbOf, { document, selectedPart }: AppState): string {
  const machine = document?.machine;
  const family = machine?.kinds[findPart(machine, selectedPart ?? '')?.kind ?? '']?.family;
  const what =
    of === 'machine' ? [] : of === 'shown' ? ['shown'] : of === 'family' ? [family] : [selectedPart];
  return `${[machine?.id, ...what].join('-').replaceAll(/[^\w-]+/g, '-')}.glb`;
}

function sizeText({ t, number }: Speech, bytes: number): string {
  const mega = bytes >= 1e6;
  const size = number(mega ? bytes / 1e6 : bytes / 1e3, 'plain', 2);
  return t(mega ? 'export.size.mb' : 'export.size.kb', { size });
}

function pictureText(speech: Speech, state: AppState): Parameters<typeof pictureCanvas>[5] {
  const { t, quantity } = speech;
  const { document } = state;
  if (document === null) return null;
  let mass_kg = 0;
  for (const part of document.machine.parts)
    if (partLook(part, state) === 'solid') mass_kg += document.masses[part.kind]?.mass_kg ?? 0;
  return {
    machine: document.machine.name,
    fields: [
      [t('title-block.view'), viewText(speech, state)],
      [t('title-block.mass'), quantity(mass_kg, 'mass', 4)],
      [t('export.sheet.yard'), document.machine.place],
      [t('export.sheet.date'), today(speech)],
    ],
    note: t('export.not-real'),
  };
}
