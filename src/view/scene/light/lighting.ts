/** Light and shadow of the stage: surroundings, one key light, the paper. Shadows are drawn anew only when parts moved. */
import {
  Color,
  DirectionalLight,
  Group,
  type Scene,
  Vector3,
  type WebGLRenderer,
  type WebGLRenderTarget,
} from 'three';
import type { Bounds } from '../camera/camera-rig';
import type { StagePalette } from '../palette';
import { contactShadow, type ContactShadow } from './contact-shadow';
import { paperGround } from './paper-ground';
import { makeSurroundings } from './surroundings';

export interface Lighting {
  readonly group: Group;
  look(scene: Scene, palette: StagePalette, shadows: boolean): void;
  /** Parts moved or changed: shadows no longer hold. */
  stale(): void;
  /** The drawing context came back empty. */
  restore(): void;
  /** Returns whether shadows are drawn anew in this frame. */
  update(renderer: WebGLRenderer, scene: Scene, bounds: Bounds): boolean;
  dispose(): void;
}

/** From the machine towards the key light: high, from the right front. */
const KEY = new Vector3(0.42, 1, -0.62).normalize();

export function lighting(): Lighting {
  const group = new Group();
  const key = new DirectionalLight('#FFF9EF', 2);
  key.shadow.mapSize.set(2048, 2048);
  key.shadow.bias = -0.00012;
  key.shadow.normalBias = 0.004;
  key.shadow.radius = 3;
  const ground = paperGround();
  group.add(key, key.target, ground.mesh);
  let surroundings: WebGLRenderTarget | null = null;
  let contact: ContactShadow | null = null;
  let stale = true;
  let shadowsOn = false;
  let paper = '';

  return {
    group,
    look(scene, palette, shadows) {
      scene.background = new Color(palette.paper);
      if (paper !== palette.paper) {
        paper = palette.paper;
        surroundings?.dispose();
        surroundings = null;
      }
      scene.environmentIntensity = palette.surroundings;
      key.intensity = palette.key;
      key.castShadow = shadows;
      ground.mesh.visible = shadows;
      ground.look(palette.shadow, palette.shadowStrength);
      shadowsOn = shadows;
      stale = true;
    },
    stale() {
      stale = true;
    },
    restore() {
      surroundings?.dispose();
      surroundings = null;
      contact?.dispose();
      contact = null;
      stale = true;
    },
    update(renderer, scene, bounds) {
      if (surroundings === null) {
        surroundings = makeSurroundings(renderer, paper);
        scene.environment = surroundings.texture;
      }
      renderer.shadowMap.autoUpdate = false;
      if (!stale) return false;
      stale = false;
      const reach = Math.min(bounds.radius, 6);
      key.target.position.copy(bounds.centre);
      key.position.copy(bounds.centre).addScaledVector(KEY, reach * 2.2);
      key.target.updateMatrixWorld();
      const camera = key.shadow.camera;
      [camera.left, camera.right, camera.top, camera.bottom] = [-reach, reach, reach, -reach];
      camera.near = reach * 0.6;
      camera.far = reach * 4.4;
      camera.updateProjectionMatrix();
      renderer.shadowMap.needsUpdate = shadowsOn;
      ground.place(bounds.ground, bounds.centre.x, bounds.centre.z, reach * 2.4);
      if (!shadowsOn) return false;
      contact ??= contactShadow();
      const half = reach * 1.25;
      contact.render(renderer, scene, { y: bounds.ground, x: bounds.centre.x, z: bounds.centre.z, half });
      ground.contact(contact.texture, contact.covers);
      return true;
    },
    dispose() {
      ground.dispose();
      contact?.dispose();
      surroundings?.dispose();
      key.shadow.dispose();
    },
  };
}
