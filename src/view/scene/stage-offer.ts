/** The stage as a subject of pictures: what it shows now, as numbers, and its frame as fine as asked for. */
import { MathUtils, type PerspectiveCamera, type Scene, Vector3, type WebGLRenderer } from 'three';
import type { StageInk, StageMoment, StagePicture } from '../../store';
import { screenSize } from './machine/edge-material';
import { GHOST, HIDDEN } from './machine/part-table';
import { inkUniforms } from './machine/surface-material';
import type { StagePalette } from './palette';
import type { StageLink } from './stage-link';

interface Subject {
  readonly gl: WebGLRenderer;
  readonly scene: Scene;
  readonly camera: PerspectiveCamera;
  readonly link: StageLink;
  readonly palette: StagePalette;
}

export function stagePictureOf({ gl, scene, camera, link, palette }: Subject): StagePicture {
  const axis = (column: 0 | 1 | 2): [number, number, number] =>
    new Vector3().setFromMatrixColumn(camera.matrixWorld, column).normalize().toArray();
  return {
    moment(): StageMoment {
      camera.updateMatrixWorld();
      const { table, cut } = link;
      const parts: StageMoment['parts'][number][] = [];
      const bodies: Record<string, StageMoment['bodies'][string]> = {};
      if (table !== null) {
        table.document.machine.parts.forEach(({ id }, i) => {
          if (table.shown[i] === HIDDEN) return;
          const matrix = Array.from(table.matrices.subarray(16 * i, 16 * i + 16));
          parts.push({ id, matrix, ghost: table.shown[i] === GHOST });
        });
        for (const kind of table.kinds)
          if (kind.bodies !== table.document.solids[kind.id]) bodies[kind.id] = kind.bodies;
      }
      const { target } = link;
      return {
        parts,
        bodies,
        eye: {
          eye_m: camera.position.toArray(),
          right: axis(0),
          up: axis(1),
          towards: axis(2),
          fov_deg: MathUtils.radToDeg(
            2 * Math.atan(Math.tan(MathUtils.degToRad(camera.fov) / 2) / camera.zoom),
          ),
        },
        middle_m: target === null ? 5 : camera.position.distanceTo(target),
        cut: cut === null ? null : { normal: [...cut.normal], distance_m: cut.distance_m },
        width: link.width,
        height: link.height,
        balloons: link.balloons,
        balloonRadius: link.balloonRadius,
      };
    },
    ink: (): StageInk => palette,
    frame(scale) {
      const before = { ratio: gl.getPixelRatio(), screen: screenSize.value.clone() };
      const canvas = document.createElement('canvas');
      canvas.width = Math.round(link.width * scale);
      canvas.height = Math.round(link.height * scale);
      const page = canvas.getContext('2d');
      if (page === null || gl.getContext().isContextLost()) return null;
      const set = (ratio: number, width: number, height: number): void => {
        gl.setPixelRatio(ratio);
        screenSize.value.set(width, height);
        inkUniforms.pixelRatio.value = ratio;
      };
      set(scale, canvas.width, canvas.height);
      gl.render(scene, camera);
      // The drawing buffer holds its frame until the browser shows the page, so it is read at once.
      page.drawImage(gl.domElement, 0, 0, canvas.width, canvas.height);
      set(before.ratio, before.screen.x, before.screen.y);
      // drawn anew before the page is shown again
      link.invalidate();
      return canvas;
    },
  };
}
