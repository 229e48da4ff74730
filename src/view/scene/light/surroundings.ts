/**
 * The light around the machine, made on the machine: soft boxes on a grey room, as round a product on a photographer's
 * table, filtered once into an environment map. Nothing is fetched.
 */
import {
  BackSide,
  Color,
  DoubleSide,
  Mesh,
  MeshBasicMaterial,
  PlaneGeometry,
  PMREMGenerator,
  Scene,
  SphereGeometry,
  type WebGLRenderer,
  type WebGLRenderTarget,
} from 'three';

interface Former {
  readonly at: readonly [number, number, number];
  /** Width and height. */
  readonly size: readonly [number, number];
  readonly strength: number;
  readonly tint: string;
}

/** Placed for a machine seen from its right front (+x, -z); each looks at the middle. */
const FORMERS: readonly Former[] = [
  // Long strip overhead, along the drum: the bright band on the shell.
  { at: [0, 5.2, -1.6], size: [9, 1.3], strength: 4, tint: '#FFFDF8' },
  // Second, fainter strip behind it, so that the top does not fall off into one grey.
  { at: [0, 4.2, 3.2], size: [8, 1.2], strength: 2.6, tint: '#F4F7FA' },
  // Large warm box to the left front.
  { at: [-4.6, 2.2, -4.4], size: [3.4, 3.2], strength: 3, tint: '#FFF6E8' },
  // Cool strip to the right, standing: the edge of flanges and faces.
  { at: [6, 1.6, -1.2], size: [1.6, 4.2], strength: 3.4, tint: '#EAF2FA' },
  // Low front fill.
  { at: [1.5, -0.4, -6], size: [7, 0.9], strength: 1.7, tint: '#FFFFFF' },
  // Rim from behind.
  { at: [2, 2.4, 6], size: [7, 1.1], strength: 3, tint: '#F2F6FA' },
];

/** Paper below throws its own light back. */
const PAPER: Omit<Former, 'tint'> = { at: [0, -3.4, 0], size: [9, 9], strength: 0.5 };

const ROOM = '#8F9194';

/** Renders the room over a ground of this colour into a filtered environment; dispose the target when done with it. */
export function makeSurroundings(renderer: WebGLRenderer, ground: string): WebGLRenderTarget {
  const scene = new Scene();
  const sphere = new Mesh(
    new SphereGeometry(14, 24, 12),
    new MeshBasicMaterial({ color: new Color(ROOM).multiplyScalar(1.3), side: BackSide }),
  );
  scene.add(sphere);
  const plane = new PlaneGeometry(1, 1);
  for (const { at, size, strength, tint } of [...FORMERS, { ...PAPER, tint: ground }]) {
    const former = new Mesh(
      plane,
      new MeshBasicMaterial({ color: new Color(tint).multiplyScalar(strength), side: DoubleSide }),
    );
    former.position.set(...at);
    former.scale.set(size[0], size[1], 1);
    former.lookAt(0, 0, 0);
    scene.add(former);
  }
  const generator = new PMREMGenerator(renderer);
  const target = generator.fromScene(scene, 0.02, 0.1, 40);
  generator.dispose();
  plane.dispose();
  scene.traverse((o) => {
    if (!(o instanceof Mesh)) return;
    (o.material as MeshBasicMaterial).dispose();
  });
  sphere.geometry.dispose();
  return target;
}
