import { add, dot, length, normalize, scale, sub, type Vec3 } from '../../kernel';
import type { BentTubeParams } from '../../machine';
import type { Solid, SolidScope } from '../solid-kernel';
import { body, type BuildContext } from './context';
import { cylinderBetween } from './drillings';

/** Legs joined by mitres, then bored by the same path drawn thinner. */
export function buildBentTube(context: BuildContext, params: BentTubeParams) {
  const { solids } = context;
  const outer = params.outside_m / 2;
  const bore = pathSolid(solids, params.path_m, outer - params.wall_m, 0.001);
  const tools = [bore];
  if (params.clear_radius_m !== undefined) {
    const xs = params.path_m.map((p) => p[0]);
    tools.push(solids.cylinder(Math.min(...xs) - 1, Math.max(...xs) + 1, params.clear_radius_m));
  }
  return [body(context, 'solid', solids.subtract(pathSolid(solids, params.path_m, outer, 0), tools))];
}

/** Round bars along the path; at a corner both run past it and are cut by the mitre's plane. */
function pathSolid(solids: SolidScope, path: readonly Vec3[], radius: number, over: number): Solid {
  const legs: Solid[] = [];
  for (let i = 0; i + 1 < path.length; i++) {
    const a = path[i]!;
    const b = path[i + 1]!;
    const along = normalize(sub(b, a));
    const before = i > 0 ? miter(path[i - 1]!, a, b) : null;
    const after = i + 2 < path.length ? miter(a, b, path[i + 2]!) : null;
    const from = add(a, scale(along, before === null ? -over : -2 * radius));
    const to = add(b, scale(along, after === null ? over : 2 * radius));
    let leg = cylinderBetween(solids, from, to, radius);
    if (before !== null) leg = cutAt(solids, leg, before, a);
    if (after !== null) leg = cutAt(solids, leg, scale(after, -1), b);
    legs.push(leg);
  }
  return solids.union(legs);
}

/** Normal of the mitre at corner b, towards the leg that follows. */
function miter(a: Vec3, b: Vec3, c: Vec3): Vec3 {
  return normalize(add(normalize(sub(b, a)), normalize(sub(c, b))));
}

function cutAt(solids: SolidScope, solid: Solid, normal: Vec3, point: Vec3): Solid {
  return solids.trim(solid, normal, dot(normal, point) / length(normal));
}
