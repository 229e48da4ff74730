/** Holes and slots bored along x by the pattern that many builders share. */
import type { HolePattern } from '../../machine';
import type { Solid, SolidScope } from '../solid-kernel';

const DEGREE = Math.PI / 180;

/** A place on a face: [y, z] and the turn that takes +y to the outward direction there (slots lie across it). */
interface Place {
  readonly y_m: number;
  readonly z_m: number;
  readonly turn_deg: number;
}

/** Where a pattern's holes are: on its circle (clockwise seen from +x, from the top), or at the listed places. */
export function holePlaces(pattern: HolePattern): readonly Place[] {
  if (pattern.places_m !== undefined) {
    return pattern.places_m.map(([y_m, z_m]) => ({ y_m, z_m, turn_deg: 0 }));
  }
  const count = pattern.angles_deg?.length ?? pattern.count ?? 1;
  const radius = pattern.radius_m ?? 0;
  return Array.from({ length: count }, (_, i) => {
    const turn_deg = (pattern.start_deg ?? 0) + (pattern.angles_deg?.[i] ?? (360 * i) / count);
    return {
      y_m: radius * Math.cos(turn_deg * DEGREE),
      z_m: -radius * Math.sin(turn_deg * DEGREE),
      turn_deg,
    };
  });
}

/** The boring tools of a pattern, `x0` to `x1` being the part's whole length. */
export function holeTools(
  solids: SolidScope,
  pattern: HolePattern,
  x0: number,
  x1: number,
): readonly Solid[] {
  const from = pattern.from_x_m ?? x0 - 0.001;
  const to = pattern.to_x_m ?? x1 + 0.001;
  const radius = pattern.diameter_m / 2;
  const half = (pattern.slot_m ?? 0) / 2;
  const round = solids.cylinder(from, to, radius);
  const tool =
    half > 0
      ? solids.union([
          solids.translate(round, [0, 0, -half]),
          solids.translate(round, [0, 0, half]),
          solids.box([from, -radius, -half], [to, radius, half]),
        ])
      : round;
  return holePlaces(pattern).map((place) => {
    const along = pattern.slot_along ?? (pattern.places_m === undefined ? 'circle' : 'z');
    const turn_deg = along === 'circle' ? -place.turn_deg : along === 'y' ? 90 : 0;
    // Round holes turn with their place too: the corners of a bolt's polygon then meet those of its hole.
    const turned = turn_deg !== 0 ? solids.rotate(tool, turn_deg) : tool;
    return solids.translate(turned, [0, place.y_m, place.z_m]);
  });
}

/** The solid with all patterns bored. */
export function boreHoles(
  solids: SolidScope,
  solid: Solid,
  patterns: readonly HolePattern[] | undefined,
  x0: number,
  x1: number,
): Solid {
  const tools = (patterns ?? []).flatMap((pattern) => holeTools(solids, pattern, x0, x1));
  return solids.subtract(solid, tools);
}
