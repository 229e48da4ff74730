/**
 * What a question or a lesson says, as data: nothing here is a sentence of core. Texts of a file come as rich text in
 * the file's language; generated questions come as catalogue keys; names and numbers are looked up when shown.
 */
import type { Quantity } from '../kernel';

/** Where a link of a text leads. `place` is an address of the app: a place and what is open in it. */
export type LinkTarget =
  | { readonly to: 'part'; readonly ref: string }
  | { readonly to: 'term'; readonly id: string }
  | { readonly to: 'step'; readonly topic: string; readonly step: string }
  | { readonly to: 'place'; readonly path: readonly string[] };

/** A stretch of text inside a paragraph. */
export type Inline =
  | { readonly t: 'text'; readonly text: string }
  | { readonly t: 'strong' | 'em'; readonly of: readonly Inline[] }
  | { readonly t: 'link'; readonly target: LinkTarget; readonly of: readonly Inline[] }
  /** A named value, computed from the model when it is shown. */
  | { readonly t: 'value'; readonly name: string; readonly figures?: number }
  | { readonly t: 'break' };

/** A block of text. `note` is set off from the rest (a quoted block of the file). */
export type Block =
  | { readonly t: 'p'; readonly of: readonly Inline[] }
  | { readonly t: 'list'; readonly ordered: boolean; readonly items: readonly (readonly Block[])[] }
  | { readonly t: 'note'; readonly of: readonly Block[] };

export type RichText = readonly Block[];

/** Something to be shown or spoken. */
export type Content =
  | { readonly rich: RichText }
  /** A key of the catalogue with its parameters. */
  | { readonly phrase: string; readonly params?: Readonly<Record<string, ContentParam>> }
  /** The name of a part, unit, group, pattern or kind of the machine. */
  | { readonly part: string }
  /** The name of a fault of the machine's fault list. */
  | { readonly fault: string }
  /** A named value, computed when shown. */
  | { readonly value: string }
  | { readonly si: number; readonly quantity: Quantity; readonly figures?: number };

export type ContentParam = string | number | Content | readonly Content[];
