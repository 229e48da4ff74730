/** Opens the app as a packaged lesson: its own store, records for this visit alone, and the way to the school's system. */
import { createRoot } from 'react-dom/client';
import {
  DEFAULT_MASTERY,
  type HearTrouble,
  PACKAGE_META,
  type PackageSettings,
  readCmi5Launch,
  readPackageSettings,
} from '../../core/records';
import { cmi5Link, findApi, scormLink } from '../../edge/school';
import {
  appStore,
  createCommands,
  type Ports,
  SchoolSession,
  selectValues,
  visitKeep,
  visitRecords,
} from '../../store';
import { BindProvider, languageFor, loadLanguage, makeSpeech } from '../../view/bind';
import { putGivenBack } from '../../view/panels/lessons/use-given';
import { makeTeller } from '../../view/panels/learn/teller';
import { ports as appPorts } from '../wire';
import { PackageShell } from './PackageShell';

/** What the launch page says; else a launch of cmi5 that names its lesson in the address (`?lesson=…`). */
function packageSettings(): PackageSettings | null {
  const text = document.querySelector<HTMLMetaElement>(`meta[name="${PACKAGE_META}"]`)?.content ?? null;
  const said = readPackageSettings(text);
  const params = new URLSearchParams(window.location.search);
  const lesson = params.get('lesson');
  if (said !== null || lesson === null) return said;
  const language = languageFor([params.get('language') ?? '', ...navigator.languages]);
  return { standard: 'cmi5', lesson, language, mastery: DEFAULT_MASTERY };
}

export async function openPackage(root: HTMLElement): Promise<void> {
  const settings = packageSettings();
  if (settings === null) throw new Error('app/packaged: settings of the package, got none that can be read');
  const store = appStore;
  // The session hears of records; it is there before the first is written.
  const records = visitRecords((collection, _key, written) => session.wrote(collection, written));
  const ports: Ports = { ...appPorts, records, keep: visitKeep() };
  const commands = createCommands(store, ports);
  await loadLanguage(settings.language);
  void commands.start({ language: settings.language, firstSteps: false });
  const hear: HearTrouble = (trouble) => session.hear(trouble);
  const { standard, language } = settings;
  const link =
    standard === 'cmi5'
      ? cmi5Link(readCmi5Launch(window.location.search), {
          hear,
          now: () => Date.now(),
          newId: () => crypto.randomUUID(),
        })
      : scormLink(standard, findApi(standard, window), {
          language,
          hear,
          zone_min: new Date().getTimezoneOffset(),
        });
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
