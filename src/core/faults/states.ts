/** States of the machine that the bench computes: each fault at some severities, as inputs and as chances of signs. */
import { type BenchInputs, type InputName, WHOLE_INPUTS } from './inputs';
import type { Plant } from './plant';
import type { Readings } from './readings';
import { COMPUTED_SIGNS, type ComputedSign } from './reading-names';
import type { Chances, FaultEntry, LookedMeasurement } from './schema';

export const NO_FAULT = 'no-fault';
export const SOMETHING_ELSE = 'something-else';

/** Severities that are computed for a fault, 0 mild to 1 severe. */
export const severities = (fault: FaultEntry): readonly number[] =>
  fault.levels === 1 ? [0.5] : Array.from({ length: fault.levels }, (_, i) => i / (fault.levels - 1));

/** Whether a fault knows only its levels: it counts or switches something. */
export const inSteps = (fault: FaultEntry): boolean =>
  fault.levels === 1 || fault.effects.some((effect) => WHOLE_INPUTS.has(effect.input as InputName));

/** Inputs with a fault of this severity on top of `base`; an effect moves the sound value and keeps base's own deviation. */
export function faultyInputs(
  plant: Plant,
  base: BenchInputs,
  fault: FaultEntry | null,
  severity: number,
): BenchInputs {
  if (fault === null) return base;
  const out: Record<InputName, number> = { ...base };
  for (const effect of fault.effects) {
    const input = effect.input as InputName;
    const value = effect.mild + (effect.severe - effect.mild) * severity;
    out[input] = WHOLE_INPUTS.has(input) ? value : value + (base[input] - plant.sound[input]);
  }
  return out;
}

/** Chances of a sign's outcomes in their order, summing to 1. */
export function signChances(
  measurement: LookedMeasurement,
  fault: FaultEntry | null,
  severity: number,
  computed: Readings['signs'],
): readonly number[] | null {
  if (measurement.id in COMPUTED_SIGNS) {
    const own = computed[measurement.id as ComputedSign];
    return own === null ? null : scaled(measurement, own);
  }
  const sound = measurement.sound ?? {};
  const ends = fault?.signs?.[measurement.id];
  if (ends === undefined) return scaled(measurement, sound);
  const [mild, severe] = [scaled(measurement, ends.mild), scaled(measurement, ends.severe)];
  // No sign is impossible: people misjudge, and machines carry old marks.
  const mixed = mild.map((p, i) => p + ((severe[i] ?? 0) - p) * severity);
  return mixed.map((p) => (1 - MISJUDGED) * p + MISJUDGED / mixed.length);
}

const MISJUDGED = 0.02;

function scaled(measurement: LookedMeasurement, chances: Chances): readonly number[] {
  const raw = measurement.outcomes.map((outcome) => chances[outcome] ?? 0);
  const sum = raw.reduce((a, b) => a + b, 0);
  return raw.map((p) => p / sum);
}
