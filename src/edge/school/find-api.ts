/**
 * Looks for the object that a SCORM system puts into a window: up through the frames that hold this page, then the same
 * from the window that opened it. Source: ADL, SCORM 2004 4th Edition Run-Time Environment (2009), section 3.3.2.
 */
import type { SchoolStandard } from '../../core/records';

/** Frames looked through at most. */
const MOST_FRAMES = 500;

const NAMES = { scorm12: 'API', scorm2004: 'API_1484_11' } as const;

export type ScormApi = Readonly<Record<string, (...values: string[]) => unknown>>;

/** Windows of another origin may not be looked into: then there is none. */
function inWindow(from: Window, name: string): ScormApi | null {
  let at = from;
  for (let i = 0; i < MOST_FRAMES; i++) {
    try {
      const found = (at as unknown as Record<string, ScormApi | null | undefined>)[name];
      if (found != null) return found;
    } catch {
      // A frame between may be of another origin; those above it may not.
    }
    if (at.parent === at || at.parent == null) return null;
    at = at.parent;
  }
  return null;
}

export function findApi(standard: Exclude<SchoolStandard, 'cmi5'>, from: Window): ScormApi | null {
  const name = NAMES[standard];
  const above = from.parent != null && from.parent !== from ? inWindow(from.parent, name) : null;
  if (above !== null) return above;
  const own = inWindow(from, name);
  if (own !== null) return own;
  try {
    const opener = (from.top as Window | null)?.opener as Window | null | undefined;
    const near = from.opener as Window | null | undefined;
    for (const each of [near, opener]) {
      const found = each == null ? null : inWindow(each, name);
      if (found !== null) return found;
    }
  } catch {
    // The outermost window is of another origin.
  }
  return null;
}
