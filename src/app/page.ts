/** What the page itself shows of the state: theme, glove and motion marks, language, title; and the Escape key. */
import { useEffect } from 'react';
import { addressOf, BENCH, parseAddress, sameRoute } from '../store';
import { useApp, useCommands, useSpeech } from '../view/bind';

export function useAppearance(): void {
  const { t } = useSpeech();
  const settings = useApp((s) => s.settings);
  const machine = useApp((s) => s.document?.machine.name);
  const place = useApp((s) => s.route.place);
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
    const names = [place === 'bench' ? undefined : t(`places.${place}`), machine, t('app.name')];
    document.title = names.filter((name) => name !== undefined).join(' – ');
  }, [place, machine, t]);
}

/** Keeps the page's address and the route alike (main has read the one it was opened with): the back button and links work. */
export function useAddress(): void {
  const commands = useCommands();
  const route = useApp((s) => s.route);
  useEffect(() => {
    const read = (): void => {
      const { hash } = window.location;
      const named = hash === '' ? BENCH : parseAddress(hash);
      if (named !== null) commands.setRoute(named);
    };
    window.addEventListener('hashchange', read);
    window.addEventListener('popstate', read);
    return () => {
      window.removeEventListener('hashchange', read);
      window.removeEventListener('popstate', read);
    };
  }, [commands]);
  useEffect(() => {
    const named = parseAddress(window.location.hash) ?? BENCH;
    if (!sameRoute(named, route)) window.history.pushState(null, '', addressOf(route));
  }, [route]);
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
