/**
 * The sheet as one SVG text that needs nothing else. Lines after ISO 128: outlines wide (0.35 mm), edges within and
 * leaders narrow (0.18 mm), hatching finer still, adjacent parts long dash and two dots, centre lines long dash and dot. Title block after
 * ISO 7200, parts list over it after ISO 7573, balloons after ISO 6433. All words come from the caller.
 */
import type { Lines } from '../geometry';
import { BALLOON_MM, COLUMN_MM, FRAME, SHEET, type SheetDrawing } from './sheet';

export interface SheetWords {
  readonly language: string;
  readonly title: string;
  readonly description: string;
  readonly nameOf: (kind: string) => string;
  /** Mass of one part of a kind, with its unit. */
  readonly massOf: (kind: string) => string;
  readonly head: { readonly list: string; readonly item: string; readonly name: string; readonly count: string; readonly mass: string }; // prettier-ignore
  /** Fields of the title block: a small label and what stands under it, two a row. */
  readonly fields: readonly (readonly [label: string, text: string])[];
  readonly machine: readonly [label: string, text: string];
  readonly bar: { readonly length: string; readonly note: string };
  /** Under the title block's fields, one a line. */
  readonly notes: readonly string[];
}

const WIDE = 0.35;
const NARROW = 0.18;
const FONT = 'Overpass, Arial, Helvetica, sans-serif';
const ROW_MM = 5.4;

/** Text for XML: no markup, no characters that XML forbids. */
export const escapeXml = (text: string): string =>
  text
    // eslint-disable-next-line no-control-regex
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

export function sheetSvg(sheet: SheetDrawing, words: SheetWords): string {
  const out: string[] = [];
  out.push(
    `<?xml version="1.0" encoding="UTF-8"?>`,
    `<svg xmlns="http://www.w3.org/2000/svg" width="${SHEET.width}mm" height="${SHEET.height}mm" viewBox="0 0 ${SHEET.width} ${SHEET.height}" role="img" aria-labelledby="sheet-title sheet-desc" xml:lang="${escapeXml(words.language)}">`,
    `<title id="sheet-title">${escapeXml(words.title)}</title>`,
    `<desc id="sheet-desc">${escapeXml(words.description)}</desc>`,
    `<rect width="${SHEET.width}" height="${SHEET.height}" fill="#fff"/>`,
    drawingGroup(sheet),
    balloonGroup(sheet, words),
    frameGroup(),
    `<g fill="#000" font-family="${FONT}">`,
    ...titleBlock(sheet, words),
    `</g>`,
    `</svg>`,
  );
  return `${out.join('\n')}\n`;
}

/** The drawing with its balloons alone, for a page: the sheet's area without frame, list and title block. */
export function drawingSvg(
  sheet: SheetDrawing,
  words: Pick<SheetWords, 'title' | 'description' | 'nameOf'>,
): string {
  const { x, y, width, height } = sheet.area;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${x} ${y} ${width} ${height}" role="img" aria-label="${escapeXml(words.title)}">`,
    `<desc>${escapeXml(words.description)}</desc>`,
    drawingGroup(sheet),
    balloonGroup(sheet, words),
    `</svg>`,
  ].join('\n');
}

const mm = (value: number): string => String(Math.round(value * 100) / 100);

/** Path of polylines in pixels, points that lie straight on left out. */
function path(lines: Lines, scale: number): string {
  let out = '';
  for (const line of lines) {
    const kept: number[] = [];
    for (let i = 0; i < line.length; i += 2) {
      const x = line[i]!;
      const y = line[i + 1]!;
      const n = kept.length;
      if (n >= 4) {
        const ux = kept[n - 2]! - kept[n - 4]!, uy = kept[n - 1]! - kept[n - 3]!; // prettier-ignore
        const vx = x - kept[n - 2]!, vy = y - kept[n - 1]!; // prettier-ignore
        if (Math.abs(ux * vy - uy * vx) < 0.08 * Math.hypot(ux, uy) && ux * vx + uy * vy > 0)
          kept.length = n - 2;
      }
      kept.push(x, y);
    }
    out += `M${kept.map((v) => mm(v * scale)).join(' ')}`;
  }
  return out;
}

function drawingGroup({ drawing, area, px_mm }: SheetDrawing): string {
  const out = [
    `<clipPath id="area"><rect x="${area.x}" y="${area.y}" width="${area.width}" height="${area.height}"/></clipPath>`,
    `<g clip-path="url(#area)"><g id="drawing" transform="translate(${area.x} ${area.y})" fill="none" stroke="#000" stroke-linecap="round" stroke-linejoin="round">`,
  ];
  const layer = (id: string, style: string, of: (part: (typeof drawing.parts)[number]) => Lines): void => {
    const paths = drawing.parts.flatMap((part) => {
      const lines = of(part);
      return lines.length === 0
        ? []
        : [`<path data-part="${escapeXml(part.id)}" d="${path(lines, px_mm)}"/>`];
    });
    if (paths.length > 0) out.push(`<g id="${id}" ${style}>`, ...paths, `</g>`);
  };
  layer('hatching', `stroke-width="0.13"`, (p) => p.hatch);
  layer('edges', `stroke-width="${NARROW}"`, (p) => (p.ghost ? [] : p.edges));
  layer(
    'adjacent',
    `stroke-width="${NARROW}" stroke-dasharray="5 1 0.6 1 0.6 1" stroke-linecap="butt"`,
    (p) => (p.ghost ? [...p.rim, ...p.edges] : []),
  );
  layer('outlines', `stroke-width="${WIDE}"`, (p) => (p.ghost ? [] : p.rim));
  if (drawing.axes.length > 0)
    out.push(
      `<path id="centre-line" stroke-width="${NARROW}" stroke-dasharray="8 1.4 0.8 1.4" stroke-linecap="butt" d="${path(drawing.axes, px_mm)}"/>`,
    );
  out.push(`</g></g>`);
  return out.join('\n');
}

function balloonGroup(
  { balloons, area, px_mm, items }: SheetDrawing,
  words: Pick<SheetWords, 'nameOf'>,
): string {
  if (balloons.length === 0) return '';
  const kindOf = new Map(items.map(({ item, kind }) => [item, kind]));
  const out = [
    `<g id="balloons" stroke="#000" stroke-width="${NARROW}" font-family="${FONT}" font-size="4" text-anchor="middle">`,
  ];
  const at = (b: (typeof balloons)[number]): { x: number; y: number; bx: number; by: number } => ({
    x: area.x + b.x * px_mm,
    y: area.y + b.y * px_mm,
    bx: area.x + b.bx * px_mm,
    by: area.y + b.by * px_mm,
  });
  for (const b of balloons) {
    const { x, y, bx, by } = at(b);
    const reach = BALLOON_MM / (Math.hypot(x - bx, y - by) || 1);
    const line = `M${mm(bx + (x - bx) * reach)} ${mm(by + (y - by) * reach)}L${mm(x)} ${mm(y)}`;
    // a little paper beside the leader, so that it does not drown in the drawing
    out.push(
      `<path d="${line}" stroke="#fff" stroke-width="0.9" stroke-opacity="0.75"/>`,
      `<path d="${line}"/>`,
      `<circle cx="${mm(x)}" cy="${mm(y)}" r="0.75" stroke="#fff" stroke-width="0.2"/>`,
    );
  }
  for (const b of balloons) {
    const { bx, by } = at(b);
    out.push(
      `<g class="balloon" data-item="${b.item}" data-part="${escapeXml(b.id)}"><title>${escapeXml(words.nameOf(kindOf.get(b.item) ?? ''))}</title><circle cx="${mm(bx)}" cy="${mm(by)}" r="${BALLOON_MM}" fill="#fff" stroke-width="0.35"/><text x="${mm(bx)}" y="${mm(by + 1.45)}" stroke="none">${b.item}</text></g>`,
    );
  }
  out.push(`</g>`);
  return out.join('\n');
}

/** Frame, centring marks, and zones (ISO 5457: numbers along, letters up). */
function frameGroup(): string {
  const { x, y, width, height } = FRAME;
  const out = [
    `<g id="frame" fill="none" stroke="#000">`,
    `<rect x="${x}" y="${y}" width="${width}" height="${height}" stroke-width="0.7"/>`,
    `<path stroke-width="0.7" d="M${x + width / 2} ${y - 5}v10M${x + width / 2} ${y + height + 5}v-10M${x - 5} ${y + height / 2}h10M${x + width + 5} ${y + height / 2}h-10"/>`,
    `</g>`,
    `<g fill="#000" font-family="${FONT}" font-size="3.5" text-anchor="middle">`,
  ];
  const columns = 8;
  const rows = 6;
  for (let k = 0; k < columns; k++) {
    const middle = mm(x + ((k + 0.5) * width) / columns);
    out.push(`<text x="${middle}" y="${y - 1.8}">${k + 1}</text>`);
    out.push(`<text x="${middle}" y="${y + height + 4.2}">${k + 1}</text>`);
  }
  for (let k = 0; k < rows; k++) {
    const middle = mm(y + ((k + 0.5) * height) / rows + 1.2);
    const letter = String.fromCharCode(65 + k);
    out.push(`<text x="${x - 3}" y="${middle}">${letter}</text>`);
    out.push(`<text x="${x + width + 3}" y="${middle}">${letter}</text>`);
  }
  out.push(`</g>`);
  return out.join('\n');
}

/** Mean width of a letter over its size, on the wide side: nobody's font is wider by much. */
const LETTER = 0.54;
const LEAST_SIZE = 2.2;

/** A line of text that keeps to its room: set smaller first, then cut with an ellipsis (the whole stays as a title). */
function fitted(text: string, x: number, y: number, room: number, size: number, more = ''): string {
  const wide = (s: number): number => text.length * LETTER * s;
  const fit = wide(size) <= room ? size : Math.max(LEAST_SIZE, (size * room) / wide(size));
  const letters = Math.floor(room / (LETTER * fit) + 1e-6);
  const cut = text.length > letters ? `${text.slice(0, Math.max(1, letters - 1))}…` : text;
  const whole = cut === text ? '' : `<title>${escapeXml(text)}</title>`;
  return `<text x="${mm(x)}" y="${mm(y)}" font-size="${mm(fit)}"${more}>${whole}${escapeXml(cut)}</text>`;
}

/** Text broken into lines of at most `room` millimetres. */
export function brokenLines(text: string, room: number, size: number): string[] {
  const letters = Math.max(8, Math.floor(room / (LETTER * size)));
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

function titleBlock(sheet: SheetDrawing, words: SheetWords): string[] {
  const left = FRAME.x + FRAME.width - COLUMN_MM;
  const right = FRAME.x + FRAME.width;
  const inner = COLUMN_MM - 6;
  const noteLines = words.notes.flatMap((note) => brokenLines(note, inner, 2.5));
  const fieldRows = Math.ceil(words.fields.length / 2);
  const height = 13 + 9.5 * fieldRows + 13 + 4 + 3.6 * noteLines.length;
  const bottom = FRAME.y + FRAME.height;
  const top = bottom - height;
  const out: string[] = [`<g id="title-block">`];
  const rules: string[] = [`M${left} ${FRAME.y}V${bottom}`, `M${left} ${mm(top)}H${right}`];
  const label = (text: string, x: number, y: number, room: number): void =>
    void out.push(fitted(text, x, y, room, 2.4));
  label(words.machine[0], left + 3, top + 4, inner);
  out.push(fitted(words.machine[1], left + 3, top + 10.4, inner, 5.4, ' font-weight="600"'));
  let y = top + 13;
  for (let row = 0; row < fieldRows; row++) {
    rules.push(`M${left} ${mm(y)}H${right}`);
    for (const side of [0, 1]) {
      const field = words.fields[2 * row + side];
      if (field === undefined) continue;
      const x = left + 3 + (side * COLUMN_MM) / 2;
      label(field[0], x, y + 3.6, COLUMN_MM / 2 - 5);
      out.push(fitted(field[1], x, y + 7.9, COLUMN_MM / 2 - 5, 3.5));
      if (side === 1) rules.push(`M${left + COLUMN_MM / 2} ${mm(y)}v9.5`);
    }
    y += 9.5;
  }
  rules.push(`M${left} ${mm(y)}H${right}`);
  out.push(...scaleBar(sheet, words, left + 3, y + 4));
  y += 13;
  rules.push(`M${left} ${mm(y)}H${right}`);
  noteLines.forEach((line, k) => {
    out.push(`<text x="${left + 3}" y="${mm(y + 4.4 + 3.6 * k)}" font-size="2.5">${escapeXml(line)}</text>`);
  });
  out.push(`<path d="${rules.join('')}" fill="none" stroke="#000" stroke-width="0.35"/>`, `</g>`);
  if (sheet.items.length > 0) out.push(...partsList(sheet, words, left, top));
  return out;
}

/** A bar of four fields, in turn black and white. */
function scaleBar({ bar }: SheetDrawing, words: SheetWords, x: number, y: number): string[] {
  const quarter = bar.length_mm / 4;
  const out = [`<g id="scale-bar" stroke="#000" stroke-width="0.2">`];
  for (let k = 0; k < 4; k++)
    out.push(
      `<rect x="${mm(x + k * quarter)}" y="${mm(y)}" width="${mm(quarter)}" height="1.8" fill="${k % 2 === 0 ? '#000' : '#fff'}"/>`,
    );
  out.push(`</g>`);
  out.push(fitted(words.bar.length, x + bar.length_mm + 3, y + 2, COLUMN_MM - bar.length_mm - 12, 3.2));
  out.push(fitted(words.bar.note, x, y + 6, COLUMN_MM - 6, 2.4));
  return out;
}

function partsList({ items }: SheetDrawing, words: SheetWords, left: number, blockTop: number): string[] {
  const right = left + COLUMN_MM;
  const room = blockTop - FRAME.y - 12;
  const row = Math.min(ROW_MM, room / (items.length + 1));
  const size = Math.min(3.2, row * 0.62);
  const columns = { item: left + 6, name: left + 12, count: left + 77, mass: right - 3 };
  let y = FRAME.y + 7;
  const out = [
    `<g id="parts-list">`,
    fitted(words.head.list, left + 3, y, COLUMN_MM - 6, 3.8, ' font-weight="600"'),
  ];
  y += 2.5;
  const rules = [`M${left} ${mm(y)}H${right}`];
  const base = (at: number): number => at + row / 2 + size * 0.36;
  const head = ' font-weight="600"';
  out.push(
    fitted(words.head.item, left + 1.5, base(y), 10, 2.4, head),
    fitted(words.head.name, columns.name, base(y), 50, 2.4, head),
    fitted(words.head.count, columns.count, base(y), 11, 2.4, `${head} text-anchor="end"`),
    fitted(words.head.mass, columns.mass, base(y), 20, 2.4, `${head} text-anchor="end"`),
  );
  const listTop = y;
  y += row;
  rules.push(`M${left} ${mm(y)}H${right}`);
  for (const { item, kind, count } of items) {
    out.push(
      `<g class="item" data-item="${item}">`,
      `<text x="${columns.item}" y="${mm(base(y))}" font-size="${mm(size)}" text-anchor="middle">${item}</text>`,
      fitted(words.nameOf(kind), columns.name, base(y), 52, size),
      `<text x="${columns.count}" y="${mm(base(y))}" font-size="${mm(size)}" text-anchor="end">${count}</text>`,
      fitted(words.massOf(kind), columns.mass, base(y), 20, size, ' text-anchor="end"'),
      `</g>`,
    );
    y += row;
    rules.push(`M${left} ${mm(y)}H${right}`);
  }
  for (const x of [left + 11, left + 65, left + 79]) rules.push(`M${x} ${mm(listTop)}V${mm(y)}`);
  out.push(`<path d="${rules.join('')}" fill="none" stroke="#000" stroke-width="0.18"/>`, `</g>`);
  return out;
}
