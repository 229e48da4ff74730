/** Turns catalogue keys, core messages and SI numbers into what a person reads, in their language and units. */
import i18next from 'i18next';
import { useMemo } from 'react';
import {
  type Message,
  type MessageParam,
  type Quantity,
  toShown,
  type UnitSystem,
  UNITS,
} from '../../core/kernel';
import { type Catalogue, LANGUAGES } from '../../words';
import { useApp } from './context';

export { LANGUAGES };

/** Loads a language into i18next; English stays as the fallback for missing keys. */
export async function loadLanguage(language: string): Promise<void> {
  const load = LANGUAGES[language]?.load ?? LANGUAGES['en']!.load;
  const words: Catalogue = await load();
  if (!i18next.isInitialized) {
    await i18next.init({
      lng: language,
      fallbackLng: 'en',
      keySeparator: false,
      nsSeparator: false,
      interpolation: { escapeValue: false },
      resources: { [language]: { translation: words } },
    });
  } else if (!i18next.hasResourceBundle(language, 'translation')) {
    i18next.addResourceBundle(language, 'translation', words);
  }
  await i18next.changeLanguage(language);
}

/** The first of a browser's languages that is on offer; English where none is. */
export function languageFor(preferred: readonly string[]): string {
  for (const tag of preferred) {
    const language = tag.split('-')[0]!.toLowerCase();
    if (Object.hasOwn(LANGUAGES, language)) return language;
  }
  return 'en';
}

export type Params = Readonly<Record<string, MessageParam>>;

/** What components use to speak: words, numbers with units, and core's messages. */
export interface Speech {
  t(key: string, params?: Params): string;
  has(key: string): boolean;
  /** A core message with nested messages spoken. */
  say(message: Message): string;
  /** `1,234 kg`: number in the person's units with its symbol; a dash when there is no number. */
  quantity(si: number | null | undefined, quantity: Quantity, figures?: number): string;
  /** The number alone, and the symbol alone, for columns. */
  number(si: number | null | undefined, quantity: Quantity, figures?: number): string;
  symbol(quantity: Quantity): string;
  /** Name of a kind: catalogue, else the machine file's own name, else its id. */
  readonly language: string;
  readonly units: UnitSystem;
}

/** Speech for a language and a unit system, without React. */
export function makeSpeech(language: string, units: UnitSystem): Speech {
  const formats = new Map<number, Intl.NumberFormat>();
  const format = (value: number, figures: number): string => {
    let f = formats.get(figures);
    if (f === undefined) {
      f = new Intl.NumberFormat(language, { maximumSignificantDigits: figures });
      formats.set(figures, f);
    }
    // Whole numbers keep all their digits: 6,940 kg of machine is not 6,900 by accident of rounding.
    return f.format(value);
  };
  const number = (si: number | null | undefined, quantity: Quantity, figures?: number): string => {
    if (si === null || si === undefined || !Number.isFinite(si)) return '–';
    return format(toShown(si, quantity, units), figures ?? UNITS[quantity][units].figures);
  };
  const symbol = (quantity: Quantity): string => UNITS[quantity][units].symbol;
  const spoken = (param: MessageParam): string | number => {
    if (typeof param === 'number' || typeof param === 'string') return param;
    if (typeof param === 'boolean') return String(param);
    if (Array.isArray(param)) {
      const words = (param as readonly (string | Message)[]).map((p) => (typeof p === 'string' ? p : say(p)));
      return new Intl.ListFormat(language, { type: 'conjunction' }).format(words);
    }
    return say(param as Message);
  };
  const t = (key: string, params?: Params): string => {
    if (params === undefined) return i18next.t(key);
    const flat: Record<string, string | number> = {};
    for (const [name, value] of Object.entries(params)) flat[name] = spoken(value);
    return i18next.t(key, flat);
  };
  const say = (m: Message): string => t(m.key, m.params);
  return {
    t,
    say,
    number,
    symbol,
    language,
    units,
    has: (key) => i18next.exists(key),
    quantity: (si, q, figures) => {
      const n = number(si, q, figures);
      const s = symbol(q);
      return s === '' || n === '–' ? n : `${n}${s === '°' ? '' : '\u202f'}${s}`;
    },
  };
}

/** Speech in the person's language and units; changes everywhere at once when either changes. */
export function useSpeech(): Speech {
  const language = useApp((s) => s.settings.language);
  const units = useApp((s) => s.settings.units);
  return useMemo(() => makeSpeech(language, units), [language, units]);
}
