/**
 * Text of each page of a PDF as Chromium writes it: deflated streams, fonts with a ToUnicode map (ISO 32000-1, 9.10.3).
 * Only what such files hold is read; white space is dropped, since a line may be shown in several pieces.
 */
import { inflateSync } from 'node:zlib';

interface PdfObject {
  readonly head: string;
  readonly stream: string | null;
}

function objectsOf(bytes: Buffer): Map<number, PdfObject> {
  const raw = bytes.toString('latin1');
  const objects = new Map<number, PdfObject>();
  const start = /(\d+) 0 obj\b/g;
  for (let found = start.exec(raw); found !== null; found = start.exec(raw)) {
    const from = found.index + found[0].length;
    const streamAt = raw.indexOf('stream', from);
    const endAt = raw.indexOf('endobj', from);
    let head = raw.slice(from, endAt);
    let stream: string | null = null;
    let next = endAt;
    if (streamAt >= 0 && streamAt < endAt) {
      head = raw.slice(from, streamAt);
      const begin = streamAt + (raw[streamAt + 6] === '\r' ? 8 : 7);
      const length = Number(/\/Length (\d+)/.exec(head)?.[1] ?? 0);
      const data = bytes.subarray(begin, begin + length);
      stream = head.includes('/FlateDecode') ? inflateSync(data).toString('latin1') : data.toString('latin1');
      next = begin + length;
    }
    objects.set(Number(found[1]), { head, stream });
    start.lastIndex = next;
  }
  return objects;
}

const hexText = (hex: string): string =>
  (hex.match(/.{4}/g) ?? []).map((unit) => String.fromCharCode(parseInt(unit, 16))).join('');

/** Glyph number to text. */
function unicodeMap(cmap: string): Map<number, string> {
  const map = new Map<number, string>();
  for (const [, body] of cmap.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, glyph, text] of body!.matchAll(/<([0-9a-f]+)>\s*<([0-9a-f]+)>/gi))
      map.set(parseInt(glyph!, 16), hexText(text!));
  for (const [, body] of cmap.matchAll(/beginbfrange([\s\S]*?)endbfrange/g))
    for (const [, from, to, text] of body!.matchAll(/<([0-9a-f]+)>\s*<([0-9a-f]+)>\s*<([0-9a-f]+)>/gi)) {
      const first = parseInt(text!, 16);
      for (let g = parseInt(from!, 16); g <= parseInt(to!, 16); g++)
        map.set(g, String.fromCharCode(first + g - parseInt(from!, 16)));
    }
  return map;
}

/** Text of each page, without white space. */
export function pdfPages(bytes: Buffer): string[] {
  const objects = objectsOf(bytes);
  const maps = new Map<number, Map<number, string>>();
  const fontMap = (font: number): Map<number, string> => {
    let map = maps.get(font);
    if (map === undefined) {
      const unicode = Number(/\/ToUnicode (\d+) 0 R/.exec(objects.get(font)?.head ?? '')?.[1]);
      map = unicodeMap(objects.get(unicode)?.stream ?? '');
      maps.set(font, map);
    }
    return map;
  };
  /** A page is drawn from its own stream and from forms that it calls. */
  const textOf = (content: string, resources: string): string => {
    const fonts = new Map(
      [...resources.matchAll(/\/(F\d+) (\d+) 0 R/g)].map(([, name, font]) => [name, fontMap(Number(font))]),
    );
    let map: Map<number, string> | undefined;
    let out = '';
    const token = /\/(F\d+) [\d.]+ Tf|<([0-9A-Fa-f]+)>|\/(X\d+) Do/g;
    for (const [, font, hex, form] of content.matchAll(token)) {
      if (font !== undefined) map = fonts.get(font);
      else if (hex !== undefined)
        for (let i = 0; i + 4 <= hex.length; i += 4) out += map?.get(parseInt(hex.slice(i, i + 4), 16)) ?? '';
      else if (form !== undefined) {
        const number = Number(new RegExp(`/${form} (\\d+) 0 R`).exec(resources)?.[1]);
        const called = objects.get(number);
        if (called?.stream != null && called.head.includes('/Form'))
          out += textOf(called.stream, called.head);
      }
    }
    return out;
  };
  const pages: string[] = [];
  for (const { head } of objects.values()) {
    if (!/\/Type \/Page\b(?!s)/.test(head)) continue;
    const contents = Number(/\/Contents (\d+) 0 R/.exec(head)?.[1]);
    pages.push(textOf(objects.get(contents)?.stream ?? '', head).replace(/\s/g, ''));
  }
  return pages;
}
