/**
 * The one material of all solids. What differs from vertex to vertex (colour, roughness, metalness, turning marks,
 * grain) comes with the geometry; what differs from part to part (hovered, selected) with the instance. Added to
 * three's physical material: turning marks round the kind's x axis with a highlight drawn out across them, and an ink
 * line where a smooth surface turns away from the eye, as a draughtsman draws the outline of a cylinder.
 */
import {
  Color,
  MeshPhysicalMaterial,
  MeshStandardMaterial,
  ShaderChunk,
  type WebGLProgramParametersWithUniforms,
} from 'three';
import { MARK_COLOUR } from './mark-shader';
import { CLIP_FRAGMENT, CLIP_FRAGMENT_PARS, CLIP_VERTEX, CLIP_VERTEX_PARS, cutPlane } from './clip-shader';

/** Shared by all materials of the stage; written when the theme changes. */
export const inkUniforms = {
  /** Screen colours (sRGB numbers), not lit. Ink stands on solids; what stands on the ground itself has the ground's. */
  inkColour: { value: new Color() },
  groundInkColour: { value: new Color() },
  accentColour: { value: new Color() },
  inkStrength: { value: 0.8 },
  /** Device pixels a CSS pixel, so that lines keep their width. */
  pixelRatio: { value: 1 },
  /** Pen for the size of the stage: small stages get finer lines. */
  pen: { value: 1 },
};

const VERTEX_PARS = /* glsl */ `
attribute vec4 tint;
attribute vec4 finish;
attribute float partState;
varying vec4 vTint;
varying vec4 vFinish;
varying float vPartState;
varying vec3 vOwn;
varying vec3 vOwnNormal;
varying vec3 vRound;
varying vec3 vAxis;
${CLIP_VERTEX_PARS}
`;

const VERTEX = /* glsl */ `
#include <begin_vertex>
vTint = tint;
vFinish = finish;
vPartState = partState;
vOwn = position;
vOwnNormal = normal;
// The way round the axis, linear in the position, so that it is exact over a whole triangle.
vRound = normalMatrix * (mat3(instanceMatrix) * vec3(0.0, -position.z, position.y));
vAxis = normalMatrix * instanceMatrix[0].xyz;
${CLIP_VERTEX}
`;

const FRAGMENT_PARS = /* glsl */ `
uniform vec3 inkColour;
uniform vec3 accentColour;
uniform float inkStrength;
uniform float pixelRatio;
uniform float pen;
varying vec4 vTint;
varying vec4 vFinish;
varying float vPartState;
varying vec3 vOwn;
varying vec3 vOwnNormal;
varying vec3 vRound;
varying vec3 vAxis;
${CLIP_FRAGMENT_PARS}
float hash1(float n) { return fract(sin(n * 12.9898) * 43758.5453); }
float hash3(vec3 p) { return fract(sin(dot(p, vec3(12.9898, 78.233, 37.719))) * 43758.5453); }
float noise1(float x) {
  float i = floor(x);
  float f = fract(x);
  return mix(hash1(i), hash1(i + 1.0), f * f * (3.0 - 2.0 * f)) - 0.5;
}
float noise3(vec3 x) {
  vec3 i = floor(x);
  vec3 f = fract(x);
  f = f * f * (3.0 - 2.0 * f);
  float a = mix(mix(hash3(i), hash3(i + vec3(1, 0, 0)), f.x), mix(hash3(i + vec3(0, 1, 0)), hash3(i + vec3(1, 1, 0)), f.x), f.y);
  float b = mix(mix(hash3(i + vec3(0, 0, 1)), hash3(i + vec3(1, 0, 1)), f.x), mix(hash3(i + vec3(0, 1, 1)), hash3(i + vec3(1, 1, 1)), f.x), f.y);
  return mix(a, b, f.z) - 0.5;
}
// Noise of a wavelength in metres, faded out before it is finer than the screen can show.
float marks(float s, float wavelength, float footprint) {
  float keep = 1.0 - smoothstep(0.25, 0.75, footprint / wavelength);
  return keep <= 0.0 ? 0.0 : keep * noise1(s / wavelength);
}
vec3 linearOf(vec3 c) {
  return mix(pow((c + 0.055) / 1.055, vec3(2.4)), c / 12.92, vec3(lessThanEqual(c, vec3(0.04045))));
}
`;

/** Size at which the loose shot is drawn, metres. */
const BALL_M = 0.012;

const COLOUR = /* glsl */ `
${CLIP_FRAGMENT}
diffuseColor.rgb = linearOf(vTint.rgb);
float brushed = vFinish.z;
float streak = 0.0;
if (brushed > 0.01) {
  // On a cylinder the marks are stacked along the axis, on a face along the radius.
  float s = abs(vOwnNormal.x) > 0.7 ? length(vOwn.yz) : vOwn.x;
  float f = fwidth(s);
  streak = 0.6 * marks(s, 0.0012, f) + 0.6 * marks(s + 7.0, 0.0047, f) + 0.28 * marks(s + 3.0, 0.019, f);
}
float grain = vTint.a;
float speckle = 0.0;
if (grain > 0.01) {
  float f = length(fwidth(vOwn));
  float fine = 1.0 - smoothstep(0.25, 0.8, f / 0.0022);
  speckle = grain * ((fine > 0.0 ? 0.7 * fine * noise3(vOwn / 0.0022) : 0.0) + 0.3 * noise3(vOwn / 0.031));
}
diffuseColor.rgb *= 1.0 + 0.10 * brushed * streak + 0.22 * speckle;
// Marks of views: tint and a pattern of the screen, so that they tell without their colour too.
${MARK_COLOUR}
diffuseColor.rgb = mix(diffuseColor.rgb, accentColour * accentColour, vPartState > 1.5 ? 0.2 : vPartState > 0.5 ? 0.07 : 0.0);
`;

const ROUGHNESS = /* glsl */ `
float roughnessFactor = clamp(vFinish.x + 0.24 * brushed * streak + 0.16 * speckle, 0.06, 1.0);
`;

/** Loose shot (grain 1): balls a little apart, as bumps on the heap's surface and dark gaps between them. */
const BALLS = /* glsl */ `
#include <normal_fragment_maps>
if (vTint.a > 0.985) {
  vec3 q = vOwn / ${BALL_M.toFixed(4)};
  vec3 cell = floor(q);
  float d = 9.0;
  vec3 near = vec3(0.0);
  for (int k = 0; k < 27; k++) {
    vec3 o = vec3(float(k % 3), float((k / 3) % 3), float(k / 9)) - 1.0;
    vec3 at = cell + o;
    vec3 jitter = vec3(hash3(at), hash3(at + 17.0), hash3(at + 31.0)) * 0.5 + 0.25;
    vec3 from = q - at - jitter;
    float l = length(from);
    if (l < d) {
      d = l;
      near = from;
    }
  }
  float h = sqrt(max(0.0, 1.0 - 1.9 * d * d));
  float keep = 1.0 - smoothstep(0.12, 0.4, length(fwidth(q)));
  // The ball's own normal, carried to the eye's frame by the axis, the way round it and the radius.
  float r2 = max(dot(vOwn.yz, vOwn.yz), 1e-8);
  vec3 radial = cross(vRound, vAxis);
  vec3 ball = near.x * vAxis
    + (dot(near.yz, vOwn.yz) / r2) * radial
    + ((near.z * vOwn.y - near.y * vOwn.z) / r2) * vRound;
  normal = normalize(normal + 1.6 * keep * (1.0 - 0.5 * h) * normalize(ball + 1e-6));
  diffuseColor.rgb *= mix(0.78, 0.42 + 0.58 * h, keep);
}
`;

/** Bores face their own axis: they see less of the room, so its light reaches them weakly. */
const OCCLUSION = /* glsl */ `
{
  float r = length(vOwn.yz);
  float inward = r > 1e-4 ? max(0.0, -dot(vOwnNormal.yz, vOwn.yz) / r) : 0.0;
  float open = 1.0 - 0.55 * inward;
  reflectedLight.indirectDiffuse *= open;
  reflectedLight.indirectSpecular *= open;
}
`;

const TANGENTS = /* glsl */ `
vec3 roundAxis = vRound - normal * dot(vRound, normal);
float roundLength = length(roundAxis);
roundAxis = roundLength > 1e-6 ? roundAxis / roundLength : vec3(1.0, 0.0, 0.0);
mat3 tbn = mat3(cross(normal, roundAxis), roundAxis, normal);
`;

const ANISOTROPY = 'vec2 anisotropyV = vec2(vFinish.z, 0.0);';

/**
 * A smooth surface turns away where n.v falls to nothing; near there n.v goes with the root of the distance on the
 * screen, so n.v / |grad n.v| is twice that distance in pixels. Flat faces have no gradient and get no line.
 */
const CONTOUR = /* glsl */ `
#include <colorspace_fragment>
{
  float facing = abs(dot(normalize(vNormal), normalize(vViewPosition)));
  float pixels = 0.5 * facing / max(fwidth(facing), 1e-6);
  float width = (vPartState > 1.5 ? 1.9 : vPartState > 0.5 ? 1.3 : 0.95) * pen * pixelRatio;
  float line = (1.0 - smoothstep(width - 0.5, width + 0.5, pixels)) * (1.0 - smoothstep(0.35, 0.5, facing));
  vec3 ink = vPartState > 0.5 ? accentColour : inkColour;
  gl_FragColor.rgb = mix(gl_FragColor.rgb, ink, line * (vPartState > 0.5 ? 0.9 : inkStrength));
}
`;

export type SurfaceMaterial = MeshPhysicalMaterial | MeshStandardMaterial;

/** `fine`: with drawn-out highlights on turned faces; the low tier does without. */
export function surfaceMaterial(fine: boolean): SurfaceMaterial {
  const material = fine ? new MeshPhysicalMaterial({ anisotropy: 1 }) : new MeshStandardMaterial();
  // Pushes the faces back a little, so that the ink on their edges wins.
  material.polygonOffset = true;
  material.polygonOffsetFactor = 1;
  material.polygonOffsetUnits = 1;
  material.customProgramCacheKey = () => `drumbench-surface-${fine ? 'fine' : 'plain'}`;
  material.onBeforeCompile = (shader) => patch(shader, fine);
  return material;
}

function patch(shader: WebGLProgramParametersWithUniforms, fine: boolean): void {
  Object.assign(shader.uniforms, inkUniforms, { cutPlane });
  shader.vertexShader = shader.vertexShader
    .replace('#include <common>', `#include <common>\n${VERTEX_PARS}`)
    .replace('#include <begin_vertex>', VERTEX);
  shader.fragmentShader = shader.fragmentShader
    .replace('#include <common>', `#include <common>\n${FRAGMENT_PARS}`)
    .replace('#include <color_fragment>', COLOUR)
    .replace('#include <roughnessmap_fragment>', ROUGHNESS)
    .replace('#include <metalnessmap_fragment>', 'float metalnessFactor = vFinish.y;')
    .replace('#include <normal_fragment_maps>', BALLS)
    .replace('#include <aomap_fragment>', OCCLUSION)
    .replace('#include <colorspace_fragment>', CONTOUR);
  if (!fine) return;
  shader.fragmentShader = shader.fragmentShader
    .replace(
      '#include <normal_fragment_begin>',
      swapped(ShaderChunk.normal_fragment_begin, /mat3 tbn = getTangentFrame\([\s\S]*?\);/, TANGENTS),
    )
    .replace(
      '#include <lights_physical_fragment>',
      swapped(ShaderChunk.lights_physical_fragment, 'vec2 anisotropyV = anisotropyVector;', ANISOTROPY),
    );
}

/** Replaces a passage of three's own shader text, and says so when a new version of three no longer has it. */
function swapped(chunk: string, passage: string | RegExp, by: string): string {
  const out = chunk.replace(passage, by);
  if (out === chunk) throw new Error(`scene/surfaceMaterial: ${String(passage)} is not in three's shader`);
  return out;
}
