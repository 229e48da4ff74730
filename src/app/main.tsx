/** Entry: settings first, then words, then the shell; the machine comes while the shell is already up. */
import { createRoot } from 'react-dom/client';
import { BindProvider, languageFor, loadLanguage } from '../view/bind';
import { parseAddress } from '../store';
import '../view/theme';
import { startOffline } from './offline';
import { Shell } from './shell';
import { commands, ports, store } from './wire';

const root = document.getElementById('root');
if (root === null) throw new Error('app/main: element #root, got none');

/** The launch page of a package names its lesson; cmi5 says in the address who learns and where to report. */
const packaged =
  document.querySelector('meta[name="drumbench-package"]') !== null ||
  ['endpoint', 'fetch', 'registration'].every((name) => new URLSearchParams(location.search).has(name));

async function openApp(root: HTMLElement): Promise<void> {
  // Reads the kept settings at once (before its first wait), so the first paint has the right words and theme.
  void commands.start({ language: languageFor(navigator.languages) });
  // The place that the address names is there from the first paint.
  const named = parseAddress(window.location.hash);
  if (named !== null) commands.setRoute(named);
  await loadLanguage(store.getState().settings.language);
  createRoot(root).render(
    <BindProvider store={store} commands={commands} ports={ports}>
      <Shell />
    </BindProvider>,
  );

  // After the page has loaded: what is being kept must not slow what is being shown.
  if (import.meta.env.PROD)
    if (document.readyState === 'complete') startOffline();
    else window.addEventListener('load', startOffline);
  // Few people send to a school; the same note is read again there.
  if (ports.keep.read('drumbench.record-store.1')) void import('./delivery').then((m) => m.startDelivery());
}

if (packaged) await (await import('./packaged/open')).openPackage(root);
else await openApp(root);
