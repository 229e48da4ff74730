import type { Machine } from '../machine';

/** What a seal sits in: the part that it is pressed into, else the first one that it seals. */
export function sealHost(
  machine: Machine,
  relation: { readonly seal: string; readonly between: readonly string[] },
): string {
  for (const seat of machine.relations) {
    if (seat.type !== 'seat' || (seat.interference_m ?? 0) <= 0) continue;
    if (seat.inner === relation.seal) return seat.outer;
  }
  return relation.between[0] ?? '';
}
