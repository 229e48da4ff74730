/**
 * Grounds that the studies offer. Training values: no full published set of soil stiffness and damping under a roller
 * drum is known to this project (see the guide), so these are own sets of a plausible size, not any site's soil.
 */
export interface Soil {
  readonly id: string;
  readonly stiffness_N_m: number;
  readonly damping_Ns_m: number;
}

/** From drum hung in the air over loose fill to ground on which nobody should vibrate. */
export const SOILS = [
  { id: 'hung', stiffness_N_m: 0, damping_Ns_m: 0 },
  { id: 'loose', stiffness_N_m: 15e6, damping_Ns_m: 100e3 },
  { id: 'medium', stiffness_N_m: 30e6, damping_Ns_m: 150e3 },
  { id: 'firm', stiffness_N_m: 60e6, damping_Ns_m: 200e3 },
  { id: 'hard', stiffness_N_m: 120e6, damping_Ns_m: 200e3 },
] as const satisfies readonly Soil[];
export type SoilId = (typeof SOILS)[number]['id'];

/**
 * Grounds for traction: greatest pull over weight of a rubber tyre and of a smooth steel drum, and rolling resistance.
 * Tyres: S. W. Nunnally, Construction Methods and Management, ch. 4 (from memory), with the span of a second
 * published table where the two differ. Smooth drum: 0.2 to 0.4 on soil (from memory), so one span for all soils.
 */
export interface Ground {
  readonly id: string;
  readonly tyre: number;
  readonly tyre_span: readonly [number, number];
  readonly drum: number;
  readonly drum_span: readonly [number, number];
  readonly rolling_resistance: number;
}

export const GROUNDS = [
  { id: 'clay-dry', tyre: 0.6, tyre_span: [0.3, 0.6], drum: 0.35, drum_span: [0.2, 0.4], rolling_resistance: 0.032 },
  { id: 'clay-wet', tyre: 0.45, tyre_span: [0.3, 0.45], drum: 0.25, drum_span: [0.2, 0.4], rolling_resistance: 0.05 },
  { id: 'gravel', tyre: 0.5, tyre_span: [0.35, 0.7], drum: 0.35, drum_span: [0.2, 0.4], rolling_resistance: 0.05 },
  { id: 'sand', tyre: 0.35, tyre_span: [0.25, 0.6], drum: 0.25, drum_span: [0.2, 0.4], rolling_resistance: 0.1 },
] as const satisfies readonly Ground[]; // prettier-ignore
export type GroundId = (typeof GROUNDS)[number]['id'];
