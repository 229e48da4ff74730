/** Opens a recording: its readings at once, the balls' places at any time. */
import { fail, message, ok, printFound, type Result } from '../kernel';
import type { ShotParameters } from './parameters';
import type { Readings } from './readings';
import {
  MAGIC,
  padded,
  parametersHash,
  READING_NUMBERS,
  readingAt,
  RECORDING_VERSION,
  type RecordingHeader,
} from './recording-format';
import { readVarints } from './varint';

export interface Recording {
  readonly parameters: ShotParameters;
  readonly parameters_hash: string;
  readonly count: number;
  readonly duration_s: number;
  readonly readings: readonly Readings[];
  /** Writes x, y, z and radius of every ball at a time (m, body frame); straight lines between frames. */
  placeAt(time_s: number, out: Float32Array): void;
}

/** Reads a recording's file; a file of another kind, version or of changed parameters is a fault. */
export function openRecording(buffer: ArrayBuffer, file = 'recording'): Result<Recording> {
  const refuse = (path: string, found: unknown, key: string): Result<Recording> =>
    fail([{ file, path, expected: message(key), found: printFound(found) }]);
  if (buffer.byteLength < 8) return refuse('length', buffer.byteLength, 'expected.recording');
  const [magic, jsonLength] = new Uint32Array(buffer, 0, 2);
  if (magic !== MAGIC) return refuse('magic', magic, 'expected.recording');
  if (8 + jsonLength! > buffer.byteLength) return refuse('header', jsonLength, 'expected.wholeFile');
  const header = JSON.parse(
    new TextDecoder().decode(new Uint8Array(buffer, 8, jsonLength)),
  ) as RecordingHeader;
  if (header.schema_version !== RECORDING_VERSION)
    return refuse('schema_version', header.schema_version, 'expected.recordingVersion');
  const { parameters, count, frames } = header;
  if (header.parameters_hash !== parametersHash(parameters))
    return refuse('parameters_hash', header.parameters_hash, 'expected.hashOfParameters');

  const radiiAt = 8 + padded(jsonLength!);
  const readingsAt = radiiAt + padded(2 * count);
  const endsAt = readingsAt + 4 * READING_NUMBERS * frames;
  const framesAt = endsAt + 4 * frames;
  if (framesAt > buffer.byteLength) return refuse('frames', frames, 'expected.wholeFile');
  const radii = Float32Array.from(new Uint16Array(buffer, radiiAt, count), (r) => r * 1e-6);
  const numbers = new Float32Array(buffer, readingsAt, READING_NUMBERS * frames);
  const ends = new Uint32Array(buffer, endsAt, frames);
  if (framesAt + ends[frames - 1]! > buffer.byteLength) return refuse('frames', frames, 'expected.wholeFile');
  const readings = Array.from({ length: frames }, (_, frame) => readingAt(numbers, frame));
  const decode = createDecoder(new Uint8Array(buffer, framesAt), ends, 3 * count);
  const { slice } = parameters;
  const period = slice.dimension === 3 && slice.ends === 'periodic' ? slice.depth_m : 0;
  const duration_s = readings[frames - 1]!.time_s;
  const from = new Int32Array(3 * count);
  const to = new Int32Array(3 * count);

  return ok({
    parameters,
    parameters_hash: header.parameters_hash,
    count,
    duration_s,
    readings,
    placeAt(time_s, out) {
      const at =
        duration_s === 0 ? 0 : Math.min(frames - 1, Math.max(0, (time_s / duration_s) * (frames - 1)));
      const frame = Math.floor(at);
      const share = at - frame;
      decode(frame, from);
      if (share > 0) decode(frame + 1, to);
      else to.set(from);
      const q = header.quantum_m;
      const [x0, y0, z0] = header.origin_m;
      for (let i = 0, o = 0; i < 3 * count; i += 3, o += 4) {
        out[o] = x0 + q * (from[i]! + share * (to[i]! - from[i]!));
        out[o + 1] = y0 + q * (from[i + 1]! + share * (to[i + 1]! - from[i + 1]!));
        let z = q * from[i + 2]!;
        let way = q * (to[i + 2]! - from[i + 2]!);
        // A ball that leaves a periodic slice at one end comes in at the other.
        if (period > 0) way -= period * Math.round(way / period);
        z += z0 + share * way;
        out[o + 2] = period > 0 ? z - period * Math.floor(z / period) : z;
        out[o + 3] = radii[i / 3]!;
      }
    },
  });
}

/** Decodes any frame: on from the last one where that is near, else from the key frame before it. */
function createDecoder(
  bytes: Uint8Array,
  ends: Uint32Array,
  size: number,
): (frame: number, out: Int32Array) => void {
  const start = (frame: number): number => (frame === 0 ? 0 : ends[frame - 1]!);
  let now = new Int32Array(size);
  let last = new Int32Array(size);
  const miss = new Int32Array(size);
  let known = -1;
  let before = -1;
  const step = (frame: number): void => {
    const at = start(frame);
    if (bytes[at] === 1) {
      for (let i = 0; i < size; i++) now[i] = bytes[at + 1 + 2 * i]! | (bytes[at + 2 + 2 * i]! << 8);
      last.set(now);
    } else {
      readVarints(bytes, at + 1, miss);
      for (let i = 0; i < size; i++) last[i] = miss[i]! + 2 * now[i]! - last[i]!;
      [now, last] = [last, now];
    }
    before = bytes[at] === 1 ? -1 : known;
    known = frame;
  };
  return (frame, out) => {
    // Playing asks for each frame twice: as the end of one stretch and as the start of the next.
    if (frame === before && frame >= 0) {
      out.set(last);
      return;
    }
    if (known < 0 || frame < known) {
      let key = frame;
      while (bytes[start(key)] !== 1) key--;
      step(key);
    } else if (frame > known) {
      let key = frame;
      while (key > known && bytes[start(key)] !== 1) key--;
      if (key > known) step(key);
    }
    while (known < frame) step(known + 1);
    out.set(now);
  };
}
