/**
 * Cut faces of all parts that show, as one mesh and one set of outlines: each solid is sliced in its own frame by the
 * plane carried there, the regions are triangulated and carried back. Pieces that stay whole get no face.
 */
import { ShapeUtils, Vector2 } from 'three';
import {
  isThinFace,
  onlyPiece,
  type Piece,
  piecesOf,
  type Plane,
  planeBasis,
  type PlaneBasis,
  type SectionRegion,
  sliceSolid,
  type SolidMesh,
  staysWhole,
  SURFACES,
} from '../../../core/geometry';
import { HIDDEN, type PartTable } from '../machine/part-table';

/** Hatch styles beside those of hatch-styles.ts: solid ink, and balls side by side. */
export const SOLID_INK = 255;
export const LOOSE = 254;

export interface CapData {
  readonly position: Float32Array;
  readonly index: Uint32Array;
  /** Part number, and hatch style of each vertex. */
  readonly part: Float32Array;
  readonly style: Float32Array;
  /** sRGB, 0 to 255. */
  readonly tint: Uint8Array;
  /** Outlines, six numbers a segment. */
  readonly outline: Float32Array;
}

interface CutPiece {
  readonly solid: SolidMesh;
  /** Null: cut like anything else. */
  readonly piece: Piece | null;
  readonly tint: readonly [number, number, number];
  /** Loose balls, not metal. */
  readonly loose: boolean;
}

/** What of each kind can be cut, worked out once. */
export type Cuttable = readonly (readonly CutPiece[])[];

export function cuttable(table: PartTable): Cuttable {
  return table.kinds.map(({ bodies }) =>
    bodies.flatMap((body): readonly CutPiece[] => {
      const look = { tint: rgb(SURFACES[body.finish].colour), loose: body.finish === 'shot' };
      if (body.section === 'cut') return [{ solid: body.solid, piece: null, ...look }];
      const { pieces, ofVertex } = piecesOf(body.solid);
      if (pieces.length === 1) return [{ solid: body.solid, piece: pieces[0]!, ...look }];
      return pieces.map((piece, n) => ({ solid: onlyPiece(body.solid, ofVertex, n), piece, ...look }));
    }),
  );
}

const rgb = (hex: string): readonly [number, number, number] => [
  parseInt(hex.slice(1, 3), 16),
  parseInt(hex.slice(3, 5), 16),
  parseInt(hex.slice(5, 7), 16),
];

/** Plane: unit normal in the machine's axes and its distance from the origin. */
export function capGeometry(
  table: PartTable,
  cut: Cuttable,
  styles: Uint8Array,
  normal: readonly [number, number, number],
  distance_m: number,
): CapData {
  const out: Collector = { position: [], index: [], part: [], style: [], tint: [], outline: [] };
  for (let part = 0; part < table.count; part++) {
    if (table.shown[part] === HIDDEN) continue;
    const kind = table.kindOf[part]!;
    const m = table.matrices.subarray(part * 16, part * 16 + 16);
    const n = ownDirection(m, normal);
    const d = distance_m - (normal[0] * m[12]! + normal[1] * m[13]! + normal[2] * m[14]!);
    const { min, max } = table.kinds[kind]!;
    if (missesBox(min, max, n, d)) continue;
    const plane: Plane = { point_m: [n[0] * d, n[1] * d, n[2] * d], normal: n };
    const basis = planeBasis(plane);
    for (const { solid, piece, tint, loose } of cut[kind]!) {
      if (piece !== null && staysWhole(piece, n[0], n[1], n[2], d)) continue;
      for (const region of sliceSolid(solid, plane))
        addRegion(out, region, basis, m, part, loose ? LOOSE : styles[kind]!, tint);
    }
  }
  return {
    position: Float32Array.from(out.position),
    index: Uint32Array.from(out.index),
    part: Float32Array.from(out.part),
    style: Float32Array.from(out.style),
    tint: Uint8Array.from(out.tint),
    outline: Float32Array.from(out.outline),
  };
}

interface Collector {
  readonly position: number[];
  readonly index: number[];
  readonly part: number[];
  readonly style: number[];
  readonly tint: number[];
  readonly outline: number[];
}

type Direction = readonly [number, number, number];

/** The machine's direction in the part's frame (its matrix is a rigid motion). */
const ownDirection = (m: Float32Array, v: Direction): Direction => [
  m[0]! * v[0] + m[1]! * v[1] + m[2]! * v[2],
  m[4]! * v[0] + m[5]! * v[1] + m[6]! * v[2],
  m[8]! * v[0] + m[9]! * v[1] + m[10]! * v[2],
];

function missesBox(min: Direction, max: Direction, n: Direction, d: number): boolean {
  let least = 0;
  let most = 0;
  for (const k of [0, 1, 2] as const) {
    least += n[k] * (n[k] > 0 ? min[k] : max[k]);
    most += n[k] * (n[k] > 0 ? max[k] : min[k]);
  }
  return least > d || most < d;
}

function addRegion(
  out: Collector,
  region: SectionRegion,
  { origin_m: o, u, v }: PlaneBasis,
  m: Float32Array,
  part: number,
  style: number,
  tint: readonly [number, number, number],
): void {
  const loops = [region.outer, ...region.holes];
  const thin = style !== LOOSE && isThinFace(region);
  const first = out.position.length / 3;
  const points = loops.map((loop) => {
    const list: Vector2[] = [];
    for (let i = 0; i < loop.length; i += 2) list.push(new Vector2(loop[i], loop[i + 1]));
    return list;
  });
  for (const [a, b, c] of ShapeUtils.triangulateShape(points[0]!, points.slice(1)) as number[][])
    out.index.push(first + a!, first + b!, first + c!);
  for (const loop of loops) {
    const start = out.position.length;
    for (let i = 0; i < loop.length; i += 2) {
      const x = o[0] + u[0] * loop[i]! + v[0] * loop[i + 1]!;
      const y = o[1] + u[1] * loop[i]! + v[1] * loop[i + 1]!;
      const z = o[2] + u[2] * loop[i]! + v[2] * loop[i + 1]!;
      out.position.push(
        m[0]! * x + m[4]! * y + m[8]! * z + m[12]!,
        m[1]! * x + m[5]! * y + m[9]! * z + m[13]!,
        m[2]! * x + m[6]! * y + m[10]! * z + m[14]!,
      );
      out.part.push(part);
      out.style.push(thin ? SOLID_INK : style);
      out.tint.push(...tint);
    }
    const end = out.position.length;
    for (let i = start; i < end; i += 3) {
      const j = i + 3 < end ? i + 3 : start;
      for (let k = 0; k < 3; k++) out.outline.push(out.position[i + k]!);
      for (let k = 0; k < 3; k++) out.outline.push(out.position[j + k]!);
    }
  }
}
