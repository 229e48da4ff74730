/**
 * How well the isolators of one set agree: each one's shear stiffness from its hardness, and the share of the load that
 * the stiffest takes when all are pushed the same way. Replaced as a set a side, and matched in hardness: common
 * practice, no source; the tolerance of 5 IRHD is that of the hardness as rubber is ordered (common practice).
 */
import {
  above,
  checkNumbers,
  fail,
  faultAt,
  finished,
  message,
  within,
  type Message,
  type Result,
} from '../../kernel';
import { rubberMount } from './rubber-mount';

export interface SetMatchInput {
  /** Measured hardness of each isolator. */
  readonly hardness_IRHD: readonly number[];
  readonly d_m: number;
  readonly t_m: number;
  /** Allowed difference between the hardest and the softest, default 5. */
  readonly tolerance_IRHD?: number | undefined;
}

export interface SetMatch {
  readonly spread_IRHD: number;
  readonly mean_IRHD: number;
  readonly shear_N_m: readonly number[];
  readonly total_N_m: number;
  /** Load of the stiffest over the mean load; 1 where all are alike. */
  readonly stiffest_over_mean: number;
  readonly matched: boolean;
  readonly notes: readonly Message[];
}

/** Refused: fewer than two, a hardness outside the table (30 to 75 IRHD), sizes not above 0. */
export function setMatch(input: SetMatchInput): Result<SetMatch> {
  const { hardness_IRHD, d_m, t_m, tolerance_IRHD = 5 } = input;
  const faults = [
    ...checkNumbers(input, { d_m: above(0), t_m: above(0), tolerance_IRHD: above(0) }),
    ...hardness_IRHD.flatMap((value, i) =>
      checkNumbers({ [`hardness_IRHD[${i}]`]: value }, { [`hardness_IRHD[${i}]`]: within(30, 75) }),
    ),
  ];
  if (hardness_IRHD.length < 2)
    faults.push(faultAt('hardness_IRHD', message('expected.entries', { limit: 2 }), hardness_IRHD));
  if (faults.length > 0) return fail(faults);
  const shear_N_m = hardness_IRHD.map((each) => {
    const mount = rubberMount({ shape: 'disc', d_m, t_m, hardness_IRHD: each });
    return mount.ok ? mount.value.shear_N_m : 0;
  });
  const total_N_m = shear_N_m.reduce((sum, k) => sum + k, 0);
  const spread_IRHD = Math.max(...hardness_IRHD) - Math.min(...hardness_IRHD);
  const matched = spread_IRHD <= tolerance_IRHD + 1e-9;
  return finished({
    spread_IRHD,
    mean_IRHD: hardness_IRHD.reduce((sum, each) => sum + each, 0) / hardness_IRHD.length,
    shear_N_m,
    total_N_m,
    stiffest_over_mean: (Math.max(...shear_N_m) * shear_N_m.length) / total_N_m,
    matched,
    notes: matched ? [] : [message('mechanics.note.set-not-matched', { tolerance_IRHD })],
  });
}
