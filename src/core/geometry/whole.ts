/**
 * Bodies that a section leaves whole (shafts, bolts, balls, rollers) are judged piece by piece: a cage full of rollers is
 * one body, but only those rollers that the plane strikes stay whole. A piece is a connected part of the mesh.
 */
import type { SolidMesh } from './types';

export interface Piece {
  /** Box around the piece in the kind's frame. */
  readonly centre: readonly [number, number, number];
  readonly half: readonly [number, number, number];
}

export interface Pieces {
  readonly pieces: readonly Piece[];
  /** Piece number of each vertex. */
  readonly ofVertex: Uint16Array;
}

/** Connected pieces of a closed mesh whose vertices are merged. */
export function piecesOf({ positions, indices }: SolidMesh): Pieces {
  const count = positions.length / 3;
  const parent = new Int32Array(count).map((_, i) => i);
  const root = (v: number): number => {
    let r = v;
    while (parent[r] !== r) r = parent[r]!;
    while (parent[v] !== r) {
      const up = parent[v]!;
      parent[v] = r;
      v = up;
    }
    return r;
  };
  for (let t = 0; t < indices.length; t += 3) {
    parent[root(indices[t]!)] = root(indices[t + 1]!);
    parent[root(indices[t + 1]!)] = root(indices[t + 2]!);
  }
  const numberOf = new Map<number, number>();
  const boxes: number[][] = [];
  const ofVertex = new Uint16Array(count);
  for (let v = 0; v < count; v++) {
    const r = root(v);
    let n = numberOf.get(r);
    if (n === undefined) {
      n = boxes.length;
      numberOf.set(r, n);
      boxes.push([Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity]);
    }
    ofVertex[v] = n;
    const box = boxes[n]!;
    for (let k = 0; k < 3; k++) {
      const p = positions[3 * v + k]!;
      if (p < box[k]!) box[k] = p;
      if (p > box[k + 3]!) box[k + 3] = p;
    }
  }
  const pieces = boxes.map((b) => ({
    centre: [(b[0]! + b[3]!) / 2, (b[1]! + b[4]!) / 2, (b[2]! + b[5]!) / 2] as const,
    half: [(b[3]! - b[0]!) / 2, (b[4]! - b[1]!) / 2, (b[5]! - b[2]!) / 2] as const,
  }));
  return { pieces, ofVertex };
}

/** A plane nearly along the kind's axis (its x) leaves pieces whole; one across it cuts them like anything else. */
export const ALONG_AXIS = 0.5;

/**
 * How far a piece reaches to both sides of its centre along a unit normal in the kind's frame: a box along x, an
 * ellipse across it, which is exact for turned pieces.
 */
export const reachAlong = (half: Piece['half'], nx: number, ny: number, nz: number): number =>
  Math.abs(nx) * half[0] + Math.hypot(ny * half[1], nz * half[2]);

/**
 * Whether a plane leaves the piece whole. Normal (unit) and distance of the plane from the kind's origin, kind's frame.
 * The stage's shader decides the same way.
 */
export function staysWhole(piece: Piece, nx: number, ny: number, nz: number, distance: number): boolean {
  if (Math.abs(nx) > ALONG_AXIS) return false;
  const centre = nx * piece.centre[0] + ny * piece.centre[1] + nz * piece.centre[2] - distance;
  return Math.abs(centre) < reachAlong(piece.half, nx, ny, nz) * 0.98;
}

/** One piece of a mesh by itself. */
export function onlyPiece(solid: SolidMesh, ofVertex: Uint16Array, n: number): SolidMesh {
  const indices: number[] = [];
  for (let t = 0; t < solid.indices.length; t += 3)
    if (ofVertex[solid.indices[t]!] === n)
      indices.push(solid.indices[t]!, solid.indices[t + 1]!, solid.indices[t + 2]!);
  // Slicing looks at all vertices, so the piece takes only its own along.
  const renumber = new Map<number, number>();
  const positions: number[] = [];
  const own = indices.map((v) => {
    let r = renumber.get(v);
    if (r === undefined) {
      r = renumber.size;
      renumber.set(v, r);
      positions.push(solid.positions[3 * v]!, solid.positions[3 * v + 1]!, solid.positions[3 * v + 2]!);
    }
    return r;
  });
  return { positions: Float32Array.from(positions), indices: Uint32Array.from(own) };
}
