/**
 * Outlines of the exciter's housing in section, as path data for an SVG or a Path2D. Seen from the machine's right, page
 * units are millimetres about the shaft axis; the body frame's +x points down on the page and +y to the right, so that
 * counter-clockwise stays counter-clockwise.
 */
import type { HousingOutline, Loop } from '../../../core/studies';

/** Page units a metre. */
export const PAGE_MM = 1000;

export interface HousingPaths {
  /** Shell with the chamber cut out of it; fill by the even-odd rule. */
  readonly shell: string;
  readonly chamber: string;
  /** Trim bar and its webs. */
  readonly fixed: readonly string[];
  /** The baffle as fitted to the machine; null where there is none. */
  readonly baffle: string | null;
}

/** Closed loops of the body frame as one path. */
export const pagePath = (loops: readonly Loop[]): string =>
  loops
    .map((loop) => {
      const corners = loop.map(([x, y]) => `${(y * PAGE_MM).toFixed(2)} ${(x * PAGE_MM).toFixed(2)}`);
      return `M${corners.join('L')}Z`;
    })
    .join('');

export const housingPaths = ({ outer, inner, fixed, baffle }: HousingOutline): HousingPaths => ({
  shell: pagePath([outer, inner]),
  chamber: pagePath([inner]),
  fixed: fixed.map((loop) => pagePath([loop])),
  baffle: baffle === null ? null : pagePath([baffle]),
});
