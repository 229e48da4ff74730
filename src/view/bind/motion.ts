/** Whether things are to keep still: the app's setting, or the system's wish where the setting follows it. */
import { useEffect, useState } from 'react';
import type { Settings } from '../../store';
import { useApp } from './context';

const wish = (): MediaQueryList => matchMedia('(prefers-reduced-motion: reduce)');

/** As it is now, for loops that ask at each frame. */
export const motionReduced = (setting: Settings['motion']): boolean =>
  setting === 'reduced' || (setting === 'system' && wish().matches);

/** The same for a component, which is drawn again when the system's wish changes. */
export function useReducedMotion(): boolean {
  const setting = useApp((s) => s.settings.motion);
  const [system, setSystem] = useState(() => wish().matches);
  useEffect(() => {
    const query = wish();
    const follow = (): void => setSystem(query.matches);
    query.addEventListener('change', follow);
    return () => query.removeEventListener('change', follow);
  }, []);
  return setting === 'reduced' || (setting === 'system' && system);
}
