/** The section on the stage: clips the machine at the plane and closes what it cuts with hatched faces and ink. */
import { BufferAttribute, BufferGeometry, Color, Group, Mesh, Vector3 } from 'three';
import type { SectionAxis } from '../../../store';
import { lineMaterial, setSegments } from '../machine/edge-material';
import { cutPlane } from '../machine/clip-shader';
import type { PartTable } from '../machine/part-table';
import { capGeometry, cuttable, type Cuttable } from './cap-geometry';
import { capMaterial } from './cap-material';
import { hatchStyles } from './hatch-styles';
import { tintByMarks } from './mark-tint';

export const AXIS_NORMAL: Readonly<Record<SectionAxis, readonly [number, number, number]>> = {
  x: [1, 0, 0],
  y: [0, 1, 0],
  z: [0, 0, 1],
};

/** Two axes of the plane for the hatch, in the machine's frame. */
const AXIS_UV: Readonly<Record<SectionAxis, readonly [Vector3, Vector3]>> = {
  x: [new Vector3(0, 0, -1), new Vector3(0, 1, 0)],
  y: [new Vector3(1, 0, 0), new Vector3(0, 0, -1)],
  z: [new Vector3(1, 0, 0), new Vector3(0, 1, 0)],
};

/** Lines this far apart on the screen, CSS pixels; the spacing in metres goes in steps, so that it does not swim. */
const HATCH_PX = 8;

export interface SectionView {
  readonly group: Group;
  readonly stats: { triangles: number };
  /** Cuts anew; the camera shows on which side the reader stands. */
  cut(axis: SectionAxis, offset_m: number, side: 1 | -1): void;
  off(): void;
  /** Bodies of a kind were replaced: what can be cut is worked out anew. */
  forget(): void;
  choose(part: number): void;
  /** Tints the cut faces by the marks of a view, from the next cut on; null: by what they are made of. */
  tint(states: Int8Array | null): void;
  look(face: string): void;
  /** Metres that a CSS pixel spans at the plane. */
  density(metresPerPixel: number): void;
  dispose(): void;
}

export function sectionView(table: PartTable): SectionView {
  const group = new Group();
  group.name = 'section';
  group.visible = false;
  const material = capMaterial();
  const faces = new Mesh(new BufferGeometry(), material);
  faces.name = 'cut faces';
  faces.frustumCulled = false;
  faces.receiveShadow = false;
  const ink = lineMaterial({ width: 1.7, bias: 0.0012 });
  const outline = new Mesh(new BufferGeometry(), ink);
  outline.name = 'cut outlines';
  outline.frustumCulled = false;
  outline.renderOrder = 3;
  group.add(faces, outline);
  let pieces: Cuttable | null = null;
  let styles: Uint8Array | null = null;
  let marks: Int8Array | null = null;
  const stats = { triangles: 0 };

  return {
    group,
    stats,
    cut(axis, offset_m, side) {
      pieces ??= cuttable(table);
      styles ??= hatchStyles(table);
      const [x, y, z] = AXIS_NORMAL[axis];
      const normal = [x * side, y * side, z * side] as const;
      cutPlane.value.set(...normal, offset_m * side);
      const data = capGeometry(table, pieces, styles, normal, offset_m * side);
      if (marks !== null) tintByMarks(data, marks);
      faces.geometry.dispose();
      const geometry = new BufferGeometry();
      geometry.setAttribute('position', new BufferAttribute(data.position, 3));
      geometry.setAttribute('part', new BufferAttribute(data.part, 1));
      geometry.setAttribute('style', new BufferAttribute(data.style, 1));
      geometry.setAttribute('tint', new BufferAttribute(data.tint, 3, true));
      geometry.setIndex(new BufferAttribute(data.index, 1));
      faces.geometry = geometry;
      outline.geometry.dispose();
      const lines = new BufferGeometry();
      setSegments(lines, data.outline);
      outline.geometry = lines;
      stats.triangles = data.index.length / 3;
      material.uniforms['ball_m']!.value = table.document.machine.operation.ball_diameter_m;
      const [u, v] = AXIS_UV[axis];
      material.uniforms['axisU']!.value.copy(u);
      material.uniforms['axisV']!.value.copy(v);
      group.visible = data.index.length > 0;
    },
    off() {
      group.visible = false;
      cutPlane.value.set(0, 0, 0, 1);
      stats.triangles = 0;
    },
    forget() {
      pieces = null;
    },
    choose(part) {
      material.uniforms['selectedPart']!.value = part;
    },
    tint(states) {
      marks = states;
      material.uniforms['tintShare']!.value = states === null ? 0.22 : 0.62;
    },
    look(face) {
      const c = new Color(face).convertLinearToSRGB();
      material.uniforms['faceColour']!.value.set(c.r, c.g, c.b);
    },
    density(metresPerPixel) {
      const wanted = HATCH_PX * metresPerPixel;
      material.uniforms['spacing_m']!.value = 2 ** (Math.round(2 * Math.log2(wanted)) / 2);
    },
    dispose() {
      faces.geometry.dispose();
      outline.geometry.dispose();
      material.dispose();
      ink.dispose();
    },
  };
}
