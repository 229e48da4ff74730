/**
 * Centrifugal force of a turning unbalance: F = U w^2 with U = m r, the static moment about the axis of turning.
 * Source: T. Bevan, The Theory of Machines, ch. 15; R. S. Khurmi, Engineering Mechanics, ch. 28.
 */

/** Turning speed in rad/s from turns a minute; exact, any sign. */
export const rpmToRadPerS = (speed_rpm: number): number => (speed_rpm * 2 * Math.PI) / 60;

/**
 * Unbalance (static moment) U = m r of a mass about the axis.
 * @param mass_kg mass, 0 or more
 * @param radius_m distance of its centre of mass from the axis
 * @returns kg m
 */
export const unbalanceOf = (mass_kg: number, radius_m: number): number => mass_kg * radius_m;

/**
 * Centrifugal force F = U w^2 of an unbalance, radial, turning with it.
 * @param unbalance_kgm static moment about the axis
 * @param omega_rad_s turning speed; its sign does not matter
 * @returns N
 */
export const centrifugalForce = (unbalance_kgm: number, omega_rad_s: number): number =>
  unbalance_kgm * omega_rad_s * omega_rad_s;

/**
 * Magnitude of two unbalances that stand at a phase angle: sqrt(U1^2 + U2^2 + 2 U1 U2 cos phi), the vector sum.
 * Aligned (0) gives the sum, opposed (pi) the difference.
 * @param first_kgm, second_kgm magnitudes, 0 or more
 * @param phase_rad angle between them
 */
export function combinedUnbalance(first_kgm: number, second_kgm: number, phase_rad: number): number {
  return Math.hypot(first_kgm + second_kgm * Math.cos(phase_rad), second_kgm * Math.sin(phase_rad));
}

/**
 * Nominal amplitude of a drum that hangs free in its mounts, well above their natural frequency: U / m.
 * Source: common practice, no source; it is the limit of the forced response for w far above resonance.
 * @param vibrating_mass_kg above 0; null otherwise
 */
export function nominalAmplitude(unbalance_kgm: number, vibrating_mass_kg: number): number | null {
  return vibrating_mass_kg > 0 ? unbalance_kgm / vibrating_mass_kg : null;
}
