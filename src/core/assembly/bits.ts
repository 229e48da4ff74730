/** Sets of small whole numbers as bits: the planner's sets of units. */
export type Bits = Uint32Array;

export const emptyBits = (count: number): Bits => new Uint32Array(Math.max(1, (count + 31) >>> 5));

export const copyBits = (a: Bits): Bits => a.slice();

export const hasBit = (a: Bits, i: number): boolean => (((a[i >>> 5] ?? 0) >>> (i & 31)) & 1) === 1;

export function setBit(a: Bits, i: number): void {
  a[i >>> 5] = (a[i >>> 5] ?? 0) | (1 << (i & 31));
}

export function clearBit(a: Bits, i: number): void {
  a[i >>> 5] = (a[i >>> 5] ?? 0) & ~(1 << (i & 31));
}

/** Adds all of `b` to `a`. */
export function addBits(a: Bits, b: Bits): void {
  for (let w = 0; w < a.length; w++) a[w] = (a[w] ?? 0) | (b[w] ?? 0);
}

/** Takes all of `b` out of `a`. */
export function dropBits(a: Bits, b: Bits): void {
  for (let w = 0; w < a.length; w++) a[w] = (a[w] ?? 0) & ~(b[w] ?? 0);
}

/** Whether every member of `a` is in `b`. */
export function isSubset(a: Bits, b: Bits): boolean {
  for (let w = 0; w < a.length; w++) if (((a[w] ?? 0) & ~(b[w] ?? 0)) !== 0) return false;
  return true;
}

export const isEmpty = (a: Bits): boolean => a.every((word) => word === 0);

export const sameBits = (a: Bits, b: Bits): boolean => a.every((word, w) => word === (b[w] ?? 0));

/** Whether `a` and `b` share a member. */
export function intersects(a: Bits, b: Bits): boolean {
  for (let w = 0; w < a.length; w++) if (((a[w] ?? 0) & (b[w] ?? 0)) !== 0) return true;
  return false;
}

/** Members in rising order. */
export function members(a: Bits): number[] {
  const out: number[] = [];
  for (let w = 0; w < a.length; w++) {
    let word = a[w] ?? 0;
    while (word !== 0) {
      const low = word & -word;
      out.push((w << 5) + 31 - Math.clz32(low));
      word ^= low;
    }
  }
  return out;
}

export function bitsOf(count: number, list: Iterable<number>): Bits {
  const out = emptyBits(count);
  for (const i of list) setBit(out, i);
  return out;
}

/** Members of both. */
export const within = (a: Bits, b: Bits): Bits => a.map((word, w) => word & (b[w] ?? 0));
