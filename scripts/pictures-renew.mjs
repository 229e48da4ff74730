/**
 * npm run pictures:renew: builds the app and takes the reference pictures of the browser tests anew, into
 * tests/e2e/pictures. Look at each before it is committed.
 */
import { ensureBrowser } from './lib/browser.mjs';
import { runBin, runScript } from './lib/run.mjs';

const browser = ensureBrowser();
if (browser === null || runScript('build.mjs').status !== 0) process.exit(1);
process.env.CHROME_PATH = browser;
process.env.DRUMBENCH_PICTURES = 'renew';
const { status } = runBin('vitest', [
  'run',
  '--config',
  'vitest.browser.config.ts',
  'tests/e2e/pictures.e2e.ts',
]);
process.exit(status ?? 1);
