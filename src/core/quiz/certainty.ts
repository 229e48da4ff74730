/**
 * Certainty-based marking: a person says how sure they are, and the mark rewards saying it truly.
 * Source: A. R. Gardner-Medwin, Confidence assessment in the teaching of basic science, Association for Learning
 * Technology Journal 3 (1995) 80: certainty 1 / 2 / 3 gives 1 / 2 / 3 when right and 0 / -2 / -6 when wrong (values
 * from memory).
 */
export const CERTAINTIES = [1, 2, 3] as const;
/** 1 guess, 2 fairly sure, 3 sure. */
export type Certainty = (typeof CERTAINTIES)[number];

const MARKS: Readonly<Record<Certainty, { readonly right: number; readonly wrong: number }>> = {
  1: { right: 1, wrong: 0 },
  2: { right: 2, wrong: -2 },
  3: { right: 3, wrong: -6 },
};
/** Highest mark of one answer. */
export const BEST_MARK = MARKS[3].right;

export const certaintyMark = (right: boolean, certainty: Certainty): number =>
  MARKS[certainty][right ? 'right' : 'wrong'];

/** Mean mark to be expected at `certainty` by whoever is right with this probability (0 to 1). */
export const expectedMark = (probability: number, certainty: Certainty): number =>
  probability * MARKS[certainty].right + (1 - probability) * MARKS[certainty].wrong;

/** The certainty that pays best at this probability; ties go to the more careful one. */
export function bestCertainty(probability: number): Certainty {
  return CERTAINTIES.reduce<Certainty>(
    (best, each) => (expectedMark(probability, each) > expectedMark(probability, best) + 1e-12 ? each : best),
    1,
  );
}
