/** Questions of order, made from what blocks what. Each can be made again from its name, its seed and the machine. */
import type { Item } from '../item';
import type { Subject } from '../subject';
import { orderBlocks } from './order-blocks';
import type { GraphSubject } from './order-cases';
import { orderLast } from './order-last';
import { orderNow } from './order-now';
import { orderSequence } from './order-sequence';
import { orderSupport } from './order-support';

const GENERATORS = {
  'order-now': orderNow,
  'order-blocks': orderBlocks,
  'order-last': orderLast,
  'order-support': orderSupport,
  'order-sequence': orderSequence,
} as const satisfies Record<string, (subject: GraphSubject, seed: number) => Item | null>;

export type OrderGenerator = keyof typeof GENERATORS;
export const ORDER_GENERATORS = Object.keys(GENERATORS) as readonly OrderGenerator[];

/**
 * The question that a generator makes of a machine with this seed; null while the machine's graph is not known, or
 * where the machine has nothing to ask of that kind.
 */
export function orderQuestion(subject: Subject, generator: OrderGenerator, seed: number): Item | null {
  const { graph } = subject;
  return graph === null ? null : GENERATORS[generator]({ ...subject, graph }, seed);
}
