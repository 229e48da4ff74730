/** Runs a script of a package by its file, without a shell between, so that stopping us stops it. */
import { spawn, spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

const BINS = {
  tsc: 'typescript/bin/tsc',
  tsx: 'tsx/dist/cli.mjs',
  vite: 'vite/bin/vite.js',
  vitest: 'vitest/vitest.mjs',
  eslint: 'eslint/bin/eslint.js',
  depcruise: 'dependency-cruiser/bin/dependency-cruise.mjs',
};

export const binPath = (name) => join(root, 'node_modules', BINS[name]);

/** Runs to the end; returns { status, output } (output only when captured). */
export function runBin(name, args, { capture = false, env = {} } = {}) {
  const result = spawnSync(process.execPath, [binPath(name), ...args], {
    cwd: root,
    env: { ...process.env, ...env },
    stdio: capture ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  return { status: result.status ?? 1, output: capture ? `${result.stdout}${result.stderr}` : '' };
}

/** Starts and gives back the child; the caller ends it. */
export const startBin = (name, args, options = {}) =>
  spawn(process.execPath, [binPath(name), ...args], { cwd: root, stdio: 'inherit', ...options });

/** Starts it beside others; resolves to whether it ended well. */
export const finishBin = (name, args) =>
  new Promise((ended) => {
    startBin(name, args)
      .on('error', () => ended(false))
      .on('exit', (status) => ended(status === 0));
  });

/** Runs one of our own scripts to the end. */
export function runScript(file, args = []) {
  const result = spawnSync(process.execPath, [join(root, 'scripts', file), ...args], {
    cwd: root,
    stdio: 'inherit',
  });
  return { status: result.status ?? 1 };
}
