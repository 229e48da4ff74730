/** Static interference: which parts' solids share space in the assembled machine, and how much. */
import { add, rotate, scale, sub, transformPoint, type Pose, type Vec3 } from '../kernel';
import { type KindSolid, type SolidKernel, type SolidMesh, withSolids } from '../geometry';
import { defaultOptions, isPresent, type Machine, type Part } from '../machine';

export interface Overlap {
  readonly a: string;
  readonly b: string;
  readonly volume_m3: number;
}

interface Box {
  readonly low: Vec3;
  readonly high: Vec3;
}

/** Box around a mesh in its own frame. */
export function meshBox(meshes: readonly SolidMesh[]): Box {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const { positions } of meshes) {
    for (let i = 0; i < positions.length; i++) {
      const k = (i % 3) as 0 | 1 | 2;
      low[k] = Math.min(low[k], positions[i]!);
      high[k] = Math.max(high[k], positions[i]!);
    }
  }
  return { low, high };
}

/** Box around a turned box: centre moved, half extents by the absolute rotation. */
function posedBox(box: Box, pose: Pose): Box {
  const centre = transformPoint(pose, scale(add(box.low, box.high), 0.5));
  const half = scale(sub(box.high, box.low), 0.5);
  const columns = ([[half[0], 0, 0], [0, half[1], 0], [0, 0, half[2]]] as const).map((v) => rotate(pose.rotation, v)); // prettier-ignore
  const reach: Vec3 = [0, 1, 2].map((k) =>
    columns.reduce((sum, c) => sum + Math.abs(c[k]!), 0),
  ) as unknown as Vec3;
  return { low: sub(centre, reach), high: add(centre, reach) };
}

const apart = (a: Box, b: Box, gap: number): boolean =>
  [0, 1, 2].some((k) => a.high[k]! < b.low[k]! + gap || b.high[k]! < a.low[k]! + gap);

/**
 * Pairs of parts whose solids share more than `least_m3`, by boolean intersection in the solid kernel. Parts of
 * options that are off and context parts are left out; so are the copies of one kind against each other when their
 * boxes stay apart. Faces that only touch give no volume.
 */
export function findOverlaps(
  kernel: SolidKernel,
  machine: Machine,
  solids: Readonly<Record<string, KindSolid>>,
  least_m3 = 2e-9,
): readonly Overlap[] {
  const options = defaultOptions(machine);
  const parts = machine.parts.filter((p) => isPresent(p, options));
  const boxes = new Map(Object.entries(solids).map(([id, s]) => [id, meshBox(s.bodies.map((b) => b.solid))]));
  const found: Overlap[] = [];
  withSolids(kernel, (scope) => {
    const whole = new Map<string, ReturnType<typeof scope.fromMesh>>();
    const wholeOf = (kind: string): ReturnType<typeof scope.fromMesh> => {
      let solid = whole.get(kind);
      if (solid === undefined) {
        solid = scope.union((solids[kind]?.bodies ?? []).map((b) => scope.fromMesh(b.solid)));
        whole.set(kind, solid);
      }
      return solid;
    };
    const posed = new Map<string, ReturnType<typeof scope.fromMesh>>();
    const posedOf = (part: Part): ReturnType<typeof scope.fromMesh> => {
      let solid = posed.get(part.id);
      if (solid === undefined) {
        solid = scope.pose(wholeOf(part.kind), part.pose);
        posed.set(part.id, solid);
      }
      return solid;
    };
    const partBox = parts.map((p) =>
      posedBox(boxes.get(p.kind) ?? { low: [0, 0, 0], high: [0, 0, 0] }, p.pose),
    );
    for (let i = 0; i < parts.length; i++) {
      for (let j = i + 1; j < parts.length; j++) {
        if (apart(partBox[i]!, partBox[j]!, 1e-6)) continue;
        const volume_m3 = scope.intersect(posedOf(parts[i]!), posedOf(parts[j]!)).volume();
        if (volume_m3 > least_m3) found.push({ a: parts[i]!.id, b: parts[j]!.id, volume_m3 });
      }
    }
  });
  return found.sort((x, y) => y.volume_m3 - x.volume_m3);
}
