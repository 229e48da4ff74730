/**
 * Damping of the spring-dashpot contact that gives a wanted coefficient of restitution.
 *
 * The force is never let pull (clipped at zero), which ends a contact before the spring is relaxed and raises the
 * restitution above exp(-pi zeta / sqrt(1 - zeta^2)); see Schwager and Poeschel, "Coefficient of restitution and
 * linear-dashpot model revisited", Granular Matter 9 (2007). The ratio is therefore found by running the very same
 * discrete contact that the step makes.
 */

/** Steps a contact lasts without damping; the step of `elementStep`. */
export const STEPS_A_CONTACT = 12;

/** Where in a step the contact may begin; restitution is averaged over these. */
const PHASES = 5;

/** Restitution of the discrete contact with damping ratio zeta = c / (2 sqrt(k m)), k = m = 1. */
export function restitutionOf(zeta: number): number {
  const h = Math.PI / STEPS_A_CONTACT;
  let sum = 0;
  for (let phase = 0; phase < PHASES; phase++) {
    let overlap = -((phase + 0.5) / PHASES) * h;
    let speed = 1;
    for (let n = 0; n < 20 * STEPS_A_CONTACT; n++) {
      if (overlap > 0) speed -= h * Math.max(0, overlap + 2 * zeta * speed);
      overlap += h * speed;
      if (overlap < 0 && speed < 0) break;
    }
    sum -= speed;
  }
  return sum / PHASES;
}

/** Damping ratio for a restitution in (0, 1]; by bisection, since restitution falls as damping rises. */
export function dampingRatio(restitution: number): number {
  let low = 0;
  let high = 3;
  for (let n = 0; n < 50; n++) {
    const middle = 0.5 * (low + high);
    if (restitutionOf(middle) > restitution) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}
