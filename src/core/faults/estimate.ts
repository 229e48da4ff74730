/**
 * Shot that is left and share of it behind the baffle, from the two amplitudes: a grid over charge, time of the soft
 * start and friction, each weighed by how well it explains both readings. The table of settled shot bounds the grid; an
 * answer that leans on its edge says so.
 */
import type { Plant } from './plant';
import { shakingOf, unbalanceOf } from './shaking';

export interface Span {
  readonly mean: number;
  /** Nine times in ten it lies between these. */
  readonly low: number;
  readonly high: number;
}

export interface ShotEstimate {
  readonly mass_kg: Span;
  readonly captured: Span;
  /** The readings point past what the table of settled shot holds. */
  readonly atEdge: boolean;
}

interface Amplitude {
  readonly value_m: number;
  readonly sd_m: number;
}

const SHARES = Array.from({ length: 41 }, (_, i) => 0.48 + i * 0.0255);
const TIMES_S = Array.from({ length: 15 }, (_, i) => 2 + i * 0.2857);
const FRICTIONS = [-1.2, 0, 1.2] as const;
/** Worst miss in standard errors at which the two readings still fit some charge. */
const FITS = 3;

/** Null where no charge within the table explains both amplitudes. */
export function estimateShot(plant: Plant, high: Amplitude, low: Amplitude): ShotEstimate | null {
  const { sound, spread } = plant;
  const perU = (lever: 'high' | 'low', bed: number): number => {
    const s = shakingOf(plant, { ...sound, bed_stiffness_N_m: bed }, lever);
    return s.drum_m === null || !s.U_kgm ? NaN : s.drum_m / s.U_kgm;
  };
  const factor = { high: perU('high', sound.bed_stiffness_N_m), low: perU('low', sound.bed_stiffness_N_m) };
  const soft = sound.bed_stiffness_N_m + spread.bed_stiffness_N_m;
  const share = { high: perU('high', soft) / factor.high - 1, low: perU('low', soft) / factor.low - 1 };
  const cells: { mass: number; captured: number; weight: number }[] = [];
  let best = Infinity;
  for (const shot_share of SHARES)
    for (const spin_up_s of TIMES_S)
      for (const step of FRICTIONS) {
        const v = { ...sound, shot_share, spin_up_s, friction: sound.friction + step * spread.friction };
        const u = { high: unbalanceOf(plant, v, 'high'), low: unbalanceOf(plant, v, 'low') };
        if (u.high.U_kgm === null || u.low.U_kgm === null || u.low.captured === null) continue;
        const strayed = {
          high: (unbalanceOf(plant, { ...v, settled_high_sd: 1 }, 'high').U_kgm ?? 0) - u.high.U_kgm,
          low: (unbalanceOf(plant, { ...v, settled_low_sd: 1 }, 'low').U_kgm ?? 0) - u.low.U_kgm,
        };
        const miss = (lever: 'high' | 'low', read: Amplitude): number => {
          const amplitude = u[lever].U_kgm! * factor[lever];
          const sd = Math.hypot(read.sd_m, strayed[lever] * factor[lever], share[lever] * amplitude);
          return (read.value_m - amplitude) / sd;
        };
        const [a, b] = [miss('high', high), miss('low', low)];
        best = Math.min(best, Math.max(Math.abs(a), Math.abs(b)));
        // The usual soft start is likelier than any other time, but not by much.
        const usual = Math.exp(-0.5 * ((spin_up_s - sound.spin_up_s) / 1.2) ** 2);
        const weight = Math.exp(-0.5 * (a * a + b * b)) * usual * (step === 0 ? 2 : 1);
        cells.push({
          mass: shot_share * plant.exciter.rest.shot_mass_kg,
          captured: u.low.captured,
          weight,
        });
      }
  if (!(best <= FITS)) return null;
  const masses = cells.map((c) => c.mass);
  const [least, most] = [Math.min(...masses), Math.max(...masses)];
  const total = cells.reduce((sum, c) => sum + c.weight, 0);
  const onEdge = cells.reduce((sum, c) => sum + (c.mass === least || c.mass === most ? c.weight : 0), 0);
  return {
    mass_kg: spanOf(cells, 'mass'),
    captured: spanOf(cells, 'captured'),
    atEdge: onEdge / total > 0.08,
  };
}

function spanOf(
  cells: readonly { mass: number; captured: number; weight: number }[],
  key: 'mass' | 'captured',
): Span {
  const sorted = [...cells].sort((a, b) => a[key] - b[key]);
  const total = sorted.reduce((sum, c) => sum + c.weight, 0);
  const at = (share: number): number => {
    let sum = 0;
    for (const cell of sorted) {
      sum += cell.weight;
      if (sum >= share * total) return cell[key];
    }
    return sorted[sorted.length - 1]![key];
  };
  return {
    mean: sorted.reduce((sum, c) => sum + c.weight * c[key], 0) / total,
    low: at(0.05),
    high: at(0.95),
  };
}
