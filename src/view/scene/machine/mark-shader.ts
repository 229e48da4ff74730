/** Marks of the stage's views on surfaces: tint and screen pattern by the number that a part's state carries. */
import { Color } from 'three';
import { MARK_NAMES, MARKS, type MarkName, type MarkPattern } from '../../theme/marks';

/** State of a part that bears a mark: minus its number, from 1. */
export const markState = (name: MarkName): number => -1 - MARK_NAMES.indexOf(name);

/** Where there is ink, 0 or 1; `p` in CSS pixels on the screen. */
const PATTERNS: Readonly<Record<MarkPattern, string>> = {
  rising: 'step(fract((p.x + p.y) / 11.0), 0.3)',
  falling: 'step(fract((p.x - p.y) / 11.0), 0.3)',
  dots: 'step(length(fract(p / 9.0) - 0.5), 0.25)',
  grid: 'max(step(fract(p.x / 10.0), 0.16), step(fract(p.y / 10.0), 0.16))',
  level: 'step(fract(p.y / 8.0), 0.28)',
  upright: 'step(fract(p.x / 8.0), 0.25)',
  plain: '0.0',
};

const linear = (hex: string): string => {
  const { r, g, b } = new Color(hex);
  return `vec3(${[r, g, b].map((part) => part.toFixed(4)).join(', ')})`;
};

/** Tints `diffuseColor` for `vPartState` below 0. */
export const MARK_COLOUR = /* glsl */ `
if (vPartState < -0.5) {
  vec2 p = gl_FragCoord.xy / pixelRatio;
  ${MARK_NAMES.map(
    (name, i) => `${i === 0 ? '' : 'else '}if (vPartState > ${(-1.5 - i).toFixed(1)})
    diffuseColor.rgb = mix(mix(diffuseColor.rgb, ${linear(MARKS[name].fill)}, 0.85), ${linear(
      MARKS[name].ink,
    )}, 0.9 * ${PATTERNS[MARKS[name].pattern]});`,
  ).join('\n  ')}
}
`;
