/**
 * The shot's step against a general-purpose engine (rapier3d-compat) in one run: npx tsx tests/bench/shot-rapier.ts
 *
 * Equal: balls, sizes, masses, first places, walls (six flat ones), friction, restitution, gravity that turns at one
 * turn a second, single thread. Not equal: the engine is told to forgive no overlap (allowed error and prediction set
 * to the scale of the balls, erp 0.8), runs its default 4 solver iterations, and keeps single precision. Its step is
 * varied; its speed is read off where its overlap equals ours. Overlaps are of touching ball pairs.
 */
import RAPIER from '@dimforge/rapier3d-compat';
import { seededRandom } from '../../src/core/kernel';
import {
  createBalls,
  createTouched,
  createWorld,
  P,
  positionStep,
  setBall,
  stepPositions,
  wallTable,
} from '../../src/core/shot';
import { ballMass, box } from '../shot/worlds';

const SIDE_M = 0.078;
const COUNT = 180;
const DIAMETER_M = 0.012;
const SETTLE_S = 0.25;
const RUN_S = 0.5;
const FRICTION = 0.3;
const RESTITUTION = 0.3;
const TURN_RAD_S = 2 * Math.PI;
const SAMPLES = 10;

interface Outcome {
  readonly mean: number;
  readonly p95: number;
  /** Simulated seconds a second of processor time, after settling. */
  readonly speed: number;
  readonly ball_steps_s: number;
}

const random = seededRandom(4);
const START = Array.from({ length: COUNT }, (_, i) => ({
  radius: (DIAMETER_M / 2) * (1 + 0.1 * random.between(-1, 1)),
  at: [
    0.0075 + 0.0128 * (i % 6),
    0.0075 + 0.0128 * Math.floor(i / 36),
    0.0075 + 0.0128 * (Math.floor(i / 6) % 6),
  ] as [number, number, number],
}));

/** Overlaps of all touching pairs as shares of their mean diameter. */
function collect(at: (i: number, axis: number) => number, into: number[]): void {
  for (let i = 0; i < COUNT; i++) {
    for (let j = 0; j < i; j++) {
      const reach = START[i]!.radius + START[j]!.radius;
      const d = Math.hypot(at(i, 0) - at(j, 0), at(i, 1) - at(j, 1), at(i, 2) - at(j, 2));
      if (d < reach) into.push((reach - d) / reach);
    }
  }
}

function measure(
  h: number,
  step: (time_s: number) => void,
  at: (i: number, axis: number) => number,
): Outcome {
  const before = Math.round(SETTLE_S / h);
  const steps = Math.round(RUN_S / h);
  for (let n = 0; n < before; n++) step(0);
  const overlaps: number[] = [];
  let spent = 0;
  for (let k = 0; k < SAMPLES; k++) {
    const start = process.cpuUsage();
    const end = Math.round(((k + 1) * steps) / SAMPLES);
    for (let n = Math.round((k * steps) / SAMPLES); n < end; n++) step(n * h);
    spent += process.cpuUsage(start).user / 1e6;
    collect(at, overlaps);
  }
  overlaps.sort((a, b) => a - b);
  return {
    mean: overlaps.reduce((sum, v) => sum + v, 0) / overlaps.length,
    p95: overlaps[Math.floor(0.95 * overlaps.length)]!,
    speed: RUN_S / spent,
    ball_steps_s: (COUNT * steps) / spent,
  };
}

function ours(gravity: number): Outcome {
  const balls = createBalls(COUNT);
  START.forEach(({ at, radius }, i) => setBall(balls, i, at, radius, ballMass(radius)));
  let angle = 0;
  const world = createWorld({
    balls,
    walls: wallTable(box(SIDE_M)),
    gravity: [gravity, 0, 0],
    friction: FRICTION,
    restitution: RESTITUTION,
    drive: (_time, out) => {
      out.angle_rad = angle;
      out.speed_rad_s = out.acceleration_rad_s2 = 0;
    },
  });
  const touched = createTouched(COUNT);
  const h = positionStep(0.01, DIAMETER_M, gravity);
  const step = (time_s: number): void => {
    angle = TURN_RAD_S * time_s;
    stepPositions(world, touched, h, gravity);
  };
  return measure(h, step, (i, axis) => balls.position[i * P + axis]!);
}

function theirs(gravity: number, h: number): Outcome {
  const world = new RAPIER.World({ x: gravity, y: 0, z: 0 });
  const p = world.integrationParameters;
  p.dt = h;
  p.erp = 0.8;
  p.allowedLinearError = 1e-7;
  p.predictionDistance = 5e-4;
  const wall = (hx: number, hy: number, hz: number, x: number, y: number, z: number): void => {
    const desc = RAPIER.ColliderDesc.cuboid(hx, hy, hz).setTranslation(x, y, z);
    world.createCollider(desc.setFriction(FRICTION).setRestitution(RESTITUTION));
  };
  const [s, t] = [SIDE_M / 2, 0.02];
  for (const side of [-t, SIDE_M + t]) {
    wall(t, SIDE_M, SIDE_M, side, s, s);
    wall(SIDE_M, t, SIDE_M, s, side, s);
    wall(SIDE_M, SIDE_M, t, s, s, side);
  }
  const bodies = START.map(({ at, radius }) => {
    const body = world.createRigidBody(
      RAPIER.RigidBodyDesc.dynamic()
        .setTranslation(...at)
        .setCanSleep(false),
    );
    const desc = RAPIER.ColliderDesc.ball(radius).setDensity(7850);
    world.createCollider(desc.setFriction(FRICTION).setRestitution(RESTITUTION), body);
    return body;
  });
  const step = (time_s: number): void => {
    world.gravity = {
      x: gravity * Math.cos(TURN_RAD_S * time_s),
      y: -gravity * Math.sin(TURN_RAD_S * time_s),
      z: 0,
    };
    world.step();
  };
  const places = (i: number, axis: number): number => {
    const { x, y, z } = bodies[i]!.translation();
    return axis === 0 ? x : axis === 1 ? y : z;
  };
  const outcome = measure(h, step, places);
  world.free();
  return outcome;
}

/** Speed at which the overlap `of` equals `wanted`, straight on logarithms between the two nearest; null outside. */
function speedAt(rows: readonly Outcome[], of: (o: Outcome) => number, wanted: number): number | null {
  for (let i = 1; i < rows.length; i++) {
    const [a, b] = [rows[i - 1]!, rows[i]!];
    if ((of(a) - wanted) * (of(b) - wanted) > 0) continue;
    const s = Math.log(wanted / of(a)) / Math.log(of(b) / of(a));
    return a.speed * (b.speed / a.speed) ** s;
  }
  return null;
}

const show = (name: string, o: Outcome): void =>
  console.log(
    `  ${name}: overlap ${(100 * o.mean).toFixed(3)} % mean, ${(100 * o.p95).toFixed(3)} % p95, ` +
      `${o.speed.toFixed(3)} s/s, ${(o.ball_steps_s / 1e6).toFixed(3)} million ball-steps/s`,
  );

await RAPIER.init();
for (const [scene, g, steps] of [
  ['tumbling at 1 g', 9.81, [4e-3, 2e-3, 1e-3, 5e-4, 2.5e-4]],
  ['pressed at 300 g', 2943, [4e-4, 2e-4, 1e-4, 5e-5]],
] as const) {
  console.log(scene);
  ours(g);
  const us = ours(g);
  show('ours', us);
  const rows = steps.map((h) => {
    const row = theirs(g, h);
    show(`rapier3d-compat at ${h} s`, row);
    return row;
  });
  for (const [name, of] of [
    ['mean', (o: Outcome) => o.mean],
    ['p95', (o: Outcome) => o.p95],
  ] as const) {
    const speed = speedAt(rows, of, of(us));
    console.log(
      `  at equal ${name} overlap: ${speed === null ? 'not reached' : `${(us.speed / speed).toFixed(1)} times`}`,
    );
  }
}
