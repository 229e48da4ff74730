/**
 * npm test: types, lint, import rules, unit, property and published checks, build, and browser tests against the
 * built app. `--no-browser` (npm run check) leaves out build and browser. Closes with `N passed, N failed`.
 */
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBrowser } from './lib/browser.mjs';
import { finishBin, root, runBin, runScript } from './lib/run.mjs';

const withBrowser = !process.argv.includes('--no-browser');
const reports = join(root, '.cache', 'reports');
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

let passed = 0;
let failed = 0;
const rows = [];

/** One check that either holds or not. */
async function check(name, run) {
  const start = Date.now();
  console.log(`\n== ${name}`);
  const good = await run();
  if (good) passed++;
  else failed++;
  rows.push([name, good ? 'passed' : 'FAILED', Date.now() - start]);
  return good;
}

/** A vitest run; its tests count one by one, and a run that executed none has failed. */
function vitest(name, args) {
  const start = Date.now();
  console.log(`\n== ${name}`);
  const report = join(reports, `${name.replaceAll(' ', '-')}.json`);
  const { status } = runBin('vitest', [
    'run',
    ...args,
    '--reporter=dot',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ]);
  let good = 0;
  let bad = 0;
  if (existsSync(report)) {
    const result = JSON.parse(readFileSync(report, 'utf8'));
    good = result.numPassedTests;
    bad = result.numFailedTests;
    // A file that could not even be loaded has no failed test of its own.
    bad += result.testResults.filter(
      (file) => file.status === 'failed' && !file.assertionResults.some((a) => a.status === 'failed'),
    ).length;
  }
  if (status !== 0 && bad === 0) bad = 1;
  if (good === 0 && bad === 0) bad = 1;
  passed += good;
  failed += bad;
  rows.push([name, bad === 0 ? `${good} passed` : `${bad} FAILED, ${good} passed`, Date.now() - start]);
}

// The quick check between edits keeps what it knew and shares loaded modules between test files; npm test starts afresh.
const quick = withBrowser
  ? { types: [], lint: [], tests: [] }
  : {
      types: ['--incremental', '--tsBuildInfoFile', '.cache/types.tsbuildinfo'],
      lint: ['--cache', '--cache-location', '.cache/eslint'],
      tests: ['--no-isolate'],
    };
// Each of these two keeps one core busy.
await Promise.all([
  check('types', () => finishBin('tsc', ['-p', 'tsconfig.json', '--noEmit', ...quick.types])),
  check('lint', () => finishBin('eslint', ['.', '--max-warnings', '0', ...quick.lint])),
]);
vitest('unit property published', quick.tests);

if (withBrowser) {
  const browser = ensureBrowser();
  const found = await check('browser found', () => browser !== null);
  const built = await check('build', () => runScript('build.mjs').status === 0);
  if (found && built) {
    process.env.CHROME_PATH = browser;
    vitest('browser', ['--config', 'vitest.browser.config.ts']);
  }
}

console.log('');
for (const [name, result, ms] of rows)
  console.log(`${name.padEnd(28)} ${result.padEnd(24)} ${(ms / 1000).toFixed(1)} s`);
console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
