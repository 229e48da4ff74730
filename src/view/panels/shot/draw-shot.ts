/**
 * Draws the slice end-on, as seen from the machine's right: housing cut and hatched, balls one by one, centre of the
 * shot, force, the way down. On the page of housing-paths.ts.
 */
import { baffleLegs, type Readings } from '../../../core/shot';
import { BALL_STRIDE, shotTransient, type ShotTake } from '../../../store';
import { PAGE_MM as MM } from '../common/housing-paths';

export interface DrawingInk {
  readonly ground: string;
  readonly card: string;
  readonly ink: string;
  readonly faint: string;
  readonly steel: string;
  readonly accent: string;
  readonly held: string;
}

export interface Outline {
  /** Shell with the chamber cut out of it, by the even-odd rule. */
  readonly shell: Path2D;
  /** Trim bar and other fixed steel. */
  readonly fixed: readonly Path2D[];
  /** Farthest steel from the axis, m. */
  readonly reach_m: number;
}

export interface DrawnMoment {
  readonly take: ShotTake;
  readonly outline: Outline;
  readonly eye: 'housing' | 'room';
  readonly now: Readings;
  /** Force of the whole exciter now, body frame, as a share of the longest arrow. */
  readonly force: readonly [number, number];
  readonly ink: DrawingInk;
}

/** Half of the square page, mm. */
export const pageHalf_mm = (outline: Outline): number => outline.reach_m * MM + 30;

let order = new Uint16Array(0);

/** Numbers of the balls from the farthest to the nearest. */
function byDepth(): Uint16Array {
  const { count, balls } = shotTransient;
  if (order.length !== count) order = Uint16Array.from({ length: count }, (_, i) => i);
  return order.sort((a, b) => balls[a * BALL_STRIDE + 2]! - balls[b * BALL_STRIDE + 2]!);
}

/** Draws into a square of `size` device pixels. */
export function drawShot(c: CanvasRenderingContext2D, size: number, moment: DrawnMoment): void {
  const { outline, eye, now, take, ink } = moment;
  const half = pageHalf_mm(outline);
  const scale = size / (2 * half);
  c.setTransform(1, 0, 0, 1, 0, 0);
  c.clearRect(0, 0, size, size);
  c.setTransform(scale, 0, 0, scale, size / 2, size / 2);
  c.lineJoin = c.lineCap = 'round';
  plumb(c, outline, eye === 'room' ? 0 : now.angle_rad, ink);
  // A positive angle is counter-clockwise on the page; the canvas counts clockwise.
  if (eye === 'room') c.rotate(-now.angle_rad);
  housing(c, outline, ink);
  balls(c, take, ink);
  baffle(c, take, ink);
  axis(c, ink);
  force(c, moment, outline);
  centre(c, now, ink);
}

function housing(c: CanvasRenderingContext2D, outline: Outline, ink: DrawingInk): void {
  c.lineWidth = 1.5;
  c.strokeStyle = ink.ink;
  c.fillStyle = ink.card;
  for (const steel of outline.fixed) {
    c.fill(steel);
    hatch(c, steel, outline.reach_m * MM, 3.4, -1);
    c.stroke(steel);
  }
  c.fill(outline.shell, 'evenodd');
  hatch(c, outline.shell, outline.reach_m * MM, 4.6, 1);
  c.stroke(outline.shell);
}

/** Lines at 45 degrees inside a shape, in the ink of its edge. */
function hatch(c: CanvasRenderingContext2D, shape: Path2D, reach: number, gap: number, way: 1 | -1): void {
  c.save();
  c.clip(shape, 'evenodd');
  const path = new Path2D();
  for (let s = -2 * reach; s < 2 * reach; s += gap * Math.SQRT2) {
    path.moveTo(s - 2 * reach, -2 * reach * way);
    path.lineTo(s + 2 * reach, 2 * reach * way);
  }
  c.lineWidth = 0.55;
  c.stroke(path);
  c.restore();
}

function balls(c: CanvasRenderingContext2D, take: ShotTake, ink: DrawingInk): void {
  const { balls: at, held } = shotTransient;
  const depth = take.parameters.slice.depth_m;
  c.lineWidth = 0.7;
  for (const i of byDepth()) {
    const o = i * BALL_STRIDE;
    const x = at[o + 1]! * MM;
    const y = at[o]! * MM;
    const r = at[o + 3]! * MM;
    // What lies deeper in the slice stands in paler ink.
    const near = 0.35 + 0.65 * Math.min(1, Math.max(0, at[o + 2]! / depth));
    c.globalAlpha = 1;
    c.beginPath();
    c.arc(x, y, r, 0, 2 * Math.PI);
    c.fillStyle = ink.card;
    c.fill();
    c.globalAlpha = near;
    c.fillStyle = held[i] === 1 ? ink.held : ink.steel;
    c.fill();
    c.strokeStyle = ink.ink;
    c.stroke();
    if (held[i] === 1) {
      c.beginPath();
      c.arc(x, y, r * 0.34, 0, 2 * Math.PI);
      c.fillStyle = ink.ink;
      c.fill();
    }
  }
  c.globalAlpha = 1;
}

function baffle(c: CanvasRenderingContext2D, take: ShotTake, ink: DrawingInk): void {
  const { chamber, baffle: plate } = take.parameters;
  if (plate === null) return;
  c.lineWidth = 2 * plate.half_thickness_m * MM;
  c.lineCap = 'butt';
  c.lineJoin = 'miter';
  c.strokeStyle = ink.ink;
  c.beginPath();
  baffleLegs(chamber, plate).forEach((leg, i) => {
    if (i === 0) c.moveTo(leg.y1 * MM, leg.x1 * MM);
    c.lineTo(leg.y2 * MM, leg.x2 * MM);
  });
  c.stroke();
  c.lineCap = c.lineJoin = 'round';
}

function axis(c: CanvasRenderingContext2D, ink: DrawingInk): void {
  c.lineWidth = 0.8;
  c.strokeStyle = ink.ink;
  c.beginPath();
  c.moveTo(-16, 0);
  c.lineTo(16, 0);
  c.moveTo(0, -16);
  c.lineTo(0, 16);
  c.stroke();
  c.beginPath();
  c.arc(0, 0, 4, 0, 2 * Math.PI);
  c.fillStyle = ink.card;
  c.fill();
  c.lineWidth = 1.6;
  c.stroke();
}

function force(c: CanvasRenderingContext2D, moment: DrawnMoment, outline: Outline): void {
  const length = Math.hypot(...moment.force);
  if (length < 0.02) return;
  const tip = [moment.force[1] * outline.reach_m * MM, moment.force[0] * outline.reach_m * MM] as const;
  const size = Math.min(15, 0.5 * Math.hypot(...tip));
  c.save();
  c.rotate(Math.atan2(tip[1], tip[0]));
  const end = Math.hypot(...tip);
  const arrow = (grow: number): void => {
    c.beginPath();
    c.moveTo(0, 0);
    c.lineTo(end - size * 0.8, 0);
    c.lineWidth = 4.5 + grow;
    c.stroke();
    c.beginPath();
    c.moveTo(end, 0);
    c.lineTo(end - size, size * 0.48);
    c.lineTo(end - size * 0.75, 0);
    c.lineTo(end - size, -size * 0.48);
    c.closePath();
    c.lineWidth = grow;
    if (grow > 0) c.stroke();
    c.fill();
  };
  c.strokeStyle = c.fillStyle = moment.ink.card;
  arrow(3);
  c.strokeStyle = c.fillStyle = moment.ink.accent;
  arrow(0);
  c.restore();
}

/** The quartered circle that marks a centre of mass. */
function centre(c: CanvasRenderingContext2D, now: Readings, ink: DrawingInk): void {
  const [x, y] = [now.centre_m[1] * MM, now.centre_m[0] * MM];
  const r = 7;
  c.beginPath();
  c.arc(x, y, r, 0, 2 * Math.PI);
  c.fillStyle = ink.card;
  c.fill();
  c.lineWidth = 1.6;
  c.strokeStyle = ink.ink;
  c.stroke();
  c.fillStyle = ink.ink;
  for (const from of [0, Math.PI]) {
    c.beginPath();
    c.moveTo(x, y);
    c.arc(x, y, r, from, from + Math.PI / 2);
    c.fill();
  }
}

/** The way down in the room: a plumb bob on a ring about the housing. */
function plumb(c: CanvasRenderingContext2D, outline: Outline, angle: number, ink: DrawingInk): void {
  const ring = outline.reach_m * MM + 9;
  c.save();
  c.setLineDash([10, 3, 2, 3]);
  c.lineWidth = 0.7;
  c.strokeStyle = ink.faint;
  c.beginPath();
  c.arc(0, 0, ring, 0, 2 * Math.PI);
  c.stroke();
  c.setLineDash([]);
  // Seen from the housing, down turns the other way.
  c.rotate(angle);
  c.fillStyle = ink.ink;
  c.strokeStyle = ink.card;
  c.lineWidth = 2;
  c.beginPath();
  c.moveTo(-6.5, ring - 6);
  c.lineTo(6.5, ring - 6);
  c.lineTo(0, ring + 11);
  c.closePath();
  c.stroke();
  c.fill();
  c.restore();
}
