/** The paper under the machine: invisible but for the shadows that fall on it, which fade out before it ends. */
import { Color, CircleGeometry, Mesh, ShadowMaterial, type Texture, Vector4 } from 'three';

/** Many even samples over a wide disc: the paper shows every grain that a cheap soft shadow leaves. */
const SOFT_KEY = /* glsl */ `
float keyShadow() {
  #if defined(USE_SHADOWMAP) && NUM_DIR_LIGHT_SHADOWS > 0
    vec3 at = vDirectionalShadowCoord[0].xyz / vDirectionalShadowCoord[0].w;
    if (any(lessThan(at.xy, vec2(0.0))) || any(greaterThan(at.xy, vec2(1.0))) || at.z > 1.0) return 0.0;
    at.z += directionalLightShadows[0].shadowBias;
    vec2 reach = 14.0 / directionalLightShadows[0].shadowMapSize;
    float lit = 0.0;
    for (int i = 0; i < 32; i++) {
      float r = sqrt((float(i) + 0.5) / 32.0);
      float a = 2.399963 * float(i);
      lit += texture(directionalShadowMap[0], vec3(at.xy + reach * r * vec2(cos(a), sin(a)), at.z));
    }
    return 1.0 - lit / 32.0;
  #else
    return 0.0;
  #endif
}
`;

export interface PaperGround {
  readonly mesh: Mesh;
  place(y: number, x: number, z: number, radius: number): void;
  look(colour: string, strength: number): void;
  /** Contact shadow and the square that it covers; null: none. */
  contact(texture: Texture | null, covers: { x: number; z: number; half: number }): void;
  dispose(): void;
}

export function paperGround(): PaperGround {
  const uniforms = {
    contactMap: { value: null as Texture | null },
    contactCovers: { value: new Vector4(0, 0, 1, 0) },
    fade: { value: new Vector4(0, 0, 1, 0) },
  };
  const material = new ShadowMaterial({ color: new Color('#000'), opacity: 0.5 });
  material.depthWrite = false;
  material.toneMapped = false;
  material.customProgramCacheKey = () => 'drumbench-paper';
  material.onBeforeCompile = (shader) => {
    Object.assign(shader.uniforms, uniforms);
    shader.vertexShader = shader.vertexShader
      .replace('#include <common>', '#include <common>\nvarying vec2 vPlace;')
      .replace(
        '#include <begin_vertex>',
        '#include <begin_vertex>\nvPlace = (modelMatrix * vec4(position, 1.0)).xz;',
      );
    shader.fragmentShader = shader.fragmentShader
      .replace(
        '#include <common>',
        '#include <common>\nvarying vec2 vPlace;\nuniform sampler2D contactMap;\nuniform vec4 contactCovers;\nuniform vec4 fade;',
      )
      .replace('void main() {', `${SOFT_KEY}\nvoid main() {`)
      .replace(
        'gl_FragColor = vec4( color, opacity * ( 1.0 - getShadowMask() ) );',
        /* glsl */ `
        float key = keyShadow();
        vec2 at = (vPlace - contactCovers.xy) / contactCovers.z;
        float near = contactCovers.w * texture2D(contactMap, 0.5 + 0.5 * at).r;
        vec2 edge = abs(at);
        near *= 1.0 - smoothstep(0.86, 1.0, max(edge.x, edge.y));
        float far = 1.0 - smoothstep(0.35, 1.0, length(vPlace - fade.xy) / fade.z);
        float dark = 1.0 - (1.0 - 0.42 * key * far) * (1.0 - 1.15 * min(near, 0.86));
        gl_FragColor = vec4(color, opacity * dark);`,
      );
  };
  const mesh = new Mesh(new CircleGeometry(1, 48), material);
  mesh.name = 'paper';
  mesh.rotation.x = -Math.PI / 2;
  mesh.receiveShadow = true;
  mesh.renderOrder = -1;
  return {
    mesh,
    place(y, x, z, radius) {
      mesh.position.set(x, y, z);
      mesh.scale.setScalar(radius);
      uniforms.fade.value.set(x, z, radius, 0);
    },
    look(colour, strength) {
      material.color.set(colour);
      material.opacity = strength;
    },
    contact(texture, { x, z, half }) {
      uniforms.contactMap.value = texture;
      uniforms.contactCovers.value.set(x, z, half, texture === null ? 0 : 1);
    },
    dispose() {
      mesh.geometry.dispose();
      material.dispose();
    },
  };
}
