/** The baffle of the run that is shown, which may be another than the machine's own: one solid a leg, in one mesh. */
import { BoxGeometry, BufferGeometry, Matrix4, Mesh, MeshStandardMaterial } from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';
import { baffleLegs, type ShotParameters } from '../../../core/shot';
import type { ChamberSpan } from './ball-batch';

export interface Plate {
  readonly mesh: Mesh;
  write(parameters: ShotParameters, span: ChamberSpan): void;
  dispose(): void;
}

export function plate(): Plate {
  const material = new MeshStandardMaterial({ color: '#7A8187', roughness: 0.5, metalness: 0.7 });
  // The ghost of the machine's own plate has the same faces: it lies on top.
  material.polygonOffset = true;
  material.polygonOffsetFactor = material.polygonOffsetUnits = 1;
  const mesh = new Mesh(new BufferGeometry(), material);
  mesh.name = 'baffle of the run';
  mesh.frustumCulled = false;
  mesh.matrixAutoUpdate = mesh.matrixWorldAutoUpdate = false;
  return {
    mesh,
    write({ chamber, baffle }, { from_x_m, to_x_m }) {
      mesh.geometry.dispose();
      mesh.visible = baffle !== null;
      if (baffle === null) {
        mesh.geometry = new BufferGeometry();
        return;
      }
      const half = baffle.half_thickness_m;
      // A hair short of the end plates, so that no faces coincide.
      const length = to_x_m - from_x_m - 0.002;
      const boxes = baffleLegs(chamber, baffle).map((leg, i) => {
        const [dx, dy] = [leg.x2 - leg.x1, leg.y2 - leg.y1];
        const along = Math.hypot(dx, dy);
        // Leg 2 starts on leg 1's centre line; it is set back so that their faces do not coincide.
        const start = i === 0 ? 0 : half;
        const box = new BoxGeometry(length, along - start + (i === 0 ? half : 0), 2 * half);
        const middle = (along + start + (i === 0 ? half : 0)) / 2 / along;
        const angle = Math.atan2(dy, dx);
        const turn = new Matrix4().makeRotationX(angle);
        const place = new Matrix4().makeTranslation(
          (from_x_m + to_x_m) / 2,
          -(leg.x1 + dx * middle),
          -(leg.y1 + dy * middle),
        );
        return box.applyMatrix4(place.multiply(turn));
      });
      mesh.geometry = mergeGeometries(boxes);
      for (const box of boxes) box.dispose();
    },
    dispose() {
      mesh.geometry.dispose();
      material.dispose();
    },
  };
}
