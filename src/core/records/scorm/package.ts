/** Which files of the built app a package holds, its launch page and its manifest. */
import { escaped } from '../qti/xml';
import type { PackageSettings } from './link';
import { courseCmi5, manifest12, manifest2004, type ManifestFacts } from './manifest';

export const LAUNCH_PAGE = 'launch.html';
export const PACKAGE_META = 'drumbench-package';
/** The app's own page, from which the launch page is made. */
export const INDEX_PAGE = 'index.html';

/** A file that the app is served from. */
export interface AppFile {
  readonly url: string;
  readonly bytes: number;
}

/** Of the app's files those that one lesson needs: other lessons, jobs and what keeps the app offline stay out. */
export function packageUrls(files: readonly AppFile[], lesson: string, language: string): readonly AppFile[] {
  const topic = /^baked\/lessons\/([^/]+)\/(?:topic-(.+)\.json)?/;
  const needed = ({ url }: AppFile): boolean => {
    const match = topic.exec(url);
    if (match !== null) {
      const [, of, name] = match;
      return (of === language || of === 'en') && (name === undefined || name === lesson);
    }
    return !/^(?:index\.html|files\.json|service-worker\.js|manifest\.webmanifest|icon-.*|baked\/[^/]+\/jobs.*|baked\/[^/]+\.graph\.bin|.*\.woff)$/.test(
      url,
    );
  };
  return files.filter(needed);
}

/** What a package is told of itself; null where the page is no launch page of a package. */
export function readPackageSettings(text: string | null): PackageSettings | null {
  if (text === null) return null;
  try {
    const { standard, lesson, language, mastery } = JSON.parse(text) as Record<string, unknown>;
    const known = standard === 'scorm12' || standard === 'scorm2004' || standard === 'cmi5';
    if (!known || typeof lesson !== 'string' || typeof language !== 'string') return null;
    return typeof mastery === 'number' && mastery >= 0 && mastery <= 1
      ? { standard, lesson, language, mastery }
      : null;
  } catch {
    return null;
  }
}

export interface PackageWords {
  readonly title: string;
  readonly summary: string;
  /** Stands on the launch page until the app is there: it needs a server and scripts. */
  readonly waiting: string;
}

/**
 * Launch page from the app's own page: told which lesson, no link to what is left out. In cmi5 it may also speak to the
 * learning record store that its address names, so its policy lets it.
 */
export function launchPage(index: string, settings: PackageSettings, words: PackageWords): string {
  const meta = `<meta name="${PACKAGE_META}" content="${escaped(JSON.stringify(settings))}" />`;
  const page = index
    .replace(/<html[^>]*>/, `<html lang="${escaped(settings.language)}">`)
    .replace(/<link rel="(?:manifest|apple-touch-icon)"[^>]*>\s*/g, '')
    .replace(/<title>[^<]*<\/title>/, () => `<title>${escaped(words.title)}</title>`)
    .replace('</title>', () => `</title>\n    ${meta}`)
    .replace('<div id="root"></div>', () => `<div id="root"><p>${escaped(words.waiting)}</p></div>`);
  const reach = settings.standard === 'cmi5' ? ' https: http:' : '';
  return withReach(page, `connect-src 'self' data: blob:${reach}`);
}

/** The page's policy with another say on whom it may speak to. */
function withReach(page: string, reach: string): string {
  return page.replace(
    /(<meta http-equiv="Content-Security-Policy" content=")([^"]*)"/,
    (_, head: string, content: string) => {
      const rules = content
        .replaceAll('&#39;', "'")
        .split(';')
        .map((rule) => (rule.trim().startsWith('connect-src') ? reach : rule.trim()));
      return `${head}${rules.join('; ')}"`;
    },
  );
}

/** Files of a package besides those copied from the app, path -> text. */
export function packageTexts(
  index: string,
  settings: PackageSettings,
  words: PackageWords,
  copied: readonly string[],
): Readonly<Record<string, string>> {
  const { standard, lesson, language, mastery } = settings;
  const facts: ManifestFacts = {
    lesson,
    title: words.title,
    language,
    mastery,
    launch: LAUNCH_PAGE,
    files: [LAUNCH_PAGE, ...copied],
  };
  const page = { [LAUNCH_PAGE]: launchPage(index, settings, words) };
  if (standard === 'cmi5') return { 'cmi5.xml': courseCmi5({ ...facts, summary: words.summary }), ...page };
  return { 'imsmanifest.xml': standard === 'scorm12' ? manifest12(facts) : manifest2004(facts), ...page };
}
