/** Colours of the stage by theme. Ink values go to the screen as they are; the rest is lit. */
import type { Theme } from '../../store';

export interface StagePalette {
  /** Ground and background, the exact colour on the screen. */
  readonly paper: string;
  /** Lines, balloons, labels. */
  readonly ink: string;
  /** Feature edges on the solids: strength of the ink, 0 to 1. */
  readonly edgeStrength: number;
  readonly edge: string;
  readonly card: string;
  readonly faint: string;
  /** Act here: the selected part. */
  readonly accent: string;
  /** Ways of a force. */
  readonly force: string;
  readonly shadow: string;
  readonly shadowStrength: number;
  /** Strength of the surroundings' light and of the key light. */
  readonly surroundings: number;
  readonly key: number;
  /** Balloons and labels are this much larger. */
  readonly type: number;
}

export const STAGE_PALETTES: Readonly<Record<Theme, StagePalette>> = {
  paper: {
    paper: '#F3F0E8',
    ink: '#20262B',
    edge: '#20262B',
    edgeStrength: 0.82,
    card: '#FBF9F4',
    faint: '#5B646B',
    accent: '#D55E00',
    force: '#0072B2',
    shadow: '#2B2A2C',
    shadowStrength: 0.5,
    surroundings: 1,
    key: 2.1,
    type: 1,
  },
  night: {
    paper: '#14181B',
    ink: '#E9E6DD',
    edge: '#07090A',
    edgeStrength: 0.9,
    card: '#1D2328',
    faint: '#9AA3A8',
    accent: '#F07A1E',
    force: '#56B4E9',
    shadow: '#000000',
    shadowStrength: 0.72,
    surroundings: 0.74,
    key: 1.7,
    type: 1,
  },
  projector: {
    paper: '#FFFFFF',
    ink: '#000000',
    edge: '#000000',
    edgeStrength: 0.95,
    card: '#FFFFFF',
    faint: '#3A4248',
    accent: '#D55E00',
    force: '#0072B2',
    shadow: '#2A2C30',
    shadowStrength: 0.42,
    surroundings: 1.06,
    key: 2.2,
    type: 1.6,
  },
};
