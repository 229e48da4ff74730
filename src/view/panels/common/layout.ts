/** Which of the three layouts fits the window: the projector's larger type needs more room for the same screen. */
import { useSyncExternalStore } from 'react';
import { useApp } from '../../bind';

export type Layout = 'desktop' | 'tablet' | 'phone';

/** CSS pixels of width, and the scale of the type. */
export function layoutFor(width_px: number, typeScale: number): Layout {
  if (width_px >= 1200 * typeScale) return 'desktop';
  return width_px >= 700 ? 'tablet' : 'phone';
}

const subscribe = (listener: () => void): (() => void) => {
  window.addEventListener('resize', listener);
  return () => window.removeEventListener('resize', listener);
};

export function useLayout(): Layout {
  const scale = useApp((s) => (s.settings.theme === 'projector' ? 1.25 : 1));
  return useSyncExternalStore(subscribe, () => layoutFor(window.innerWidth, scale));
}
