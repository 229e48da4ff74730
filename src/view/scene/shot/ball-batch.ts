/**
 * The balls in one draw call: each a disc that faces the eye and is shaded as the sphere it stands for, lit like all
 * steel on the stage. The slice repeats along the chamber on the graphics card, so that a frame uploads one slice only.
 */
import {
  BufferAttribute,
  Color,
  DynamicDrawUsage,
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  Mesh,
  MeshStandardMaterial,
  type WebGLProgramParametersWithUniforms,
} from 'three';
import { BALL_STRIDE, type ShotTransient } from '../../../store';
import { cutPlane } from '../machine/clip-shader';
import { inkUniforms } from '../machine/surface-material';

/** Chamber along the kind's x axis, and the slice that fills it. */
export interface ChamberSpan {
  readonly from_x_m: number;
  readonly to_x_m: number;
  readonly depth_m: number;
}

export interface BallBatch {
  readonly mesh: Mesh;
  /** Uploads the balls of the moment. */
  write(shot: ShotTransient, span: ChamberSpan): void;
  dispose(): void;
}

const LOOSE = new Color('#B4B8BC');
/** Sky blue of the Okabe-Ito palette. */
const HELD = new Color('#3F9FDC');

export function ballBatch(): BallBatch {
  const span = { copies: { value: 1 }, depth_m: { value: 1 }, from_m: { value: 0 }, to_m: { value: 1 } };
  const material = new MeshStandardMaterial({ roughness: 0.2, metalness: 1 });
  material.alphaToCoverage = true;
  material.customProgramCacheKey = () => 'drumbench-balls';
  material.onBeforeCompile = (shader) => patch(shader, span);
  let geometry = quads(1, 1);
  const mesh = new Mesh(geometry, material);
  mesh.name = 'balls';
  mesh.frustumCulled = false;
  mesh.matrixAutoUpdate = mesh.matrixWorldAutoUpdate = false;
  let room = 0;
  let copies = 0;

  return {
    mesh,
    write({ count, balls, held }, { from_x_m, to_x_m, depth_m }) {
      const wanted = Math.max(1, Math.ceil((to_x_m - from_x_m) / depth_m));
      if (count > room || wanted !== copies) {
        room = Math.max(room, count);
        copies = wanted;
        geometry.dispose();
        mesh.geometry = geometry = quads(room, copies);
      }
      span.copies.value = copies;
      span.depth_m.value = depth_m;
      span.from_m.value = from_x_m;
      span.to_m.value = to_x_m;
      const places = geometry.getAttribute('ball') as InstancedBufferAttribute;
      const marks = geometry.getAttribute('held') as InstancedBufferAttribute;
      (places.array as Float32Array).set(balls.subarray(0, count * BALL_STRIDE));
      (marks.array as Uint8Array).set(held.subarray(0, count));
      places.needsUpdate = marks.needsUpdate = true;
      geometry.instanceCount = count * copies;
    },
    dispose() {
      geometry.dispose();
      material.dispose();
    },
  };
}

/** A square a ball and copy; the numbers of a ball serve all its copies. */
function quads(balls: number, copies: number): InstancedBufferGeometry {
  const geometry = new InstancedBufferGeometry();
  geometry.setAttribute(
    'position',
    new BufferAttribute(Float32Array.from([-1, -1, 0, 1, -1, 0, 1, 1, 0, -1, 1, 0]), 3),
  );
  geometry.setAttribute(
    'normal',
    new BufferAttribute(Float32Array.from([0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1]), 3),
  );
  geometry.setIndex([0, 1, 2, 0, 2, 3]);
  const places = new InstancedBufferAttribute(
    new Float32Array(balls * BALL_STRIDE),
    BALL_STRIDE,
    false,
    copies,
  );
  const marks = new InstancedBufferAttribute(new Uint8Array(balls), 1, false, copies);
  places.setUsage(DynamicDrawUsage);
  marks.setUsage(DynamicDrawUsage);
  geometry.setAttribute('ball', places);
  geometry.setAttribute('held', marks);
  geometry.instanceCount = 0;
  return geometry;
}

const VERTEX_PARS = /* glsl */ `
attribute vec4 ball;
attribute float held;
uniform vec4 cutPlane;
uniform int copies;
uniform float depth_m;
uniform float from_m;
uniform float to_m;
varying vec2 vDisc;
varying vec3 vRight;
varying vec3 vUp;
varying vec3 vToEye;
varying float vHeld;
`;

/** Body frame to the kind's: along the axis, then body x down and body y to the front. */
const CENTRE = /* glsl */ `
int copy = gl_InstanceID - copies * (gl_InstanceID / copies);
vec3 transformed = vec3(from_m + ball.z + depth_m * float(copy), -ball.x, -ball.y);
`;

const FACING = /* glsl */ `
vec4 mvPosition = modelViewMatrix * vec4(transformed, 1.0);
vToEye = normalize(-mvPosition.xyz);
vRight = normalize(cross(vec3(0.0, 1.0, 0.0), vToEye));
vUp = cross(vToEye, vRight);
vDisc = position.xy;
vHeld = held;
mvPosition.xyz += ball.w * (vRight * position.x + vUp * position.y);
gl_Position = projectionMatrix * mvPosition;
// Balls are shown whole or not at all: beyond the chamber's end, and on the side that a section takes away.
bool gone = transformed.x > to_m - 0.5 * ball.w
  || dot(cutPlane.xyz, (modelMatrix * vec4(transformed, 1.0)).xyz) > cutPlane.w;
if (gone) gl_Position = vec4(2.0, 2.0, 2.0, 1.0);
`;

const FRAGMENT_PARS = /* glsl */ `
uniform vec3 inkColour;
uniform float inkStrength;
uniform float pixelRatio;
uniform vec3 heldColour;
varying vec2 vDisc;
varying vec3 vRight;
varying vec3 vUp;
varying vec3 vToEye;
varying float vHeld;
`;

const DISC = /* glsl */ `
float discRadius = length(vDisc);
float discPixel = fwidth(discRadius);
if (discRadius > 1.0) discard;
diffuseColor.a = clamp((1.0 - discRadius) / discPixel + 0.5, 0.0, 1.0);
diffuseColor.rgb = mix(diffuseColor.rgb, heldColour, vHeld);
`;

/** Tinted balls are lacquer rather than bare steel, so that the tint holds against any reflection. */
const LACQUER = /* glsl */ `float metalnessFactor = metalness * (1.0 - 0.75 * vHeld);`;

const SPHERE = /* glsl */ `
float faceDirection = 1.0;
vec3 normal = normalize(vRight * vDisc.x + vUp * vDisc.y + vToEye * sqrt(max(0.0, 1.0 - discRadius * discRadius)));
vec3 nonPerturbedNormal = normal;
`;

/** Outline in ink, thinner on balls that are small on the screen; on held balls the dot of the legend. */
const INK = /* glsl */ `
#include <colorspace_fragment>
{
  float across = 2.0 / max(discPixel, 1e-4) / pixelRatio;
  float pixels = (1.0 - discRadius) / max(discPixel, 1e-4);
  float width = 1.1 * pixelRatio;
  float line = 1.0 - smoothstep(width - 0.5, width + 0.5, pixels);
  gl_FragColor.rgb = mix(gl_FragColor.rgb, inkColour, line * inkStrength * smoothstep(3.0, 10.0, across));
  float dot = 1.0 - smoothstep(0.3 - discPixel, 0.3 + discPixel, discRadius);
  gl_FragColor.rgb = mix(gl_FragColor.rgb, inkColour, vHeld * dot * smoothstep(5.0, 9.0, across) * 0.9);
}
`;

function patch(shader: WebGLProgramParametersWithUniforms, span: Record<string, { value: number }>): void {
  Object.assign(shader.uniforms, inkUniforms, span, { cutPlane, heldColour: { value: HELD } });
  (shader.uniforms['diffuse'] as { value: Color }).value = LOOSE;
  shader.vertexShader = shader.vertexShader
    .replace('#include <common>', `#include <common>\n${VERTEX_PARS}`)
    .replace('#include <begin_vertex>', CENTRE)
    .replace('#include <project_vertex>', FACING);
  shader.fragmentShader = shader.fragmentShader
    .replace('#include <common>', `#include <common>\n${FRAGMENT_PARS}`)
    .replace('#include <color_fragment>', DISC)
    .replace('#include <metalnessmap_fragment>', LACQUER)
    .replace('#include <normal_fragment_begin>', SPHERE)
    .replace('#include <colorspace_fragment>', INK);
}
