/** What was answered inside a lesson in this visit, by the place of the question: paging back finds it again. */
import { useState } from 'react';
import type { Given } from '../../../core/quiz';

const kept = new Map<string, Given>();

/** Puts an answer of an earlier visit back to its place. */
export const putGivenBack = (key: string, given: Given): void => void kept.set(key, given);

export function useGiven(key: string): readonly [Given | null, (given: Given) => void] {
  const [, redraw] = useState(0);
  return [
    kept.get(key) ?? null,
    (given) => {
      kept.set(key, given);
      redraw((n) => n + 1);
    },
  ];
}
