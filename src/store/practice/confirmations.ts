/** What a learner confirms before a legal move: what is held, what has run out, each caution of the step. */
import type { Legal, Step, Support } from '../../core/assembly';
import { byGravity, signalOf } from '../../core/machine';
import type { MadeMove } from './state';

export type Confirmation =
  | { readonly kind: 'support'; readonly support: Support }
  | { readonly kind: 'drain'; readonly step: Step }
  | { readonly kind: 'caution'; readonly caution: string };

/**
 * Cautions gravest first, then what is held or drained in the order of work. A caution is confirmed once a run; what
 * is held is confirmed each time, for each has a force of its own.
 */
export function confirmations({ step, before }: Legal, made: readonly MadeMove[]): readonly Confirmation[] {
  const known = new Set(made.flatMap(({ legal }) => cautionsOf(legal)));
  return [
    ...cautionsOf({ step, before })
      .filter((caution) => !known.has(caution))
      .map((caution): Confirmation => ({ kind: 'caution', caution })),
    ...before.flatMap((each): Confirmation[] =>
      each.kind === 'support'
        ? each.supports.map((support) => ({ kind: 'support', support }))
        : each.kind === 'drain'
          ? [{ kind: 'drain', step: each }]
          : [],
    ),
  ];
}

const cautionsOf = ({ step, before }: Pick<Legal, 'step' | 'before'>): readonly string[] =>
  [...new Set([step, ...before].flatMap((each) => each.cautions))].sort((a, b) =>
    byGravity(signalOf(a), signalOf(b)),
  );
