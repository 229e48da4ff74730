/** What kept answers come to. A record that cannot be read is counted as such, never guessed at. */
import { z } from 'zod';

const answerSchema = z.object({
  item: z.string(),
  answer: z.unknown(),
  certainty: z.number(),
  right: z.boolean(),
  mark: z.number(),
  mode: z.string(),
  at_ms: z.number(),
});

export interface AnswerSummary {
  readonly answered: number;
  readonly right: number;
  /** Wrong though the person was sure. */
  readonly sureAndWrong: number;
  /** Different questions. */
  readonly items: number;
  readonly first_ms: number | null;
  readonly last_ms: number | null;
  readonly unreadable: number;
}

/** @param texts records of answers, as kept */
export function summarise(texts: readonly string[]): AnswerSummary {
  let unreadable = 0;
  const read = texts.flatMap((text) => {
    const answer = readAnswer(text);
    if (answer === null) unreadable++;
    return answer === null || answer.answer === null ? [] : [answer];
  });
  const times = read.map((each) => each.at_ms);
  return {
    answered: read.length,
    right: read.filter((each) => each.right).length,
    sureAndWrong: read.filter((each) => !each.right && each.certainty === 3).length,
    items: new Set(read.map((each) => each.item)).size,
    first_ms: times.length === 0 ? null : Math.min(...times),
    last_ms: times.length === 0 ? null : Math.max(...times),
    unreadable,
  };
}

/** A kept answer; null when it cannot be read. */
export function readAnswer(text: string): z.infer<typeof answerSchema> | null {
  try {
    const read = answerSchema.safeParse(JSON.parse(text));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}
