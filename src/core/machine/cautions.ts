/**
 * Signal words of the cautions that machine and job files name. DANGER: death or serious injury will follow; WARNING:
 * could follow; CAUTION: minor or moderate injury could follow; NOTICE: damage only (ANSI Z535.6). A key that is not in
 * the table counts as WARNING, the safe side.
 */
export type SignalWord = 'danger' | 'warning' | 'caution' | 'notice';

const SIGNALS: Readonly<Record<string, SignalWord>> = {
  'lock-out': 'danger',
  'articulation-lock': 'danger',
  'crib-side-plates': 'danger',
  'never-weld-closed': 'danger',
  'chock-drum': 'warning',
  'hold-drum': 'warning',
  'lift-heavy': 'warning',
  'strap-exciter': 'warning',
  'guide-bar': 'warning',
  'relieve-pressure': 'warning',
  'spring-brake': 'warning',
  'spring-load': 'warning',
  'puller-guard': 'warning',
  'never-hammer-rings': 'caution',
  'hot-oil': 'caution',
  'hot-parts': 'caution',
  'earth-clamp': 'notice',
  'no-concrete': 'notice',
  'soft-ground-only': 'notice',
  'keep-clean': 'notice',
  'cap-ports': 'notice',
  'mark-position': 'notice',
  'keep-shims': 'notice',
  'seal-lip': 'notice',
};

/** Cautions that have a signal word of their own. */
export const KNOWN_CAUTIONS: readonly string[] = Object.keys(SIGNALS);

export const signalOf = (caution: string): SignalWord => SIGNALS[caution] ?? 'warning';

const ORDER: readonly SignalWord[] = ['danger', 'warning', 'caution', 'notice'];

/** Sorts gravest first. */
export const byGravity = (a: SignalWord, b: SignalWord): number => ORDER.indexOf(a) - ORDER.indexOf(b);
