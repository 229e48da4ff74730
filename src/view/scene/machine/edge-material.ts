/**
 * Ink lines of an even width on the screen: each segment is a quad turned to the eye, feathered over a pixel. Instanced,
 * so that a kind's feature edges are one draw call. Also used, not instanced, for cut outlines and paths of removal.
 */
import {
  type BufferGeometry,
  DoubleSide,
  Float32BufferAttribute,
  type InstancedBufferAttribute,
  InstancedBufferGeometry,
  ShaderMaterial,
  Uint16BufferAttribute,
  Uint32BufferAttribute,
  Vector2,
} from 'three';
import { CLIP_FRAGMENT, CLIP_FRAGMENT_PARS, CLIP_VERTEX_PARS, cutPlane } from './clip-shader';
import { runAlong } from './edge-chains';
import { setWhole } from './kind-geometry';
import { inkUniforms } from './surface-material';

/** Width of the drawing area in device pixels; shared, written each frame that it changes. */
export const screenSize = { value: new Vector2(1, 1) };

const VERTEX = /* glsl */ `
attribute vec3 other;
// x: -1 or 1, side of the line; y: run along the chain in metres; z: 1 at the start, -1 at the end.
attribute vec3 corner;
#ifdef INSTANCED
  attribute mat4 partMatrix;
  // x: state of the part, y: weight of its lines.
  attribute vec2 partLine;
#endif
uniform vec2 screenSize;
uniform float pixelRatio;
uniform float pen;
uniform float width;
uniform float bias;
varying float vState;
varying vec2 vAcross;
varying float vRun;
${CLIP_VERTEX_PARS.replaceAll('instanceMatrix', 'partMatrix')}
void main() {
  #ifdef INSTANCED
    mat4 m = partMatrix;
    vState = partLine.x;
    float weight = partLine.y;
  #else
    mat4 m = mat4(1.0);
    vState = 0.0;
    float weight = 1.0;
  #endif
  #if defined(CUT) && defined(INSTANCED)
    vBeyond = beyondCut(m, (m * vec4(position, 1.0)).xyz);
  #endif
  vec4 here = modelViewMatrix * m * vec4(position, 1.0);
  vec4 there = modelViewMatrix * m * vec4(other, 1.0);
  // Towards the eye along the line of sight: the place on the screen stays, the depth comes forward.
  here.xyz *= 1.0 - bias;
  there.xyz *= 1.0 - bias;
  float near = -0.02;
  if (here.z > near && there.z < near) here.xyz = mix(there.xyz, here.xyz, (near - there.z) / (here.z - there.z));
  if (there.z > near && here.z < near) there.xyz = mix(here.xyz, there.xyz, (near - here.z) / (there.z - here.z));
  vec4 a = projectionMatrix * here;
  vec4 b = projectionMatrix * there;
  vec2 along = (b.xy / b.w - a.xy / a.w) * screenSize * corner.z;
  float l = length(along);
  along = l > 1e-6 ? along / l : vec2(1.0, 0.0);
  float wide = (vState > 1.5 ? 2.1 : vState > 0.5 ? 1.6 : 1.0) * width * weight * pen * pixelRatio;
  float half_ = 0.5 * wide + 1.0;
  vAcross = vec2(corner.x * half_, wide);
  // Ends reach out by half the width, so that corners close.
  vec2 out_ = vec2(-along.y, along.x) * corner.x * half_ - along * corner.z * 0.4 * wide;
  a.xy += out_ * 2.0 / screenSize * a.w;
  gl_Position = a;
  // Metres to CSS pixels at this depth.
  vRun = corner.y * projectionMatrix[1][1] * screenSize.y * 0.5 / max(a.w, 1e-3) / pixelRatio;
}
`;

const FRAGMENT = /* glsl */ `
uniform vec3 inkColour;
uniform vec3 groundInkColour;
uniform vec3 accentColour;
uniform float inkStrength;
uniform float strength;
uniform float accent;
#ifdef FLOW
  uniform float flow;
#endif
varying float vState;
varying vec2 vAcross;
varying float vRun;
${CLIP_FRAGMENT_PARS}
void main() {
  #if defined(CUT) && defined(INSTANCED)
    ${CLIP_FRAGMENT}
  #endif
  float a = clamp(0.5 * vAcross.y + 0.5 - abs(vAcross.x), 0.0, 1.0) * min(1.0, vAcross.y);
  #ifdef HIDDEN
    // Hidden edge: thin dashes.
    if (fract(vRun / 7.0) > 0.6) discard;
  #endif
  #ifdef PHANTOM
    // Path of removal: one long dash, two dots.
    float t = fract(vRun / 46.0) * 46.0;
    if (!(t < 28.0 || (t > 33.0 && t < 35.5) || (t > 40.0 && t < 42.5))) discard;
  #endif
  #ifdef FLOW
    // Dashes that run from start to end.
    if (fract((vRun - flow) / 15.0) > 0.62) discard;
  #endif
  #ifdef CHAIN
    // Centre line: one long dash, one dot.
    float t = fract(vRun / 44.0) * 44.0;
    if (!(t < 32.0 || (t > 37.0 && t < 39.5))) discard;
  #endif
  bool acting = accent > 0.5 || vState > 0.5;
  bool ghost = vState < -0.5;
  #if defined(HIDDEN) || defined(PHANTOM) || defined(CHAIN)
    vec3 ink = groundInkColour;
  #else
    vec3 ink = ghost ? groundInkColour : inkColour;
  #endif
  gl_FragColor = vec4(acting ? accentColour : ink, a * strength * (acting ? 1.0 : ghost ? 0.34 * inkStrength : inkStrength));
}
`;

export type LineKind = 'solid' | 'hidden' | 'phantom' | 'chain' | 'flow';

export interface LineOptions {
  readonly instanced?: boolean;
  readonly kind?: LineKind;
  /** CSS pixels. */
  readonly width?: number;
  readonly strength?: number;
  readonly accent?: boolean;
  /** Share of the distance to the eye by which lines come forward. */
  readonly bias?: number;
  readonly depthTest?: boolean;
}

export function lineMaterial(options: LineOptions = {}): ShaderMaterial {
  const {
    instanced = false,
    kind = 'solid',
    width = 1.15,
    strength = 1,
    accent = false,
    bias = 0.0006,
  } = options;
  const defines: Record<string, string> = {};
  if (instanced) defines['INSTANCED'] = '';
  if (kind !== 'solid') defines[kind.toUpperCase()] = '';
  return new ShaderMaterial({
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    defines,
    uniforms: {
      ...inkUniforms,
      cutPlane,
      screenSize,
      width: { value: width },
      strength: { value: strength },
      accent: { value: accent ? 1 : 0 },
      bias: { value: bias },
    },
    transparent: true,
    depthWrite: false,
    depthTest: options.depthTest ?? true,
    side: DoubleSide,
    toneMapped: false,
  });
}

/** Fills position, other, corner and index of segment quads; six numbers a segment. */
export function setSegments(geometry: BufferGeometry, ends: Float32Array): void {
  const segments = Float32Array.from(ends);
  const runs = runAlong(segments);
  const count = segments.length / 6;
  const position = new Float32Array(count * 12);
  const other = new Float32Array(count * 12);
  const corner = new Float32Array(count * 12);
  const index = count * 4 < 65536 ? new Uint16Array(count * 6) : new Uint32Array(count * 6);
  for (let s = 0; s < count; s++) {
    const a = segments.subarray(6 * s, 6 * s + 3);
    const b = segments.subarray(6 * s + 3, 6 * s + 6);
    const length = Math.hypot(b[0]! - a[0]!, b[1]! - a[1]!, b[2]! - a[2]!);
    for (let k = 0; k < 4; k++) {
      const start = k < 2;
      position.set(start ? a : b, s * 12 + k * 3);
      other.set(start ? b : a, s * 12 + k * 3);
      corner.set([k % 2 === 0 ? -1 : 1, runs[s]! + (start ? 0 : length), start ? 1 : -1], s * 12 + k * 3);
    }
    index.set([4 * s, 4 * s + 1, 4 * s + 2, 4 * s + 2, 4 * s + 1, 4 * s + 3], s * 6);
  }
  geometry.setAttribute('position', new Float32BufferAttribute(position, 3));
  geometry.setAttribute('other', new Float32BufferAttribute(other, 3));
  geometry.setAttribute('corner', new Float32BufferAttribute(corner, 3));
  geometry.setIndex(
    index instanceof Uint16Array ? new Uint16BufferAttribute(index, 1) : new Uint32BufferAttribute(index, 1),
  );
}

/** Feature edges of a kind for up to `capacity` parts; matrices and states are written by the batch. */
export function instancedEdges(
  edges: { readonly ends: Float32Array; readonly whole: Float32Array | null },
  matrices: InstancedBufferAttribute,
  lines: InstancedBufferAttribute,
): InstancedBufferGeometry {
  const geometry = new InstancedBufferGeometry();
  setSegments(geometry, edges.ends);
  if (edges.whole !== null) {
    // One box a segment end there, one a corner here.
    const count = edges.ends.length / 6;
    const spread = new Float32Array(count * 24);
    for (let s = 0; s < count; s++)
      for (let k = 0; k < 4; k++) spread.set(edges.whole.subarray(12 * s, 12 * s + 6), (4 * s + k) * 6);
    setWhole(geometry, spread, count * 4);
  }
  geometry.setAttribute('partMatrix', matrices);
  geometry.setAttribute('partLine', lines);
  geometry.instanceCount = 0;
  return geometry;
}
