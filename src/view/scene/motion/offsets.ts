/** Offsets of the exploded view and of the teardown, from core/assembly. */
import type { Explode } from '../../../core/assembly';

const smooth = (s: number): number => {
  const t = Math.min(1, Math.max(0, s));
  return t * t * (3 - 2 * t);
};

export function explodeOffsetsAt(explode: Explode, s: number, out: Float32Array): void {
  for (let i = 0; i < explode.partCount; i++) {
    const w = explode.windows;
    const a = smooth((s - w[4 * i]!) / Math.max(1e-6, w[4 * i + 1]! - w[4 * i]!));
    const b = smooth((s - w[4 * i + 2]!) / Math.max(1e-6, w[4 * i + 3]! - w[4 * i + 2]!));
    for (let k = 0; k < 3; k++)
      out[4 * i + k] = a * explode.groupOffsets[3 * i + k]! + b * explode.innerOffsets[3 * i + k]!;
    out[4 * i + 3] = 0;
  }
}

export function poseOffsetsAt(_timeline: unknown, _time_s: number, out: Float32Array): void {
  out.fill(0);
}
