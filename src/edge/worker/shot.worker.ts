/** Runs the loose shot off the main thread, frame by frame, and hands the frames over without copying. */
import {
  advance,
  createSimulation,
  P,
  pocketOf,
  type Readings,
  readShot,
  type ShotParameters,
  validateShot,
} from '../../core/shot';
import type { ShotFrames, ShotReply, ShotRequest } from './shot-protocol';

/** Frames a second of the run. */
const FRAME_RATE_HZ = 100;

const reply = (message: ShotReply, transfer: Transferable[] = []): void => {
  self.postMessage(message, { transfer });
};

self.onmessage = (event: MessageEvent<ShotRequest>) => {
  try {
    const valid = validateShot(event.data.parameters);
    if (!valid.ok) {
      reply({ type: 'faults', faults: valid.faults });
      return;
    }
    const frames = record(valid.value);
    reply({ type: 'frames', frames }, [
      frames.radii_m.buffer as ArrayBuffer,
      frames.places_m.buffer as ArrayBuffer,
    ]);
  } catch (error) {
    reply({ type: 'broken', reason: (error as Error).message });
  }
};

function record(p: ShotParameters): ShotFrames {
  const sim = createSimulation(p);
  const { balls } = sim.world;
  const pocket = pocketOf(p.chamber, p.baffle);
  const steps = Math.ceil(sim.end_s * FRAME_RATE_HZ);
  const places_m = new Float32Array((steps + 1) * balls.count * 3);
  const readings: Readings[] = [];
  const started = performance.now();
  for (let frame = 0; frame <= steps; frame++) {
    const time_s = (sim.end_s * frame) / steps;
    advance(sim, time_s);
    for (let i = 0; i < balls.count; i++)
      for (let k = 0; k < 3; k++) places_m[(frame * balls.count + i) * 3 + k] = balls.position[i * P + k]!;
    readings.push(readShot(p, pocket, balls, sim.world.turning, time_s));
    if (frame % 4 === 0) {
      // Fast turning takes shorter steps, so what is left costs more than what is done: time goes with its square.
      const share = (frame / steps) ** 1.5;
      const spent_s = (performance.now() - started) / 1000;
      reply({ type: 'progress', share, left_s: share < 0.05 ? null : (spent_s * (1 - share)) / share });
    }
  }
  const radii_m = Float32Array.from({ length: balls.count }, (_, i) => balls.position[i * P + 3]!);
  return { parameters: p, count: balls.count, radii_m, places_m, readings };
}
