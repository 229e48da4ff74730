/** What the page itself shows of the state: theme, glove and motion marks, language, title; and the Escape key. */
import { useEffect } from 'react';
import { useApp, useCommands, useSpeech } from '../view/bind';

export function useAppearance(): void {
  const { t } = useSpeech();
  const settings = useApp((s) => s.settings);
  const machine = useApp((s) => s.document?.machine.name);
  useEffect(() => {
    const page = document.documentElement;
    page.lang = settings.language;
    page.dataset['theme'] = settings.theme;
    page.dataset['glove'] = settings.glove ? 'on' : 'off';
    page.dataset['motion'] = settings.motion;
    const ground = getComputedStyle(page).getPropertyValue('--ground').trim();
    document.querySelector('meta[name="theme-color"]')?.setAttribute('content', ground);
  }, [settings]);
  useEffect(() => {
    document.title = machine === undefined ? t('app.name') : `${machine} – ${t('app.name')}`;
  }, [machine, t]);
}

/** Escape closes the innermost thing that is open. */
export function useEscape(): void {
  const commands = useCommands();
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape' || event.defaultPrevented) return;
      const menu = document.querySelector<HTMLDetailsElement>('details.tool-more[open]');
      if (menu === null) commands.back();
      else {
        menu.open = false;
        menu.querySelector<HTMLElement>('summary')?.focus();
      }
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [commands]);
}
