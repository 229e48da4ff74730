/** Contrast of the colour tokens in every theme (WCAG 2.2, 1.4.3 text and 1.4.11 graphics). */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const css = readFileSync(resolve(import.meta.dirname, '../../src/view/theme/tokens.css'), 'utf8');

function tokensOf(theme: string): Readonly<Record<string, string>> {
  const block = new RegExp(`\\[data-theme='${theme}'\\] \\{([^}]*)\\}`).exec(css)?.[1] ?? '';
  return Object.fromEntries(
    [...block.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map((match) => [match[1]!, match[2]!]),
  );
}

/** Relative luminance of sRGB, WCAG 2.2 definition. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const c = parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

const contrast = (a: string, b: string): number => {
  const [x, y] = [luminance(a), luminance(b)].sort((p, q) => q - p);
  return (x! + 0.05) / (y! + 0.05);
};

const TEXT = [
  ...['ground', 'card', 'sunk', 'wash'].map((on) => ['ink', on]),
  ...['ground', 'card', 'sunk', 'wash'].map((on) => ['faint', on]),
  ['card', 'ink'],
  ['accent-ink', 'card'],
  ['on-accent', 'accent'],
  ['on-danger', 'danger'],
  ['on-warning', 'warning'],
  ['on-caution', 'caution'],
  ['on-notice', 'notice'],
];
const GRAPHICS = [
  ['edge', 'card'],
  ['edge', 'ground'],
  ['accent', 'card'],
  ['focus', 'card'],
  ['focus', 'ground'],
  ['danger', 'card'],
  ['good', 'card'],
];

it('knows black on white', () => expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6));

describe.each(['paper', 'night', 'projector'])('theme %s', (theme) => {
  const tokens = tokensOf(theme);
  it.each(TEXT)('%s on %s reads as text', (ink, ground) =>
    expect(contrast(tokens[ink!]!, tokens[ground!]!)).toBeGreaterThanOrEqual(4.5),
  );
  it.each(GRAPHICS)('%s on %s shows as a line', (line, ground) =>
    expect(contrast(tokens[line!]!, tokens[ground!]!)).toBeGreaterThanOrEqual(3),
  );
});
