/** Faces that a section leaves, as a drawing shows them: outline, and hatching after ISO 128-50. */
import { planeBasis, type PlaneBasis, sliceSolid } from '../section';
import { isThinFace } from '../hatch';
import { onlyPiece, staysWhole } from '../whole';
import { crossingsAt } from './fill';
import { type Cut, cutInPart, type PlacedPart, piecesOnce } from './placed';

/** One cut face: loops (outline first, then holes) in the plane's own axes, metres. */
export interface CutFace {
  readonly part: number;
  readonly loops: readonly Float64Array[];
  readonly look: 'hatched' | 'thin' | 'loose';
}

/** Axes of the drawing plane of a section, in the machine's frame. */
export const cutBasis = ({ normal, distance_m }: Cut): PlaneBasis =>
  planeBasis({
    point_m: [normal[0] * distance_m, normal[1] * distance_m, normal[2] * distance_m],
    normal,
  });

/** All cut faces of one part in the axes of `basis`. */
export function cutFaces(part: PlacedPart, number: number, cut: Cut, basis: PlaneBasis): CutFace[] {
  const { matrix: m } = part;
  const { n, d } = cutInPart(m, cut);
  const own = planeBasis({ point_m: [n[0] * d, n[1] * d, n[2] * d], normal: n });
  return part.bodies.flatMap((body) => {
    const solids =
      body.section === 'cut'
        ? [body.solid]
        : piecesOnce(body.solid).pieces.flatMap((piece, k) =>
            staysWhole(piece, n[0], n[1], n[2], d)
              ? []
              : [onlyPiece(body.solid, piecesOnce(body.solid).ofVertex, k)],
          );
    return solids
      .flatMap((solid) => sliceSolid(solid, { point_m: own.origin_m, normal: n }))
      .map((region): CutFace => {
        const loops = [region.outer, ...region.holes].map((loop) => carried(loop, own, m, basis));
        const solid = isThinFace(region) ? 'thin' : 'hatched';
        return { part: number, loops, look: body.finish === 'shot' ? 'loose' : solid };
      });
  });
}

/** A loop in a part's axes of the plane, in those of the machine. */
function carried(
  loop: Float64Array,
  { origin_m: o, u, v }: PlaneBasis,
  m: ArrayLike<number>,
  basis: PlaneBasis,
): Float64Array {
  const out = new Float64Array(loop.length);
  for (let i = 0; i < loop.length; i += 2) {
    const [x, y, z] = [0, 1, 2].map(
      (k) => o[k as 0]! + u[k as 0]! * loop[i]! + v[k as 0]! * loop[i + 1]!,
    ) as [number, number, number];
    const p = [0, 1, 2].map(
      (k) => m[k]! * x + m[4 + k]! * y + m[8 + k]! * z + m[12 + k]! - basis.origin_m[k as 0]!,
    ) as [number, number, number];
    out[i] = basis.u[0] * p[0] + basis.u[1] * p[1] + basis.u[2] * p[2];
    out[i + 1] = basis.v[0] * p[0] + basis.v[1] * p[1] + basis.v[2] * p[2];
  }
  return out;
}

/** Straight lines at an angle and a spacing inside the loops: u v of both ends, four numbers a line. */
export function hatchLines(loops: readonly Float64Array[], angle_rad: number, spacing_m: number): number[][] {
  const c = Math.cos(angle_rad);
  const s = Math.sin(angle_rad);
  // turned so that the hatch runs level
  const level = loops.map((loop) => {
    const out = new Float64Array(loop.length);
    for (let i = 0; i < loop.length; i += 2) {
      out[i] = c * loop[i]! + s * loop[i + 1]!;
      out[i + 1] = c * loop[i + 1]! - s * loop[i]!;
    }
    return out;
  });
  let low = Infinity;
  let high = -Infinity;
  for (const loop of level)
    for (let i = 1; i < loop.length; i += 2) {
      low = Math.min(low, loop[i]!);
      high = Math.max(high, loop[i]!);
    }
  const lines: number[][] = [];
  // lines at whole multiples of the spacing, so that one part's faces are hatched through
  for (let k = Math.ceil(low / spacing_m); k * spacing_m <= high; k++) {
    const y = k * spacing_m;
    const xs = crossingsAt(level, y);
    for (let i = 0; i + 1 < xs.length; i += 2)
      lines.push([c * xs[i]! - s * y, s * xs[i]! + c * y, c * xs[i + 1]! - s * y, s * xs[i + 1]! + c * y]);
  }
  return lines;
}
