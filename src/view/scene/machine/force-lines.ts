/** Ways of a force through the machine: dashed lines from part to part that run on, with arrowheads; seen through all. */
import {
  BufferGeometry,
  Color,
  ConeGeometry,
  Group,
  InstancedMesh,
  Matrix4,
  Mesh,
  MeshBasicMaterial,
  Quaternion,
  Vector3,
} from 'three';
import { lineMaterial, setSegments } from './edge-material';
import type { PartTable } from './part-table';

export interface ForceLines {
  readonly group: Group;
  /** Lines between the middles of parts, by part number; `down`: a last one from here to the ground. Empty: none. */
  write(table: PartTable, links: readonly (readonly [number, number])[], down: readonly number[]): void;
  /** Lets the dashes run on. */
  run(dt_s: number): void;
  look(colour: string): void;
  dispose(): void;
}

/** CSS pixels a second at which dashes run. */
const SPEED_PX_S = 26;
const ARROW_M = 0.06;
const MOST_ARROWS = 128;
/** No arrow on shorter lines. */
const LEAST_M = 0.05;

const Y = new Vector3(0, 1, 0);

export function forceLines(): ForceLines {
  const colour = { value: new Color() };
  const flow = { value: 0 };
  const material = lineMaterial({ kind: 'flow', width: 3.2, depthTest: false });
  Object.assign(material.uniforms, { inkColour: colour, inkStrength: { value: 1 }, flow });
  const lines = new Mesh(new BufferGeometry(), material);
  lines.name = 'ways of a force';
  lines.frustumCulled = false;
  lines.renderOrder = 6;
  const heads = new InstancedMesh(
    new ConeGeometry(0.32 * ARROW_M, ARROW_M, 12),
    new MeshBasicMaterial({ depthTest: false, transparent: true, toneMapped: false }),
    MOST_ARROWS,
  );
  heads.name = 'arrowheads';
  heads.frustumCulled = false;
  heads.renderOrder = 7;
  const group = new Group();
  group.name = 'force';
  group.visible = false;
  group.add(lines, heads);
  const matrix = new Matrix4();
  const turn = new Quaternion();
  const size = new Vector3(1, 1, 1);

  return {
    group,
    write(table, links, down) {
      const ends: number[] = [];
      let arrows = 0;
      const line = (from: Vector3, to: Vector3): void => {
        ends.push(from.x, from.y, from.z, to.x, to.y, to.z);
        const along = to.clone().sub(from);
        if (along.length() < LEAST_M || arrows >= MOST_ARROWS) return;
        turn.setFromUnitVectors(Y, along.clone().normalize());
        matrix.compose(from.clone().addScaledVector(along, 0.62), turn, size);
        heads.setMatrixAt(arrows++, matrix);
      };
      for (const [from, to] of links) line(middle(table, from), middle(table, to));
      for (const part of down) {
        const from = middle(table, part);
        line(from, new Vector3(from.x, -table.document.machine.drumRadius_m, from.z));
      }
      group.visible = ends.length > 0;
      heads.count = arrows;
      heads.instanceMatrix.needsUpdate = true;
      lines.geometry.dispose();
      lines.geometry = new BufferGeometry();
      setSegments(lines.geometry, Float32Array.from(ends));
    },
    run(dt_s) {
      flow.value = (flow.value + SPEED_PX_S * dt_s) % 1e4;
    },
    look(hex) {
      colour.value.copy(new Color(hex).convertLinearToSRGB());
      heads.material.color.set(hex);
    },
    dispose() {
      lines.geometry.dispose();
      material.dispose();
      heads.geometry.dispose();
      heads.material.dispose();
      heads.dispose();
    },
  };
}

/** Middle of a part's box where it is now. */
function middle(table: PartTable, part: number): Vector3 {
  const { min, max } = table.kinds[table.kindOf[part]!]!;
  return new Vector3((min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2).applyMatrix4(
    matrixOf.fromArray(table.matrices, 16 * part),
  );
}

const matrixOf = new Matrix4();
