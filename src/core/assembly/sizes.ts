/**
 * Sizes of hand tools for a wrench size across flats. Common practice in the trade, no source: outside diameters of
 * thick-walled sockets, drives by size, spanner length about ten times the size.
 */
import type { GroupEntry } from '../machine';
import type { Tool } from './types';

/** Across flats and outside diameter of a thick-walled socket, millimetres. */
const SOCKET_OUTSIDE_MM: readonly (readonly [number, number])[] = [
  [8, 14],
  [10, 16],
  [13, 20],
  [16, 25],
  [18, 28],
  [19, 29],
  [21, 31],
  [22, 32],
  [24, 35],
  [27, 39],
  [30, 43],
  [32, 46],
  [36, 51],
  [41, 57],
  [46, 64],
  [50, 70],
  [55, 76],
  [60, 83],
  [65, 90],
];

/** Outside diameter of a socket, metres; linear between the table's rows, in proportion beyond them. */
export function socketOutside_m(acrossFlats_m: number): number {
  const size = acrossFlats_m * 1000;
  const first = SOCKET_OUTSIDE_MM[0]!;
  const last = SOCKET_OUTSIDE_MM[SOCKET_OUTSIDE_MM.length - 1]!;
  if (size <= first[0]) return (first[1] * size) / first[0] / 1000;
  if (size >= last[0]) return (last[1] * size) / last[0] / 1000;
  const upper = SOCKET_OUTSIDE_MM.findIndex(([s]) => s >= size);
  const [s1, d1] = SOCKET_OUTSIDE_MM[upper]!;
  const [s0, d0] = SOCKET_OUTSIDE_MM[upper - 1]!;
  return (d0 + ((d1 - d0) * (size - s0)) / (s1 - s0)) / 1000;
}

export interface Drive {
  /** Name of the square drive. */
  readonly name: '1/2' | '3/4' | '1';
  /** Diameter of an extension over its coupling. */
  readonly extension_m: number;
  readonly socketLength_m: number;
}

/** Square drive for a wrench size: 1/2 in to 22 mm, 3/4 in to 36 mm, 1 in above. */
export function driveFor(acrossFlats_m: number): Drive {
  if (acrossFlats_m <= 0.0225) return { name: '1/2', extension_m: 0.024, socketLength_m: 0.04 };
  if (acrossFlats_m <= 0.0365) return { name: '3/4', extension_m: 0.036, socketLength_m: 0.055 };
  return { name: '1', extension_m: 0.048, socketLength_m: 0.07 };
}

export const spannerLength_m = (acrossFlats_m: number): number =>
  Math.min(0.5, Math.max(0.12, 10 * acrossFlats_m));

/** Tools for a fastener of the model, with the extension that its place asks for. */
export function toolsOf(group: GroupEntry, extension_m: number): readonly Tool[] {
  const { drive, size_m } = group.tool;
  switch (drive) {
    case 'hex':
    case 'square':
      return [{ kind: 'socket', size_m, drive: driveFor(size_m).name, extension_m }];
    case 'socket-hex':
      return [{ kind: 'hex-key', size_m, drive: driveFor(size_m).name, extension_m }];
    case 'pin':
      return [{ kind: 'pin-spanner', size_m, drive: '', extension_m: 0 }];
    case 'none':
      return [{ kind: 'hand', size_m: 0, drive: '', extension_m: 0 }];
  }
}
