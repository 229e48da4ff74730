/**
 * A run: the shot is poured in and settles at rest, the housing spins up, and the state can be looked at on the
 * way. The caller decides how far to go in one call, so that a worker can report progress and be cancelled.
 */
import { STANDARD_GRAVITY } from '../kernel';
import { P, V, type Balls } from './balls';
import { fillChamber } from './fill';
import { rotationSense, type ShotParameters } from './parameters';
import { spinUpAt, timeToReach } from './spin-up';
import { createElements, stepElements, type Elements } from './step-elements';
import { createTouched, stepPositions, type Touched } from './step-positions';
import { positionStep } from './time-step';
import { chamberWalls } from './walls';
import { createWorld, type Drive, type World } from './world';

export interface Simulation {
  readonly parameters: ShotParameters;
  readonly world: World;
  readonly touched: Touched;
  /** Time at which the stop frequency is reached, s. */
  readonly end_s: number;
  /** Greatest distance of shot from the shaft axis, m. */
  readonly reach_m: number;
  steps: number;
}

const SETTLE_S = 0.5;
/** Share of speed lost a step while settling. */
const SETTLE_DAMPING = 0.01;

/** The housing's turning for a run, time from 0 at the start of the spin-up, at rest before. */
export function driveOf(p: ShotParameters): Drive {
  const sense = rotationSense(p.direction);
  return (time_s, out) => {
    spinUpAt(p.spin_up, time_s, out);
    out.angle_rad = p.start_angle_rad + sense * out.angle_rad;
    out.speed_rad_s *= sense;
    out.acceleration_rad_s2 *= sense;
  };
}

/** Pours the shot and lets it settle at the start angle; the spin-up then starts at time 0. */
export function createSimulation(p: ShotParameters): Simulation {
  const end_s = timeToReach(p.spin_up, p.stop_Hz);
  if (end_s === null)
    throw new Error(`shot/createSimulation: stop_Hz, got ${p.stop_Hz}, wanted one the spin-up reaches`);
  const walls = chamberWalls(p.chamber, p.baffle, p.slice);
  const { balls, start_size } = fillChamber(p, walls);
  const world = createWorld({
    balls,
    walls,
    period_m: p.slice.dimension === 3 && p.slice.ends === 'periodic' ? p.slice.depth_m : 0,
    // Settling needs a pull even in a run without gravity.
    gravity: [STANDARD_GRAVITY, 0, 0],
    friction: p.friction,
    drive: driveOf(p),
  });
  const touched = createTouched(balls.count);
  settle(world, touched, p, start_size);
  const spinning: World = {
    ...world,
    gravity: [p.gravity ? STANDARD_GRAVITY : 0, 0, 0],
    restitution: p.restitution,
    time_s: 0,
  };
  return {
    parameters: p,
    world: spinning,
    touched,
    end_s,
    reach_m: p.chamber.radius_m + p.chamber.eccentricity_m,
    steps: 0,
  };
}

function settle(world: World, touched: Touched, p: ShotParameters, start_size: number): void {
  const { balls, neighbours } = world;
  const h = positionStep(p.tolerance, p.shot.ball_diameter_m, STANDARD_GRAVITY);
  const steps = Math.ceil(SETTLE_S / h);
  const full = Float64Array.from({ length: balls.count }, (_, i) => balls.position[i * P + 3]!);
  world.time_s = -SETTLE_S;
  for (let n = 0; n < steps; n++) {
    const size = Math.min(1, start_size + (1 - start_size) * ((3 * n) / steps));
    if (start_size < 1 && size <= 1 && 3 * n <= steps + 3) {
      for (let i = 0; i < balls.count; i++) balls.position[i * P + 3] = full[i]! * size;
      neighbours.slack_m = -1;
    }
    stepPositions(world, touched, h, STANDARD_GRAVITY);
    damp(balls, 1 - SETTLE_DAMPING);
  }
  for (let i = 0; i < balls.count; i++) balls.motion.fill(0, i * V, i * V + 6);
}

function damp(balls: Balls, keep: number): void {
  for (let i = 0; i < balls.count; i++) for (let k = 0; k < 6; k++) balls.motion[i * V + k]! *= keep;
}

/** Greatest body force now, m/s2: gravity, centrifugal and Euler at the reach of the chamber. */
export function greatestAcceleration(sim: Simulation): number {
  const { turning } = sim.world;
  const w = turning.speed_rad_s;
  return STANDARD_GRAVITY + (w * w + Math.abs(turning.acceleration_rad_s2)) * sim.reach_m;
}

/** Steps on to `time_s` (not beyond the end of the run), the last step shortened to meet it. */
export function advance(sim: Simulation, time_s: number): void {
  const { world, parameters: p, touched } = sim;
  const target = Math.min(time_s, sim.end_s);
  while (world.time_s < target - 1e-12) {
    const acceleration = greatestAcceleration(sim);
    const bound = positionStep(p.tolerance, p.shot.ball_diameter_m, acceleration);
    const left = target - world.time_s;
    // Equal steps to the target: a tiny last step would store no load.
    const h = left / Math.ceil(left / bound);
    stepPositions(world, touched, h, acceleration);
    sim.steps++;
  }
}

export const isFinished = (sim: Simulation): boolean => sim.world.time_s >= sim.end_s - 1e-12;

/** Layers that press on the lowest balls, for the springs of the reference. */
const LAYERS = 8;

/** The reference engine for a simulation that has settled: springs stiff enough for its greatest acceleration. */
export function createReference(sim: Simulation): Elements {
  const { parameters: p, world } = sim;
  const w = 2 * Math.PI * p.stop_Hz;
  const acceleration = STANDARD_GRAVITY + w * w * sim.reach_m;
  const bound = { tolerance: p.tolerance, diameter_m: p.shot.ball_diameter_m, acceleration, layers: LAYERS };
  return createElements(world, bound);
}

/** As `advance`, with discrete elements. */
export function advanceReference(sim: Simulation, elements: Elements, time_s: number): void {
  const { world } = sim;
  const target = Math.min(time_s, sim.end_s);
  while (world.time_s < target - 1e-12) {
    const left = target - world.time_s;
    stepElements(world, elements, left / Math.ceil(left / elements.step_s));
    sim.steps++;
  }
}
