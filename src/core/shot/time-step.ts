/**
 * Step sizes from a stated bound on the overlap of pressed balls.
 *
 * Under n layers pressed by an acceleration a, a contact carries about n m a. The position-based step stores that
 * load as an overlap of 2 n a h^2 in two steps' work; with n = 3.5 layers on the mean the overlap is tol d when
 * h = sqrt(tol d / (7 a)). The spring of a discrete element is made as stiff as n m a / (tol d), and a twelfth
 * of a contact's duration pi sqrt(m / (2 k)) is its step.
 */

/** Greatest position-based step: a ball falling 2 m/s moves less than a tenth of 12 mm. */
export const GREATEST_STEP_S = 4e-4;

/** Position-based step in s for the overlap bound `tolerance` (share of the diameter) at `acceleration` m/s2. */
export const positionStep = (tolerance: number, diameter_m: number, acceleration: number): number =>
  Math.min(GREATEST_STEP_S, Math.sqrt((tolerance * diameter_m) / (7 * Math.max(acceleration, 1e-9))));

/** Discrete-element step in s under `layers` layers. */
export const elementStep = (
  tolerance: number,
  diameter_m: number,
  acceleration: number,
  layers: number,
): number => (Math.PI / 12) * Math.sqrt((tolerance * diameter_m) / (2 * layers * acceleration));

/** Spring stiffness in N/m that belongs to `elementStep`. */
export const elementStiffness = (
  tolerance: number,
  diameter_m: number,
  acceleration: number,
  layers: number,
  mass_kg: number,
): number => (layers * mass_kg * acceleration) / (tolerance * diameter_m);
