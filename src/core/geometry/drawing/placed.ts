/** A part where it stands, turned into the camera's frame, and what of it a section cuts. */
import type { Vec3 } from '../../kernel';
import type { HatchStyle } from '../hatch';
import type { Body, SolidMesh } from '../types';
import { piecesOf, type Pieces, staysWhole } from '../whole';
import { type EyePlace, inCamera } from './perspective';

export interface PlacedPart {
  readonly id: string;
  readonly bodies: readonly Pick<Body, 'solid' | 'section' | 'finish'>[];
  /** Rigid motion from the kind's frame into the machine's, 16 numbers column by column. */
  readonly matrix: ArrayLike<number>;
  /** Drawn as an adjacent part: phantom lines that cover nothing. */
  readonly ghost: boolean;
  readonly hatch: HatchStyle;
}

/** What is cut away: all points with normal . p > distance, machine's frame. */
export interface Cut {
  readonly normal: Vec3;
  readonly distance_m: number;
}

export interface PlacedBody {
  readonly part: number;
  readonly body: PlacedPart['bodies'][number];
  /** x y z of each vertex in the camera's frame. */
  readonly camera: Float32Array;
  /** The eye in the kind's frame: which faces are turned to it. */
  readonly eye_m: Vec3;
  /** Which vertices a section cuts: all, none, or 1 by vertex. */
  readonly cuts: 'all' | 'none' | Uint8Array;
}

/** The machine's direction in the kind's frame. */
export const ownDirection = (m: ArrayLike<number>, v: Vec3): Vec3 => [
  m[0]! * v[0] + m[1]! * v[1] + m[2]! * v[2],
  m[4]! * v[0] + m[5]! * v[1] + m[6]! * v[2],
  m[8]! * v[0] + m[9]! * v[1] + m[10]! * v[2],
];

const origin = (m: ArrayLike<number>): Vec3 => [m[12]!, m[13]!, m[14]!];

/** The plane of a section in the kind's frame: unit normal and distance from its origin. */
export function cutInPart(m: ArrayLike<number>, { normal, distance_m }: Cut): { n: Vec3; d: number } {
  const o = origin(m);
  return {
    n: ownDirection(m, normal),
    d: distance_m - (normal[0] * o[0] + normal[1] * o[1] + normal[2] * o[2]),
  };
}

const known = new WeakMap<SolidMesh, Pieces>();

export function piecesOnce(solid: SolidMesh): Pieces {
  let pieces = known.get(solid);
  if (pieces === undefined) known.set(solid, (pieces = piecesOf(solid)));
  return pieces;
}

export function placePart(part: PlacedPart, number: number, eye: EyePlace, cut: Cut | null): PlacedBody[] {
  const { matrix: m } = part;
  const o = origin(m);
  const at = inCamera(eye, o);
  const axes = [eye.right, eye.up, eye.towards].map((v) => ownDirection(m, v)) as [Vec3, Vec3, Vec3];
  const [r, u, t] = axes;
  const away: Vec3 = [eye.eye_m[0] - o[0], eye.eye_m[1] - o[1], eye.eye_m[2] - o[2]];
  return part.bodies.map((body): PlacedBody => {
    const p = body.solid.positions;
    const camera = new Float32Array(p.length);
    for (let i = 0; i < p.length; i += 3) {
      const x = p[i]!, y = p[i + 1]!, z = p[i + 2]!; // prettier-ignore
      camera[i] = r[0] * x + r[1] * y + r[2] * z + at[0];
      camera[i + 1] = u[0] * x + u[1] * y + u[2] * z + at[1];
      camera[i + 2] = at[2] - (t[0] * x + t[1] * y + t[2] * z);
    }
    return { part: number, body, camera, eye_m: ownDirection(m, away), cuts: cutsOf(body, m, cut) };
  });
}

function cutsOf(
  body: PlacedPart['bodies'][number],
  m: ArrayLike<number>,
  cut: Cut | null,
): PlacedBody['cuts'] {
  if (cut === null) return 'none';
  if (body.section === 'cut') return 'all';
  const { n, d } = cutInPart(m, cut);
  const { pieces, ofVertex } = piecesOnce(body.solid);
  const cutPieces = pieces.map((piece) => !staysWhole(piece, n[0], n[1], n[2], d));
  if (cutPieces.every((c) => c)) return 'all';
  if (!cutPieces.some((c) => c)) return 'none';
  return Uint8Array.from(ofVertex, (piece) => (cutPieces[piece]! ? 1 : 0));
}
