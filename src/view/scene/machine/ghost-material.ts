/** Ghosted parts: a breath of ink that thickens where the surface turns away, as on tracing paper. */
import { ShaderMaterial } from 'three';
import { CLIP_FRAGMENT, CLIP_FRAGMENT_PARS, CLIP_VERTEX, CLIP_VERTEX_PARS, cutPlane } from './clip-shader';
import { inkUniforms } from './surface-material';

export function ghostMaterial(): ShaderMaterial {
  return new ShaderMaterial({
    vertexShader: /* glsl */ `
      varying vec3 vNormalView;
      varying vec3 vToEye;
      ${CLIP_VERTEX_PARS}
      void main() {
        vec3 transformed = position;
        ${CLIP_VERTEX}
        vec4 view = modelViewMatrix * instanceMatrix * vec4(position, 1.0);
        vNormalView = normalMatrix * (mat3(instanceMatrix) * normal);
        vToEye = -view.xyz;
        gl_Position = projectionMatrix * view;
      }`,
    fragmentShader: /* glsl */ `
      uniform vec3 groundInkColour;
      varying vec3 vNormalView;
      varying vec3 vToEye;
      ${CLIP_FRAGMENT_PARS}
      void main() {
        ${CLIP_FRAGMENT}
        float facing = abs(dot(normalize(vNormalView), normalize(vToEye)));
        gl_FragColor = vec4(groundInkColour, 0.035 + 0.26 * pow(1.0 - facing, 2.5));
      }`,
    uniforms: { ...inkUniforms, cutPlane },
    transparent: true,
    depthWrite: false,
    toneMapped: false,
  });
}
