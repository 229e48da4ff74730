/**
 * Sizes of hand tools for a wrench size across flats. Common practice in the trade, no source: outside diameters of
 * hand sockets, drives by size, spanner length about ten times the size.
 */
import type { GroupEntry, Kind } from '../machine';
import type { Tool } from './types';

/** Across flats and outside diameter of a hand socket, millimetres (close to DIN 3124, from memory). */
const SOCKET_OUTSIDE_MM: readonly (readonly [number, number])[] = [
  [8, 12],
  [10, 15],
  [13, 18],
  [16, 22.5],
  [18, 25],
  [19, 26.5],
  [21, 28.5],
  [22, 30],
  [24, 33],
  [27, 37],
  [30, 41],
  [32, 43],
  [36, 49],
  [41, 55],
  [46, 61],
  [50, 66],
  [55, 72],
  [60, 79],
  [65, 85],
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

/** Height of a ratchet with its socket above the head, and of its handle. */
export const RATCHET_HEIGHT_M = 0.1;
export const RATCHET_HANDLE_M = 0.045;

export const spannerLength_m = (acrossFlats_m: number): number =>
  Math.min(0.5, Math.max(0.12, 10 * acrossFlats_m));

/** Tool for a part that is turned off its thread by itself (a plug, a shaft nut), from its own head. */
export function toolOfThreaded({ params }: Kind): Tool {
  const plain = { drive: '', extension_m: 0 } as const;
  if (params.builder === 'nut') return { kind: 'socket', size_m: params.across_flats_m, ...plain };
  if (params.builder === 'bolt' && params.head.form === 'hex')
    return { kind: 'socket', size_m: params.head.across_flats_m, ...plain };
  if (params.builder === 'bolt' && params.head.form === 'socket')
    return { kind: 'hex-key', size_m: params.head.key_m, ...plain };
  return { kind: 'pin-spanner', size_m: 0, ...plain };
}

/**
 * Tools for a fastener of the model, with the extension that its place asks for; null: the straight way to its head
 * is barred and a spanner must do.
 */
export function toolsOf(group: GroupEntry, extension_m: number | null): readonly Tool[] {
  const { drive, size_m } = group.tool;
  switch (drive) {
    case 'hex':
    case 'square':
      if (extension_m === null) return [{ kind: 'spanner', size_m, drive: '', extension_m: 0 }];
      return [{ kind: 'socket', size_m, drive: driveFor(size_m).name, extension_m }];
    case 'socket-hex':
      return [{ kind: 'hex-key', size_m, drive: driveFor(size_m).name, extension_m: extension_m ?? 0 }];
    case 'pin':
      return [{ kind: 'pin-spanner', size_m, drive: '', extension_m: 0 }];
    case 'none':
      return [{ kind: 'hand', size_m: 0, drive: '', extension_m: 0 }];
  }
}
