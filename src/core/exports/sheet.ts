/**
 * A drawing sheet of what the stage shows: line drawing, balloons at its sides, parts list, scale bar. A3 lying, frame
 * after ISO 5457 (20 mm to bind, 10 mm elsewhere); lengths of the sheet in millimetres, x to the right, y down.
 */
import {
  type Balloon,
  type Cut,
  type EyePlace,
  HATCH_STYLES,
  hatchOfKinds,
  inCamera,
  layoutBalloons,
  NEAR_M,
  type PlacedPart,
  type StageDrawing,
  stageDrawing,
} from '../geometry';
import type { MachineDocument } from '../document';
import { dot, rotate, scale, sub, type Vec3 } from '../kernel';

/** A part as it stands on the stage. */
export interface ShownPart {
  readonly id: string;
  readonly matrix: ArrayLike<number>;
  readonly ghost: boolean;
}

export interface SheetRequest {
  readonly document: Pick<MachineDocument, 'machine' | 'masses' | 'solids'>;
  /** Bodies that stand in for those of a kind (the shot as it lies now). */
  readonly bodies?: Readonly<Record<string, PlacedPart['bodies']>>;
  readonly parts: readonly ShownPart[];
  readonly eye: EyePlace;
  /** Width over height of the stage. */
  readonly aspect: number;
  /** From the eye to the middle of the view. */
  readonly middle_m: number;
  readonly cut: Cut | null;
  /** Parts that have a balloon in any case. */
  readonly wanted: readonly string[];
  readonly balloons: boolean;
  /** The scale bar is a round number of these, metres. */
  readonly barUnit_m: number;
}

export interface SheetItem {
  readonly item: number;
  readonly kind: string;
  /** Parts of the kind that are shown, ghosts apart. */
  readonly count: number;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface SheetDrawing {
  readonly drawing: StageDrawing;
  /** Where the drawing lies on the sheet, and the size of one of its pixels. */
  readonly area: Box;
  readonly px_mm: number;
  readonly balloons: readonly (Balloon & { readonly item: number })[];
  /** By item number. */
  readonly items: readonly SheetItem[];
  /** Kinds that are shown but have no balloon. */
  readonly without: number;
  readonly mass_kg: number;
  readonly ghosts: boolean;
  readonly cut: boolean;
  /** True length at the middle of the view, and how long it is on the sheet. */
  readonly bar: { readonly length_m: number; readonly length_mm: number };
}

export const SHEET = { width: 420, height: 297 } as const;
export const FRAME: Box = { x: 20, y: 10, width: 390, height: 277 };
/** Column at the right for parts list and title block. */
export const COLUMN_MM = 100;
export const BALLOON_MM = 4.6;
/** Pixels of the map of surfaces to a millimetre: a line ends within an eighth of a millimetre of what covers it. */
const PX_PER_MM = 7;
/** Margin of the drawing inside its area, besides the columns of balloons. */
const MARGIN_MM = 4;
/** Room for a column of balloons and its leaders. */
const SIDE_MM = 26;
const HATCH_MM = 2.4;
const MOST_ITEMS = 30;
/** A part that shows less than a dot of a leader has no balloon, pixels. */
const LEAST_ROOM_PX = 3;
const BAR_MM = 42;

export function* drawSheet(request: SheetRequest): Generator<number, SheetDrawing> {
  const { document, eye, cut } = request;
  const { machine, masses } = document;
  const kindOf = new Map(machine.parts.map((part) => [part.id, part.kind]));
  const styles = hatches(document);
  const parts = request.parts.map(({ id, matrix, ghost }): PlacedPart => {
    const kind = kindOf.get(id) ?? '';
    return {
      id,
      matrix,
      ghost,
      bodies: request.bodies?.[kind] ?? document.solids[kind] ?? [],
      hatch: HATCH_STYLES[styles.get(kind) ?? 0]!,
    };
  });
  const area: Box = { x: FRAME.x, y: FRAME.y, width: FRAME.width - COLUMN_MM, height: FRAME.height };
  const width = Math.round(area.width * PX_PER_MM);
  const height = Math.round(area.height * PX_PER_MM);
  const { x0, y0, focal_px } = place(request, {
    width,
    height,
    side: (request.balloons ? SIDE_MM : MARGIN_MM) * PX_PER_MM,
    end: MARGIN_MM * PX_PER_MM,
  });
  const solid = parts.filter((part) => !part.ghost);
  const drawing = yield* stageDrawing({
    parts,
    eye,
    sheet: { width, height, x0, y0, focal_px },
    cut,
    axes: axisOf(document, request.parts),
    hatch_px: HATCH_MM * PX_PER_MM,
    middle_m: request.middle_m,
  });
  const counts = new Map<string, number>();
  let mass_kg = 0;
  for (const { id } of solid) {
    const kind = kindOf.get(id) ?? '';
    counts.set(kind, (counts.get(kind) ?? 0) + 1);
    mass_kg += masses[kind]?.mass_kg ?? 0;
  }
  const chosen = request.balloons ? chooseBalloons(request, parts, drawing) : [];
  const radius = BALLOON_MM * PX_PER_MM;
  const placed = layoutBalloons(
    chosen.map((k) => ({ id: parts[k]!.id, x: drawing.spots[k]!.x, y: drawing.spots[k]!.y })),
    {
      leftX: radius + 3 * PX_PER_MM,
      rightX: width - radius - 3 * PX_PER_MM,
      top: radius + 4 * PX_PER_MM,
      bottom: height - radius - 4 * PX_PER_MM,
      gap: 2 * radius + 2 * PX_PER_MM,
    },
  );
  const itemOf = (id: string): number => machine.kinds[kindOf.get(id) ?? '']?.item ?? 0;
  const balloons = placed.map((b) => ({ ...b, item: itemOf(b.id) }));
  const items = balloons
    .map(({ id, item }): SheetItem => {
      const kind = kindOf.get(id) ?? '';
      return { item, kind, count: counts.get(kind) ?? 0 };
    })
    .sort((a, b) => a.item - b.item);
  return {
    drawing,
    area,
    px_mm: 1 / PX_PER_MM,
    balloons,
    items,
    without: counts.size - items.length,
    mass_kg,
    ghosts: parts.some((p) => p.ghost),
    cut: cut !== null,
    bar: scaleBar(focal_px / PX_PER_MM / request.middle_m, request.barUnit_m),
  };
}

/**
 * Where the view's axis meets the sheet, and how large it is drawn: as on the stage; where all that is shown lies inside
 * the stage's view it fills the sheet (a crop, which changes nothing of the perspective).
 */
function place(
  { document: { machine, masses }, parts, eye, aspect, cut }: SheetRequest,
  room: { readonly width: number; readonly height: number; readonly side: number; readonly end: number },
): { x0: number; y0: number; focal_px: number } {
  const tall = Math.tan((eye.fov_deg * Math.PI) / 360);
  const wide = tall * aspect;
  const freeWidth = room.width - 2 * room.side;
  const freeHeight = room.height - 2 * room.end;
  const asOnStage = {
    x0: room.width / 2,
    y0: room.height / 2,
    focal_px: Math.min(freeHeight / (2 * tall), freeWidth / (2 * wide)),
  };
  const kindOf = new Map(machine.parts.map((part) => [part.id, part.kind]));
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { id, matrix: m } of parts) {
    const box = masses[kindOf.get(id) ?? ''];
    if (box === undefined || Math.hypot(m[0]!, m[1]!, m[2]!) < 1e-6) continue;
    for (let k = 0; k < 8; k++) {
      const own = [box.min_m, box.max_m] as const;
      const [a, b, c] = [own[k & 1]![0], own[(k >> 1) & 1]![1], own[k >> 2]![2]];
      let p: Vec3 = [
        m[0]! * a + m[4]! * b + m[8]! * c + m[12]!,
        m[1]! * a + m[5]! * b + m[9]! * c + m[13]!,
        m[2]! * a + m[6]! * b + m[10]! * c + m[14]!,
      ];
      // what is cut away takes no room
      const beyond = cut === null ? 0 : Math.max(0, dot(cut.normal, p) - cut.distance_m);
      if (beyond > 0) p = sub(p, scale(cut!.normal, beyond));
      const [x, y, z] = inCamera(eye, p);
      if (z < NEAR_M || Math.abs(x / z) > wide || Math.abs(y / z) > tall) return asOnStage;
      left = Math.min(left, x / z);
      right = Math.max(right, x / z);
      low = Math.min(low, y / z);
      high = Math.max(high, y / z);
    }
  }
  if (left >= right || low >= high) return asOnStage;
  const focal_px = Math.min(freeWidth / (right - left), freeHeight / (high - low));
  return {
    x0: room.width / 2 - (focal_px * (left + right)) / 2,
    y0: room.height / 2 + (focal_px * (low + high)) / 2,
    focal_px,
  };
}

/** One part a kind: those wanted, then the kinds that are seen most; fasteners come last. Numbers of parts. */
function chooseBalloons(
  { document: { machine }, wanted }: SheetRequest,
  parts: readonly PlacedPart[],
  { spots }: StageDrawing,
): number[] {
  const kindOf = new Map(machine.parts.map((part) => [part.id, part.kind]));
  const best = new Map<string, number>();
  const seen: number[] = [];
  for (const [k, part] of parts.entries()) {
    const spot = spots[k];
    if (spot === null || spot === undefined || part.ghost || spot.room < LEAST_ROOM_PX) continue;
    const kind = kindOf.get(part.id) ?? '';
    if (wanted.includes(part.id) && !seen.some((s) => kindOf.get(parts[s]!.id) === kind)) seen.push(k);
    const other = best.get(kind);
    if (other === undefined || spots[other]!.pixels < spot.pixels) best.set(kind, k);
  }
  const taken = new Set(seen.map((k) => kindOf.get(parts[k]!.id)));
  const isFastener = (kind: string): boolean => machine.kinds[kind]?.family === 'fasteners';
  const rest = [...best]
    .filter(([kind]) => !taken.has(kind))
    .sort(
      ([a, k], [b, l]) =>
        Number(isFastener(a)) - Number(isFastener(b)) || spots[l]!.pixels - spots[k]!.pixels || k - l,
    );
  return [...seen, ...rest.map(([, k]) => k)].slice(0, MOST_ITEMS);
}

/** A round length (1, 2 or 5 times a power of ten of the unit) that fits the bar; `mm_per_m`: millimetres of the sheet a metre. */
function scaleBar(mm_per_m: number, unit_m: number): SheetDrawing['bar'] {
  const most = BAR_MM / mm_per_m / unit_m;
  const power = 10 ** Math.floor(Math.log10(most));
  const step = [5, 2, 1].find((n) => n * power <= most) ?? 1;
  const length_m = step * power * unit_m;
  return { length_m, length_mm: length_m * mm_per_m };
}

/** The drum's axis, a little longer than what is shown along it. */
function axisOf({ machine, masses }: SheetRequest['document'], shown: readonly ShownPart[]): [Vec3, Vec3][] {
  let least = Infinity;
  let most = -Infinity;
  const kindOf = new Map(machine.parts.map((part) => [part.id, part.kind]));
  for (const { id, matrix: m, ghost } of shown) {
    const box = masses[kindOf.get(id) ?? ''];
    if (box === undefined || ghost) continue;
    for (let k = 0; k < 8; k++) {
      const x =
        m[12]! +
        m[0]! * (k & 1 ? box.max_m : box.min_m)[0] +
        m[4]! * (k & 2 ? box.max_m : box.min_m)[1] +
        m[8]! * (k & 4 ? box.max_m : box.min_m)[2];
      least = Math.min(least, x);
      most = Math.max(most, x);
    }
  }
  if (least > most) return [];
  const more = 0.12 + 0.04 * (most - least);
  return [[[least - more, 0, 0], [most + more, 0, 0]]]; // prettier-ignore
}

const known = new WeakMap<object, ReadonlyMap<string, number>>();

/** Hatch style of each kind by its neighbours in the assembled machine. */
function hatches({ machine, masses }: SheetRequest['document']): ReadonlyMap<string, number> {
  const found = known.get(machine);
  if (found !== undefined) return found;
  const kinds = Object.keys(machine.kinds);
  const number = new Map(kinds.map((kind, k) => [kind, k]));
  const boxes = machine.parts.map(({ kind, pose }) => {
    const out = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
    const box = masses[kind];
    if (box === undefined) return out;
    for (let k = 0; k < 8; k++) {
      const p = rotate(pose.rotation, [
        (k & 1 ? box.max_m : box.min_m)[0],
        (k & 2 ? box.max_m : box.min_m)[1],
        (k & 4 ? box.max_m : box.min_m)[2],
      ]);
      for (const axis of [0, 1, 2] as const) {
        out[axis] = Math.min(out[axis]!, p[axis] + pose.position_m[axis]);
        out[axis + 3] = Math.max(out[axis + 3]!, p[axis] + pose.position_m[axis]);
      }
    }
    return out;
  });
  const styles = hatchOfKinds(
    boxes,
    machine.parts.map((part) => number.get(part.kind) ?? 0),
    kinds.length,
  );
  const byKind = new Map(kinds.map((kind, k) => [kind, styles[k]!]));
  known.set(machine, byKind);
  return byKind;
}
