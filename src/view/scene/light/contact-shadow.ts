/**
 * The soft dark under the machine where it comes near the paper: the machine seen from below, darker the lower it is,
 * blurred twice. Rendered again only when parts moved.
 */
import {
  Color,
  LinearFilter,
  Mesh,
  MaxEquation,
  OneFactor,
  CustomBlending,
  OrthographicCamera,
  PlaneGeometry,
  type Scene,
  ShaderMaterial,
  Vector2,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';
import { CASTER_LAYER } from '../machine/kind-batch';

const SIZE = 512;
/** Height above the paper at which a part throws no contact shadow, metres. */
const REACH_M = 1.1;

export interface ContactShadow {
  readonly texture: WebGLRenderTarget['texture'];
  /** Middle and half width of the square that the texture covers, metres. */
  readonly covers: { readonly x: number; readonly z: number; readonly half: number };
  render(renderer: WebGLRenderer, scene: Scene, ground: Ground): void;
  dispose(): void;
}

export interface Ground {
  readonly y: number;
  readonly x: number;
  readonly z: number;
  readonly half: number;
}

export function contactShadow(): ContactShadow {
  const targets = [0, 1].map(
    () =>
      new WebGLRenderTarget(SIZE, SIZE, {
        minFilter: LinearFilter,
        magFilter: LinearFilter,
        depthBuffer: false,
      }),
  ) as [WebGLRenderTarget, WebGLRenderTarget];
  const [first, second] = targets;
  const covers = { x: 0, z: 0, half: 1 };

  const camera = new OrthographicCamera(-1, 1, 1, -1, 0, REACH_M);
  camera.up.set(0, 0, 1);
  camera.layers.set(CASTER_LAYER);
  const height = heightMaterial();
  const blur = blurMaterial();
  const quad = new Mesh(new PlaneGeometry(2, 2), blur);
  quad.frustumCulled = false;
  const flat = new OrthographicCamera(-1, 1, 1, -1, 0, 1);
  const black = new Color(0);
  const before = new Color();

  return {
    texture: first.texture,
    covers,
    render(renderer, scene, ground) {
      Object.assign(covers, { x: ground.x, z: ground.z, half: ground.half });
      const h = ground.half;
      [camera.left, camera.right, camera.top, camera.bottom] = [-h, h, h, -h];
      camera.position.set(ground.x, ground.y, ground.z);
      camera.lookAt(ground.x, ground.y + 1, ground.z);
      camera.updateProjectionMatrix();
      height.uniforms['ground']!.value.set(ground.y, 1 / REACH_M);

      const target = renderer.getRenderTarget();
      const background = scene.background;
      const autoUpdate = renderer.shadowMap.autoUpdate;
      const needs = renderer.shadowMap.needsUpdate;
      renderer.getClearColor(before);
      const alpha = renderer.getClearAlpha();
      renderer.shadowMap.autoUpdate = false;
      renderer.shadowMap.needsUpdate = false;
      scene.background = null;
      scene.overrideMaterial = height;
      renderer.setClearColor(black, 0);
      renderer.setRenderTarget(first);
      renderer.clear();
      renderer.render(scene, camera);
      scene.overrideMaterial = null;
      scene.background = background;
      // Wide, then fine: a soft skirt with a denser core.
      for (const spread of [0.085, 0.03]) {
        pass(renderer, first, second, spread / h, 0);
        pass(renderer, second, first, 0, spread / h);
      }
      renderer.setRenderTarget(target);
      renderer.setClearColor(before, alpha);
      renderer.shadowMap.autoUpdate = autoUpdate;
      renderer.shadowMap.needsUpdate = needs;
    },
    dispose() {
      for (const t of targets) t.dispose();
      height.dispose();
      blur.dispose();
      quad.geometry.dispose();
    },
  };

  function pass(
    renderer: WebGLRenderer,
    from: WebGLRenderTarget,
    to: WebGLRenderTarget,
    x: number,
    y: number,
  ): void {
    blur.uniforms['map']!.value = from.texture;
    blur.uniforms['step']!.value.set(x, y);
    renderer.setRenderTarget(to);
    renderer.render(quad, flat);
  }
}

/** Keeps the greatest darkness where parts lie over each other. */
function heightMaterial(): ShaderMaterial {
  return new ShaderMaterial({
    vertexShader: /* glsl */ `
      varying float vHeight;
      uniform vec2 ground;
      void main() {
        #ifdef USE_INSTANCING
          vec4 world = modelMatrix * instanceMatrix * vec4(position, 1.0);
        #else
          vec4 world = modelMatrix * vec4(position, 1.0);
        #endif
        vHeight = (world.y - ground.x) * ground.y;
        gl_Position = projectionMatrix * viewMatrix * world;
      }`,
    fragmentShader: /* glsl */ `
      varying float vHeight;
      void main() {
        float near = clamp(1.0 - vHeight, 0.0, 1.0);
        gl_FragColor = vec4(near * near * near);
      }`,
    uniforms: { ground: { value: new Vector2() } },
    side: 2,
    depthTest: false,
    depthWrite: false,
    blending: CustomBlending,
    blendEquation: MaxEquation,
    blendSrc: OneFactor,
    blendDst: OneFactor,
    toneMapped: false,
  });
}

function blurMaterial(): ShaderMaterial {
  return new ShaderMaterial({
    vertexShader: 'varying vec2 vUv; void main() { vUv = uv; gl_Position = vec4(position.xy, 0.0, 1.0); }',
    fragmentShader: /* glsl */ `
      varying vec2 vUv;
      uniform sampler2D map;
      uniform vec2 step;
      void main() {
        float sum = 0.0;
        float weights = 0.0;
        for (int i = -10; i <= 10; i++) {
          float f = float(i) / 10.0;
          float w = exp(-4.0 * f * f);
          sum += w * texture2D(map, vUv + step * f).r;
          weights += w;
        }
        gl_FragColor = vec4(sum / weights);
      }`,
    uniforms: { map: { value: null }, step: { value: new Vector2() } },
    depthTest: false,
    depthWrite: false,
    toneMapped: false,
  });
}
