/**
 * The housing and its shot in a general-purpose engine (rapier3d-compat 0.12), seen from the room: a turning body of
 * flat-sided pieces, loose spheres, plain gravity. Nothing of core/shot moves its balls; core/shot gives it the first
 * places (after settling) and reads the last ones with its own rule for what is captured.
 *
 * Pitfalls of this version: it forgives 1 mm of overlap and sees contacts 2 mm away whatever the size of the bodies
 * (no length unit can be set); there is no hollow cylinder, so the bore is a ring of cuboids; a slice cannot repeat,
 * so both engines get end plates; its world lives outside of the collected memory and must be freed by hand.
 */
import type RapierModule from '@dimforge/rapier3d-compat';
import {
  advance,
  baffleLegs,
  createBalls,
  createSimulation,
  massOf,
  P,
  pocketOf,
  readShot,
  setBall,
  type Balls,
  type Readings,
  type ShotParameters,
} from '../../src/core/shot';

export type Rapier = typeof RapierModule;

/** Flat pieces of the bore: 0.13 mm out of round at 110 mm. */
const FACETS = 64;
const WALL_THICKNESS_M = 0.03;

export interface RapierRun {
  readonly readings: Readings;
  /** Overlaps of touching balls as shares of their mean diameter. */
  readonly overlap_mean: number;
  readonly overlap_p95: number;
  /** Balls that are outside of the chamber by more than half a diameter at the end. */
  readonly lost: number;
}

/** Readings of core/shot itself when the spin-up reaches the stop frequency. */
export function runOurs(p: ShotParameters): Readings {
  const sim = createSimulation(p);
  advance(sim, sim.end_s);
  const { balls, turning } = sim.world;
  return readShot(p, pocketOf(p.chamber, p.baffle), balls, turning, sim.end_s);
}

/** The same scene by the general-purpose engine with steps of `step_s`. */
export function runRapier(RAPIER: Rapier, p: ShotParameters, step_s: number): RapierRun {
  // Not stepped: it settles the shot, which is where both start.
  const sim = createSimulation(p);
  const start = sim.world.balls;
  const world = new RAPIER.World({ x: p.gravity ? 9.80665 : 0, y: 0, z: 0 });
  const settings = world.integrationParameters;
  settings.erp = 0.8;
  settings.allowedLinearError = 1e-7;
  settings.predictionDistance = 1e-3;

  const housing = world.createRigidBody(RAPIER.RigidBodyDesc.kinematicPositionBased());
  const wall = (desc: RapierModule.ColliderDesc): void => {
    world.createCollider(desc.setFriction(p.friction.wall).setRestitution(p.restitution), housing);
  };
  const about = (angle: number): { x: number; y: number; z: number; w: number } => ({
    x: 0,
    y: 0,
    z: Math.sin(angle / 2),
    w: Math.cos(angle / 2),
  });
  const { radius_m: r, eccentricity_m: e } = p.chamber;
  const depth = p.slice.depth_m;
  const t = WALL_THICKNESS_M / 2;
  const outer = r + 2 * t;
  for (let k = 0; k < FACETS; k++) {
    const angle = (2 * Math.PI * k) / FACETS;
    wall(
      RAPIER.ColliderDesc.cuboid(t, outer * Math.tan(Math.PI / FACETS), depth)
        .setTranslation(e + (r + t) * Math.cos(angle), (r + t) * Math.sin(angle), depth / 2)
        .setRotation(about(angle)),
    );
  }
  for (const leg of p.baffle === null ? [] : baffleLegs(p.chamber, p.baffle)) {
    const [dx, dy] = [leg.x2 - leg.x1, leg.y2 - leg.y1];
    // A plate with round edges: a cuboid of no thickness with the half thickness around it.
    const rim = p.baffle!.half_thickness_m;
    wall(
      RAPIER.ColliderDesc.roundCuboid(Math.hypot(dx, dy) / 2, 1e-5, depth, rim)
        .setTranslation((leg.x1 + leg.x2) / 2, (leg.y1 + leg.y2) / 2, depth / 2)
        .setRotation(about(Math.atan2(dy, dx))),
    );
  }
  for (const z of [-t, depth + t]) wall(RAPIER.ColliderDesc.cuboid(outer, outer, t).setTranslation(e, 0, z));

  // The housing's frame and the room's are one at the start angle 0.
  const bodies = Array.from({ length: start.count }, (_, i) => {
    const [x, y, z, radius] = [0, 1, 2, 3].map((k) => start.position[i * P + k]!) as [
      number,
      number,
      number,
      number,
    ];
    const body = world.createRigidBody(
      RAPIER.RigidBodyDesc.dynamic().setTranslation(x, y, z).setCanSleep(false),
    );
    world.createCollider(
      RAPIER.ColliderDesc.ball(radius)
        .setDensity(p.shot.density_kg_m3)
        .setFriction(p.friction.ball)
        .setRestitution(p.restitution),
      body,
    );
    return body;
  });

  const steps = Math.ceil(sim.end_s / step_s);
  const h = sim.end_s / steps;
  settings.dt = h;
  const turning = { angle_rad: 0, speed_rad_s: 0, acceleration_rad_s2: 0 };
  for (let n = 1; n <= steps; n++) {
    sim.world.drive(n * h, turning);
    housing.setNextKinematicRotation(about(turning.angle_rad));
    world.step();
  }

  const end = createBalls(start.count);
  const [c, s] = [Math.cos(turning.angle_rad), Math.sin(turning.angle_rad)];
  let lost = 0;
  bodies.forEach((body, i) => {
    const { x, y, z } = body.translation();
    const radius = start.position[i * P + 3]!;
    setBall(end, i, [x * c + y * s, y * c - x * s, z], radius, massOf(start, i));
    if (Math.hypot(x * c + y * s - e, y * c - x * s) > r + radius) lost++;
  });
  world.free();
  const readings = readShot(p, pocketOf(p.chamber, p.baffle), end, turning, sim.end_s);
  const found = overlapsOf(end, 0);
  return { readings, ...found, lost };
}

/** Mean and 95th percentile of the overlaps of touching balls, as shares of their mean diameter. */
export function overlapsOf(balls: Balls, period_m: number): { overlap_mean: number; overlap_p95: number } {
  const { position: p, count } = balls;
  const found: number[] = [];
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < i; j++) {
      let dz = p[i * P + 2]! - p[j * P + 2]!;
      if (period_m > 0) dz -= period_m * Math.round(dz / period_m);
      const reach = p[i * P + 3]! + p[j * P + 3]!;
      const d = Math.hypot(p[i * P]! - p[j * P]!, p[i * P + 1]! - p[j * P + 1]!, dz);
      if (d < reach) found.push((reach - d) / reach);
    }
  }
  found.sort((a, b) => a - b);
  return {
    overlap_mean: found.reduce((sum, v) => sum + v, 0) / Math.max(1, found.length),
    overlap_p95: found[Math.floor(0.95 * found.length)] ?? 0,
  };
}
