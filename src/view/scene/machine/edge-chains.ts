/** Length run along chains of feature edges, so that dashes go round a circle without a break. */

/** For each segment the run at its start in metres; segments are chained where their ends coincide. */
export function runAlong(edges: Float32Array): Float32Array {
  const count = edges.length / 6;
  const runs = new Float32Array(count);
  const at = new Map<string, number[]>();
  const key = (i: number): string =>
    `${Math.round(edges[i]! * 1e5)},${Math.round(edges[i + 1]! * 1e5)},${Math.round(edges[i + 2]! * 1e5)}`;
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
      const length = Math.hypot(edges[i + 3]! - edges[i]!, edges[i + 4]! - edges[i + 1]!, edges[i + 5]! - edges[i + 2]!);
      // A segment walked backwards runs down: its start lies further along the chain.
      const forward: boolean = key(i + 3) === leave;
      if (!forward) for (let k = 0; k < 3; k++) [edges[i + k], edges[i + 3 + k]] = [edges[i + 3 + k]!, edges[i + k]!];
      runs[s] = run;
      run += length;
      const here: string = leave;
      s = at.get(here)?.find((other) => !seen[other]);
      if (s !== undefined) leave = key(6 * s) === here ? key(6 * s + 3) : key(6 * s);
    }
  }
  return runs;
}
