/** Plain solids: what builders make and what every reader (scene, sections, masses, blocking) takes. */
import type { Finish } from '../machine';

/** A closed triangle mesh, outward by the right-hand rule, vertices merged; metres in the kind's own frame. */
export interface SolidMesh {
  /** x, y, z of each vertex. */
  readonly positions: Float32Array;
  /** Three vertex numbers a triangle. */
  readonly indices: Uint32Array;
}

/** One body of a part: a part of several materials (a bearing, an isolator) has several, which do not overlap. */
export interface Body {
  /** `outer-ring`, `cage`, `rubber` ...; `solid` for a part of one body. */
  readonly name: string;
  /** Material id of the machine file; left out: the kind's. */
  readonly material?: string;
  readonly finish: Finish;
  /** 'whole': left uncut in sections along its axis (shafts, bolts, balls, rollers; drawing convention). */
  readonly section: 'cut' | 'whole';
  readonly solid: SolidMesh;
}

/** The solid of a part kind. */
export interface KindSolid {
  readonly bodies: readonly Body[];
}

/** What the scene draws: unshared vertices with normals split at creases, and the feature edges. */
export interface MeshData {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly indices: Uint32Array;
  /** Feature edges as segments: x y z of both ends, six numbers each. */
  readonly edges: Float32Array;
}
