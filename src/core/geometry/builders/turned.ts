import type { Station, TurnedParams } from '../../machine';
import { segmentsFor } from '../segments';
import type { ProfilePoint, Solid, SolidScope } from '../solid-kernel';
import { body, type BuildContext } from './context';
import { drillingTools, keywayTools } from './drillings';
import { boreHoles } from './holes';

/** Steps off an edge to ask what lies beyond it. */
const PROBE_M = 1e-5;

/** Turned parts: each station a ring with its own segment counts, joined; edges that stand free are chamfered. */
export function buildTurned(context: BuildContext, params: TurnedParams) {
  const solid = turnedSolid(context.solids, params);
  return [body(context, 'solid', solid, { section: params.shaft === true ? 'whole' : 'cut' })];
}

/** The solid alone, for builders that start from a turned blank. */
export function turnedSolid(solids: SolidScope, params: Omit<TurnedParams, 'builder'>): Solid {
  const { stations } = params;
  const x0 = Math.min(...stations.map((s) => s.from_x_m));
  const x1 = Math.max(...stations.map((s) => s.to_x_m));
  const rings = stations.map((s) =>
    stationSolid(solids, s, stations, params.chamfer_m ?? 0, params.bore_chamfer_m ?? 0),
  );
  const outer = Math.max(...stations.map((s) => Math.max(s.outer_m, s.outer_end_m ?? 0)));
  const blank = solids.union([...rings, ...bossSolids(solids, params)]);
  return solids.subtract(boreHoles(solids, blank, params.holes, x0, x1), [
    ...keywayTools(solids, params.keyways, outer),
    ...drillingTools(solids, params.drillings),
  ]);
}

function bossSolids(
  solids: SolidScope,
  { bosses, chamfer_m = 0 }: Omit<TurnedParams, 'builder'>,
): readonly Solid[] {
  if (bosses === undefined) return [];
  const { stations, holes = [] } = bosses;
  const boss = turnedSolid(solids, { stations, chamfer_m, holes });
  return solids.around(solids.translate(boss, [0, bosses.radius_m, 0]), bosses.count, bosses.start_deg);
}

function stationSolid(
  solids: SolidScope,
  s: Station,
  all: readonly Station[],
  chamfer: number,
  boreChamfer: number,
): Solid {
  const outerEnd = s.outer_end_m ?? s.outer_m;
  const innerEnd = s.inner_end_m ?? s.inner_m;
  const room = 0.4 * Math.min(s.to_x_m - s.from_x_m, s.outer_m - s.inner_m, outerEnd - innerEnd);
  const free = (x: number, r: number, dx: number, dr: number): boolean =>
    !inside(all, x + dx * PROBE_M, r - dr * PROBE_M) && !inside(all, x - dx * PROBE_M, r + dr * PROBE_M);
  const cut = (x: number, r: number, dx: number, dr: number, size: number): number =>
    size > 0 && free(x, r, dx, dr) ? Math.min(size, room) : 0;

  const a = cut(s.from_x_m, s.outer_m, -1, 1, chamfer);
  const b = cut(s.to_x_m, outerEnd, 1, 1, chamfer);
  const outer: ProfilePoint[] = [[s.from_x_m, 0]];
  if (a > 0) outer.push([s.from_x_m, s.outer_m - a], [s.from_x_m + a, s.outer_m]);
  else outer.push([s.from_x_m, s.outer_m]);
  if (b > 0) outer.push([s.to_x_m - b, outerEnd], [s.to_x_m, outerEnd - b]);
  else outer.push([s.to_x_m, outerEnd]);
  outer.push([s.to_x_m, 0]);
  const blank = solids.revolve(outer, segmentsFor(Math.max(s.outer_m, outerEnd)));
  if (s.inner_m <= 0 && innerEnd <= 0) return blank;

  const c = s.inner_m > 0 ? cut(s.from_x_m, s.inner_m, -1, -1, boreChamfer) : 0;
  const d = innerEnd > 0 ? cut(s.to_x_m, innerEnd, 1, -1, boreChamfer) : 0;
  // The tool runs out of both ends straight, so that no face of it lies on a face of the blank.
  const over = 0.001;
  const bore: ProfilePoint[] = [
    [s.from_x_m - over, 0],
    [s.from_x_m - over, s.inner_m + (c > 0 ? c + over : 0)],
    ...(c > 0 ? ([[s.from_x_m + c, s.inner_m]] as const) : ([[s.from_x_m, s.inner_m]] as const)),
    ...(d > 0 ? ([[s.to_x_m - d, innerEnd]] as const) : ([[s.to_x_m, innerEnd]] as const)),
    [s.to_x_m + over, innerEnd + (d > 0 ? d + over : 0)],
    [s.to_x_m + over, 0],
  ];
  return solids.subtract(blank, [solids.revolve(bore, segmentsFor(Math.max(s.inner_m, innerEnd)))]);
}

/** Whether the point (x, r) lies in the metal of any station. */
function inside(all: readonly Station[], x: number, r: number): boolean {
  return all.some((s) => {
    if (x <= s.from_x_m || x >= s.to_x_m) return false;
    const t = (x - s.from_x_m) / (s.to_x_m - s.from_x_m);
    const outer = s.outer_m + t * ((s.outer_end_m ?? s.outer_m) - s.outer_m);
    const inner = s.inner_m + t * ((s.inner_end_m ?? s.inner_m) - s.inner_m);
    return r > inner && r < outer;
  });
}
