/**
 * Limit deviations of one ISO 286 tolerance class, such as H7 or p6, at a nominal size.
 *
 * Rules: shafts d to h end at es, k to s start at ei, js lies half each side. Holes D to H mirror their shaft.
 * Holes K, M, N up to grade 8 and P, R, S up to grade 7: ES = -ei(same letter) + delta, delta = IT(n) - IT(n-1),
 * 0 up to 3 mm; beyond those grades without delta (N then 0 above 3 mm). Source: ISO 286-1 (from memory), tables
 * in iso-tables.ts.
 */
import { message, type Message } from '../../kernel';
import {
  HOLE_J_UPPER_UM,
  RANGES_MM,
  SHAFT_J_LOWER_UM,
  SHAFT_LOWER_SUB_UM,
  SHAFT_LOWER_UM,
  SHAFT_UPPER_UM,
  SUB_RANGES_MM,
  TOLERANCE_UM,
} from './iso-tables';

/** Upper and lower limit deviation from the nominal size, micrometres. */
export interface LimitDeviations {
  readonly upper_um: number;
  readonly lower_um: number;
}

export type Limits =
  | { readonly ok: true; readonly limits: LimitDeviations }
  | { readonly ok: false; readonly expected: Message };

const LEAST_GRADE = 5;
const GREATEST_GRADE = 12;
const SHAFT_LETTERS = ['d', 'e', 'f', 'g', 'h', 'j', 'js', 'k', 'm', 'n', 'p', 'r', 's'];
const HOLE_LETTERS = SHAFT_LETTERS.map((letter) => letter.toUpperCase());

const refuse = (key: string, params?: Message['params']): Limits => ({
  ok: false,
  expected: message(`mechanics.expected.${key}`, params),
});

/**
 * @param size_mm nominal size, above 0 up to 500
 * @param name tolerance class: capital letters for holes, small ones for shafts, then the grade, 5 to 12
 * @param member 'hole' or 'shaft'
 */
export function isoLimits(size_mm: number, name: string, member: 'hole' | 'shaft'): Limits {
  const letters = member === 'hole' ? HOLE_LETTERS : SHAFT_LETTERS;
  const found = /^([A-Za-z]+)(\d+)$/.exec(name.trim());
  const letter = found?.[1] ?? '';
  const grade = Number(found?.[2] ?? 0);
  if (!letters.includes(letter)) return refuse(`${member}-class`, { letters });
  if (grade < LEAST_GRADE || grade > GREATEST_GRADE) {
    return refuse('grade', { low: LEAST_GRADE, high: GREATEST_GRADE });
  }
  const range = RANGES_MM.findIndex((upper) => size_mm <= upper);
  const tolerance = TOLERANCE_UM[grade]?.[range];
  if (!(size_mm > 0) || tolerance === undefined) return refuse('iso-size', { low: 0, high: 0.5 });
  if (letter === 'js' || letter === 'JS') {
    return { ok: true, limits: { upper_um: tolerance / 2, lower_um: -tolerance / 2 } };
  }
  return member === 'shaft'
    ? shaftLimits(letter, grade, size_mm, range, tolerance)
    : holeLimits(letter, grade, size_mm, range, tolerance);
}

function shaftLimits(
  letter: string,
  grade: number,
  size_mm: number,
  range: number,
  tolerance: number,
): Limits {
  const es = SHAFT_UPPER_UM[letter as keyof typeof SHAFT_UPPER_UM]?.[range];
  if (es !== undefined) return { ok: true, limits: { upper_um: es, lower_um: es - tolerance } };
  const ei =
    letter === 'j'
      ? SHAFT_J_LOWER_UM[grade]?.[range]
      : letter === 'k' && grade > 7
        ? 0
        : shaftLower(letter, size_mm, range);
  if (ei === undefined) return refuse('class-with-grades', { letter, grades: ['5', '6', '7'] });
  return { ok: true, limits: { upper_um: ei + tolerance, lower_um: ei } };
}

/** Lower deviation of k to s; k as for grades 4 to 7, which the rule for holes K needs up to grade 8. */
function shaftLower(letter: string, size_mm: number, range: number): number | undefined {
  const main = SHAFT_LOWER_UM[letter as keyof typeof SHAFT_LOWER_UM];
  if (main !== undefined) return main[range];
  const sub = SUB_RANGES_MM.findIndex((upper) => size_mm <= upper);
  return SHAFT_LOWER_SUB_UM[letter as keyof typeof SHAFT_LOWER_SUB_UM]?.[sub];
}

function holeLimits(
  letter: string,
  grade: number,
  size_mm: number,
  range: number,
  tolerance: number,
): Limits {
  const small = letter.toLowerCase();
  const es = SHAFT_UPPER_UM[small as keyof typeof SHAFT_UPPER_UM]?.[range];
  // 0 - es, so that H does not end at minus zero
  if (es !== undefined) return { ok: true, limits: { upper_um: 0 - es + tolerance, lower_um: 0 - es } };
  if (letter === 'J') {
    const upper_um = HOLE_J_UPPER_UM[grade]?.[range];
    if (upper_um === undefined) return refuse('class-with-grades', { letter, grades: ['6', '7', '8'] });
    return { ok: true, limits: { upper_um, lower_um: upper_um - tolerance } };
  }
  const upper_um = holeUpper(letter, grade, size_mm, range, tolerance);
  if (upper_um === undefined) return refuse('class-with-grades', { letter, grades: ['5', '6', '7', '8'] });
  return { ok: true, limits: { upper_um, lower_um: upper_um - tolerance } };
}

/** ES of holes K to S; undefined where ISO 286 lists no such class. */
function holeUpper(
  letter: string,
  grade: number,
  size_mm: number,
  range: number,
  tolerance: number,
): number | undefined {
  const ei = shaftLower(letter.toLowerCase(), size_mm, range);
  if (ei === undefined) return undefined;
  const isTransition = letter === 'K' || letter === 'M' || letter === 'N';
  if (grade > (isTransition ? 8 : 7)) {
    if (letter === 'K' && size_mm > 3) return undefined;
    return letter === 'N' && size_mm > 3 ? 0 : 0 - ei;
  }
  // the one exception that ISO 286 makes to its rule
  if (letter === 'M' && grade === 6 && size_mm > 250 && size_mm <= 315) return -9;
  const finer = TOLERANCE_UM[grade - 1]?.[range] ?? tolerance;
  return 0 - ei + (size_mm > 3 ? tolerance - finer : 0);
}
