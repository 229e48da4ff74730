/** Builds the service worker with the list of all files of dist/ that a browser needs. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { build } from 'vite';
import { root } from './run.mjs';

/** Left out: older font files (every browser that runs the stage reads woff2), what a class host answers, the worker. */
const LEFT_OUT = /\.woff$|\.map$|^class\/|^service-worker\.js$/;
/** Of the app itself; a file of it like the others. */
const FILE_LIST = 'files.json';
/** Names that carry a hash of their content need no revision. */
const HASHED = /^assets\/.*-[\w-]{8}\.\w+$/;

/** @returns {{ url: string, revision: string | null }[]} */
export function filesOf(dist) {
  return readdirSync(dist, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(dist, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .filter((url) => !LEFT_OUT.test(url))
    .sort()
    .map((url) => ({
      url,
      revision: HASHED.test(url)
        ? null
        : createHash('sha256')
            .update(readFileSync(join(dist, url)))
            .digest('hex')
            .slice(0, 16),
    }));
}

/** Writes the list of the app's files into it, for packages that are made in a page: `{ files: [{ url, bytes }] }`. */
export function writeFileList(dist) {
  const files = filesOf(dist)
    .filter(({ url }) => url !== FILE_LIST)
    .map(({ url }) => ({ url, bytes: statSync(join(dist, url)).size }));
  writeFileSync(join(dist, FILE_LIST), JSON.stringify({ files }));
}

export async function buildServiceWorker() {
  const dist = join(root, 'dist');
  await build({
    configFile: false,
    logLevel: 'warn',
    define: {
      __FILES__: JSON.stringify(filesOf(dist)),
      'process.env.NODE_ENV': '"production"',
    },
    publicDir: false,
    build: {
      outDir: dist,
      emptyOutDir: false,
      target: 'es2022',
      lib: {
        entry: join(root, 'src', 'edge', 'offline', 'service-worker.ts'),
        formats: ['iife'],
        name: 'serviceWorker',
        fileName: () => 'service-worker.js',
      },
    },
  });
}
