/**
 * Finds a Chromium for the browser tests: CHROME_PATH, else one on this machine, else Debian's package when we are
 * root on Debian; otherwise says in one line what to install.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome', 'msedge'];
const PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

export function findBrowser() {
  if (process.env.CHROME_PATH) return existsSync(process.env.CHROME_PATH) ? process.env.CHROME_PATH : null;
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    for (const name of NAMES) {
      const path = join(folder, name);
      if (folder !== '' && existsSync(path)) return path;
    }
  }
  return PLACES.find((path) => existsSync(path)) ?? null;
}

const installedOnDebian = (name) => spawnSync('dpkg', ['-s', name], { stdio: 'ignore' }).status === 0;

/** A browser's path, installing Debian's when that is possible; null with a line on what to do otherwise. */
export function ensureBrowser() {
  const root = typeof process.getuid === 'function' && process.getuid() === 0;
  const debian = existsSync('/etc/debian_version');
  const wanted = ['chromium', 'libgl1-mesa-dri', 'libegl1'];
  const missing =
    debian && root && !process.env.CHROME_PATH ? wanted.filter((name) => !installedOnDebian(name)) : [];
  if (findBrowser() !== null && missing.length === 0) return findBrowser();
  if (missing.length > 0) {
    console.log(`Installing ${missing.join(', ')} from Debian's packages ...`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    spawnSync('apt-get', ['update', '-qq'], { stdio: 'inherit', env });
    spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...missing], {
      stdio: ['ignore', 'ignore', 'inherit'],
      env,
    });
  }
  const found = findBrowser();
  if (found === null)
    console.error(
      'No Chromium or Chrome was found: install one (Debian: apt-get install chromium) or set CHROME_PATH.',
    );
  return found;
}

/** Flags for a quiet browser with software WebGL 2 through Mesa (it falls back where Mesa is missing). */
export const BROWSER_FLAGS = [
  '--no-sandbox',
  '--use-gl=angle',
  '--use-angle=gl-egl',
  '--ignore-gpu-blocklist',
  '--enable-unsafe-swiftshader',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-default-apps',
  '--font-render-hinting=none',
];
