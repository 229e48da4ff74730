/** Where parts can be pointed at on a map of the nearest surfaces. */
import type { DepthMap } from './projection';

export interface Spot {
  readonly x: number;
  readonly y: number;
  /** Pixels of the part that are seen. */
  readonly pixels: number;
  /** Pixels from the spot to what is not this part. */
  readonly room: number;
}

/** Rows between two tellings of how far it is. */
const ROWS = 128;

/** Of each part (by number) the seen pixel that lies deepest inside it, so that a leader's dot sits on the part; null: unseen. */
export function* deepestSpots(
  { width, height, owner }: DepthMap,
  count: number,
): Generator<number, (Spot | null)[]> {
  const room = new Uint16Array(width * height);
  const next = (i: number, x: number, y: number, dx: number, dy: number): number => {
    const nx = x + dx;
    const ny = y + dy;
    if (nx < 0 || ny < 0 || nx >= width || ny >= height) return 1;
    const j = i + dy * width + dx;
    return owner[j] === owner[i] ? room[j]! + 1 : 1;
  };
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++)
      if (owner[i]! >= 0) room[i] = Math.min(next(i, x, y, -1, 0), next(i, x, y, 0, -1));
    if (y % ROWS === 0) yield (0.5 * y) / height;
  }
  const best = Array.from({ length: count }, () => ({ at: -1, room: 0, pixels: 0 }));
  for (let y = height - 1, i = width * height - 1; y >= 0; y--) {
    for (let x = width - 1; x >= 0; x--, i--) {
      const part = best[owner[i]!];
      if (part === undefined) continue;
      room[i] = Math.min(room[i]!, next(i, x, y, 1, 0), next(i, x, y, 0, 1));
      part.pixels++;
      if (room[i]! > part.room) {
        part.room = room[i]!;
        part.at = i;
      }
    }
    if (y % ROWS === 0) yield 1 - (0.5 * y) / height;
  }
  return best.map(({ at, room: deep, pixels }) =>
    at < 0 ? null : { x: (at % width) + 0.5, y: Math.floor(at / width) + 0.5, pixels, room: deep },
  );
}
