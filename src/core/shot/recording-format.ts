/**
 * The file of a recording. Little-endian.
 *
 *   magic u32 | header length u32 | header (JSON, UTF-8), padded to 4
 *   radii u16 a ball, in micrometres, padded to 4
 *   readings f32, READING_NUMBERS a frame
 *   ends of the frames u32 a frame, counted from the first frame's start
 *   frames: one byte (1 key, 0 difference), then the balls
 *
 * A place is three whole numbers of quanta from the origin. A key frame holds them as u16, 6 bytes a ball; a
 * difference frame holds what they miss of a straight line through the two frames before, as varints, and is only
 * used where it is shorter: no frame is longer than 6 bytes a ball.
 */
import { hashText } from '../kernel';
import type { ShotParameters } from './parameters';
import type { Readings } from './readings';

export const MAGIC = 0x544f4853;
export const RECORDING_VERSION = 1;

/** Every so many frames a key frame, so that seeking decodes few. */
export const KEY_EVERY = 16;

/** Side of a quantum, m: a five-hundredth of a 12 mm ball. */
export const QUANTUM_M = 2e-5;

export interface RecordingHeader {
  readonly schema_version: number;
  readonly parameters: ShotParameters;
  /** `hashText` of the parameters as JSON. */
  readonly parameters_hash: string;
  readonly count: number;
  readonly frames: number;
  readonly quantum_m: number;
  readonly origin_m: readonly [number, number, number];
}

export const READING_NUMBERS = 13;

/** Readings as numbers, in the file's order. */
export const readingNumbers = (r: Readings): number[] => [
  r.time_s,
  r.angle_rad,
  r.speed_rad_s,
  r.gravity_ratio,
  r.captured,
  r.captured_below_spill,
  ...r.centre_m,
  ...r.shot_kgm,
  r.shot_U_kgm,
  r.packing,
  r.kinetic_J,
];

/** Readings from the file's numbers. */
export function readingAt(numbers: Float32Array, frame: number): Readings {
  const n = (k: number): number => numbers[frame * READING_NUMBERS + k]!;
  return {
    time_s: n(0),
    angle_rad: n(1),
    speed_rad_s: n(2),
    gravity_ratio: n(3),
    captured: n(4),
    captured_below_spill: n(5),
    centre_m: [n(6), n(7)],
    shot_kgm: [n(8), n(9)],
    shot_U_kgm: n(10),
    packing: n(11),
    kinetic_J: n(12),
  };
}

/** Tells recordings of other parameters apart. */
export const parametersHash = (p: ShotParameters): string => hashText(JSON.stringify(p));

export const padded = (length: number): number => (length + 3) & ~3;
