/** A part of the free region (main or pocket) that fills from outside inwards, and the shot that fills it. */
import { evaluate } from './chebyshev';
import { radiusAt, type Panel } from './panels';

/** One body of shot. */
export interface ShotBody {
  readonly area_m2: number;
  /** First moment of area about O, [x, y]. */
  readonly moment_m3: readonly [number, number];
  /** Radius of its free surface about O; null where it is empty. */
  readonly surface_m: number | null;
}

export interface RegionPanel {
  readonly panel: Panel;
  readonly area: readonly number[];
  readonly momentX: readonly number[];
  readonly momentY: readonly number[];
  /** Outside this panel. */
  readonly before: Sums;
  readonly own_m2: number;
}
export interface Sums {
  readonly area_m2: number;
  readonly momentX_m3: number;
  readonly momentY_m3: number;
}
export interface Region {
  readonly panels: readonly RegionPanel[];
  readonly total: Sums;
}

/** The arcs that `belongs` picks, as one region. */
export function buildRegion(panels: readonly Panel[], belongs: (p: number, i: number) => boolean): Region {
  let total: Sums = { area_m2: 0, momentX_m3: 0, momentY_m3: 0 };
  const own: RegionPanel[] = [];
  panels.forEach((panel, p) => {
    const arcs = panel.arcs.filter((_, i) => belongs(p, i));
    if (arcs.length === 0) return;
    const area = addSeries(arcs.map((arc) => arc.area));
    const momentX = addSeries(arcs.map((arc) => arc.momentX));
    const momentY = addSeries(arcs.map((arc) => arc.momentY));
    const own_m2 = evaluate(area, -1);
    own.push({ panel, area, momentX, momentY, before: total, own_m2 });
    total = {
      area_m2: total.area_m2 + own_m2,
      momentX_m3: total.momentX_m3 + evaluate(momentX, -1),
      momentY_m3: total.momentY_m3 + evaluate(momentY, -1),
    };
  });
  return { panels: own, total };
}

const addSeries = (all: readonly (readonly number[])[]): number[] =>
  all[0]!.map((_, k) => all.reduce((sum, series) => sum + series[k]!, 0));

/** Fills a region with `area_m2` (not more than it holds), greatest r first. */
export function fillRegion(region: Region, area_m2: number): ShotBody {
  if (!(area_m2 > 0)) return { area_m2: 0, moment_m3: [0, 0], surface_m: null };
  const last = region.panels[region.panels.length - 1]!;
  const at = region.panels.find((each) => each.before.area_m2 + each.own_m2 >= area_m2) ?? last;
  const t = solveArea(at, area_m2 - at.before.area_m2);
  return {
    area_m2,
    moment_m3: [
      at.before.momentX_m3 + evaluate(at.momentX, t),
      at.before.momentY_m3 + evaluate(at.momentY, t),
    ],
    surface_m: radiusAt(at.panel, t),
  };
}

/** t at which the panel holds `target_m2` outside: the secant kept inside a bracket that always shrinks. */
function solveArea({ area, own_m2 }: RegionPanel, target_m2: number): number {
  if (target_m2 >= own_m2) return -1;
  let low = -1;
  let high = 1;
  let fLow = own_m2 - target_m2;
  let fHigh = -target_m2;
  for (let step = 0; step < 100 && high - low > 1e-15; step++) {
    // every third step halves, so that a flat end cannot hold it up
    const share = step % 3 === 2 ? 0.5 : fLow / (fLow - fHigh);
    const t = low + (high - low) * share;
    const f = evaluate(area, t) - target_m2;
    if (f === 0 || t === low || t === high) return t;
    if (f > 0) {
      low = t;
      fLow = f;
    } else {
      high = t;
      fHigh = f;
    }
  }
  return (low + high) / 2;
}
