/**
 * Signal words of the cautions that machine files name. DANGER: death or serious injury will follow; WARNING: could
 * follow; CAUTION: minor or moderate injury could follow; NOTICE: damage only (ANSI Z535.6). A key that is not in the
 * table is shown as WARNING, the safe side.
 */
import type { SignalWord } from '../common/Signal';

const SIGNALS: Readonly<Record<string, SignalWord>> = {
  'lock-out': 'danger',
  'articulation-lock': 'danger',
  'crib-side-plate': 'danger',
  'crib-both-sides': 'danger',
  'never-weld-closed': 'danger',
  'chock-drum': 'warning',
  'drum-unbraked': 'warning',
  'relieve-pressure': 'warning',
  'hot-oil': 'caution',
  'strap-exciter': 'warning',
  'heavy-lift': 'warning',
  'guide-bar': 'warning',
  'puller-guard': 'warning',
  'never-hammer-rings': 'caution',
  'isolator-preload': 'caution',
  'sharp-edges': 'caution',
  'no-concrete': 'notice',
  'earth-clamp': 'notice',
  'keep-clean': 'notice',
  'cap-ports': 'notice',
  'mark-position': 'notice',
  'keep-shims': 'notice',
  'seal-lip': 'notice',
};

export const signalOf = (caution: string): SignalWord => SIGNALS[caution] ?? 'warning';

const ORDER: readonly SignalWord[] = ['danger', 'warning', 'caution', 'notice'];

/** Gravest first. */
export const bySeverity = (cautions: readonly string[]): readonly string[] =>
  [...new Set(cautions)].sort((a, b) => ORDER.indexOf(signalOf(a)) - ORDER.indexOf(signalOf(b)));
