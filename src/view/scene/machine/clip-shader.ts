/** The cutting plane in shaders: what lies on its far side is dropped, pieces that stay whole are kept. */
import { Vector4 } from 'three';
import { ALONG_AXIS } from '../../../core/geometry';

/** xyz: unit normal in the machine's axes, w: its distance from the origin. One object, shared by all materials. */
export const cutPlane = { value: new Vector4(0, 0, 0, 1) };

/** Defined while a section is on; without it shaders keep early depth tests. */
export const CUT_DEFINE = 'CUT';

export const CLIP_VERTEX_PARS = /* glsl */ `
#ifdef CUT
  uniform vec4 cutPlane;
  attribute vec3 wholeCentre;
  attribute vec3 wholeHalf;
  varying float vBeyond;
  float beyondCut(mat4 m, vec3 world) {
    if (wholeHalf.x > 0.0) {
      vec3 n = vec3(dot(m[0].xyz, cutPlane.xyz), dot(m[1].xyz, cutPlane.xyz), dot(m[2].xyz, cutPlane.xyz));
      float centre = dot(cutPlane.xyz, (m * vec4(wholeCentre, 1.0)).xyz) - cutPlane.w;
      float reach = abs(n.x) * wholeHalf.x + length(n.yz * wholeHalf.yz);
      if (abs(n.x) <= ${ALONG_AXIS.toFixed(3)} && abs(centre) < reach * 0.98) return -1.0;
    }
    return dot(cutPlane.xyz, world) - cutPlane.w;
  }
#endif
`;

/** Needs `transformed` (own frame) and `instanceMatrix`. */
export const CLIP_VERTEX = /* glsl */ `
#ifdef CUT
  vBeyond = beyondCut(instanceMatrix, (instanceMatrix * vec4(transformed, 1.0)).xyz);
#endif
`;

export const CLIP_FRAGMENT_PARS = /* glsl */ `
#ifdef CUT
  varying float vBeyond;
#endif
`;

export const CLIP_FRAGMENT = /* glsl */ `
#ifdef CUT
  if (vBeyond > 0.0) discard;
#endif
`;
