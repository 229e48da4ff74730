/** Solid share inside the bed, from the section seen along the shaft. */
import { P, type Balls } from './balls';
import type { ShotParameters } from './parameters';

/** Points across a ball's diameter at which its chord along the shaft is taken. */
const SAMPLES = 9;
/** What the samples of a ball of radius 1 and a disc of radius 1 add up to, so that each counts with its true volume. */
const SAMPLED = { 3: sampled((left) => 2 * Math.sqrt(left)), 2: sampled(() => 1) };

/** A cell belongs to the bed's inside when it and its eight neighbours hold at least this solid share. */
const INSIDE = 0.35;

/**
 * Mean solid share of the section cells (one diameter wide) that lie inside the bed; 0 when there is none. Balls
 * are spread over cells by their chords, so that a cell's share is exact for its column to the sampling.
 */
export function bulkPacking(p: ShotParameters, balls: Balls): number {
  const { chamber, slice, shot } = p;
  const size = shot.ball_diameter_m;
  const n = Math.ceil((2 * chamber.radius_m) / size) + 2;
  const x0 = chamber.eccentricity_m - (n * size) / 2;
  const y0 = (-n * size) / 2;
  const solid = new Float64Array(n * n);
  const flat = slice.dimension === 2;
  const correct = (flat ? Math.PI : (4 * Math.PI) / 3) / SAMPLED[slice.dimension];
  for (let i = 0; i < balls.count; i++) {
    const r = balls.position[i * P + 3]!;
    const step = (2 * r) / SAMPLES;
    for (let a = 0; a < SAMPLES; a++) {
      const dx = -r + (a + 0.5) * step;
      for (let b = 0; b < SAMPLES; b++) {
        const dy = -r + (b + 0.5) * step;
        const left = r * r - dx * dx - dy * dy;
        if (left <= 0) continue;
        const cx = Math.floor((balls.position[i * P]! + dx - x0) / size);
        const cy = Math.floor((balls.position[i * P + 1]! + dy - y0) / size);
        if (cx < 0 || cy < 0 || cx >= n || cy >= n) continue;
        solid[cy * n + cx]! += correct * (flat ? 1 : 2 * Math.sqrt(left)) * step * step;
      }
    }
  }
  const full = size * size * (flat ? 1 : slice.depth_m);
  let sum = 0;
  let cells = 0;
  for (let cy = 1; cy < n - 1; cy++) {
    for (let cx = 1; cx < n - 1; cx++) {
      let least = Infinity;
      for (let dy = -1; dy <= 1; dy++)
        for (let dx = -1; dx <= 1; dx++) least = Math.min(least, solid[(cy + dy) * n + cx + dx]!);
      if (least < INSIDE * full) continue;
      sum += solid[cy * n + cx]!;
      cells++;
    }
  }
  return cells === 0 ? 0 : sum / cells / full;
}

function sampled(chord: (left: number) => number): number {
  let sum = 0;
  for (let a = 0; a < SAMPLES; a++) {
    for (let b = 0; b < SAMPLES; b++) {
      const left = 1 - ((2 * a + 1) / SAMPLES - 1) ** 2 - ((2 * b + 1) / SAMPLES - 1) ** 2;
      if (left > 0) sum += (chord(left) * 4) / SAMPLES ** 2;
    }
  }
  return sum;
}
