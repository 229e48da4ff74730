/**
 * Places item balloons in a column at each side of the stage so that leaders never cross: points are dealt to the nearer
 * column without one leader reaching over the middle into another's half, spaced evenly near their points' heights, and
 * any pair that still crosses trades places (each trade shortens the leaders, so trading ends).
 */
export interface Anchor {
  readonly id: string;
  /** Point on the part, CSS pixels of the stage. */
  readonly x: number;
  readonly y: number;
}

export interface Balloon extends Anchor {
  /** Middle of the balloon. */
  readonly bx: number;
  readonly by: number;
}

export interface Columns {
  readonly leftX: number;
  readonly rightX: number;
  readonly top: number;
  readonly bottom: number;
  /** Least distance between middles in a column. */
  readonly gap: number;
}

export function layoutBalloons(anchors: readonly Anchor[], columns: Columns): readonly Balloon[] {
  const capacity = Math.max(1, 1 + Math.floor((columns.bottom - columns.top) / columns.gap));
  const byX = [...anchors].sort((a, b) => a.x - b.x || a.y - b.y).slice(0, 2 * capacity);
  const middle = (columns.leftX + columns.rightX) / 2;
  let left = byX.filter((a) => a.x < middle).length;
  left = Math.min(capacity, Math.max(left, byX.length - capacity));
  return [
    ...column(byX.slice(0, left), columns.leftX, columns),
    ...column(byX.slice(left), columns.rightX, columns),
  ];
}

function column(anchors: readonly Anchor[], bx: number, { top, bottom, gap }: Columns): Balloon[] {
  const order = [...anchors].sort((a, b) => a.y - b.y || a.x - b.x);
  const heights = spaced(
    order.map((a) => a.y),
    top,
    bottom,
    gap,
  );
  const slots = heights.map((by, i) => ({ by, anchor: order[i]! }));
  // Each trade makes the sum of leader lengths smaller; the bound is a guard against rounding.
  for (let round = 0; round < order.length * order.length; round++) {
    let traded = false;
    for (let i = 0; i < slots.length; i++)
      for (let j = i + 1; j < slots.length; j++)
        if (crosses(bx, slots[i]!.by, slots[i]!.anchor, bx, slots[j]!.by, slots[j]!.anchor)) {
          [slots[i]!.anchor, slots[j]!.anchor] = [slots[j]!.anchor, slots[i]!.anchor];
          traded = true;
        }
    if (!traded) break;
  }
  return slots.map(({ by, anchor }) => ({ ...anchor, bx, by }));
}

/**
 * Heights nearest to those wished (ascending) with at least `gap` between them, inside top and bottom: least squares by
 * pooling neighbours that press on each other. When they cannot all fit the gap shrinks.
 */
export function spaced(
  wished: readonly number[],
  top: number,
  bottom: number,
  gap: number,
): readonly number[] {
  const n = wished.length;
  if (n === 0) return [];
  const step = n > 1 ? Math.min(gap, (bottom - top) / (n - 1)) : gap;
  const blocks: { sum: number; count: number }[] = [];
  wished.forEach((y, i) => {
    blocks.push({ sum: y - i * step, count: 1 });
    while (blocks.length > 1) {
      const last = blocks[blocks.length - 1]!;
      const before = blocks[blocks.length - 2]!;
      if (before.sum / before.count <= last.sum / last.count) break;
      before.sum += last.sum;
      before.count += last.count;
      blocks.pop();
    }
  });
  const highest = bottom - (n - 1) * step;
  const out: number[] = [];
  for (const { sum, count } of blocks) {
    const y = Math.min(Math.max(sum / count, top), Math.max(top, highest));
    for (let k = 0; k < count; k++) out.push(y + out.length * step);
  }
  return out;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Whether the leaders a-p and b-q cross in their insides. */
export function crosses(ax: number, ay: number, p: Point, bx: number, by: number, q: Point): boolean {
  const side = (x1: number, y1: number, x2: number, y2: number, x: number, y: number): number =>
    (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1);
  const d1 = side(ax, ay, p.x, p.y, bx, by);
  const d2 = side(ax, ay, p.x, p.y, q.x, q.y);
  const d3 = side(bx, by, q.x, q.y, ax, ay);
  const d4 = side(bx, by, q.x, q.y, p.x, p.y);
  return d1 * d2 < -1e-9 && d3 * d4 < -1e-9;
}
