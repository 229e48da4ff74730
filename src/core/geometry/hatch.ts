/**
 * Hatch of each kind after ISO 128-50: lines at 45 degrees, neighbours told apart by direction or spacing. Kinds whose
 * parts touch or nearly touch in the assembled machine are neighbours; each takes the first style that no neighbour has.
 */
import { loopArea, type SectionRegion } from './section';

export interface HatchStyle {
  /** Direction of the lines, radians from the plane's first axis. */
  readonly angle_rad: number;
  /** Spacing as a share of the drawing's standard spacing. */
  readonly spacing: number;
}

const QUARTER = Math.PI / 4;

export const HATCH_STYLES: readonly HatchStyle[] = [
  { angle_rad: QUARTER, spacing: 1 },
  { angle_rad: -QUARTER, spacing: 1 },
  { angle_rad: QUARTER, spacing: 0.66 },
  { angle_rad: -QUARTER, spacing: 0.66 },
  { angle_rad: QUARTER, spacing: 1.45 },
  { angle_rad: -QUARTER, spacing: 1.45 },
  { angle_rad: QUARTER, spacing: 0.8 },
  { angle_rad: -QUARTER, spacing: 0.8 },
];

/** Cut faces thinner than this are drawn solid, as sheet and shims are on a drawing (twice area over outline, metres). */
const SOLID_BELOW_M = 0.0035;

/** Whether a cut face is drawn solid. */
export function isThinFace({ outer, holes }: SectionRegion): boolean {
  const loops = [outer, ...holes];
  const area = loops.reduce((sum, loop) => sum + loopArea(loop), 0);
  const around = loops.reduce((sum, loop) => sum + loopLength(loop), 0);
  return (2 * area) / around < SOLID_BELOW_M;
}

function loopLength(loop: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < loop.length; i += 2) {
    const j = (i + 2) % loop.length;
    sum += Math.hypot(loop[j]! - loop[i]!, loop[j + 1]! - loop[i + 1]!);
  }
  return sum;
}

/** Boxes that come nearer than this are neighbours, metres. */
const NEAR_M = 0.002;

/**
 * Style number of each kind. `boxes`: of each part of the assembled machine the least x y z and the greatest x y z;
 * `kindOf`: kind number of each part.
 */
export function hatchOfKinds(
  boxes: readonly (readonly number[])[],
  kindOf: ArrayLike<number>,
  kindCount: number,
): Uint8Array {
  const neighbours = Array.from({ length: kindCount }, () => new Set<number>());
  for (let a = 0; a < boxes.length; a++)
    for (let b = a + 1; b < boxes.length; b++) {
      const ka = kindOf[a]!;
      const kb = kindOf[b]!;
      if (ka === kb || !near(boxes[a]!, boxes[b]!)) continue;
      neighbours[ka]!.add(kb);
      neighbours[kb]!.add(ka);
    }
  // Those with most neighbours choose first, from the styles that are easiest to tell apart.
  const order = neighbours
    .map((_, k) => k)
    .sort((a, b) => neighbours[b]!.size - neighbours[a]!.size || a - b);
  const styles = new Uint8Array(kindCount);
  const chosen = new Set<number>();
  for (const kind of order) {
    const uses = HATCH_STYLES.map(() => 0);
    for (const other of neighbours[kind]!) if (chosen.has(other)) uses[styles[other]!]!++;
    const least = Math.min(...uses);
    styles[kind] = uses.indexOf(least);
    chosen.add(kind);
  }
  return styles;
}

function near(a: readonly number[], b: readonly number[]): boolean {
  for (let k = 0; k < 3; k++) if (a[k]! > b[k + 3]! + NEAR_M || b[k]! > a[k + 3]! + NEAR_M) return false;
  return true;
}
