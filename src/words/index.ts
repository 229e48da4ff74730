/**
 * The message catalogue: one folder a language, every text a person reads. To add a language: copy the folder `en`,
 * translate the values, add the loader below. Keys are flat and dotted; {{name}} stands for a parameter.
 */
import type { Catalogue } from './catalogue';

export type { Catalogue };

/** Languages on offer: own name, and how its texts are fetched. English is always there. */
export const LANGUAGES: Readonly<
  Record<string, { readonly name: string; readonly load: () => Promise<Catalogue> }>
> = {
  en: { name: 'English', load: () => import('./en').then((m) => m.default) },
  es: { name: 'Español', load: () => import('./es').then((m) => m.default) },
};
