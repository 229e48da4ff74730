/**
 * A grid of parallel lines through the machine and the stretch of each part on every line: the layered depth from
 * which blocking is read. Lines that share a cell's place on the grid but different triangles of one closed mesh
 * never miss or double a hit, since a shared edge is cut at one and the same place from both sides (half-open rule).
 */

/** Meshes whose coordinates `a`, `b` span the grid and `depth` runs along the lines (offsets into xyz triples). */
export interface LineSource {
  readonly positions: Float32Array;
  readonly indices: Uint32Array;
  readonly part: number;
  /** Fine lines are wanted round it too, not only on it (a fastener, for its tool). */
  readonly surround?: boolean;
}

export interface GridFrame {
  /** Which coordinate of the triples is across (two) and along the lines. */
  readonly a: 0 | 1 | 2;
  readonly b: 0 | 1 | 2;
  readonly depth: 0 | 1 | 2;
  readonly cell_m: number;
  /** Place of line (0, 0). */
  readonly a0_m: number;
  readonly b0_m: number;
  readonly countA: number;
  readonly countB: number;
}

export interface LineGrid extends GridFrame {
  /** First interval of each line, countA * countB + 1 numbers; line = iA + iB * countA. */
  readonly lineStart: Uint32Array;
  /** Part, start and end of each interval; those of one part on a line do not overlap and stand in order. */
  readonly part: Uint16Array;
  readonly from: Float32Array;
  readonly to: Float32Array;
}

/** Room for what is found on the way, used again from grid to grid: new memory costs more than what is done in it. */
export class LineScratch {
  /** Hits in the order in which they are found: 2 * line + 1 where it enters, and the depth. */
  line: Uint32Array<ArrayBuffer>;
  depth: Float32Array<ArrayBuffer>;
  count = 0;
  /** Hits of one source run together: its part, and the number after its last hit. */
  runs: { readonly part: number; readonly end: number }[] = [];
  /** The hits again, by line: 2 * part + 1 where it enters, and the depth. */
  owner = new Uint32Array(0);
  sorted = new Float32Array(0);
  /** Number of hits on line l, at l + 1; then where the hits of each line end. */
  ends = new Uint32Array(0);

  /** @param room hits that fit before more is taken */
  constructor(room = 1 << 15) {
    this.line = new Uint32Array(room);
    this.depth = new Float32Array(room);
  }

  clear(lineCount: number): void {
    this.count = 0;
    this.runs = [];
    if (this.ends.length < lineCount + 1) this.ends = new Uint32Array(lineCount + 1);
    else this.ends.fill(0, 0, lineCount + 1);
  }

  grow(): void {
    const { line, depth } = this;
    this.line = new Uint32Array(line.length * 2);
    this.depth = new Float32Array(line.length * 2);
    this.line.set(line);
    this.depth.set(depth);
  }

  /** Counting sort by line; stable, so that the hits of a part stay together. */
  sortByLine(lineCount: number): void {
    if (this.owner.length < this.count) {
      this.owner = new Uint32Array(this.line.length);
      this.sorted = new Float32Array(this.line.length);
    }
    const { line, depth, owner, sorted, ends } = this;
    for (let l = 0; l < lineCount; l++) ends[l + 1] = ends[l + 1]! + ends[l]!;
    // Each line's first place, moved on by every hit that is put there, ends as the first place of the next.
    let h = 0;
    for (const { part, end } of this.runs)
      for (; h < end; h++) {
        const key = line[h]!;
        const place = ends[key >>> 1]!++;
        owner[place] = (part << 1) | (key & 1);
        sorted[place] = depth[h]!;
      }
  }
}

/**
 * Cuts the meshes by the lines of `frame`. With `coarse` sources the grid has two levels: `sources` (small or thin
 * ones) are cut by every line, and `coarse` ones by every line near a small one but only by one line of each block
 * elsewhere.
 * @param block lines along each side of a block
 * @param hits room to work in, which may have served before
 */
export function cutLines(
  frame: GridFrame,
  sources: readonly LineSource[],
  coarse: readonly LineSource[] = [],
  block = 1,
  hits = new LineScratch(),
): LineGrid {
  const lineCount = frame.countA * frame.countB;
  hits.clear(lineCount);
  // Those whose surroundings count come first, so that their hits are known by number.
  for (const source of sources) if (source.surround === true) rasterize(frame, source, hits, null);
  const surrounded = hits.count;
  for (const source of sources) if (source.surround !== true) rasterize(frame, source, hits, null);
  if (coarse.length > 0) {
    const mask = block > 1 ? nearSmall(frame, hits, surrounded, block) : null;
    for (const source of coarse) rasterize(frame, source, hits, mask);
  }
  hits.sortByLine(lineCount);
  const { owner, sorted: depth, ends } = hits;
  const half = (hits.count >>> 1) + 1;
  const part = new Uint16Array(half);
  const from = new Float32Array(half);
  const to = new Float32Array(half);
  const lineStart = new Uint32Array(lineCount + 1);
  let made = 0;
  for (let l = 0; l < lineCount; l++) {
    lineStart[l] = made;
    const end = ends[l]!;
    let i = l === 0 ? 0 : ends[l - 1]!;
    while (i < end) {
      const p = owner[i]! >>> 1;
      let j = i + 1;
      while (j < end && owner[j]! >>> 1 === p) j++;
      if (j - i > 1) sortByDepth(owner, depth, i, j);
      let inside = 0;
      let begun = 0;
      for (let h = i; h < j; h++) {
        if ((owner[h]! & 1) === 1) {
          if (inside++ === 0) begun = depth[h]!;
        } else if (inside > 0 && --inside === 0) {
          part[made] = p;
          from[made] = begun;
          to[made++] = depth[h]!;
        }
      }
      i = j;
    }
  }
  lineStart[lineCount] = made;
  return {
    ...frame,
    lineStart,
    part: part.subarray(0, made),
    from: from.subarray(0, made),
    to: to.subarray(0, made),
  };
}

/** Lines that coarse sources are cut by, and the span of them in each row. */
interface Mask {
  readonly active: Uint8Array;
  readonly first: Int32Array;
  readonly last: Int32Array;
}

/**
 * Every line of the blocks that hold a hit, and of their neighbours for the first `surrounded` hits; of other blocks
 * the middle line alone.
 */
function nearSmall(frame: GridFrame, hits: LineScratch, surrounded: number, block: number): Mask {
  const { countA, countB } = frame;
  const across = Math.ceil(countA / block);
  const down = Math.ceil(countB / block);
  const near = new Uint8Array(across * down);
  for (let h = 0; h < hits.count; h++) {
    const line = hits.line[h]! >>> 1;
    const row = Math.floor(line / countA);
    const cell = Math.floor((line - row * countA) / block) + Math.floor(row / block) * across;
    if (h < surrounded) near[cell] = 2;
    else if (near[cell] === 0) near[cell] = 1;
  }
  const wide = near.slice();
  for (let b = 0; b < down; b++)
    for (let a = 0; a < across; a++) {
      if (near[a + b * across] !== 2) continue;
      for (let db = Math.max(0, b - 1); db <= Math.min(down - 1, b + 1); db++)
        for (let da = Math.max(0, a - 1); da <= Math.min(across - 1, a + 1); da++) wide[da + db * across] = 1;
    }
  const active = new Uint8Array(countA * countB);
  const first = new Int32Array(countB).fill(countA);
  const last = new Int32Array(countB).fill(-1);
  const middle = block >> 1;
  for (let row = 0; row < countB; row++) {
    const offset = Math.floor(row / block) * across;
    const inRow = row % block === middle;
    for (let a = 0; a < across; a++) {
      if (wide[a + offset] === 0 && !inRow) continue;
      const from = wide[a + offset] !== 0 ? a * block : a * block + middle;
      const to = Math.min(countA - 1, wide[a + offset] !== 0 ? a * block + block - 1 : from);
      if (from >= countA) continue;
      active.fill(1, row * countA + from, row * countA + to + 1);
      if (from < first[row]!) first[row] = from;
      if (to > last[row]!) last[row] = to;
    }
  }
  return { active, first, last };
}

/** Insertion sort of a short run; at equal depth entering comes first, so that touching solids count as one. */
function sortByDepth(owner: Uint32Array, depth: Float32Array, start: number, end: number): void {
  for (let i = start + 1; i < end; i++) {
    const key = owner[i]!;
    const d = depth[i]!;
    let j = i - 1;
    while (j >= start && (depth[j]! > d || (depth[j] === d && (owner[j]! & 1) < (key & 1)))) {
      owner[j + 1] = owner[j]!;
      depth[j + 1] = depth[j]!;
      j--;
    }
    owner[j + 1] = key;
    depth[j + 1] = d;
  }
}

function rasterize(frame: GridFrame, source: LineSource, hits: LineScratch, mask: Mask | null): void {
  const { a, b, depth, cell_m, a0_m, b0_m, countA, countB } = frame;
  const { positions, indices } = source;
  const { ends } = hits;
  // Coordinates (a, b, depth) are a right-handed triple, so a positive area in the plane faces along the lines.
  const handed = (b - a + 3) % 3 === 1 ? 1 : -1;
  for (let t = 0; t < indices.length; t += 3) {
    const i0 = indices[t]! * 3;
    const i1 = indices[t + 1]! * 3;
    const i2 = indices[t + 2]! * 3;
    const b_0 = (positions[i0 + b]! - b0_m) / cell_m;
    const b_1 = (positions[i1 + b]! - b0_m) / cell_m;
    const b_2 = (positions[i2 + b]! - b0_m) / cell_m;
    let low = b_0 < b_1 ? b_0 : b_1;
    if (b_2 < low) low = b_2;
    let high = b_0 > b_1 ? b_0 : b_1;
    if (b_2 > high) high = b_2;
    let row = Math.floor(low) + 1;
    if (row < 0) row = 0;
    let lastRow = Math.floor(high);
    if (lastRow >= countB) lastRow = countB - 1;
    if (row > lastRow) continue;
    const a_0 = (positions[i0 + a]! - a0_m) / cell_m;
    const a_1 = (positions[i1 + a]! - a0_m) / cell_m;
    const a_2 = (positions[i2 + a]! - a0_m) / cell_m;
    const area = (a_1 - a_0) * (b_2 - b_0) - (a_2 - a_0) * (b_1 - b_0);
    if (area === 0) continue;
    const d_0 = positions[i0 + depth]!;
    const d_1 = positions[i1 + depth]!;
    const d_2 = positions[i2 + depth]!;
    const slopeA = ((d_1 - d_0) * (b_2 - b_0) - (d_2 - d_0) * (b_1 - b_0)) / area;
    const slopeB = ((a_1 - a_0) * (d_2 - d_0) - (a_2 - a_0) * (d_1 - d_0)) / area;
    const least = Math.min(d_0, d_1, d_2);
    const most = Math.max(d_0, d_1, d_2);
    const enters = area * handed < 0 ? 1 : 0;
    for (; row <= lastRow; row++) {
      if (mask !== null && mask.last[row]! < 0) continue;
      let left = Infinity;
      let right = -Infinity;
      if (b_0 < row !== b_1 < row) {
        const x = b_0 < b_1 ? cross(a_0, b_0, a_1, b_1, row) : cross(a_1, b_1, a_0, b_0, row);
        if (x < left) left = x;
        if (x > right) right = x;
      }
      if (b_1 < row !== b_2 < row) {
        const x = b_1 < b_2 ? cross(a_1, b_1, a_2, b_2, row) : cross(a_2, b_2, a_1, b_1, row);
        if (x < left) left = x;
        if (x > right) right = x;
      }
      if (b_2 < row !== b_0 < row) {
        const x = b_2 < b_0 ? cross(a_2, b_2, a_0, b_0, row) : cross(a_0, b_0, a_2, b_2, row);
        if (x < left) left = x;
        if (x > right) right = x;
      }
      let column = Math.ceil(left);
      if (column < 0) column = 0;
      let endColumn = Math.ceil(right);
      if (endColumn > countA) endColumn = countA;
      if (mask !== null) {
        if (column < mask.first[row]!) column = mask.first[row]!;
        if (endColumn > mask.last[row]! + 1) endColumn = mask.last[row]! + 1;
      }
      for (; column < endColumn; column++) {
        if (mask !== null && mask.active[column + row * countA] === 0) continue;
        let d = d_0 + slopeA * (column - a_0) + slopeB * (row - b_0);
        // A sliver's plane is ill-conditioned; its own corners bound the depth.
        if (d < least) d = least;
        else if (d > most) d = most;
        if (hits.count === hits.line.length) hits.grow();
        const h = hits.count++;
        const line = column + row * countA;
        hits.line[h] = (line << 1) | enters;
        hits.depth[h] = d;
        ends[line + 1]!++;
      }
    }
  }
  hits.runs.push({ part: source.part, end: hits.count });
}

/** Where the edge from its lower to its upper end meets the row: the same sum from whichever triangle it is asked. */
function cross(aLow: number, bLow: number, aHigh: number, bHigh: number, row: number): number {
  return aLow + ((aHigh - aLow) * (row - bLow)) / (bHigh - bLow);
}
