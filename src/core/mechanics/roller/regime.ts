/**
 * Kind of running of a drum, told from its motion over many turns of the exciter: whether the soil always carries,
 * and after how many turns the motion repeats. Names: D. Adam, F. Kopf, as quoted in Acta Geotech. 2024,
 * s11440-024-02342-8.
 */

export type Regime =
  /** The soil always carries. */
  | 'continuous-contact'
  /** It lifts off, each turn alike. */
  | 'partial-uplift'
  /** Every second turn alike: motion at half the exciter's frequency. */
  | 'double-jump'
  /** Every third or fourth turn alike. */
  | 'long-repeat'
  /** No repeat within four turns. */
  | 'irregular';

/** Turns that are looked at: whole numbers of 1, 2, 3 and 4 turns. */
export const WATCHED_TURNS = 24;
/** Two turns count as alike when they differ by less than this share of the whole motion. */
const ALIKE = 0.02;

/** @param drum_m samples of the motion, @param soil_N of the soil's force; both @param perTurn a turn. */
export function regimeOf(
  drum_m: readonly number[],
  soil_N: readonly number[],
  perTurn: number,
): { readonly regime: Regime; readonly repeats_after_turns: number | null } {
  const span = Math.max(...drum_m) - Math.min(...drum_m);
  const repeats_after_turns =
    [1, 2, 3, 4].find((turns) => {
      const shift = turns * perTurn;
      for (let i = shift; i < drum_m.length; i++)
        if (Math.abs(drum_m[i]! - drum_m[i - shift]!) > ALIKE * span) return false;
      return true;
    }) ?? null;
  if (soil_N.every((each) => each > 0)) return { regime: 'continuous-contact', repeats_after_turns };
  const regime =
    repeats_after_turns === null
      ? 'irregular'
      : (({ 1: 'partial-uplift', 2: 'double-jump' } as const)[repeats_after_turns as 1 | 2] ?? 'long-repeat');
  return { regime, repeats_after_turns };
}
