/**
 * Panels: bands of radius in which the free region is a fixed number of arcs, each with series for its area
 * and first moment.
 *
 * Within a band the arcs' ends are smooth in r but for square roots where a ring touches a curve at the band's
 * rim; r = middle - half cos(phi) removes those, so that short series are exact to rounding. A band whose series
 * do not settle, or whose arcs change in number after all, is halved.
 */
import { criticalRadii } from './curves';
import { fitSeries, integralTo1, SAMPLE_POINTS, seriesTail } from './chebyshev';
import { follow, freeArcs, type RingArcs } from './ring';
import type { Section } from './section';

/** Area and first moment about O as integrals over a panel from t to its outer rim. */
export interface ArcSeries {
  readonly area: readonly number[];
  readonly momentX: readonly number[];
  readonly momentY: readonly number[];
}

export interface Panel {
  readonly inner_m: number;
  readonly outer_m: number;
  /** Rings from just inside the outer rim to just outside the inner rim, arcs numbered alike on all. */
  readonly rings: readonly RingArcs[];
  /** One for each arc. */
  readonly arcs: readonly ArcSeries[];
}

/** Radius at t in [-1, 1] of a panel; t = 1 is the outer rim. */
export function radiusAt(panel: { readonly inner_m: number; readonly outer_m: number }, t: number): number {
  const phi = (Math.PI * (1 + t)) / 2;
  // both rims exact: the form without the difference of the middle and half of the band
  return panel.inner_m + (panel.outer_m - panel.inner_m) * Math.sin(phi / 2) ** 2;
}

/** All panels from the greatest radius inwards; bands without any free arc are left out. */
export function buildPanels(section: Section): Panel[] {
  const radii = criticalRadii(section);
  const panels: Panel[] = [];
  for (let i = 0; i + 1 < radii.length; i++) addPanels(section, radii[i + 1]!, radii[i]!, 0, panels);
  return panels;
}

const MAX_HALVINGS = 12;
const TAIL = 1e-12;

function addPanels(section: Section, inner_m: number, outer_m: number, depth: number, panels: Panel[]): void {
  const size = section.radius_m;
  const width = outer_m - inner_m;
  if (width < 1e-9 * size) return;
  const rim = Math.min(1e-9 * size, 1e-3 * width);
  const band = { inner_m, outer_m };
  const radii = [outer_m - rim, ...SAMPLE_POINTS.map((t) => radiusAt(band, t)), inner_m + rim];
  const rings: RingArcs[] = [];
  for (const r of radii) {
    const ring = freeArcs(section, r);
    const before = rings[rings.length - 1];
    if (before !== undefined && before.from.length !== ring.from.length) {
      // the arcs change in number inside: find out where
      if (depth < MAX_HALVINGS) halve(section, inner_m, outer_m, depth, panels);
      return;
    }
    rings.push(before === undefined ? ring : follow(ring, before));
  }
  const count = rings[0]!.from.length;
  if (count === 0) return;
  const samples = rings.slice(1, -1);
  const scale = size * size;
  let settled = true;
  const arcs = Array.from({ length: count }, (_, i): ArcSeries => {
    const area: number[] = [];
    const momentX: number[] = [];
    const momentY: number[] = [];
    samples.forEach((ring, j) => {
      const r = ring.r_m;
      const from = ring.from[i]!;
      const to = ring.to[i]!;
      const stretch = (width * Math.PI * Math.sin((Math.PI * (1 + SAMPLE_POINTS[j]!)) / 2)) / 4;
      area.push(r * (to - from) * stretch);
      momentX.push(r * r * (Math.sin(to) - Math.sin(from)) * stretch);
      momentY.push(r * r * (Math.cos(from) - Math.cos(to)) * stretch);
    });
    const series = [area, momentX, momentY].map(fitSeries);
    if (series.some((each, k) => seriesTail(each) > TAIL * (k === 0 ? scale : scale * size))) settled = false;
    const [a, x, y] = series.map(integralTo1);
    return { area: a!, momentX: x!, momentY: y! };
  });
  if (!settled && depth < MAX_HALVINGS) halve(section, inner_m, outer_m, depth, panels);
  else panels.push({ inner_m, outer_m, rings, arcs });
}

function halve(section: Section, inner_m: number, outer_m: number, depth: number, panels: Panel[]): void {
  const middle = (inner_m + outer_m) / 2;
  addPanels(section, middle, outer_m, depth + 1, panels);
  addPanels(section, inner_m, middle, depth + 1, panels);
}
