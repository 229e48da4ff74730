/**
 * The Markdown of lesson and bank files, read into plain data. A subset: paragraphs, **strong**, *emphasis*, lists,
 * quoted blocks (shown as a note), links to parts, terms, steps and places of the app, and `{{values}}` computed when
 * shown. HTML, images, headings and links elsewhere are faults; nothing of a text is ever run or put into a page raw.
 */
import MarkdownIt, { type Token } from 'markdown-it';
import { type Message, message, printFound } from '../kernel';
import type { Block, Inline, LinkTarget, RichText } from './content';

export interface TextFault {
  readonly expected: Message;
  readonly found: string;
}

export interface ReadText {
  readonly rich: RichText;
  readonly faults: readonly TextFault[];
}

/** 'zero' knows nothing; what is switched on here is the whole subset. Nesting is bounded. */
const markdown = new MarkdownIt('zero', { html: false, linkify: false, typographer: false, maxNesting: 8 });
markdown.enable(['blockquote', 'list', 'paragraph', 'emphasis', 'link', 'escape', 'newline', 'text']);
// Links are judged below; refusing them here would turn a mistyped one into plain text unseen.
markdown.validateLink = () => true;
markdown.normalizeLink = (url) => url;

/** Signs of what the subset leaves out, which would otherwise stand in the text as typed. */
const LEFT_OUT: readonly (readonly [RegExp, string])[] = [
  [/<\/?[a-zA-Z!?]/, 'text.expected.no-html'],
  [/!\[/, 'text.expected.no-images'],
  [/^ {0,3}#{1,6} /m, 'text.expected.no-headings'],
  [/`/, 'text.expected.no-code'],
];

const VALUE = /\{\{\s*([^{}|]*?)\s*(?:\|\s*(\d)\s*)?\}\}/g;
/** Said in the fault's words, where the catalogue's own marks would swallow them. */
const BRACES = { open: '{{', close: '}}' };
const VALUE_NAME = /^[a-z0-9]+([.\-_][A-Za-z0-9]+)*$/;
const ID = '[a-z0-9]+(?:-[a-z0-9]+)*';
const LINKS: readonly (readonly [RegExp, (m: RegExpExecArray) => LinkTarget])[] = [
  [new RegExp(`^part:(${ID}(?:/\\d\\d)?)$`), (m) => ({ to: 'part', ref: m[1]! })],
  [new RegExp(`^term:(${ID})$`), (m) => ({ to: 'term', id: m[1]! })],
  [new RegExp(`^step:(${ID})/(${ID})$`), (m) => ({ to: 'step', topic: m[1]!, step: m[2]! })],
  [new RegExp(`^go:(${ID}(?:/${ID})*)$`), (m) => ({ to: 'place', path: m[1]!.split('/') })],
];

/** Reads one text; what is wrong with it comes back beside what could be read. */
export function readText(text: string): ReadText {
  const faults: TextFault[] = [];
  for (const [sign, key] of LEFT_OUT) {
    const at = sign.exec(text);
    if (at !== null) faults.push({ expected: message(key), found: excerpt(text, at.index) });
  }
  const rich = blocks(new Cursor(markdown.parse(text, {})), null, faults);
  if (!hasWords(rich)) faults.push({ expected: message('text.expected.words'), found: printFound(text) });
  return { rich, faults };
}

/** Values, parts, terms, steps and places that a text names. */
export interface TextRefs {
  readonly values: readonly string[];
  readonly links: readonly LinkTarget[];
}

export function refsOf(rich: RichText): TextRefs {
  const values: string[] = [];
  const links: LinkTarget[] = [];
  const inline = (list: readonly Inline[]): void => {
    for (const each of list) {
      if (each.t === 'value') values.push(each.name);
      if (each.t === 'link') links.push(each.target);
      if (each.t === 'strong' || each.t === 'em' || each.t === 'link') inline(each.of);
    }
  };
  const visit = (list: readonly Block[]): void => {
    for (const block of list) {
      if (block.t === 'p') inline(block.of);
      else if (block.t === 'note') visit(block.of);
      else block.items.forEach(visit);
    }
  };
  visit(rich);
  return { values, links };
}

class Cursor {
  private at = 0;
  constructor(private readonly tokens: readonly Token[]) {}
  next(): Token | undefined {
    return this.tokens[this.at++];
  }
}

/** Blocks up to the token that closes them; null: to the end. */
function blocks(cursor: Cursor, close: string | null, faults: TextFault[]): Block[] {
  const out: Block[] = [];
  for (let token = cursor.next(); token !== undefined && token.type !== close; token = cursor.next()) {
    switch (token.type) {
      case 'paragraph_open':
        out.push({ t: 'p', of: paragraph(cursor, faults) });
        break;
      case 'blockquote_open':
        out.push({ t: 'note', of: blocks(cursor, 'blockquote_close', faults) });
        break;
      case 'bullet_list_open':
      case 'ordered_list_open':
        out.push({
          t: 'list',
          ordered: token.type === 'ordered_list_open',
          items: items(cursor, token.type.replace('open', 'close'), faults),
        });
        break;
      default:
        break;
    }
  }
  return out;
}

function items(cursor: Cursor, close: string, faults: TextFault[]): Block[][] {
  const out: Block[][] = [];
  for (let token = cursor.next(); token !== undefined && token.type !== close; token = cursor.next())
    if (token.type === 'list_item_open') out.push(blocks(cursor, 'list_item_close', faults));
  return out;
}

function paragraph(cursor: Cursor, faults: TextFault[]): Inline[] {
  const out: Inline[] = [];
  for (
    let token = cursor.next();
    token !== undefined && token.type !== 'paragraph_close';
    token = cursor.next()
  )
    if (token.type === 'inline') out.push(...inlines(new Cursor(token.children ?? []), null, faults));
  return out;
}

function inlines(cursor: Cursor, close: string | null, faults: TextFault[]): Inline[] {
  const out: Inline[] = [];
  for (let token = cursor.next(); token !== undefined && token.type !== close; token = cursor.next()) {
    switch (token.type) {
      case 'strong_open':
        out.push({ t: 'strong', of: inlines(cursor, 'strong_close', faults) });
        break;
      case 'em_open':
        out.push({ t: 'em', of: inlines(cursor, 'em_close', faults) });
        break;
      case 'link_open': {
        const target = linkTarget(String(token.attrGet('href') ?? ''), faults);
        const of = inlines(cursor, 'link_close', faults);
        out.push(...(target === null ? of : [{ t: 'link' as const, target, of }]));
        break;
      }
      case 'hardbreak':
        out.push({ t: 'break' });
        break;
      case 'softbreak':
        out.push({ t: 'text', text: ' ' });
        break;
      default:
        out.push(...withValues(token.content, faults));
        break;
    }
  }
  return joined(out);
}

function linkTarget(href: string, faults: TextFault[]): LinkTarget | null {
  for (const [form, make] of LINKS) {
    const found = form.exec(href);
    if (found !== null) return make(found);
  }
  faults.push({ expected: message('text.expected.link'), found: printFound(href) });
  return null;
}

/** Splits a run of text at its values. */
function withValues(text: string, faults: TextFault[]): Inline[] {
  const out: Inline[] = [];
  let from = 0;
  for (const found of text.matchAll(VALUE)) {
    if (found.index > from) out.push({ t: 'text', text: text.slice(from, found.index) });
    from = found.index + found[0].length;
    const name = found[1] ?? '';
    if (!VALUE_NAME.test(name))
      faults.push({ expected: message('text.expected.value-name', BRACES), found: printFound(found[0]) });
    out.push({ t: 'value', name, ...(found[2] === undefined ? {} : { figures: Number(found[2]) }) });
  }
  const rest = text.slice(from);
  if (/\{\{|\}\}/.test(rest))
    faults.push({
      expected: message('text.expected.value-name', BRACES),
      found: excerpt(rest, rest.search(/\{\{|\}\}/)),
    });
  if (rest !== '') out.push({ t: 'text', text: rest });
  return out;
}

/** Neighbouring runs of text as one, so that equal texts read into equal data. */
function joined(list: readonly Inline[]): Inline[] {
  const out: Inline[] = [];
  for (const each of list) {
    const last = out.at(-1);
    if (each.t === 'text' && last?.t === 'text')
      out[out.length - 1] = { t: 'text', text: last.text + each.text };
    else out.push(each);
  }
  return out;
}

const hasWords = (list: readonly Block[]): boolean =>
  list.some((block) =>
    block.t === 'p'
      ? block.of.some((each) => each.t !== 'text' || each.text.trim() !== '')
      : block.t === 'note'
        ? hasWords(block.of)
        : block.items.some(hasWords),
  );

const excerpt = (text: string, at: number): string => printFound(text.slice(at, at + 24));
