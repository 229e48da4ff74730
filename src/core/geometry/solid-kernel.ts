/**
 * The one door to the solid-modelling kernel (manifold-3d, WebAssembly). Solids live in a scope that frees them;
 * what leaves it is a plain `SolidMesh`. Everything round is built about x, the axis of the machine's drum.
 */
import initManifold, { type Manifold, type ManifoldToplevel, type SimplePolygon } from 'manifold-3d';
import { type Pose, panic, rotate as rotateVector, type Vec3 } from '../kernel';
import { areaCorrection, segmentsFor } from './segments';
import type { SolidMesh } from './types';

/** A solid of the kernel; valid until its scope ends. */
export type Solid = Manifold;
/** A point of a turned profile: [x, r] in metres. */
export type ProfilePoint = readonly [x_m: number, r_m: number];
/** A point of a prism's outline: [y, z] in metres. */
export type OutlinePoint = readonly [y_m: number, z_m: number];

export interface SolidKernel {
  readonly module: ManifoldToplevel;
}

let loading: Promise<SolidKernel> | undefined;

/**
 * Loads the kernel once for the whole page, worker or process.
 * `wasmUrl`: where a bundler put manifold.wasm; left out, it is found beside the package (Node).
 */
export function loadSolidKernel(options: { readonly wasmUrl?: string } = {}): Promise<SolidKernel> {
  const { wasmUrl } = options;
  loading ??= initManifold(wasmUrl === undefined ? undefined : { locateFile: () => wasmUrl }).then(
    (module) => {
      module.setup();
      return { module };
    },
  );
  return loading;
}

/** Runs `work` with a scope whose solids are all freed when it returns or throws. */
export function withSolids<T>(kernel: SolidKernel, work: (scope: SolidScope) => T): T {
  const scope = new SolidScope(kernel);
  try {
    return work(scope);
  } finally {
    scope.dispose();
  }
}

/** Makes and combines solids, lengths in metres, and keeps track of what must be freed. */
export class SolidScope {
  private readonly live: Manifold[] = [];

  constructor(private readonly kernel: SolidKernel) {}

  dispose(): void {
    for (const solid of this.live) solid.delete();
    this.live.length = 0;
  }

  private keep(solid: Manifold): Solid {
    this.live.push(solid);
    return solid;
  }

  /** Kernel axes to ours: its z becomes x, its x becomes y, its y becomes z (a cyclic turn, so no mirror). */
  private alongX(solid: Manifold): Solid {
    const turned = this.keep(solid.transform([0, 1, 0, 0, 0, 0, 1, 0, 1, 0, 0, 0, 0, 0, 0, 1]));
    solid.delete();
    return turned;
  }

  /**
   * Revolves a closed profile of [x, r] points about x. Radii are area-corrected for the number of segments,
   * which is that of the greatest radius unless given.
   */
  revolve(profile: readonly ProfilePoint[], segments?: number): Solid {
    const n = segments ?? segmentsFor(Math.max(...profile.map((p) => p[1])));
    const k = areaCorrection(n);
    const polygon = positive(profile.map(([x, r]) => [r * k, x]));
    return this.alongX(this.kernel.module.Manifold.revolve([polygon], n));
  }

  /** A cylinder or a cone frustum from x0 to x1 about the x axis. */
  cylinder(x0: number, x1: number, radius_m: number, radiusEnd_m = radius_m, segments?: number): Solid {
    return this.revolve(
      [
        [x0, 0],
        [x0, radius_m],
        [x1, radiusEnd_m],
        [x1, 0],
      ],
      segments,
    );
  }

  /** A ring from x0 to x1; both its circles have the segments that belong to their own radius. */
  ring(x0: number, x1: number, inner_m: number, outer_m: number): Solid {
    const outer = this.cylinder(x0, x1, outer_m);
    if (inner_m <= 0) return outer;
    return this.subtract(outer, [this.cylinder(x0 - 1, x1 + 1, inner_m)]);
  }

  box(low: Vec3, high: Vec3): Solid {
    const size: [number, number, number] = [high[0] - low[0], high[1] - low[1], high[2] - low[2]];
    if (Math.min(...size) <= 0) panic('geometry/box', 'empty box', size, 'high above low on each axis');
    const cube = this.kernel.module.Manifold.cube(size, false);
    const placed = this.keep(cube.translate([low[0], low[1], low[2]]));
    cube.delete();
    return placed;
  }

  /** Extrudes a closed outline of [y, z] points along x from x0 to x1; holes are further outlines. */
  prism(
    outline: readonly OutlinePoint[],
    x0: number,
    x1: number,
    holes: readonly (readonly OutlinePoint[])[] = [],
  ): Solid {
    const outer = positive(outline.map(([y, z]) => [y, z]));
    const inner = holes.map((hole) => positive(hole.map(([y, z]) => [y, z])).reverse());
    const raw = this.kernel.module.Manifold.extrude([outer, ...inner], x1 - x0);
    const up = raw.translate([0, 0, x0]);
    raw.delete();
    return this.alongX(up);
  }

  /** The convex hull of points. */
  hull(points: readonly Vec3[]): Solid {
    return this.keep(this.kernel.module.Manifold.hull(points.map((p) => [p[0], p[1], p[2]])));
  }

  union(solids: readonly Solid[]): Solid {
    if (solids.length === 0) panic('geometry/union', 'no solids');
    return this.keep(this.kernel.module.Manifold.union([...solids]));
  }

  subtract(from: Solid, tools: readonly Solid[]): Solid {
    if (tools.length === 0) return from;
    return this.keep(this.kernel.module.Manifold.difference([from, ...tools]));
  }

  intersect(a: Solid, b: Solid): Solid {
    return this.keep(this.kernel.module.Manifold.intersection(a, b));
  }

  /** The part of a solid on the side that `normal` points to of the plane at `offset_m` along it from the origin. */
  trim(solid: Solid, normal: Vec3, offset_m: number): Solid {
    return this.keep(solid.trimByPlane([normal[0], normal[1], normal[2]], offset_m));
  }

  translate(solid: Solid, by: Vec3): Solid {
    return this.keep(solid.translate([by[0], by[1], by[2]]));
  }

  /** Turns about the fixed x, y, z axes in that order, in degrees (exact at multiples of 90). */
  rotate(solid: Solid, x_deg: number, y_deg = 0, z_deg = 0): Solid {
    return this.keep(solid.rotate([x_deg, y_deg, z_deg]));
  }

  /** Brings a solid of a part's own frame into the frame that `pose` stands in. */
  pose(solid: Solid, pose: Pose): Solid {
    const [x, y, z] = (
      [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ] as const
    ).map((axis) => rotateVector(pose.rotation, axis)) as [Vec3, Vec3, Vec3];
    const p = pose.position_m;
    return this.keep(solid.transform([...x, 0, ...y, 0, ...z, 0, p[0], p[1], p[2], 1]));
  }

  /** Copies on a circle about x: `count` turned by equal steps, the first by `start_deg`, clockwise seen from +x. */
  around(solid: Solid, count: number, start_deg = 0): readonly Solid[] {
    return Array.from({ length: count }, (_, i) => this.rotate(solid, -(start_deg + (360 * i) / count)));
  }

  /** A plain mesh back into the kernel (for tests of overlap and for clearance). */
  fromMesh(mesh: SolidMesh): Solid {
    const raw = new this.kernel.module.Mesh({
      numProp: 3,
      vertProperties: mesh.positions,
      triVerts: mesh.indices,
    });
    return this.keep(this.kernel.module.Manifold.ofMesh(raw));
  }

  /** The finished solid as a plain mesh; throws when nothing is left of it. */
  toMesh(solid: Solid): SolidMesh {
    const status = solid.status();
    if (status !== 'NoError') panic('geometry/toMesh', 'kernel status', status);
    if (solid.isEmpty()) panic('geometry/toMesh', 'the solid is empty');
    const raw = solid.getMesh();
    if (raw.numProp !== 3 || (raw.mergeFromVert?.length ?? 0) > 0)
      panic('geometry/toMesh', 'the kernel gave vertex properties', raw.numProp, 'positions alone');
    return { positions: raw.vertProperties, indices: raw.triVerts };
  }
}

function signedArea(points: SimplePolygon): number {
  let twice = 0;
  points.forEach((p, i) => {
    const q = points[(i + 1) % points.length] ?? p;
    twice += p[0] * q[1] - q[0] * p[1];
  });
  return twice / 2;
}

/** The outline counter-clockwise, as the kernel wants it. */
function positive(points: SimplePolygon): SimplePolygon {
  return signedArea(points) < 0 ? points.reverse() : points;
}
