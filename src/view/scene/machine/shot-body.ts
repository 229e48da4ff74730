/**
 * The loose shot in its settled state: outlines of the chamber's section, extruded over the chamber's length. Body frame
 * of the outlines: seen from machine +x, their first axis hangs down (machine -y), their second points to machine -z.
 */
import { ShapeUtils, Vector2 } from 'three';
import type { DrawnBody, MachineDocument } from '../../../core/document';
import { type SolidMesh, toMeshData } from '../../../core/geometry';
import type { ShotBodyOutline } from '../../../core/studies';
import { type AppState, selectExciterStudy } from '../../../store';

/** Outlines of the shot to show: settled while it spins or while the exciter's panel is open, else null (it lies at rest). */
export function shotOutlines(state: AppState): readonly ShotBodyOutline[] | null {
  if (!state.spinning && state.panel !== 'exciter') return null;
  const study = selectExciterStudy(state);
  return study === null ? null : study[state.exciter.direction].shot;
}

/** Number of the shot's kind and the stretch of the chamber, or null where the machine has no loose shot. */
export function shotPlace(
  document: MachineDocument,
): { kind: string; from_x_m: number; to_x_m: number } | null {
  const { machine } = document;
  const shot = machine.parts.find((part) => part.id === machine.operation.shot_part);
  const exciter = machine.parts.find((part) => part.id === machine.operation.exciter_part);
  const params = exciter === undefined ? undefined : machine.kinds[exciter.kind]?.params;
  if (shot === undefined || params?.builder !== 'exciter-housing') return null;
  return { kind: shot.kind, from_x_m: params.chamber.from_x_m, to_x_m: params.chamber.to_x_m };
}

/** Drawn bodies of the shot, one an outline. */
export function shotBodies(
  outlines: readonly ShotBodyOutline[],
  from_x_m: number,
  to_x_m: number,
): readonly DrawnBody[] {
  return outlines.map(({ loop, holes }, i) => {
    const solid = extruded([loop, ...holes], from_x_m, to_x_m);
    return { name: `shot-${i + 1}`, finish: 'shot', section: 'cut', solid, mesh: toMeshData(solid) };
  });
}

type Loop = readonly (readonly [number, number])[];

/** A prism over loops (first the outer line, counter-clockwise; then holes, clockwise), closed and outward. */
export function extruded(loops: readonly Loop[], from_x_m: number, to_x_m: number): SolidMesh {
  const points = loops.flat();
  const count = points.length;
  const positions = new Float32Array(count * 6);
  points.forEach(([a, b], i) => {
    positions.set([from_x_m, -a, -b], 3 * i);
    positions.set([to_x_m, -a, -b], 3 * (count + i));
  });
  const indices: number[] = [];
  const [outer, ...holes] = loops.map((loop) => loop.map(([a, b]) => new Vector2(a, b)));
  for (const face of ShapeUtils.triangulateShape(outer ?? [], holes) as number[][]) {
    const [a, b, c] = face as [number, number, number];
    indices.push(count + a, count + b, count + c, a, c, b);
  }
  let first = 0;
  for (const loop of loops) {
    loop.forEach((_, i) => {
      const a = first + i;
      const b = first + ((i + 1) % loop.length);
      indices.push(a, b, count + b, a, count + b, count + a);
    });
    first += loop.length;
  }
  return { positions, indices: Uint32Array.from(indices) };
}
