/** Bodies of a kind merged into one buffer geometry: each vertex carries its surface, so one material serves all. */
import { BufferAttribute, BufferGeometry, Color, Float32BufferAttribute } from 'three';
import type { DrawnBody } from '../../../core/document';
import { piecesOf, SURFACES } from '../../../core/geometry';
import { largestFirst } from './edge-chains';

/** For each point of `points` the box of the piece that it belongs to; null when the body is cut like others. */
type WholeOf = ((x: number, y: number, z: number) => readonly number[]) | null;

export interface KindGeometry {
  readonly surface: BufferGeometry;
  /** Feature edges, two ends a segment, with the piece boxes beside them when some body stays whole. */
  readonly edges: {
    readonly ends: Float32Array;
    readonly whole: Float32Array | null;
    /** Radius of the chain that each segment belongs to, falling. */
    readonly radius: Float32Array;
  };
}

export function kindGeometry(bodies: readonly DrawnBody[]): KindGeometry {
  const vertices = bodies.reduce((n, b) => n + b.mesh.positions.length / 3, 0);
  const corners = bodies.reduce((n, b) => n + b.mesh.indices.length, 0);
  const ends = bodies.reduce((n, b) => n + b.mesh.edges.length, 0);
  const someWhole = bodies.some((b) => b.section === 'whole');

  const position = new Float32Array(vertices * 3);
  const normal = new Float32Array(vertices * 3);
  const tint = new Uint8Array(vertices * 4);
  const finish = new Uint8Array(vertices * 4);
  const index = new Uint32Array(corners);
  const whole = someWhole ? new Float32Array(vertices * 6) : null;
  const edgeEnds = new Float32Array(ends);
  const edgeWhole = someWhole ? new Float32Array(ends * 2) : null;

  let v = 0;
  let c = 0;
  let e = 0;
  const colour = new Color();
  for (const body of bodies) {
    const { mesh } = body;
    const count = mesh.positions.length / 3;
    position.set(mesh.positions, v * 3);
    normal.set(mesh.normals, v * 3);
    for (let i = 0; i < mesh.indices.length; i++) index[c + i] = mesh.indices[i]! + v;
    const look = SURFACES[body.finish];
    // Stored as sRGB bytes and made linear in the shader: eight linear bits would band in the darks.
    colour.set(look.colour).convertLinearToSRGB();
    for (let i = v; i < v + count; i++) {
      tint.set([colour.r * 255, colour.g * 255, colour.b * 255, look.grain * 255], i * 4);
      finish.set([look.roughness * 255, look.metalness * 255, look.brushed * 255, 255], i * 4);
    }
    edgeEnds.set(mesh.edges, e);
    const wholeOf = body.section === 'whole' ? wholeBoxes(body) : null;
    if (whole !== null && wholeOf !== null) fill(whole, v, mesh.positions, wholeOf);
    if (edgeWhole !== null && wholeOf !== null) fill(edgeWhole, e / 3, mesh.edges, wholeOf);
    v += count;
    c += mesh.indices.length;
    e += mesh.edges.length;
  }

  const surface = new BufferGeometry();
  surface.setAttribute('position', new BufferAttribute(position, 3));
  surface.setAttribute('normal', new BufferAttribute(normal, 3));
  surface.setAttribute('tint', new BufferAttribute(tint, 4, true));
  surface.setAttribute('finish', new BufferAttribute(finish, 4, true));
  surface.setIndex(new BufferAttribute(vertices < 65536 ? new Uint16Array(index) : index, 1));
  setWhole(surface, whole, vertices);
  surface.computeBoundingBox();
  surface.computeBoundingSphere();
  const sorted = largestFirst(edgeEnds);
  let sortedWhole: Float32Array | null = null;
  if (edgeWhole !== null) {
    sortedWhole = new Float32Array(edgeWhole.length);
    for (let i = 0; i < sorted.order.length; i++) {
      const s = sorted.order[i]!;
      sortedWhole.set(edgeWhole.subarray(12 * s, 12 * s + 12), 12 * i);
    }
  }
  return { surface, edges: { ends: sorted.ends, whole: sortedWhole, radius: sorted.radius } };
}

/**
 * Piece boxes (centre, half) as two attributes. Kinds without whole bodies go without: an absent attribute reads as
 * zeros in WebGL, which mean 'cut'.
 */
export function setWhole(geometry: BufferGeometry, whole: Float32Array | null, vertices: number): void {
  if (whole === null) return;
  const centre = new Float32Array(vertices * 3);
  const half = new Float32Array(vertices * 3);
  for (let i = 0; i < vertices; i++)
    for (let k = 0; k < 3; k++) {
      centre[3 * i + k] = whole[6 * i + k]!;
      half[3 * i + k] = whole[6 * i + 3 + k]!;
    }
  geometry.setAttribute('wholeCentre', new Float32BufferAttribute(centre, 3));
  geometry.setAttribute('wholeHalf', new Float32BufferAttribute(half, 3));
}

function fill(into: Float32Array, first: number, points: Float32Array, of: NonNullable<WholeOf>): void {
  for (let i = 0; i < points.length / 3; i++)
    into.set(of(points[3 * i]!, points[3 * i + 1]!, points[3 * i + 2]!), (first + i) * 6);
}

/** Looks a drawn point's piece up by its place: drawn vertices are copies of the solid's. */
function wholeBoxes({ solid }: DrawnBody): NonNullable<WholeOf> {
  const { pieces, ofVertex } = piecesOf(solid);
  const boxes = pieces.map((p) => [...p.centre, ...p.half]);
  if (boxes.length === 1) return () => boxes[0]!;
  const at = new Map<string, number>();
  for (let v = 0; v < ofVertex.length; v++)
    at.set(
      `${solid.positions[3 * v]},${solid.positions[3 * v + 1]},${solid.positions[3 * v + 2]}`,
      ofVertex[v]!,
    );
  return (x, y, z) => boxes[at.get(`${x},${y},${z}`) ?? 0]!;
}
