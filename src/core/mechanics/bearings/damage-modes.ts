/**
 * Names of bearing damage. ISO 15243:2017, seen in a secondary listing of the standard (confirm): six classes and their
 * modes with their clause numbers from memory. What each looks like is told in our own words (`damage.<id>.looks`).
 */
export type DamageClass =
  'fatigue' | 'wear' | 'corrosion' | 'electrical-erosion' | 'plastic-deformation' | 'fracture';

export interface DamageMode {
  /** Words: `damage.<id>.name` and `damage.<id>.looks`. */
  readonly id: string;
  readonly class: DamageClass;
  /** Clause of ISO 15243:2017 (from memory). */
  readonly clause: string;
}

const mode = (id: string, damageClass: DamageClass, clause: string): DamageMode => ({
  id,
  class: damageClass,
  clause,
});

export const DAMAGE_MODES: readonly DamageMode[] = [
  mode('subsurface-fatigue', 'fatigue', '5.1.2'),
  mode('surface-fatigue', 'fatigue', '5.1.3'),
  mode('abrasive-wear', 'wear', '5.2.2'),
  mode('adhesive-wear', 'wear', '5.2.3'),
  mode('moisture-corrosion', 'corrosion', '5.3.2'),
  mode('fretting-corrosion', 'corrosion', '5.3.3.2'),
  mode('false-brinelling', 'corrosion', '5.3.3.3'),
  mode('excessive-current', 'electrical-erosion', '5.4.2'),
  mode('current-leakage', 'electrical-erosion', '5.4.3'),
  mode('overload', 'plastic-deformation', '5.5.2'),
  mode('debris-indentation', 'plastic-deformation', '5.5.3'),
  mode('handling-indentation', 'plastic-deformation', '5.5.4'),
  mode('forced-fracture', 'fracture', '5.6.2'),
  mode('fatigue-fracture', 'fracture', '5.6.3'),
  mode('thermal-cracking', 'fracture', '5.6.4'),
];
