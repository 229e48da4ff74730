/** Turns what core says (rich text, phrases, names, values) into words: as plain text here, as elements in Said. */
import { useMemo } from 'react';
import { findPart, findUnit, type Machine } from '../../../core/machine';
import {
  type Content,
  type ContentParam,
  type Inline,
  type NamedValue,
  partsNamed,
  type RichText,
} from '../../../core/quiz';
import { selectValues } from '../../../store';
import { type Speech, useApp, useSpeech } from '../../bind';
import { inSentence, kindName, partName, unitName } from '../common/names';

export interface Teller {
  readonly speech: Speech;
  readonly machine: Machine | null;
  /** Plain words of anything, for names of controls, speech and paper. */
  text(content: Content): string;
  rich(rich: RichText): string;
  value(name: string, figures?: number): string;
  /** What a named value is in SI; undefined for words and for names that the model does not give. */
  si(name: string): number | undefined;
  /** Name of a part, unit, group, pattern or kind. */
  name(ref: string): string;
}

/** Name of whatever a lesson or question calls a part. */
export function refName(speech: Speech, machine: Machine, ref: string): string {
  if (findUnit(machine, ref) !== undefined) return unitName(speech, machine, ref);
  if (findPart(machine, ref) !== undefined) return partName(speech, machine, ref);
  if (machine.kinds[ref] !== undefined) return kindName(speech, machine, ref);
  // A pattern stands for its copies: their kind's name.
  const first = partsNamed(machine, ref)[0];
  const kind = first === undefined ? undefined : findPart(machine, first)?.kind;
  if (kind === undefined) return speech.has(`fluid.${ref}`) ? speech.t(`fluid.${ref}`) : ref;
  return kindName(speech, machine, kind);
}

export function makeTeller(
  speech: Speech,
  machine: Machine | null,
  values: ReadonlyMap<string, NamedValue> | null,
): Teller {
  const name = (ref: string): string => (machine === null ? ref : refName(speech, machine, ref));
  const value = (key: string, figures?: number): string => {
    const found = values?.get(key);
    if (found === undefined) return '–';
    return 'text' in found ? found.text : speech.quantity(found.si, found.quantity, figures);
  };
  const si = (key: string): number | undefined => {
    const found = values?.get(key);
    return found !== undefined && 'si' in found ? found.si : undefined;
  };
  const inline = (each: Inline): string =>
    each.t === 'text'
      ? each.text
      : each.t === 'value'
        ? value(each.name, each.figures)
        : each.t === 'break'
          ? ' '
          : each.of.map(inline).join('');
  const rich = (blocks: RichText): string =>
    blocks
      .map((block) =>
        block.t === 'p'
          ? block.of.map(inline).join('')
          : block.t === 'note'
            ? rich(block.of)
            : block.items.map(rich).join('\n'),
      )
      .join('\n');
  // A name inside a sentence has a small first letter, alone a large one.
  const param = (p: ContentParam): string | number => {
    if (typeof p === 'string' || typeof p === 'number') return p;
    if (Array.isArray(p))
      return new Intl.ListFormat(speech.language, { type: 'conjunction' }).format(
        (p as readonly Content[]).map((each) => String(param(each))),
      );
    const content = p as Content;
    return 'part' in content ? inSentence(name(content.part)) : text(content);
  };
  const text = (content: Content): string => {
    if ('rich' in content) return rich(content.rich);
    if ('part' in content) return name(content.part);
    if ('fault' in content) return speech.t(`fault-bench.fault.${content.fault}`);
    if ('value' in content) return value(content.value);
    if ('si' in content) return speech.quantity(content.si, content.quantity, content.figures);
    const params = Object.fromEntries(
      Object.entries(content.params ?? {}).map(([key, each]) => [key, param(each)]),
    );
    const spoken = speech.t(content.phrase, params);
    return spoken.charAt(0).toLocaleUpperCase(speech.language) + spoken.slice(1);
  };
  return { speech, machine, text, rich, value, si, name };
}

export function useTeller(): Teller {
  const speech = useSpeech();
  const machine = useApp((s) => s.document?.machine ?? null);
  const values = useApp(selectValues);
  return useMemo(() => makeTeller(speech, machine, values), [speech, machine, values]);
}
