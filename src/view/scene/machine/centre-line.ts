import { BufferGeometry, Mesh } from 'three';
import { lineMaterial, setSegments } from './edge-material';

/** Centre line of the drum (long dash, dot), a little longer than what shows. */
export function centreLine() {
  const material = lineMaterial({ kind: 'chain', width: 0.9, strength: 0.8 });
  const mesh = new Mesh(new BufferGeometry(), material);
  mesh.name = 'centre line';
  mesh.frustumCulled = false;
  mesh.renderOrder = 1;
  return {
    mesh,
    place(corners: readonly number[]): void {
      let least = Infinity;
      let most = -Infinity;
      for (let i = 0; i < corners.length; i += 3) {
        least = Math.min(least, corners[i]!);
        most = Math.max(most, corners[i]!);
      }
      const more = 0.12 + 0.04 * (most - least);
      mesh.geometry.dispose();
      mesh.geometry = new BufferGeometry();
      setSegments(mesh.geometry, Float32Array.from([least - more, 0, 0, most + more, 0, 0]));
    },
    dispose(): void {
      mesh.geometry.dispose();
      material.dispose();
    },
  };
}
