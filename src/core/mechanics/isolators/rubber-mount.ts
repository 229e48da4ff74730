/**
 * Stiffness of a bonded rubber mount: shear G A / t, compression Ec A / t with Ec = E (1 + 2 k S^2), shape factor S =
 * loaded area / free area (block a b / (2 t (a + b)), disc d / (4 t)).
 * Source: P. B. Lindley, Engineering Design with Natural Rubber, NR Technical Bulletin, 4th ed. 1978 (table from
 * memory; E and k at 65 and 75 IRHD agree within 2 % with a second published text). Hardness +-5 IRHD moves G by
 * 20 to 30 %; rubber is 1.1 to 1.5 times stiffer in motion than these static values (from memory).
 */
import {
  above,
  checkNumbers,
  fail,
  finished,
  within,
  type Fault,
  type Message,
  type Result,
} from '../../kernel';

/** Rows [IRHD, E in MPa, G in MPa, k]. */
export const RUBBER_TABLE = [
  [30, 0.92, 0.3, 0.93],
  [35, 1.18, 0.37, 0.89],
  [40, 1.5, 0.45, 0.85],
  [45, 1.8, 0.54, 0.8],
  [50, 2.2, 0.64, 0.73],
  [55, 3.25, 0.81, 0.64],
  [60, 4.45, 1.06, 0.57],
  [65, 5.85, 1.37, 0.54],
  [70, 7.35, 1.73, 0.53],
  [75, 9.4, 2.22, 0.52],
] as const;

const SOFTEST = 30;
const HARDEST = 75;

export interface RubberModuli {
  readonly E_Pa: number;
  readonly G_Pa: number;
  /** Factor k of the shape correction. */
  readonly k: number;
}

/** Moduli at a hardness, linear between rows; null outside 30 to 75 IRHD. */
export function rubberModuli(hardness_IRHD: number): RubberModuli | null {
  const next = RUBBER_TABLE.findIndex(([hardness]) => hardness >= hardness_IRHD);
  const high = RUBBER_TABLE[next];
  if (high === undefined || !(hardness_IRHD >= SOFTEST)) return null;
  const low = RUBBER_TABLE[next - 1] ?? high;
  const share = high === low ? 0 : (hardness_IRHD - low[0]) / (high[0] - low[0]);
  const mix = (column: 1 | 2 | 3) => low[column] + share * (high[column] - low[column]);
  return { E_Pa: mix(1) * 1e6, G_Pa: mix(2) * 1e6, k: mix(3) };
}

export type RubberMountInput = { readonly hardness_IRHD: number } & (
  | {
      readonly shape: 'block';
      /** Sides of the bonded face. */
      readonly a_m: number;
      readonly b_m: number;
      /** Thickness of the rubber between the plates. */
      readonly t_m: number;
    }
  | { readonly shape: 'disc'; readonly d_m: number; readonly t_m: number }
);

export interface RubberMount {
  readonly G_Pa: number;
  readonly E_Pa: number;
  readonly k: number;
  readonly shape_factor: number;
  readonly shear_N_m: number;
  readonly compression_N_m: number;
  readonly notes: readonly Message[];
}

/** Refused: hardness outside 30 to 75 IRHD, sizes not above 0. */
export function rubberMount(input: RubberMountInput): Result<RubberMount> {
  const moduli = rubberModuli(input.hardness_IRHD);
  const faults: Fault[] = [
    ...(input.shape === 'block'
      ? checkNumbers(input, { a_m: above(0), b_m: above(0), t_m: above(0) })
      : checkNumbers(input, { d_m: above(0), t_m: above(0) })),
    ...checkNumbers({ hardness_IRHD: input.hardness_IRHD }, { hardness_IRHD: within(SOFTEST, HARDEST) }),
  ];
  if (faults.length > 0 || moduli === null) return fail(faults);
  const { G_Pa, E_Pa, k } = moduli;
  const area_m2 = input.shape === 'block' ? input.a_m * input.b_m : (Math.PI / 4) * input.d_m ** 2;
  const rim_m = input.shape === 'block' ? 2 * (input.a_m + input.b_m) : Math.PI * input.d_m;
  const shape_factor = area_m2 / (rim_m * input.t_m);
  const shear_N_m = (G_Pa * area_m2) / input.t_m;
  const compression_N_m = (E_Pa * (1 + 2 * k * shape_factor ** 2) * area_m2) / input.t_m;
  return finished({ G_Pa, E_Pa, k, shape_factor, shear_N_m, compression_N_m, notes: [] });
}
