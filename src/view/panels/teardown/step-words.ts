/** What a step of the plan says: title, item number, count, tools in the person's units. */
import type { Step, Tool } from '../../../core/assembly';
import { findPart, findUnit, type Machine } from '../../../core/machine';
import type { Speech } from '../../bind';
import { inSentence, kindName, unitName } from '../common/names';

const sameSet = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((id) => b.includes(id));

/** The name that the machine gives to units that leave together; null where it gives none. */
export function setName(speech: Speech, machine: Machine, unitIds: readonly string[]): string | null {
  const set = Object.entries(machine.setNames).find(([, ids]) => sameSet(ids, unitIds));
  return set !== undefined && speech.has(`set.${set[0]}.name`) ? speech.t(`set.${set[0]}.name`) : null;
}

/** Title of a step: the unit's name, the set's name where one is given for units that leave together. */
export function stepTitle(speech: Speech, machine: Machine, step: Step): string {
  const { t } = speech;
  if (step.kind === 'drain')
    return t('step.drain', { what: inSentence(unitName(speech, machine, step.unitIds[0] ?? '')) });
  if (step.kind === 'support') {
    const support = step.supports[0];
    return support === undefined
      ? t('step.support')
      : t(`support.${support.kind}`, { what: inSentence(unitName(speech, machine, support.what)) });
  }
  const named = setName(speech, machine, step.unitIds);
  if (named !== null) return named;
  if (step.unitIds.length === 1) return unitName(speech, machine, step.unitIds[0]!);
  // Like parts that leave together are counted, not listed one by one.
  const counts = new Map<string, number>();
  for (const id of step.unitIds) {
    const unit = findUnit(machine, id);
    const name =
      unit?.partIds.length === 1
        ? kindName(speech, machine, findPart(machine, unit.partIds[0]!)!.kind)
        : unitName(speech, machine, id);
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  const names = [...counts].map(([name, count], i) => {
    const shown = i === 0 ? name : inSentence(name);
    return count === 1 || counts.size === 1 ? shown : t('step.several', { name: shown, count });
  });
  return names.length <= 3
    ? new Intl.ListFormat(speech.language, { type: 'conjunction' }).format(names)
    : t('step.and-more', { name: names[0]!, count: names.length - 1 });
}

/** Part ids that a step moves. */
export const stepParts = (machine: Machine, step: Step): readonly string[] =>
  step.unitIds.flatMap((id) => findUnit(machine, id)?.partIds ?? (findPart(machine, id) ? [id] : []));

/** Item number of the first part that a step moves; null for steps that move none. */
export function stepItem(machine: Machine, step: Step): number | null {
  const first = stepParts(machine, step)[0];
  const kind = first === undefined ? undefined : findPart(machine, first)?.kind;
  return kind === undefined ? null : (machine.kinds[kind]?.item ?? null);
}

const INCH_m = 0.0254;

/** Nearest sixteenth of an inch as a reduced fraction, for a metric wrench size shown in US units. */
export function inchFraction(size_m: number): string {
  const sixteenths = Math.round((16 * size_m) / INCH_m);
  const whole = Math.floor(sixteenths / 16);
  let top = sixteenths % 16;
  let bottom = 16;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

/** A tool with its size. Metric fasteners take metric wrenches, so US units add the inch beside the millimetre. */
export function toolText(speech: Speech, tool: Tool): string {
  const { t, quantity, units } = speech;
  const millimetres = `${new Intl.NumberFormat(speech.language).format(Math.round(tool.size_m * 1e4) / 10)}\u202fmm`;
  const size =
    tool.size_m === 0
      ? ''
      : units === 'us'
        ? t('tool.size-us', { size: millimetres, inch: inchFraction(tool.size_m) })
        : millimetres;
  const spoken = t(`tool.${tool.kind}`, { size, drive: tool.drive }).trim();
  const base = spoken.charAt(0).toLocaleUpperCase() + spoken.slice(1);
  return tool.extension_m > 0
    ? t('tool.with-extension', { tool: base, reach: quantity(tool.extension_m, 'length-small', 2) })
    : base;
}

/** Work time in minutes, from an hour on in hours and minutes. */
export function workTime({ t }: Speech, time_s: number): string {
  const minutes = Math.max(1, Math.round(time_s / 60));
  return minutes < 60
    ? t('teardown.minutes', { minutes })
    : t('teardown.hours', { hours: Math.floor(minutes / 60), minutes: minutes % 60 });
}

/** How many alike a step moves, where its title names one kind only; 1 elsewhere. */
export function alikeCount(machine: Machine, step: Step): number {
  const parts = stepParts(machine, step);
  const kinds = new Set(parts.map((id) => findPart(machine, id)?.kind));
  return kinds.size === 1 ? parts.length : 1;
}
