/**
 * Marks of the stage's views, for surfaces and legend alike: a tint of the Okabe-Ito palette and always a pattern of ink
 * with it, so that none is told by its colour alone.
 */
export type MarkPattern = 'rising' | 'dots' | 'grid' | 'level' | 'plain' | 'upright' | 'falling';

export interface Mark {
  /** Screen colours. */
  readonly fill: string;
  readonly ink: string;
  readonly pattern: MarkPattern;
}

/** In the order of their numbers on the stage: the first is 1. */
export const MARKS = {
  drum: { fill: '#5B9BD0', ink: '#123A63', pattern: 'rising' },
  isolator: { fill: '#F0E442', ink: '#1A1A1A', pattern: 'dots' },
  exciter: { fill: '#E69F00', ink: '#4A3000', pattern: 'grid' },
  spindle: { fill: '#3DB28C', ink: '#00402F', pattern: 'level' },
  frame: { fill: '#A9ABA8', ink: '#A9ABA8', pattern: 'plain' },
  oil: { fill: '#56B4E9', ink: '#0B3E5C', pattern: 'upright' },
  grease: { fill: '#CC79A7', ink: '#5A1F40', pattern: 'falling' },
} as const satisfies Readonly<Record<string, Mark>>;

export type MarkName = keyof typeof MARKS;

export const MARK_NAMES = Object.keys(MARKS) as readonly MarkName[];

/** Marks of a machine's first fluid, of the second, and on. */
export const FLUID_MARKS: readonly MarkName[] = ['oil', 'grease'];
