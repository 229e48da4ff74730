import type { TyreParams } from '../../machine';
import { body, type BuildContext } from './context';

/** Few corners: the tyre is context, never the subject. */
const SIDES = 40;
/** Shares of the tyre's half width and section height that draw its outline. */
const SHOULDER = 0.18;
const WALL_M = 0.03;

/** A hollow tyre with cleats, and a dished rim, as two bodies. */
export function buildTyre(context: BuildContext, params: TyreParams) {
  const { solids } = context;
  const { outer_m: outer, rim_m: rim, cleat_height_m: cleat } = params;
  const w = params.width_m / 2;
  const tread = outer - cleat;
  const shoulder = (tread - rim) * SHOULDER;
  const carcass = solids.revolve(
    [[-0.8 * w, rim], [-w, rim + 0.4 * (tread - rim)], [-w, tread - 2 * shoulder], [-w + shoulder, tread],
      [w - shoulder, tread], [w, tread - 2 * shoulder], [w, rim + 0.4 * (tread - rim)], [0.8 * w, rim]], // prettier-ignore
    SIDES,
  );
  const air = solids.revolve(
    [[-0.8 * w + WALL_M, rim - 0.001], [-w + WALL_M, rim + 0.4 * (tread - rim)], [-w + shoulder, tread - WALL_M],
      [w - shoulder, tread - WALL_M], [w - WALL_M, rim + 0.4 * (tread - rim)], [0.8 * w - WALL_M, rim - 0.001]], // prettier-ignore
    SIDES,
  );
  const bar = solids.box([0, tread - 0.02, -0.02], [w - shoulder, outer, 0.02]);
  const slanted = solids.rotate(bar, 0, 25);
  const other = solids.rotate(solids.translate(bar, [-(w - shoulder), 0, 0]), 0, -25);
  const cleats = [
    ...solids.around(slanted, Math.max(1, params.cleats)),
    ...solids.around(other, Math.max(1, params.cleats), 180 / Math.max(1, params.cleats)),
  ];
  const tyre = solids.subtract(params.cleats > 0 ? solids.union([carcass, ...cleats]) : carcass, [air]);
  const wheel = solids.revolve(
    [[-0.8 * w, rim - 0.02], [-0.8 * w, rim], [0.8 * w, rim], [0.8 * w, rim - 0.02], [0.15 * w, rim - 0.04],
      [0.05 * w, 0.12], [0.05 * w, 0], [-0.05 * w, 0], [-0.05 * w, 0.12], [0, rim - 0.04]], // prettier-ignore
    SIDES,
  );
  return [body(context, 'tyre', tyre), body(context, 'rim', wheel, { material: 'steel', finish: 'painted' })];
}
