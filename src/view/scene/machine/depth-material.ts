/** Depth of the solids for the shadow map: what a section cuts away throws no shadow. */
import { MeshDepthMaterial } from 'three';
import { CLIP_FRAGMENT, CLIP_FRAGMENT_PARS, CLIP_VERTEX, CLIP_VERTEX_PARS, cutPlane } from './clip-shader';

export function depthMaterial(): MeshDepthMaterial {
  const material = new MeshDepthMaterial();
  material.customProgramCacheKey = () => 'drumbench-depth';
  material.onBeforeCompile = (shader) => {
    shader.uniforms['cutPlane'] = cutPlane;
    shader.vertexShader = shader.vertexShader
      .replace('#include <common>', `#include <common>\n${CLIP_VERTEX_PARS}`)
      .replace('#include <begin_vertex>', `#include <begin_vertex>\n${CLIP_VERTEX}`);
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', `#include <common>\n${CLIP_FRAGMENT_PARS}`)
      .replace(
        '#include <clipping_planes_fragment>',
        `#include <clipping_planes_fragment>\n${CLIP_FRAGMENT}`,
      );
  };
  return material;
}
