// @vitest-environment jsdom
/** The drawing sheet: what is covered is left out, numbers and list agree, the text is sound XML. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import {
  drawSheet,
  escapeXml,
  type SheetDrawing,
  type SheetRequest,
  sheetSvg,
  type SheetWords,
} from '../../src/core/exports';
import {
  crosses,
  HATCH_STYLES,
  type PlacedPart,
  type SolidMesh,
  stageDrawing,
} from '../../src/core/geometry';
import { cross, normalize, type Pose, rotate, type Vec3 } from '../../src/core/kernel';
import { sampleDocument } from '../scene/sample-document';

const all = <T>(work: Generator<number, T>): T => {
  let last = 0;
  for (;;) {
    const step = work.next();
    if (step.done === true) return step.value;
    expect(step.value).toBeGreaterThanOrEqual(last);
    expect(step.value).toBeLessThanOrEqual(1);
    last = step.value;
  }
};

/** A box about its middle, outward by the right-hand rule. */
function box(x: number, y: number, z: number): SolidMesh {
  const positions: number[] = [];
  for (let k = 0; k < 8; k++) positions.push(k & 1 ? x : -x, k & 2 ? y : -y, k & 4 ? z : -z);
  const quads = [[1, 3, 7, 5], [0, 4, 6, 2], [2, 6, 7, 3], [0, 1, 5, 4], [4, 5, 7, 6], [0, 2, 3, 1]]; // prettier-ignore
  const indices = quads.flatMap(([a, b, c, d]) => [a!, b!, c!, a!, c!, d!]);
  return { positions: Float32Array.from(positions), indices: Uint32Array.from(indices) };
}

const matrixOf = ({ position_m, rotation }: Pose): number[] => [
  ...[[1, 0, 0] as const, [0, 1, 0] as const, [0, 0, 1] as const].flatMap((v) => [...rotate(rotation, v), 0]),
  ...position_m,
  1,
];

const eyeAt = (towards: Vec3, distance_m: number): SheetRequest['eye'] => {
  const t = normalize(towards);
  const right = normalize(cross([0, 1, 0], t));
  return {
    eye_m: [t[0] * distance_m, t[1] * distance_m, t[2] * distance_m],
    right,
    up: cross(t, right),
    towards: t,
    fov_deg: 27,
  };
};

const placed = (id: string, solid: SolidMesh, at: Vec3, more: Partial<PlacedPart> = {}): PlacedPart => ({
  id,
  bodies: [{ solid, section: 'cut', finish: 'plain' }],
  matrix: matrixOf({ position_m: at, rotation: [0, 0, 0, 1] }),
  ghost: false,
  hatch: HATCH_STYLES[0]!,
  ...more,
});

const FOCAL = 1200;
const draw = (parts: readonly PlacedPart[], towards: Vec3 = [0, 0, 1], cut: SheetRequest['cut'] = null) =>
  all(
    stageDrawing({
      parts,
      eye: eyeAt(towards, 6),
      sheet: { width: 600, height: 500, x0: 300, y0: 250, focal_px: FOCAL },
      cut,
      axes: [],
      hatch_px: 12,
      middle_m: 6,
    }),
  );
const inkOf = (lines: readonly (readonly number[])[]): number =>
  lines.reduce((sum, line) => {
    let ink = 0;
    for (let i = 2; i < line.length; i += 2)
      ink += Math.hypot(line[i]! - line[i - 2]!, line[i + 1]! - line[i - 1]!);
    return sum + ink;
  }, 0);
const ink = (drawing: ReturnType<typeof draw>, id: string): number => {
  const part = drawing.parts.find((p) => p.id === id)!;
  return inkOf(part.rim) + inkOf(part.edges);
};

describe('hidden lines in perspective', () => {
  const cube = placed('cube', box(0.3, 0.3, 0.3), [0, 0, 0]);

  it('a cube from the front is the square of its near face, to the pixel, as the lens has it', () => {
    const drawing = draw([cube]);
    const side = (FOCAL * 0.6) / (6 - 0.3);
    expect(Math.abs(ink(drawing, 'cube') - 4 * side)).toBeLessThan(4);
    expect(inkOf(drawing.parts[0]!.edges)).toBe(0);
    expect(drawing.spots[0]!.x).toBeCloseTo(300, -1);
  });

  it('a box behind a plate is not drawn; beside the plate it is', () => {
    const plate = placed('plate', box(0.6, 0.6, 0.02), [0, 0, 1]);
    const hidden = draw([cube, plate]);
    expect(ink(hidden, 'cube')).toBe(0);
    expect(hidden.spots[0]).toBeNull();
    const half = draw([
      cube,
      { ...plate, matrix: matrixOf({ position_m: [0.6, 0, 1], rotation: [0, 0, 0, 1] }) },
    ]);
    const open = ink(draw([cube]), 'cube');
    expect(ink(half, 'cube')).toBeGreaterThan(0.4 * open);
    expect(ink(half, 'cube')).toBeLessThan(0.6 * open);
  });

  it('a ghost covers nothing and is covered', () => {
    const ghost = placed('ghost', box(0.6, 0.6, 0.02), [0, 0, 1], { ghost: true });
    const drawing = draw([cube, ghost]);
    expect(ink(drawing, 'cube')).toBeCloseTo(ink(draw([cube]), 'cube'), 0);
    expect(ink(drawing, 'ghost')).toBeGreaterThan(100);
    const behind = { ...ghost, matrix: matrixOf({ position_m: [0, 0, -1], rotation: [0, 0, 0, 1] }) };
    const small = placed('small', box(0.1, 0.1, 0.02), [0, 0, -1], { ghost: true });
    expect(ink(draw([cube, small]), 'small')).toBe(0);
    expect(ink(draw([cube, behind]), 'ghost')).toBeGreaterThan(100);
  });

  it('within a part edges are thin, where it ends they are wide', () => {
    const drawing = draw([cube], [1, 1, 1]);
    // nine edges are seen: six of the outline, three within
    const rim = inkOf(drawing.parts[0]!.rim);
    const edges = inkOf(drawing.parts[0]!.edges);
    expect(rim / (rim + edges)).toBeGreaterThan(0.6);
    expect(rim / (rim + edges)).toBeLessThan(0.72);
  });

  it('a section takes away the near half, hatches the cut at 45 degrees and shows what was behind it', () => {
    const core = placed('core', box(0.1, 0.1, 0.1), [0, 0, 0], { hatch: HATCH_STYLES[1]! });
    const shell = placed('shell', box(0.3, 0.3, 0.3), [0, 0, 0]);
    const cut = { normal: [0, 0, 1] as const, distance_m: 0 };
    const drawing = draw([shell], [0, 0, 1], cut);
    const side = (FOCAL * 0.6) / 6;
    expect(Math.abs(inkOf(drawing.parts[0]!.rim) - 4 * side)).toBeLessThan(5);
    const spacing = 12;
    expect(inkOf(drawing.parts[0]!.hatch)).toBeGreaterThan((0.85 * side * side) / spacing);
    expect(inkOf(drawing.parts[0]!.hatch)).toBeLessThan((1.15 * side * side) / spacing);
    for (const [x0, y0, x1, y1] of drawing.parts[0]!.hatch as readonly [number, number, number, number][])
      expect(Math.abs(x1 - x0)).toBeCloseTo(Math.abs(y1 - y0), 0);
    expect(ink(draw([core], [0, 0, 1], { ...cut, distance_m: -0.2 }), 'core')).toBe(0);
  });

  it('a part that stays whole in the section is not cut', () => {
    const pin = placed('pin', box(0.3, 0.1, 0.1), [0, 0, 0], {
      bodies: [{ solid: box(0.3, 0.1, 0.1), section: 'whole', finish: 'bolt' }],
    });
    const cut = { normal: [0, 0, 1] as const, distance_m: 0 };
    const drawing = draw([pin], [0, 0, 1], cut);
    expect(drawing.parts[0]!.hatch).toEqual([]);
    expect(ink(drawing, 'pin')).toBeCloseTo(ink(draw([pin]), 'pin'), 0);
  });
});

describe('the sheet', () => {
  let document: MachineDocument;
  let sheet: SheetDrawing;
  let svg: string;
  const request = (): SheetRequest => ({
    document,
    parts: document.machine.parts.map((p) => ({ id: p.id, ghost: false, matrix: matrixOf(p.pose) })),
    eye: eyeAt([0.66, 0.4, -0.8], 9),
    aspect: 1.3,
    middle_m: 9,
    cut: null,
    wanted: [document.machine.parts.at(-1)!.id],
    balloons: true,
    barUnit_m: 1,
  });
  const words: SheetWords = {
    language: 'en',
    title: 'Drum <A> & "B"',
    description: 'As it stands\u0001',
    nameOf: (kind) => `Name of ${kind} & more, which is much longer than the column of the parts list`,
    massOf: () => '1 kg',
    head: { list: 'Parts list', item: 'Item', name: 'Name', count: 'Number', mass: 'Mass' },
    machine: ['Machine', 'Sample'],
    fields: [['View', 'Home'], ['Mass', '1 kg'], ['Date', 'today']], // prettier-ignore
    bar: { length: '1 m', note: 'in perspective' },
    notes: [
      'Not for work on a real machine, says a note that needs more than one line of the title block to be told.',
    ],
  };
  beforeAll(async () => {
    document = await sampleDocument();
    sheet = all(drawSheet(request()));
    svg = sheetSvg(sheet, words);
  });
  const parsed = (): Document => new DOMParser().parseFromString(svg, 'image/svg+xml');

  it('is well-formed, stands alone, and has no number that is none', () => {
    const dom = parsed();
    expect(dom.querySelector('parsererror')).toBeNull();
    expect(dom.documentElement.namespaceURI).toBe('http://www.w3.org/2000/svg');
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    expect(svg).not.toMatch(/href|@import|<image|<style|<script/);
    expect(dom.querySelector('title')?.textContent).toBe('Drum <A> & "B"');
    expect(dom.querySelector('desc')?.textContent).toBe('As it stands');
    for (const element of dom.querySelectorAll('[font-family]'))
      expect(element.getAttribute('font-family')).toMatch(/sans-serif$/);
    expect(escapeXml('\u0000<&>"')).toBe('&lt;&amp;&gt;&quot;');
  });

  it('every balloon has its number in the list, and the wanted part has a balloon', () => {
    const dom = parsed();
    const numbers = [...dom.querySelectorAll('.balloon')].map((b) => b.getAttribute('data-item'));
    const listed = [...dom.querySelectorAll('#parts-list .item')].map((b) => b.getAttribute('data-item'));
    expect(numbers.length).toBeGreaterThan(2);
    expect([...numbers].sort()).toEqual([...listed].sort());
    expect(new Set(numbers).size).toBe(numbers.length);
    const kind = document.machine.parts.at(-1)!.kind;
    expect(numbers).toContain(String(document.machine.kinds[kind]!.item));
    for (const { item, kind: k, count } of sheet.items) {
      expect(document.machine.kinds[k]!.item).toBe(item);
      expect(count).toBe(document.machine.parts.filter((p) => p.kind === k).length);
    }
  });

  it('leaders end on their part and do not cross', () => {
    const { balloons, drawing } = sheet;
    for (const a of balloons) {
      const owner = drawing.owner[Math.floor(a.y) * drawing.width + Math.floor(a.x)]!;
      expect(drawing.parts[owner]?.id).toBe(a.id);
      for (const b of balloons) if (a !== b) expect(crosses(a.bx, a.by, a, b.bx, b.by, b)).toBe(false);
    }
  });

  it('all of it lies on the paper, texts keep to their columns', () => {
    for (const text of parsed().querySelectorAll('#parts-list text, #title-block text')) {
      const x = Number(text.getAttribute('x'));
      const size = Number(text.getAttribute('font-size'));
      const own = [...text.childNodes].filter((n) => n.nodeType === 3).map((n) => n.textContent ?? '').join(''); // prettier-ignore
      const wide = own.length * 0.54 * size;
      const from = text.getAttribute('text-anchor') === 'end' ? x - wide : x;
      expect(from).toBeGreaterThan(309);
      if (text.getAttribute('text-anchor') === null) expect(from + wide).toBeLessThan(411);
      expect(Number(text.getAttribute('y'))).toBeLessThan(287);
    }
  });

  it('is the same each time', () => {
    expect(sheetSvg(all(drawSheet(request())), words)).toBe(svg);
  });

  it('the scale bar is a round length, as long as that length is at the middle of the view', () => {
    const { length_m, length_mm } = sheet.bar;
    expect([1, 2, 5]).toContain(Number((length_m / 10 ** Math.floor(Math.log10(length_m))).toPrecision(3)));
    expect(length_mm).toBeGreaterThan(15);
    expect(length_mm).toBeLessThan(43);
  });
});
