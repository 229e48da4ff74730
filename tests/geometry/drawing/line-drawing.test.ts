/** Line drawings: what is covered is left out, what is seen is drawn where projection puts it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DrawnPart, lineDrawing, type SolidMesh, viewFrom } from '../../../src/core/geometry';
import { cross, dot, length, type Vec3 } from '../../../src/core/kernel';

/** A box about its middle, outward by the right-hand rule. */
function box(x: number, y: number, z: number): SolidMesh {
  const positions: number[] = [];
  for (let k = 0; k < 8; k++) positions.push(k & 1 ? x : -x, k & 2 ? y : -y, k & 4 ? z : -z);
  const quads = [
    [1, 3, 7, 5],
    [0, 4, 6, 2],
    [2, 6, 7, 3],
    [0, 1, 5, 4],
    [4, 5, 7, 6],
    [0, 2, 3, 1],
  ];
  const indices = quads.flatMap(([a, b, c, d]) => [a!, b!, c!, a!, c!, d!]);
  return { positions: Float32Array.from(positions), indices: Uint32Array.from(indices) };
}

const part = (
  id: string,
  solid: SolidMesh,
  position_m: Vec3,
  role: DrawnPart['role'] = 'main',
): DrawnPart => ({
  id,
  bodies: [{ solid }],
  position_m,
  rotation: [0, 0, 0, 1],
  role,
});
const frame = { x: 0, y: 0, halfWidth_m: 1, halfHeight_m: 1 };
const draw = (parts: readonly DrawnPart[], towards: Vec3 = [0, 0, 1]) =>
  lineDrawing({ parts, towards, frame, width: 400 });
const inkOf = (drawing: ReturnType<typeof draw>, id: string): number => {
  let sum = 0;
  for (const line of drawing.lines.find((l) => l.partId === id)?.lines ?? [])
    for (let i = 2; i < line.length; i += 2)
      sum += Math.hypot(line[i]! - line[i - 2]!, line[i + 1]! - line[i - 1]!);
  return sum;
};

describe('a line drawing', () => {
  it('of a cube from the front is its square, to the pixel', () => {
    const drawing = draw([part('cube', box(0.5, 0.5, 0.5), [0, 0, 0])]);
    expect(drawing.height).toBe(400);
    // one metre is 200 px; four edges, each 1 m
    expect(inkOf(drawing, 'cube')).toBeCloseTo(800, 0);
    const xs = drawing.lines[0]!.lines.flatMap((l) => l.filter((_, i) => i % 2 === 0));
    expect(Math.min(...xs)).toBeCloseTo(100, 1);
    expect(Math.max(...xs)).toBeCloseTo(300, 1);
    expect(drawing.seen).toMatchObject([{ partId: 'cube', pixels: 200 * 200 }]);
  });

  it('from a corner shows nine of the twelve edges', () => {
    const drawing = draw([part('cube', box(0.4, 0.4, 0.4), [0, 0, 0])], [1, 1, 1]);
    // each edge seen at the same slant: 0.8 m times the root of two thirds
    expect(inkOf(drawing, 'cube') / (0.8 * Math.sqrt(2 / 3) * 200)).toBeCloseTo(9, 1);
  });

  it('leaves out what another covers, and gives it back when that moves aside', () => {
    const small = part('small', box(0.1, 0.1, 0.1), [0, 0, 0]);
    const wall = (x: number): DrawnPart => part('wall', box(0.3, 0.3, 0.05), [x, 0, 0.6], 'other');
    expect(inkOf(draw([small, wall(0)]), 'small')).toBe(0);
    expect(draw([small, wall(0)]).seen.map((s) => s.partId)).toEqual(['wall']);
    expect(inkOf(draw([small, wall(0.6)]), 'small')).toBeCloseTo(160, 0);
    // half covered: the far edge is gone and the two along are cut
    const half = inkOf(draw([small, wall(0.3)]), 'small');
    expect(half).toBeGreaterThan(70);
    expect(half).toBeLessThan(95);
  });

  it('a way is drawn as far as nothing covers it', () => {
    const wall = part('wall', box(0.25, 0.5, 0.05), [0.5, 0, 0.5]);
    const { paths } = lineDrawing({
      parts: [wall],
      towards: [0, 0, 1],
      frame,
      width: 400,
      paths: [
        [
          [-0.5, 0, 0],
          [0.5, 0, 0],
        ],
      ],
    });
    const length_px = paths.reduce((sum, [x1, , x2]) => sum + Math.abs(x2! - x1!), 0);
    expect(length_px).toBeGreaterThan(148);
    expect(length_px).toBeLessThan(153);
  });

  it('the view is upright and square for any direction that is not upright itself', () => {
    const component = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(component, component, component, (x, y, z) => {
        fc.pre(Math.hypot(x, z) > 0.05);
        const { right, up, towards } = viewFrom([x, y, z]);
        for (const v of [right, up, towards]) expect(length(v)).toBeCloseTo(1, 9);
        expect(dot(right, up)).toBeCloseTo(0, 9);
        expect(right[1]).toBeCloseTo(0, 9);
        expect(up[1]).toBeGreaterThan(0);
        expect(dot(cross(right, up), towards)).toBeCloseTo(1, 9);
      }),
      { seed: 7, numRuns: 50 },
    );
  });
});
