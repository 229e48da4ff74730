/** Writes a run into a recording, frame by frame. */
import { P, type Balls } from './balls';
import type { ShotParameters } from './parameters';
import { pocketOf } from './pocket';
import { readShot, type Readings } from './readings';
import {
  KEY_EVERY,
  MAGIC,
  padded,
  parametersHash,
  QUANTUM_M,
  readingNumbers,
  RECORDING_VERSION,
  type RecordingHeader,
} from './recording-format';
import { advance, createSimulation } from './simulation';
import { writeVarint } from './varint';

export interface Recorder {
  add(balls: Balls, readings: Readings): void;
  /** The whole recording as one buffer, which may be handed to another thread without copying. */
  finish(): ArrayBuffer;
}

/** A recorder for a run of `balls` with parameters `p`. */
export function createRecorder(p: ShotParameters, balls: Balls): Recorder {
  const { count } = balls;
  const { radius_m: r, eccentricity_m: e } = p.chamber;
  // z may stand a little outside of a periodic slice until it is wrapped.
  const origin: readonly [number, number, number] = [e - r, -r, -p.slice.depth_m / 2];
  const size = 3 * count;
  let now = new Int32Array(size);
  let last = new Int32Array(size);
  let beforeLast = new Int32Array(size);
  const frames: Uint8Array[] = [];
  const readings: number[] = [];
  const scratch = new Uint8Array(1 + 5 * size);
  const radii = Uint16Array.from({ length: count }, (_, i) => Math.round(balls.position[i * P + 3]! * 1e6));

  const keyFrame = (): Uint8Array => {
    const bytes = new Uint8Array(1 + 2 * size);
    bytes[0] = 1;
    for (let i = 0; i < size; i++) {
      bytes[1 + 2 * i] = now[i]! & 255;
      bytes[2 + 2 * i] = now[i]! >> 8;
    }
    return bytes;
  };

  return {
    add(state, reading) {
      for (let i = 0; i < size; i++) {
        const quanta = Math.round(
          (state.position[Math.floor(i / 3) * P + (i % 3)]! - origin[i % 3]!) / QUANTUM_M,
        );
        now[i] = Math.min(65535, Math.max(0, quanta));
      }
      let frame: Uint8Array | null = null;
      const isKey = frames.length % KEY_EVERY === 0;
      if (!isKey) {
        let at = 1;
        scratch[0] = 0;
        for (let i = 0; i < size; i++) at = writeVarint(scratch, at, now[i]! - 2 * last[i]! + beforeLast[i]!);
        if (at < 1 + 2 * size) frame = scratch.slice(0, at);
      }
      frame ??= keyFrame();
      frames.push(frame);
      readings.push(...readingNumbers(reading));
      // After a key frame balls are taken to stand still, so that decoding needs nothing before it.
      if (frame[0] === 1) last.set(now);
      [beforeLast, last, now] = [last, now, beforeLast];
    },
    finish() {
      const header: RecordingHeader = {
        schema_version: RECORDING_VERSION,
        parameters: p,
        parameters_hash: parametersHash(p),
        count,
        frames: frames.length,
        quantum_m: QUANTUM_M,
        origin_m: origin,
      };
      const json = new TextEncoder().encode(JSON.stringify(header));
      const radiiAt = 8 + padded(json.length);
      const readingsAt = radiiAt + padded(2 * count);
      const endsAt = readingsAt + 4 * readings.length;
      const framesAt = endsAt + 4 * frames.length;
      const buffer = new ArrayBuffer(framesAt + frames.reduce((sum, frame) => sum + frame.length, 0));
      new Uint32Array(buffer, 0, 2).set([MAGIC, json.length]);
      const bytes = new Uint8Array(buffer);
      bytes.set(json, 8);
      new Uint16Array(buffer, radiiAt, count).set(radii);
      new Float32Array(buffer, readingsAt, readings.length).set(readings);
      const ends = new Uint32Array(buffer, endsAt, frames.length);
      let at = 0;
      frames.forEach((frame, i) => {
        bytes.set(frame, framesAt + at);
        at += frame.length;
        ends[i] = at;
      });
      return buffer;
    },
  };
}

export const FRAME_RATE_HZ = 100;

/**
 * Runs the shot and records it. Yields the share of the frames done after each, so that the caller can show progress
 * or stop; returns the recording. Stops early after `most` frames when given.
 */
export function* recordShot(
  p: ShotParameters,
  rate_Hz = FRAME_RATE_HZ,
  most = Infinity,
): Generator<number, ArrayBuffer, void> {
  const sim = createSimulation(p);
  const { world } = sim;
  const pocket = pocketOf(p.chamber, p.baffle);
  const recorder = createRecorder(p, world.balls);
  const steps = Math.ceil(sim.end_s * rate_Hz);
  for (let frame = 0; frame <= steps && frame < most; frame++) {
    const time_s = (sim.end_s * frame) / steps;
    advance(sim, time_s);
    // The world remembers the turning of its last kick; a reading wants that of now.
    world.drive(time_s, world.turning);
    recorder.add(world.balls, readShot(p, pocket, world.balls, world.turning, time_s));
    yield frame / steps;
  }
  return recorder.finish();
}
