/** Chains of feature edges: what hangs together, how large it is, and the length run along it. */

/** Segments that hang together, the largest first, so that small detail can be left off by drawing fewer. */
export interface SortedEdges {
  readonly ends: Float32Array;
  /** Numbers that go with each segment, in the new order. */
  readonly order: Uint32Array;
  /** Radius of the chain (half the diagonal of its box) that each segment belongs to, falling. */
  readonly radius: Float32Array;
}

export function largestFirst(ends: Float32Array): SortedEdges {
  const count = ends.length / 6;
  const parent = new Int32Array(count).map((_, i) => i);
  const root = (s: number): number => {
    let r = s;
    while (parent[r] !== r) r = parent[r]!;
    while (parent[s] !== r) {
      const up = parent[s]!;
      parent[s] = r;
      s = up;
    }
    return r;
  };
  const first = new Map<string, number>();
  for (let s = 0; s < count; s++)
    for (const key of [pointKey(ends, 6 * s), pointKey(ends, 6 * s + 3)]) {
      const other = first.get(key);
      if (other === undefined) first.set(key, s);
      else parent[root(s)] = root(other);
    }
  const boxes = new Map<number, number[]>();
  for (let s = 0; s < count; s++) {
    const r = root(s);
    const box = boxes.get(r) ?? [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
    boxes.set(r, box);
    for (let k = 0; k < 6; k++) {
      const p = ends[6 * s + k]!;
      if (p < box[k % 3]!) box[k % 3] = p;
      if (p > box[3 + (k % 3)]!) box[3 + (k % 3)] = p;
    }
  }
  const size = (s: number): number => {
    const b = boxes.get(root(s))!;
    return Math.hypot(b[3]! - b[0]!, b[4]! - b[1]!, b[5]! - b[2]!) / 2;
  };
  const sizes = Float32Array.from({ length: count }, (_, s) => size(s));
  const order = Uint32Array.from({ length: count }, (_, s) => s).sort(
    (a, b) => sizes[b]! - sizes[a]! || a - b,
  );
  const sorted = new Float32Array(ends.length);
  order.forEach((s, i) => sorted.set(ends.subarray(6 * s, 6 * s + 6), 6 * i));
  return { ends: sorted, order, radius: Float32Array.from(order, (s) => sizes[s]!) };
}

const pointKey = (ends: Float32Array, i: number): string =>
  `${Math.round(ends[i]! * 1e5)},${Math.round(ends[i + 1]! * 1e5)},${Math.round(ends[i + 2]! * 1e5)}`;

/** For each segment the run at its start in metres; segments are chained where their ends coincide. */
export function runAlong(edges: Float32Array): Float32Array {
  const count = edges.length / 6;
  const runs = new Float32Array(count);
  const at = new Map<string, number[]>();
  const key = (i: number): string => pointKey(edges, i);
  for (let s = 0; s < count; s++)
    for (const end of [key(6 * s), key(6 * s + 3)]) {
      const list = at.get(end);
      if (list === undefined) at.set(end, [s]);
      else list.push(s);
    }
  const seen = new Uint8Array(count);
  for (let first = 0; first < count; first++) {
    if (seen[first]) continue;
    let s: number | undefined = first;
    let run = 0;
    let leave = key(6 * first + 3);
    while (s !== undefined) {
      seen[s] = 1;
      const i = 6 * s;
      const length = Math.hypot(
        edges[i + 3]! - edges[i]!,
        edges[i + 4]! - edges[i + 1]!,
        edges[i + 5]! - edges[i + 2]!,
      );
      // A segment walked backwards runs down: its start lies further along the chain.
      const forward: boolean = key(i + 3) === leave;
      if (!forward)
        for (let k = 0; k < 3; k++) [edges[i + k], edges[i + 3 + k]] = [edges[i + 3 + k]!, edges[i + k]!];
      runs[s] = run;
      run += length;
      const here: string = leave;
      s = at.get(here)?.find((other) => !seen[other]);
      if (s !== undefined) leave = key(6 * s) === here ? key(6 * s + 3) : key(6 * s);
    }
  }
  return runs;
}
