/** Edges of a closed mesh with the faces at both sides: what a line drawing chooses from. */
import type { SolidMesh } from '../types';

/** Flat arrays, one entry an edge. */
export interface MeshEdges {
  /** Vertex numbers of the ends, two an edge. */
  readonly ends: Uint32Array;
  /** Unit normals of the two faces, six numbers an edge. */
  readonly normals: Float32Array;
  /** 1: a crease that is always drawn; 0: drawn only where it is the outline. */
  readonly crease: Uint8Array;
}

/** Faces that meet at more than this are drawn as a crease, as on the stage. */
const CREASE_COS = Math.cos((30 * Math.PI) / 180);

const known = new WeakMap<SolidMesh, MeshEdges>();

/** Edges of a mesh, found once; an edge that meets one face only counts as a crease. */
export function meshEdges(mesh: SolidMesh): MeshEdges {
  let edges = known.get(mesh);
  if (edges === undefined) known.set(mesh, (edges = find(mesh)));
  return edges;
}

function find({ positions, indices }: SolidMesh): MeshEdges {
  const count = positions.length / 3;
  const faces = indices.length / 3;
  const normals = new Float32Array(3 * faces);
  for (let f = 0; f < faces; f++) {
    const [a, b, c] = [3 * indices[3 * f]!, 3 * indices[3 * f + 1]!, 3 * indices[3 * f + 2]!];
    const ux = positions[b]! - positions[a]!, uy = positions[b + 1]! - positions[a + 1]!, uz = positions[b + 2]! - positions[a + 2]!; // prettier-ignore
    const vx = positions[c]! - positions[a]!, vy = positions[c + 1]! - positions[a + 1]!, vz = positions[c + 2]! - positions[a + 2]!; // prettier-ignore
    const n = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const l = Math.hypot(n[0]!, n[1]!, n[2]!) || 1;
    for (let k = 0; k < 3; k++) normals[3 * f + k] = n[k]! / l;
  }
  const twin = new Map<number, number>();
  const ends: number[] = [];
  const sides: number[] = [];
  const crease: number[] = [];
  const put = (a: number, b: number, f: number, g: number): void => {
    let cosine = 0;
    for (let k = 0; k < 3; k++) cosine += normals[3 * f + k]! * normals[3 * g + k]!;
    ends.push(a, b);
    for (const face of [f, g]) for (let k = 0; k < 3; k++) sides.push(normals[3 * face + k]!);
    crease.push(f === g || cosine < CREASE_COS ? 1 : 0);
  };
  for (let f = 0; f < faces; f++)
    for (let k = 0; k < 3; k++) {
      const a = indices[3 * f + k]!;
      const b = indices[3 * f + ((k + 1) % 3)]!;
      const other = twin.get(b * count + a);
      if (other === undefined) twin.set(a * count + b, f);
      else {
        twin.delete(b * count + a);
        put(a, b, f, other);
      }
    }
  for (const [key, f] of twin) put(Math.floor(key / count), key % count, f, f);
  return {
    ends: Uint32Array.from(ends),
    normals: Float32Array.from(sides),
    crease: Uint8Array.from(crease),
  };
}
