/** Opens the app as a packaged lesson: its own store, records for this visit alone, and the way to the school's system. */
import { createRoot } from 'react-dom/client';
import { PACKAGE_META, readPackageSettings, type SchoolLink } from '../../core/records';
import { findApi, scormLink } from '../../edge/school';
import {
  appStore,
  createCommands,
  type Ports,
  SchoolSession,
  selectValues,
  visitKeep,
  visitRecords,
} from '../../store';
import { BindProvider, loadLanguage, makeSpeech } from '../../view/bind';
import { putGivenBack } from '../../view/panels/lessons/use-given';
import { makeTeller } from '../../view/panels/learn/teller';
import { ports as appPorts } from '../wire';
import { PackageShell } from './PackageShell';

export async function openPackage(root: HTMLElement): Promise<void> {
  const text = document.querySelector<HTMLMetaElement>(`meta[name="${PACKAGE_META}"]`)?.content ?? null;
  const settings = readPackageSettings(text);
  if (settings === null) throw new Error('app/packaged: settings of the package, got none that can be read');
  const store = appStore;
  // The session hears of records; it is there before the first is written.
  const records = visitRecords((collection, _key, written) => session.wrote(collection, written));
  const ports: Ports = { ...appPorts, records, keep: visitKeep() };
  const commands = createCommands(store, ports);
  await loadLanguage(settings.language);
  void commands.start({ language: settings.language, firstSteps: false });
  const link: SchoolLink = scormLink(
    settings.standard === 'scorm12' ? 'scorm12' : 'scorm2004',
    findApi(settings.standard === 'scorm12' ? 'scorm12' : 'scorm2004', window),
    {
      language: settings.language,
      hear: (trouble) => session.hear(trouble),
      zone_min: new Date().getTimezoneOffset(),
    },
  );
  const session: SchoolSession = new SchoolSession({
    store,
    ports,
    commands,
    link,
    settings,
    wordsOf: (item) => {
      const state = store.getState();
      return makeTeller(
        makeSpeech(state.settings.language, state.settings.units),
        state.document?.machine ?? null,
        selectValues(state),
      ).text(item.prompt);
    },
    putBack: putGivenBack,
    now: () => Date.now(),
  });
  commands.go('lessons', settings.lesson);
  createRoot(root).render(
    <BindProvider store={store} commands={commands} ports={ports}>
      <PackageShell session={session} />
    </BindProvider>,
  );
  // The last chance to tell: browsers promise no later event.
  window.addEventListener('pagehide', () => session.end());
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') session.tell();
  });
  await session.begin();
}
