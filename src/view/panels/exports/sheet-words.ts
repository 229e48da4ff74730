/** Words of the drawing sheet in the person's language and units, and names of files. */
import type { SheetDrawing, SheetWords } from '../../../core/exports';
import type { MachineDocument } from '../../../core/document';
import { findPart } from '../../../core/machine';
import type { AppState } from '../../../store';
import type { Speech } from '../../bind';
import { kindName } from '../common/names';

/** Today as a person writes it. */
export const today = ({ language }: Speech): string =>
  new Intl.DateTimeFormat(language, { dateStyle: 'medium' }).format(new Date());

type ViewState = Pick<
  AppState,
  'cameraWish' | 'explode' | 'section' | 'isolatedParts' | 'teardown' | 'selectedPart'
>;

/** What the view is: where from, how far apart, cut where. */
export function viewText(speech: Speech, state: ViewState): string {
  const { t, quantity } = speech;
  const { cameraWish, explode, section, teardown, isolatedParts } = state;
  return [
    t(`view-name.${cameraWish.view}`),
    ...(explode > 0.02 ? [t('export.view.apart', { share: quantity(explode, 'share') })] : []),
    ...(teardown.open && teardown.step >= 0 ? [t('export.view.step', { step: teardown.step + 1 })] : []),
    ...(section.on
      ? [
          t('export.view.section', {
            axis: t(`axis.${section.axis}`),
            at: quantity(section.offset_m, 'length-small'),
          }),
        ]
      : []),
    ...(isolatedParts === null ? [] : [t('export.view.only', { count: isolatedParts.size })]),
  ].join(', ');
}

/** `alder-one-home-section-x.svg`: plain letters, so that every system takes it. */
export function pictureName(machineId: string, state: ViewState, ending: string): string {
  const { cameraWish, explode, section, teardown } = state;
  return `${[
    machineId,
    cameraWish.view,
    ...(explode > 0.02 ? ['exploded'] : []),
    ...(teardown.open && teardown.step >= 0 ? [`step-${teardown.step + 1}`] : []),
    ...(section.on ? [`section-${section.axis}`] : []),
  ].join('-')}.${ending}`;
}

export function sheetWords(
  speech: Speech,
  document: MachineDocument,
  state: ViewState,
  sheet: SheetDrawing,
): SheetWords {
  const { t, quantity, units } = speech;
  const { machine, masses } = document;
  const view = viewText(speech, state);
  const bar = quantity(
    sheet.bar.length_m,
    units === 'si' && sheet.bar.length_m < 0.1 ? 'length-small' : 'length',
  );
  const selected = state.selectedPart === null ? undefined : findPart(machine, state.selectedPart);
  return {
    language: speech.language,
    title: t('export.sheet.title', { name: machine.name, view }),
    description: t('export.sheet.description', {
      name: machine.name,
      view,
      count: sheet.items.length,
    }),
    nameOf: (kind) => kindName(speech, machine, kind),
    massOf: (kind) => quantity(masses[kind]?.mass_kg, 'mass', 3),
    head: {
      list: t('parts.title'),
      item: t('export.sheet.item'),
      name: t('export.sheet.name'),
      count: t('export.sheet.count'),
      mass: t('export.sheet.mass'),
    },
    machine: [t('title-block.machine'), machine.name],
    fields: [
      [t('title-block.view'), view],
      [t('title-block.mass'), quantity(sheet.mass_kg, 'mass', 4)],
      [t('export.sheet.yard'), machine.place === '' ? '–' : machine.place],
      [t('export.sheet.date'), today(speech)],
      [t('title-block.units'), t(units === 'si' ? 'title-block.units-si' : 'title-block.units-us')],
      [t('export.sheet.selected'), selected === undefined ? '–' : kindName(speech, machine, selected.kind)],
    ],
    bar: { length: bar, note: t('export.sheet.bar') },
    notes: [
      ...(sheet.without > 0 && sheet.items.length > 0
        ? [t('export.sheet.without', { count: sheet.without })]
        : []),
      ...(sheet.ghosts ? [t('export.sheet.ghosts')] : []),
      t('export.not-real'),
    ],
  };
}
