/** Marks over the balls in one draw call: force arrow, quartered centre of the shot, and the way down. */
import {
  BufferAttribute,
  type BufferGeometry,
  ConeGeometry,
  CylinderGeometry,
  Mesh,
  ShaderMaterial,
  SphereGeometry,
  Vector2,
} from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';
import { inkUniforms } from '../machine/surface-material';

export interface Marks {
  readonly mesh: Mesh;
  /**
   * Body frame: force as a share of the longest arrow (its direction), centre of the shot in metres, and the way down
   * as a unit vector, null where the stage itself shows it.
   */
  write(
    force: readonly [number, number],
    centre_m: readonly [number, number],
    down: readonly [number, number] | null,
  ): void;
  /** Where along the kind's x axis the marks stand, and how far from the axis the way down is marked. */
  place(x_m: number, reach_m: number): void;
  card(colour: { r: number; g: number; b: number }): void;
  dispose(): void;
}

/** Length of the longest arrow, m. */
const LONGEST_M = 0.3;

export function marks(): Marks {
  const uniforms = {
    ...inkUniforms,
    force: { value: new Vector2() },
    centre: { value: new Vector2() },
    down: { value: new Vector2() },
    station: { value: 0 },
    reach: { value: 0.2 },
    cardColour: { value: { x: 1, y: 1, z: 1 } },
  };
  const material = new ShaderMaterial({
    uniforms,
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    depthTest: false,
    depthWrite: false,
    transparent: true,
    toneMapped: false,
  });
  const mesh = new Mesh(pieces(), material);
  mesh.name = 'force and centre';
  mesh.frustumCulled = false;
  mesh.renderOrder = 5;
  mesh.matrixAutoUpdate = mesh.matrixWorldAutoUpdate = false;
  return {
    mesh,
    write(force, centre_m, down) {
      uniforms.force.value.set(...force);
      uniforms.centre.value.set(...centre_m);
      uniforms.down.value.set(...(down ?? [0, 0]));
    },
    place(x_m, reach_m) {
      uniforms.station.value = x_m;
      uniforms.reach.value = reach_m;
    },
    card({ r, g, b }) {
      uniforms.cardColour.value = { x: r, y: g, z: b };
    },
    dispose() {
      mesh.geometry.dispose();
      material.dispose();
    },
  };
}

/** Arrow along +y of length 1 with its head apart, ball about the origin, cone pointing to +y; numbered by `piece`. */
function pieces(): BufferGeometry {
  const shaft = numbered(new CylinderGeometry(0.0055, 0.0055, 1, 20).translate(0, 0.5, 0), 0);
  const head = numbered(new ConeGeometry(0.017, 0.05, 28).translate(0, -0.025, 0), 1);
  const ball = numbered(new SphereGeometry(0.012, 28, 18), 2);
  const plumb = numbered(new ConeGeometry(0.011, 0.03, 20).translate(0, -0.015, 0), 3);
  // Drawn without a depth test: what comes later lies on top.
  return mergeGeometries([plumb, shaft, head, ball]);
}

function numbered(geometry: BufferGeometry, piece: number): BufferGeometry {
  const count = geometry.getAttribute('position').count;
  geometry.setAttribute('piece', new BufferAttribute(new Float32Array(count).fill(piece), 1));
  geometry.deleteAttribute('uv');
  return geometry;
}

const VERTEX = /* glsl */ `
attribute float piece;
uniform vec2 force;
uniform vec2 centre;
uniform vec2 down;
uniform float station;
uniform float reach;
varying float vPiece;
varying vec3 vOwn;
varying vec3 vFace;
void main() {
  vPiece = piece;
  vOwn = position;
  float share = length(force);
  vec2 along = piece > 2.5 ? down : piece > 1.5 ? vec2(1.0, 0.0) : force / max(share, 1e-6);
  // Own y runs along the mark, own x round it, own z along the machine.
  vec2 across = vec2(-along.y, along.x);
  float length_m = ${LONGEST_M.toFixed(3)} * share;
  vec3 p = position;
  vec2 base = vec2(0.0);
  // A short arrow has a small head.
  float head = min(1.0, length_m / 0.12);
  if (piece < 0.5) p = vec3(p.x * head, p.y * max(0.0, length_m - 0.03 * head), p.z * head);
  else if (piece < 1.5) {
    p *= head;
    base = along * length_m;
  }
  else if (piece < 2.5) base = centre;
  else base = along * (reach + 0.045);
  bool gone = (piece < 1.5 && share < 0.03) || (piece > 2.5 && dot(down, down) < 0.5);
  vec2 body = base + along * p.y + across * p.x;
  vec2 facing = along * normal.y + across * normal.x;
  vec4 view = modelViewMatrix * vec4(station + p.z, -body.x, -body.y, 1.0);
  vFace = normalize(normalMatrix * vec3(normal.z, -facing.x, -facing.y));
  gl_Position = gone ? vec4(2.0, 2.0, 2.0, 1.0) : projectionMatrix * view;
}
`;

const FRAGMENT = /* glsl */ `
uniform vec3 inkColour;
uniform vec3 accentColour;
uniform vec3 cardColour;
varying float vPiece;
varying vec3 vOwn;
varying vec3 vFace;
void main() {
  float facing = abs(normalize(vFace).z);
  vec3 colour = vPiece > 2.5 ? inkColour : vPiece > 1.5 ? (vOwn.x * vOwn.y > 0.0 ? inkColour : cardColour) : accentColour;
  // Rim in ink for the ball, a little form for the rest.
  if (vPiece > 1.5 && vPiece < 2.5) colour = mix(colour, inkColour, 1.0 - smoothstep(0.3, 0.42, facing));
  else colour *= 0.72 + 0.28 * facing;
  gl_FragColor = vec4(colour, 1.0);
}
`;
