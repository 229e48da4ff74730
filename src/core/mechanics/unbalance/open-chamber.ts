/** A round chamber without baffle: the settled shot in one closed form. */

export interface OpenChamberFill {
  readonly area_m2: number;
  /** First moment of area about O, along +x. */
  readonly momentX_m3: number;
}

/**
 * Shot outside a cylinder of radius `surface_m` about O in a round chamber of radius R, its centre e from O:
 * xl = (r0^2 - R^2 + e^2) / (2 e), a1 = acos((xl - e) / R), a0 = acos(xl / r0),
 * area = R^2 (a1 - sin a1 cos a1) - r0^2 (a0 - sin a0 cos a0),
 * moment = e R^2 (a1 - sin a1 cos a1) + 2/3 R^3 sin^3 a1 - 2/3 r0^3 sin^3 a0: two circular segments on the common
 * chord of both circles (Machinery's Handbook, circular segment; first moment 2/3 r^3 sin^3 a about the centre).
 * Valid for |R - e| < r0 < R + e; null outside it.
 */
export function openChamberFill(
  radius_m: number,
  eccentricity_m: number,
  surface_m: number,
): OpenChamberFill | null {
  const R = radius_m;
  const e = eccentricity_m;
  const r0 = surface_m;
  if (!(r0 > Math.abs(R - e) && r0 < R + e)) return null;
  const xl = (r0 * r0 - R * R + e * e) / (2 * e);
  const a1 = Math.acos((xl - e) / R);
  const a0 = Math.acos(xl / r0);
  const wall = R * R * (a1 - Math.sin(a1) * Math.cos(a1));
  const surface = r0 * r0 * (a0 - Math.sin(a0) * Math.cos(a0));
  const momentX_m3 = e * wall + (2 / 3) * (R * Math.sin(a1)) ** 3 - (2 / 3) * (r0 * Math.sin(a0)) ** 3;
  return { area_m2: wall - surface, momentX_m3 };
}
