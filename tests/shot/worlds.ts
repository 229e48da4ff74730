/** Small worlds for the laws, the same for both engines. */
import {
  createBalls,
  createElements,
  createTouched,
  createWorld,
  positionStep,
  setBall,
  stepElements,
  stepPositions,
  V,
  wallTable,
  PLANE,
  type ShotParameters,
  type World,
  type WorldInput,
  DEFAULT_RUN,
} from '../../src/core/shot';

export const STEEL = 7850;
export const ballMass = (radius_m: number): number => (STEEL * 4 * Math.PI * radius_m ** 3) / 3;

export interface Placed {
  readonly at: readonly [number, number, number];
  readonly velocity?: readonly [number, number, number];
  readonly spin?: readonly [number, number, number];
  readonly radius_m?: number;
}

/** A world of steel balls of 6 mm radius where nothing else is said. */
export function worldOf(
  balls: readonly Placed[],
  input: Omit<WorldInput, 'balls' | 'walls'> & { walls?: number[][] },
): World {
  const state = createBalls(balls.length);
  balls.forEach((ball, i) => {
    const r = ball.radius_m ?? 0.006;
    setBall(state, i, ball.at, r, ballMass(r));
    state.motion.set([...(ball.velocity ?? [0, 0, 0]), ...(ball.spin ?? [0, 0, 0])], i * V);
  });
  return createWorld({ ...input, balls: state, walls: wallTable(input.walls ?? []) });
}

export type Engine = 'positions' | 'elements';
export const ENGINES: readonly Engine[] = ['positions', 'elements'];

/** Runs for `time_s`; `look` is called after each step. Returns the step. */
export function runWorld(
  world: World,
  engine: Engine,
  time_s: number,
  acceleration = 9.81,
  look?: () => void,
): number {
  const touched = createTouched(world.balls.count);
  const bound = {
    tolerance: 0.002,
    diameter_m: 0.012,
    acceleration: Math.max(acceleration, 9.81),
    layers: 4,
  };
  const elements = createElements(world, bound);
  const most = engine === 'positions' ? positionStep(0.01, 0.012, acceleration) / 2 : elements.step_s;
  const steps = Math.ceil(time_s / most);
  const h = time_s / steps;
  for (let n = 0; n < steps; n++) {
    if (engine === 'positions') stepPositions(world, touched, h, acceleration);
    else stepElements(world, elements, h);
    look?.();
  }
  return h;
}

/** Six planes around [0, size]^3. */
export const box = (size: number): number[][] => [
  [PLANE, 1, 0, 0, 0],
  [PLANE, -1, 0, 0, -size],
  [PLANE, 0, 1, 0, 0],
  [PLANE, 0, -1, 0, -size],
  [PLANE, 0, 0, 1, 0],
  [PLANE, 0, 0, -1, -size],
];

/** The exciter of the invented roller Alder One. */
export const ALDER_ONE: ShotParameters = {
  ...DEFAULT_RUN,
  chamber: { radius_m: 0.11, eccentricity_m: 0.046, chord_x_m: null },
  baffle: {
    psi_deg: 66,
    beta_deg: 4,
    leg1_m: 0.09,
    leg2_m: 0.02,
    side: 1,
    pocket_side: 1,
    half_thickness_m: 0.004,
  },
  shot: {
    mass_kg: 60.2,
    length_m: 1.05,
    density_kg_m3: STEEL,
    packing: 0.62,
    ball_diameter_m: 0.012,
    size_spread: 0.1,
  },
};
