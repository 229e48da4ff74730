/** What a job says: its own texts, core's messages with names and units put in, numbers with theirs. */
import type { Plan, Step } from '../../../core/assembly';
import {
  type JobSheet,
  type SheetCaution,
  type SheetField,
  type SheetLift,
  type SheetNumber,
  type SheetStep,
  type Text,
  textIn,
} from '../../../core/jobs';
import { fromShown, type Message, type Quantity, toShown } from '../../../core/kernel';
import { findPart, type Machine } from '../../../core/machine';
import type { Speech } from '../../bind';
import { inSentence, kindName, sayAbout, unitName } from '../common/names';
import { alikeCount, setName, stepTitle } from '../teardown/step-words';
import { typedNumber } from './typed-number';

export const ownText = (speech: Speech, text: Text): string => textIn(text, speech.language);

const isMessage = (label: Text | Message): label is Message => typeof label === 'object' && 'key' in label;

/** A field that asks for the manual's value, without saying so in its label. */
export const asksManual = (field: SheetField): boolean => field.fromManual && !isMessage(field.label);

export const fieldLabel = (speech: Speech, machine: Machine, field: SheetField): string =>
  isMessage(field.label) ? sayAbout(speech, machine, field.label as Message) : ownText(speech, field.label);

/** A message about fields and units of the sheet. */
export function sayJob(speech: Speech, machine: Machine, sheet: JobSheet, message: Message): string {
  const id = message.params?.['field'];
  const field = sheet.fields.find((f) => f.id === id);
  if (field === undefined) return sayAbout(speech, machine, message);
  return speech.t(message.key, { ...message.params, field: fieldLabel(speech, machine, field) });
}

/** What the words of a sheet need of it. */
interface Told {
  readonly machine: Machine;
  readonly plan: Plan | null;
  readonly massOf: (unitId: string) => number;
}

/** Units that leave together, by the heaviest of them. */
function unitsName(speech: Speech, { machine, massOf }: Told, unitIds: readonly string[]): string {
  const named = setName(speech, machine, unitIds);
  if (named !== null) return named;
  const parts = unitIds.map((id) => machine.units.find((u) => u.id === id)?.partIds ?? []);
  const kinds = new Set(parts.flat().map((id) => findPart(machine, id)?.kind ?? ''));
  const [kind] = kinds;
  if (unitIds.length > 1 && kinds.size === 1 && kind !== undefined)
    return speech.t('jobs.each-of', { name: kindName(speech, machine, kind), count: unitIds.length });
  const names = [
    ...new Set(
      [...unitIds]
        .sort((a, b) => massOf(b) - massOf(a))
        .map((id, i) =>
          i === 0 ? unitName(speech, machine, id) : inSentence(unitName(speech, machine, id)),
        ),
    ),
  ];
  return names.length <= 2
    ? new Intl.ListFormat(speech.language).format(names)
    : speech.t('jobs.with-more', { name: names[0]!, count: names.length - 1 });
}

/** What to do in a step: the job's own words, or what the planner found, named as the teardown names it. */
export function stepText(speech: Speech, told: Told, step: SheetStep): string {
  if (step.text !== null) return ownText(speech, step.text);
  if (step.what === null) return '';
  const { machine, plan } = told;
  const planned = step.planStep === null ? undefined : plan?.steps[step.planStep];
  if (planned === undefined || planned.kind === 'support' || planned.kind === 'drain')
    return sayAbout(speech, machine, step.what);
  return speech.t(step.what.key, { part: inSentence(leavingName(speech, told, planned)) });
}

function leavingName(speech: Speech, told: Told, planned: Step): string {
  const count = alikeCount(told.machine, planned);
  const name = stepTitle(speech, told.machine, planned);
  if (count > 1) return speech.t('jobs.several', { name, count });
  return planned.unitIds.length > 2 ? unitsName(speech, told, planned.unitIds) : name;
}

export const cautionText = (speech: Speech, caution: SheetCaution): string =>
  caution.text !== null ? ownText(speech, caution.text) : speech.t(`caution.${caution.id ?? ''}`);

/** Hours are read as hours; everything else in the person's units. */
interface Shown {
  readonly quantity: Quantity;
  readonly factor: number;
}

const HOUR_S = 3600;
const shownAs = (quantity: Quantity): Shown =>
  quantity === 'time' ? { quantity: 'hours', factor: 1 / HOUR_S } : { quantity, factor: 1 };

/** Figures of a computed number: lives and stiffnesses are estimates, sizes are not. */
const FIGURES: Readonly<Partial<Record<Quantity, number>>> = { time: 3 };

export function numberText(speech: Speech, n: SheetNumber): string {
  // some numbers are a statement, made by their name alone; others wait for fields
  if (n.value === null) return n.verdict === undefined ? '' : '–';
  const { quantity, factor } = shownAs(n.quantity);
  const figures = FIGURES[n.quantity];
  if (typeof n.value === 'number') return speech.quantity(n.value * factor, quantity, figures);
  const [from, to] = n.value;
  return speech.t('jobs.from-to', {
    from: speech.number(from * factor, quantity, figures),
    to: speech.quantity(to * factor, quantity, figures),
  });
}

const trimmed = (value: number): string => String(Number(value.toPrecision(7)));

/** What stands in an input for a value in SI; the inverse of `fieldValue`. */
export function fieldShown(speech: Speech, field: SheetField, si: number): string {
  const { quantity, factor } = shownAs(field.quantity ?? 'plain');
  return trimmed(toShown(si * factor, quantity, speech.units));
}

/** The SI value of what a person typed; null where it is no number. */
export function fieldValue(speech: Speech, field: SheetField, typed: string): number | null {
  const value = typedNumber(typed);
  if (value === null) return null;
  const { quantity, factor } = shownAs(field.quantity ?? 'plain');
  const si = fromShown(value, quantity, speech.units) / factor;
  return Number.isFinite(si) ? si : null;
}

export const fieldSymbol = (speech: Speech, field: SheetField): string =>
  field.quantity === null ? '' : speech.symbol(shownAs(field.quantity).quantity);

/** Limits with all their figures: a bearing seat's band is hundredths wide. */
export function limitText(speech: Speech, field: SheetField): string | null {
  const { min, max } = field;
  if (min === null && max === null) return null;
  const { quantity, factor } = shownAs(field.quantity ?? 'plain');
  const format = new Intl.NumberFormat(speech.language, { maximumSignificantDigits: 6 });
  const say = (si: number): string => format.format(toShown(si * factor, quantity, speech.units));
  const unit = speech.symbol(quantity);
  const with_ = (text: string): string => (unit === '' ? text : `${text}\u202f${unit}`);
  if (min !== null && max !== null)
    return min === max
      ? speech.t('jobs.limit.exact', { value: with_(say(min)) })
      : speech.t('jobs.from-to', { from: say(min), to: with_(say(max)) });
  if (max !== null) return speech.t('jobs.limit.most', { value: with_(say(max)) });
  // that a length is not below nothing needs no words
  return min === 0 ? null : speech.t('jobs.limit.least', { value: with_(say(min!)) });
}

/** A filled field in words; empty where nothing was entered. */
export function valueText(
  speech: Speech,
  field: SheetField,
  value: number | string | boolean | undefined,
): string {
  if (value === undefined || value === '') return '';
  if (typeof value === 'boolean') return speech.t(value ? 'jobs.yes' : 'jobs.no');
  if (field.type === 'choice') {
    const choice = field.choices.find((c) => c.id === value);
    return choice === undefined ? String(value) : ownText(speech, choice.label);
  }
  if (typeof value === 'string') return value;
  const symbol = fieldSymbol(speech, field);
  const shown = fieldShown(speech, field, value);
  return symbol === '' ? shown : `${shown}\u202f${symbol}`;
}

/** What hangs on the hook: copies of one thing go one by one. */
export const liftName = (speech: Speech, told: Told, lift: SheetLift): string =>
  unitsName(speech, told, lift.unitIds);

/** Names of what a plan takes off, fasteners apart, the heaviest first. */
export function comesOff(speech: Speech, told: Told): readonly string[] {
  const { machine, plan } = told;
  if (plan === null) return [];
  const isGroup = (id: string): boolean => machine.units.find((u) => u.id === id)?.group != null;
  return plan.steps
    .filter((s) => s.kind === 'remove' && !s.unitIds.every(isGroup))
    .sort((a, b) => b.mass_kg - a.mass_kg)
    .map((s) => leavingName(speech, told, s));
}

export const itemName = (speech: Speech, machine: Machine, kindId: string): string =>
  kindName(speech, machine, kindId);

export const dateText = (speech: Speech, at_ms: number): string =>
  new Intl.DateTimeFormat(speech.language, { dateStyle: 'medium', timeStyle: 'short' }).format(at_ms);

/** Vibrations a minute with their symbol. */
export const rateText = (speech: Speech, per_minute: number): string =>
  speech.quantity(per_minute / 60, 'vibration-rate');

/** Name of a file, from a title. */
export const fileName = (jobId: string, at_ms: number, ending: string): string =>
  `${jobId}-${new Date(at_ms).toISOString().slice(0, 10)}.${ending}`;
