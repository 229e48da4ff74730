/**
 * Compares a picture of the screen with its reference.
 *
 * Two limits, since one alone misses something: the share of all pixels that differ (a theme, a lost shadow, a moved
 * panel), and the greatest share within one tile (a bolt that is gone is a tenth of a percent of the screen, but most of
 * its tile). Pixels on a smoothed edge do not count: software renderers round them differently.
 */
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';

/** Difference of colour (0 to 1, perceived) below which two pixels count as alike. */
const COLOUR = 0.1;
export const TILE_PX = 48;

export interface Comparison {
  /** Share of all pixels that differ, 0 to 1; 1 when the sizes differ. */
  readonly share: number;
  /** Share of differing pixels in the tile where most differ. */
  readonly worstTile: number;
  /** Top left corner of that tile, pixels. */
  readonly at: readonly [number, number];
  /** The reference, faint, with what differs marked. */
  readonly marked: Buffer;
}

export function comparePictures(actual: Buffer, reference: Buffer): Comparison {
  const [a, b] = [PNG.sync.read(actual), PNG.sync.read(reference)];
  const { width, height } = b;
  if (a.width !== width || a.height !== height)
    return { share: 1, worstTile: 1, at: [0, 0], marked: reference };
  const marked = new PNG({ width, height });
  const mask = new PNG({ width, height });
  const options = { threshold: COLOUR };
  pixelmatch(a.data, b.data, mask.data, width, height, { ...options, diffMask: true });
  const different = pixelmatch(a.data, b.data, marked.data, width, height, options);
  let [worst, at]: [number, readonly [number, number]] = [0, [0, 0]];
  for (let top = 0; top < height; top += TILE_PX)
    for (let left = 0; left < width; left += TILE_PX) {
      const count = countIn(mask, left, top);
      if (count > worst) [worst, at] = [count, [left, top]];
    }
  return {
    share: different / (width * height),
    worstTile: worst / TILE_PX ** 2,
    at,
    marked: PNG.sync.write(marked),
  };
}

function countIn({ width, height, data }: PNG, left: number, top: number): number {
  let count = 0;
  for (let y = top; y < Math.min(height, top + TILE_PX); y++)
    for (let x = left; x < Math.min(width, left + TILE_PX); x++)
      if (data[4 * (y * width + x) + 3] !== 0) count++;
  return count;
}
