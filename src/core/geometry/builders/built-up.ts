import type { BuiltUpParams, Piece } from '../../machine';
import type { Solid, SolidScope } from '../solid-kernel';
import { across, standAlong } from './axes';
import { body, type BuildContext } from './context';
import { roundedOutline, slotOutline } from './outline';

/** Pieces joined, less the cuts. Pieces that share no more than a face still join into one solid. */
export function buildBuiltUp(context: BuildContext, params: BuiltUpParams) {
  const { solids } = context;
  const pieces = params.pieces.map((piece) => pieceSolid(solids, piece));
  const cuts = (params.cuts ?? []).map((piece) => pieceSolid(solids, piece));
  const solid = solids.subtract(solids.union(pieces), cuts);
  return [body(context, 'solid', solid, { section: params.shaft === true ? 'whole' : 'cut' })];
}

function pieceSolid(solids: SolidScope, piece: Piece): Solid {
  switch (piece.form) {
    case 'box':
      return solids.box(piece.from_m, piece.to_m);
    case 'cylinder': {
      const [a, b] = across(piece.axis, piece.at_m);
      const round = solids.cylinder(piece.from_m, piece.to_m, piece.radius_m);
      return standAlong(solids, solids.translate(round, [0, a, b]), piece.axis);
    }
    case 'prism': {
      const corners = piece.corners_m.map((corner) => across(piece.axis, corner));
      const outline = roundedOutline(corners, piece.corner_radius_m ?? 0);
      return standAlong(solids, solids.prism(outline, piece.from_m, piece.to_m), piece.axis);
    }
    case 'slot': {
      const [a, b] = piece.ends_m;
      const outline = slotOutline(across(piece.axis, a), across(piece.axis, b), piece.radius_m);
      return standAlong(solids, solids.prism(outline, piece.from_m, piece.to_m), piece.axis);
    }
  }
}
