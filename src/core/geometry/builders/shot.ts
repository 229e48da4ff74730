import { panic } from '../../kernel';
import type { ShotParams } from '../../machine';
import { body, type BuildContext } from './context';
import { baffleSolid, chamberSolid } from './exciter-housing';

/**
 * The shot at rest: what lies in the chamber, clear of the baffle, below the level at which its bulk volume
 * mass / (density x packing) fits. The level is found by halving the chamber's height, to a hundredth of a millimetre.
 */
export function buildShot(context: BuildContext, params: ShotParams) {
  const { solids, machine } = context;
  const housing = machine.kinds[params.housing]?.params;
  if (housing?.builder !== 'exciter-housing')
    panic('geometry/buildShot', 'no housing kind', params.housing, 'a kind of builder exciter-housing');
  const { shot_mass_kg, shot_density_kg_m3, shot_packing } = machine.operation;
  const wanted = shot_mass_kg / (shot_density_kg_m3 * shot_packing);
  const { chamber } = housing;
  const room = solids.subtract(chamberSolid(solids, housing, params.gap_m), [
    baffleSolid(solids, housing, params.gap_m),
  ]);
  const bottom = -chamber.eccentricity_m - chamber.radius_m;
  const below = (level: number) =>
    solids.intersect(
      room,
      solids.box(
        [chamber.from_x_m, bottom - 0.01, -chamber.radius_m],
        [chamber.to_x_m, level, chamber.radius_m],
      ),
    );
  if (room.volume() < wanted) panic('geometry/buildShot', 'shot does not fit, bulk volume in m3', wanted);
  let low = bottom + params.gap_m;
  let high = bottom + 2 * chamber.radius_m;
  while (high - low > 1e-5) {
    const middle = (low + high) / 2;
    if (below(middle).volume() < wanted) low = middle;
    else high = middle;
  }
  return [body(context, 'solid', below(high), { section: 'whole' })];
}
