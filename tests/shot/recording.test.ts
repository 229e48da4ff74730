/** A recording gives back what was recorded, at any time and in any order. */
import { describe, expect, it } from 'vitest';
import {
  advance,
  createSimulation,
  openRecording,
  P,
  pocketOf,
  readShot,
  recordShot,
  type Recording,
  type ShotParameters,
} from '../../src/core/shot';
import { ALDER_ONE } from './worlds';

const SMALL: ShotParameters = { ...ALDER_ONE, slice: { ...ALDER_ONE.slice, depth_m: 0.036 }, stop_Hz: 1.9 };
const FRAMES = 60;

function drain(p: ShotParameters, rate: number, most?: number): ArrayBuffer {
  const run = recordShot(p, rate, most);
  for (;;) {
    const { done, value } = run.next();
    if (done === true) return value;
  }
}
const bytes = drain(SMALL, 60);
function open(buffer: ArrayBuffer): Recording {
  const opened = openRecording(buffer);
  if (!opened.ok) throw new Error(JSON.stringify(opened.faults));
  return opened.value;
}
const recording = open(bytes);

describe('recording', () => {
  it('holds the places of the run to half a quantum, sought in any order', () => {
    const sim = createSimulation(SMALL);
    const frames = recording.readings.length;
    expect(frames).toBeGreaterThan(FRAMES - 2);
    const truth: Float64Array[] = [];
    for (let f = 0; f < frames; f++) {
      advance(sim, (sim.end_s * f) / (frames - 1));
      truth.push(sim.world.balls.position.slice());
    }
    const out = new Float32Array(4 * recording.count);
    const order = [...Array(frames).keys(), frames - 1, 0, 17, 16, 15, 40, 39, 41, 3, 33, 31];
    for (const frame of order) {
      recording.placeAt(recording.readings[frame]!.time_s, out);
      let worst = 0;
      for (let i = 0; i < recording.count; i++) {
        for (let k = 0; k < 4; k++) {
          let miss = out[4 * i + k]! - truth[frame]![i * P + k]!;
          if (k === 2) miss -= SMALL.slice.depth_m * Math.round(miss / SMALL.slice.depth_m);
          worst = Math.max(worst, Math.abs(miss));
        }
      }
      // Times are single precision, so a frame may be missed by a hair: 2 m/s over that is far below a quantum.
      expect(worst).toBeLessThan(1.2e-5);
    }
  });

  it('keeps the readings, which agree with the balls', () => {
    const out = new Float32Array(4 * recording.count);
    const last = recording.readings[recording.readings.length - 1]!;
    recording.placeAt(last.time_s, out);
    const sim = createSimulation(SMALL);
    const { balls, turning } = sim.world;
    for (let i = 0; i < balls.count; i++) balls.position.set(out.subarray(4 * i, 4 * i + 3), i * P);
    const read = readShot(SMALL, pocketOf(SMALL.chamber, SMALL.baffle), balls, turning, last.time_s);
    expect(read.shot_U_kgm).toBeCloseTo(last.shot_U_kgm, 3);
    expect(Math.abs(read.captured - last.captured)).toBeLessThan(2.5 / recording.count);
  });

  it('takes at most 8 bytes a ball and frame', () => {
    expect(bytes.byteLength).toBeLessThan(8 * recording.count * recording.readings.length);
  });

  it('stands between two frames halfway', () => {
    const [a, b, c] = [0, 0.5, 1].map((s) => {
      const out = new Float32Array(4 * recording.count);
      recording.placeAt(((20 + s) * recording.duration_s) / (recording.readings.length - 1), out);
      return out;
    });
    for (let i = 0; i < 4 * recording.count; i += 4)
      expect(Math.abs(b![i]! - (a![i]! + c![i]!) / 2)).toBeLessThan(3e-5);
  });

  it('refuses what is no recording, and one whose parameters were changed', () => {
    expect(openRecording(new ArrayBuffer(100)).ok).toBe(false);
    expect(openRecording(bytes.slice(0, bytes.byteLength - 5)).ok).toBe(false);
    const changed = bytes.slice(0);
    const text = new Uint8Array(changed);
    const at = new TextDecoder('latin1').decode(text).indexOf('60.2');
    text[at] = '7'.charCodeAt(0);
    const opened = openRecording(changed);
    expect(opened.ok ? '' : opened.faults[0]!.path).toBe('parameters_hash');
  });
});
