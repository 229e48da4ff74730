/** A module of src built the way the app's own build does it, so that what is timed is what a browser runs. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

/** Builds and loads the entry (a path in src); one file, minified, no library left outside. */
export async function built<Module>(entry: string): Promise<Module> {
  const folder = mkdtempSync(join(tmpdir(), 'drumbench-'));
  try {
    await build({
      configFile: false,
      logLevel: 'error',
      ssr: { noExternal: true },
      build: {
        ssr: resolve(import.meta.dirname, '../../src', entry),
        outDir: folder,
        minify: true,
        target: 'es2022',
        rolldownOptions: { output: { entryFileNames: 'entry.mjs' } },
      },
    });
    return (await import(pathToFileURL(join(folder, 'entry.mjs')).href)) as Module;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
