/** Keys of a presenter's remote: page down and up, and the key that blanks the screen. */
import { useEffect, useRef } from 'react';

interface Actions {
  readonly next: () => unknown;
  readonly back: () => unknown;
  readonly pause: () => unknown;
}

const KEYS: Readonly<Record<string, keyof Actions>> = {
  PageDown: 'next',
  ArrowRight: 'next',
  PageUp: 'back',
  ArrowLeft: 'back',
  b: 'pause',
  '.': 'pause',
};

/** Fields and the stage keep their own keys. */
const hasOwnKeys = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('input, select, textarea, canvas, [role="slider"]') !== null;

export function usePresenterKeys(on: boolean, actions: Actions): void {
  const now = useRef(actions);
  useEffect(() => {
    now.current = actions;
  });
  useEffect(() => {
    if (!on) return;
    const press = (event: KeyboardEvent): void => {
      const action = KEYS[event.key];
      if (action === undefined || event.ctrlKey || event.metaKey || event.altKey || hasOwnKeys(event.target))
        return;
      event.preventDefault();
      if (!event.repeat) now.current[action]();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [on]);
}
