/** What the browser must fetch before the first screen and before the stage: files that the built page imports, compressed. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { DIST } from './browser';

const assets = join(DIST, 'assets');
const textOf = (file: string): string => readFileSync(join(assets, file), 'utf8');

/** A file and all that it imports at once (not what it asks for later). */
function closureOf(file: string, into = new Set<string>()): Set<string> {
  if (into.has(file)) return into;
  into.add(file);
  for (const [, next] of textOf(file).matchAll(
    /(?:^|[;}\n])(?:import|export)(?:[^;"'()]*?from)?["']\.\/([\w-]+\.js)["']/g,
  ))
    closureOf(next!, into);
  return into;
}

export interface Chunk {
  readonly gzip_kB: number;
  /** The largest of its files with their compressed size, for the row's note. */
  readonly largest: string;
  readonly hasThree: boolean;
}

function chunkOf(files: readonly string[]): Chunk {
  const sizes = files
    .map((file) => ({ file, size: gzipSync(textOf(file), { level: 9 }).length / 1000 }))
    .sort((a, b) => b.size - a.size);
  return {
    gzip_kB: sizes.reduce((sum, { size }) => sum + size, 0),
    largest: sizes
      .slice(0, 4)
      .map(({ file, size }) => `${file.replace(/-[\w-]{8}\.js$/, '')} ${size.toFixed(1)}`)
      .join(', '),
    hasThree: files.some((file) => /WebGLRenderer|THREE\./.test(textOf(file))),
  };
}

const named = (start: RegExp): string => {
  const found = readdirSync(assets).find((file) => start.test(file));
  if (found === undefined) throw new Error(`bench/load: no file ${String(start)} in the build`);
  return found;
};

export function chunkSizes(): { first: Chunk; stage: Chunk; words: Chunk } {
  const page = readFileSync(join(DIST, 'index.html'), 'utf8');
  const entry = /<script type="module"[^>]*src="\.\/assets\/([^"]+)"/.exec(page)?.[1];
  if (entry === undefined) throw new Error('bench/load: the page has no entry');
  const first = closureOf(entry);
  const stage = [...closureOf(named(/^Stage-.*\.js$/))].filter((file) => !first.has(file));
  return {
    first: chunkOf([...first]),
    stage: chunkOf(stage),
    words: chunkOf([named(/^en-.*\.js$/)]),
  };
}
