/**
 * One scene for several engines: steel balls in a cubic box whose gravity turns once a second, first at rest to settle.
 * Equal in all: balls, sizes, masses, first places, the six flat walls, friction, restitution, the turning of gravity,
 * one thread, and that overlaps are read from the centres by the same code.
 */
import { seededRandom } from '../../src/core/kernel';

export const SIDE_M = 0.078;
export const DIAMETER_M = 0.012;
export const FRICTION = 0.3;
export const RESTITUTION = 0.3;
const COUNT = 180;
const TURN_RAD_S = 2 * Math.PI;
const SAMPLES = 10;

export interface Start {
  readonly radius_m: number;
  readonly at: readonly [number, number, number];
}

const random = seededRandom(4);
export const STARTS: readonly Start[] = Array.from({ length: COUNT }, (_, i) => ({
  radius_m: (DIAMETER_M / 2) * (1 + 0.1 * random.between(-1, 1)),
  at: [
    0.0075 + 0.0128 * (i % 6),
    0.0075 + 0.0128 * Math.floor(i / 36),
    0.0075 + 0.0128 * (Math.floor(i / 6) % 6),
  ],
}));

export interface Scene {
  readonly name: string;
  readonly gravity_m_s2: number;
  readonly settle_s: number;
  readonly run_s: number;
}

export const SCENES: readonly [Scene, Scene] = [
  { name: 'tumbling at 1 g', gravity_m_s2: 9.81, settle_s: 0.25, run_s: 1 },
  { name: 'pressed at 300 g', gravity_m_s2: 2943, settle_s: 0.1, run_s: 0.25 },
];

/** An engine with the scene in it. */
export interface Engine {
  /** One step under gravity along (x, y). */
  step(gravity_x: number, gravity_y: number): void;
  /** Coordinate of a ball's centre, m. */
  at(ball: number, axis: 0 | 1 | 2): number;
  free?(): void;
}

export interface Outcome {
  readonly step_s: number;
  /** Overlaps of touching pairs as shares of their mean diameter, and how many touch a ball. */
  readonly mean: number;
  readonly p95: number;
  readonly pairs: number;
  /** Simulated seconds a second of processor time, after settling. */
  readonly speed: number;
  readonly ball_steps_s: number;
}

function collect(engine: Engine, into: number[]): void {
  const places = STARTS.map((_, i) => [engine.at(i, 0), engine.at(i, 1), engine.at(i, 2)] as const);
  for (let i = 0; i < COUNT; i++) {
    for (let j = 0; j < i; j++) {
      const [a, b] = [places[i]!, places[j]!];
      const reach = STARTS[i]!.radius_m + STARTS[j]!.radius_m;
      const d = Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
      if (d < reach) into.push((reach - d) / reach);
    }
  }
}

/** Settles, then turns gravity; time by the processor's, so that other work on the machine counts less. */
export function runBox(engine: Engine, scene: Scene, step_s: number): Outcome {
  const g = scene.gravity_m_s2;
  const steps = Math.round(scene.run_s / step_s);
  for (let n = 0; n < scene.settle_s / step_s; n++) engine.step(g, 0);
  const overlaps: number[] = [];
  let spent_s = 0;
  for (let k = 0; k < SAMPLES; k++) {
    const start = process.cpuUsage();
    const end = Math.round(((k + 1) * steps) / SAMPLES);
    for (let n = Math.round((k * steps) / SAMPLES); n < end; n++) {
      const angle = TURN_RAD_S * n * step_s;
      engine.step(g * Math.cos(angle), -g * Math.sin(angle));
    }
    spent_s += process.cpuUsage(start).user / 1e6;
    collect(engine, overlaps);
  }
  engine.free?.();
  overlaps.sort((a, b) => a - b);
  return {
    step_s,
    mean: overlaps.reduce((sum, v) => sum + v, 0) / Math.max(1, overlaps.length),
    p95: overlaps[Math.floor(0.95 * overlaps.length)] ?? 0,
    pairs: overlaps.length / SAMPLES / COUNT,
    speed: scene.run_s / spent_s,
    ball_steps_s: (COUNT * steps) / spent_s,
  };
}

/**
 * Speed of an engine at the step where its overlap `of` equals `wanted`: straight on logarithms between the two
 * outcomes about it; null when none of its steps brackets it.
 */
export function speedAt(
  outcomes: readonly Outcome[],
  of: (o: Outcome) => number,
  wanted: number,
): number | null {
  for (let i = 1; i < outcomes.length; i++) {
    const [a, b] = [outcomes[i - 1]!, outcomes[i]!];
    if ((of(a) - wanted) * (of(b) - wanted) > 0) continue;
    const s = Math.log(wanted / of(a)) / Math.log(of(b) / of(a));
    return a.speed * (b.speed / a.speed) ** s;
  }
  return null;
}
