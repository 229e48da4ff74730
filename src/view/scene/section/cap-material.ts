/** Cut faces as a drawing shows them: pale metal, hatched in ink at an even density on the screen. */
import { DoubleSide, ShaderMaterial, Vector3 } from 'three';
import { inkUniforms } from '../machine/surface-material';
import { HATCH_STYLES } from '../../../core/geometry';

const VERTEX = /* glsl */ `
attribute float part;
attribute float style;
attribute vec3 tint;
uniform float selectedPart;
uniform vec3 axisU;
uniform vec3 axisV;
varying vec2 vPlace;
varying vec3 vTint;
varying float vStyle;
varying float vChosen;
void main() {
  vPlace = vec2(dot(position, axisU), dot(position, axisV));
  vTint = tint;
  vStyle = style;
  vChosen = abs(part - selectedPart) < 0.5 ? 1.0 : 0.0;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}
`;

const FRAGMENT = /* glsl */ `
uniform vec3 inkColour;
uniform vec3 accentColour;
uniform vec3 faceColour;
uniform float spacing_m;
uniform float ball_m;
uniform float tintShare;
uniform float pixelRatio;
varying vec2 vPlace;
varying vec3 vTint;
varying float vStyle;
varying float vChosen;
const int STYLES = ${HATCH_STYLES.length};
uniform vec2 styles[STYLES];
void main() {
  vec3 face = mix(faceColour, vTint, tintShare);
  face = mix(face, accentColour, 0.14 * vChosen);
  vec3 ink = mix(inkColour, accentColour, vChosen);
  if (vStyle > 254.0) {
    gl_FragColor = vec4(mix(face, ink, 0.86), 1.0);
    return;
  }
  if (vStyle > 253.0) {
    // Balls in rows, each row set back by half a ball.
    vec2 q = vPlace / ball_m;
    float row = floor(q.y / 0.866);
    vec2 c = vec2(fract(q.x + 0.5 * mod(row, 2.0)) - 0.5, fract(q.y / 0.866) * 0.866 - 0.433);
    float pixel = max(length(vec2(dFdx(q.x), dFdy(q.x))), length(vec2(dFdx(q.y), dFdy(q.y))));
    float edge = abs(length(c) - 0.44) / max(pixel, 1e-6);
    float line = mix(1.0 - smoothstep(0.3, 1.1, edge), 0.42, smoothstep(0.07, 0.15, pixel));
    vec3 ball = mix(vTint, faceColour, 0.35);
    gl_FragColor = vec4(mix(ball, ink, 0.7 * line), 1.0);
    return;
  }
  vec2 style = vec2(0.785, 1.0);
  for (int i = 0; i < STYLES; i++) if (abs(float(i) - vStyle) < 0.5) style = styles[i];
  float s = (vPlace.x * -sin(style.x) + vPlace.y * cos(style.x)) / (spacing_m * style.y);
  float pixel = length(vec2(dFdx(s), dFdy(s)));
  float away = abs(fract(s) - 0.5) / max(pixel, 1e-6);
  float line = 1.0 - smoothstep(0.1, 1.0, away - 0.35 * (pixelRatio - 1.0));
  // Lines closer than three pixels run together into an even tone.
  line = mix(line, 0.36, smoothstep(0.28, 0.5, pixel));
  gl_FragColor = vec4(mix(face, ink, 0.62 * line), 1.0);
}
`;

export function capMaterial(): ShaderMaterial {
  return new ShaderMaterial({
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    uniforms: {
      ...inkUniforms,
      faceColour: { value: new Vector3(1, 1, 1) },
      selectedPart: { value: -1 },
      axisU: { value: new Vector3(1, 0, 0) },
      axisV: { value: new Vector3(0, 1, 0) },
      spacing_m: { value: 0.012 },
      ball_m: { value: 0.012 },
      /** How much of its own colour a face shows. */
      tintShare: { value: 0.22 },
      styles: { value: HATCH_STYLES.flatMap((s) => [s.angle_rad, s.spacing]) },
    },
    side: DoubleSide,
    toneMapped: false,
  });
}
