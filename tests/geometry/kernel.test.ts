import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  areaCorrection,
  inertiaTensor,
  loadSolidKernel,
  loopArea,
  meshIntegrals,
  segmentsFor,
  sliceSolid,
  type SolidKernel,
  type SolidMesh,
  toMeshData,
  validateSolid,
  withSolids,
} from '../../src/core/geometry';

let kernel: SolidKernel;
beforeAll(async () => {
  kernel = await loadSolidKernel();
});

/** A flange 0.1 to 0.4 m with 8 holes of 40 mm, 50 mm thick, off the origin. */
function flange(): SolidMesh {
  return withSolids(kernel, (s) =>
    s.toMesh(
      s.subtract(
        s.ring(1, 1.05, 0.1, 0.4),
        s.around(s.translate(s.cylinder(0, 2, 0.02), [0, 0.25, 0]), 8, 10),
      ),
    ),
  );
}

const FLANGE_AREA = Math.PI * (0.4 ** 2 - 0.1 ** 2 - 8 * 0.02 ** 2);

describe('segments', () => {
  it('depend on the radius alone, in multiples of 8 between 16 and 128', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 3, noNaN: true }), (r) => {
        const n = segmentsFor(r);
        expect(n % 8).toBe(0);
        expect(n).toBeGreaterThanOrEqual(16);
        expect(n).toBeLessThanOrEqual(128);
        expect(segmentsFor(r * 1.2)).toBeGreaterThanOrEqual(n);
      }),
      { seed: 1, numRuns: 50 },
    );
  });

  it('give the polygon the area of its circle', () => {
    for (const n of [16, 24, 128]) {
      const r = areaCorrection(n);
      expect((n / 2) * r * r * Math.sin((2 * Math.PI) / n)).toBeCloseTo(Math.PI, 12);
    }
  });
});

describe('solids', () => {
  it('of a bored flange are closed and have the volume of their formula', () => {
    const mesh = flange();
    expect(validateSolid(mesh)).toEqual([]);
    expect(meshIntegrals(mesh).volume_m3 / (FLANGE_AREA * 0.05)).toBeCloseTo(1, 5);
  });

  it('go back into the kernel with the same volume', () => {
    withSolids(kernel, (s) => {
      const mesh = flange();
      expect(s.fromMesh(mesh).volume() / meshIntegrals(mesh).volume_m3).toBeCloseTo(1, 9);
    });
  });

  it('extrude and revolve right-handed: a prism lies where its outline says', () => {
    withSolids(kernel, (s) => {
      const prism = s.prism(
        [
          [0, 0],
          [0, 1],
          [2, 0],
        ],
        3,
        4,
      );
      const { volume_m3, centroid_m } = meshIntegrals(s.toMesh(prism));
      expect(volume_m3).toBeCloseTo(1, 6);
      [3.5, 2 / 3, 1 / 3].forEach((wanted, k) => expect(centroid_m[k]).toBeCloseTo(wanted, 6));
    });
  });

  it('fail the check when a triangle is missing or all are turned inside out', () => {
    const mesh = flange();
    expect(validateSolid({ ...mesh, indices: mesh.indices.slice(3) })).toEqual([
      { fault: 'open-edge', count: 3 },
    ]);
    expect(validateSolid({ ...mesh, indices: mesh.indices.slice().reverse() })).toEqual([
      { fault: 'inward', count: 1 },
    ]);
  });
});

describe('integrals', () => {
  it('give the second moments of a box (b^2/12) and of a thin ring about its axis', () => {
    withSolids(kernel, (s) => {
      const box = meshIntegrals(s.toMesh(s.box([5, 1, -2], [5.4, 1.2, -1])));
      expect(box.volume_m3).toBeCloseTo(0.08, 6);
      const second = [0.4, 0.2, 1].map((b) => (0.08 * b * b) / 12);
      second.forEach((wanted, k) => expect(box.second_m5[k]).toBeCloseTo(wanted, 7));
      const ring = meshIntegrals(s.toMesh(s.ring(0, 0.1, 0.6, 0.7)));
      const polar = inertiaTensor({ mass_kg: 1, centre_m: [0, 0, 0], second_kg_m2: ring.second_m5 })[0];
      // The polygon has the circle's area; its polar moment is a little larger, by the sixth order of the step.
      expect(polar / ((Math.PI / 2) * 0.1 * (0.7 ** 4 - 0.6 ** 4))).toBeCloseTo(1, 4);
    });
  });

  it('do not change when the solid is elsewhere', () => {
    withSolids(kernel, (s) => {
      const here = s.box([0, 0, 0], [0.3, 0.2, 0.1]);
      const a = meshIntegrals(s.toMesh(here));
      const b = meshIntegrals(s.toMesh(s.translate(here, [4, -8, 2])));
      a.second_m5.forEach((value, k) => expect(b.second_m5[k]).toBeCloseTo(value, 9));
    });
  });
});

describe('sections', () => {
  it('through the axis of a flange are two rectangles with the solid on the left', () => {
    const regions = sliceSolid(flange(), { point_m: [0, 0, 0], normal: [0, 0, 1] });
    expect(regions).toHaveLength(2);
    const area = regions.reduce((sum, r) => sum + loopArea(r.outer), 0);
    // The first corner lies on +y, so the polygon's corner radius is cut there.
    const wanted =
      2 * 0.05 * (0.4 * areaCorrection(segmentsFor(0.4)) - 0.1 * areaCorrection(segmentsFor(0.1)));
    expect(area).toBeCloseTo(wanted, 6);
  });

  it('across the axis have the area of the ring less its holes, whichever way the normal points', () => {
    for (const nx of [1, -1]) {
      const regions = sliceSolid(flange(), { point_m: [1.02, 0.3, 0], normal: [nx, 0, 0] });
      expect(regions).toHaveLength(1);
      expect(regions[0]?.holes).toHaveLength(9);
      const area =
        loopArea(regions[0]!.outer) + regions[0]!.holes.reduce((sum, hole) => sum + loopArea(hole), 0);
      expect(area).toBeCloseTo(FLANGE_AREA, 6);
    }
  });

  it('close and follow the volume wherever the plane lies, corners of the mesh included', () => {
    const mesh = flange();
    const direction = [0.36, 0.48, 0.8] as const;
    const heights = Array.from({ length: mesh.positions.length / 3 }, (_, v) =>
      direction.reduce((sum, d, k) => sum + d * mesh.positions[3 * v + k]!, 0),
    );
    fc.assert(
      fc.property(fc.nat(heights.length - 1), (v) => {
        const h = heights[v]!;
        const at = (d: number) =>
          sliceSolid(mesh, {
            point_m: [direction[0] * d, direction[1] * d, direction[2] * d],
            normal: direction,
          })
            .flatMap((r) => [r.outer, ...r.holes])
            .reduce((sum, loop) => sum + loopArea(loop), 0);
        // Area on the corner lies between or near the areas a hair above and below.
        expect(Math.abs(at(h) - at(h - 1e-6))).toBeLessThan(2e-3);
      }),
      { seed: 2, numRuns: 40 },
    );
  });
});

describe('what the scene draws', () => {
  it('has smooth walls without lines and sharp rims with lines', () => {
    const mesh = withSolids(kernel, (s) => s.toMesh(s.cylinder(0, 1, 0.01)));
    const drawn = toMeshData(mesh);
    // 16 facets: two rims of 16 edges each and none along the wall.
    expect(drawn.edges.length / 6).toBe(32);
    // Each rim corner once for the wall and once for the face, and the middle of each face.
    expect(drawn.positions.length / 3).toBe(66);
    for (let v = 0; v < drawn.normals.length; v += 3) {
      const [x, y, z] = drawn.normals.slice(v, v + 3);
      const p = drawn.positions.slice(v, v + 3);
      const wall = Math.abs(x!) < 0.5;
      if (wall) expect((y! * p[1]! + z! * p[2]!) / Math.hypot(p[1]!, p[2]!)).toBeCloseTo(1, 4);
      else expect(Math.abs(x!)).toBeCloseTo(1, 6);
    }
  });
});
