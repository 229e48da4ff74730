/** Packs the files of a package into one zip, a file at a time, in a page or in Node. */
import { Zip, ZipDeflate, ZipPassThrough } from 'fflate';
import {
  INDEX_PAGE,
  type AppFile,
  type PackageSettings,
  packageTexts,
  packageUrls,
  type PackageWords,
} from '../../core/records';

export interface PackageSource {
  /** The files that the app is served from. */
  readonly files: readonly AppFile[];
  read(url: string): Promise<Uint8Array>;
}

/** Formats that are packed in themselves. */
const PACKED = /\.(?:png|woff2?|zip)$/;
/** Zip keeps times from 1980 on; a fixed one makes the same package twice the same. */
const TIME = new Date(2020, 0, 1);

/** @param onProgress files packed of how many; throws `packages: <url>` where one cannot be read */
export async function zipPackage(
  source: PackageSource,
  settings: PackageSettings,
  words: PackageWords,
  onProgress: (done: number, count: number) => void = () => {},
): Promise<Blob> {
  const copied = packageUrls(source.files, settings.lesson, settings.language).map(({ url }) => url);
  const index = new TextDecoder().decode(await source.read(INDEX_PAGE));
  const texts = Object.entries(packageTexts(index, settings, words, copied));
  const count = copied.length + texts.length;
  const parts: Uint8Array<ArrayBuffer>[] = [];
  const zip = new Zip((error, part) => {
    if (error) throw error;
    parts.push(part as Uint8Array<ArrayBuffer>);
  });
  let done = 0;
  const add = (name: string, bytes: Uint8Array): void => {
    const file = PACKED.test(name) ? new ZipPassThrough(name) : new ZipDeflate(name, { level: 6 });
    file.mtime = TIME;
    zip.add(file);
    file.push(bytes, true);
    onProgress(++done, count);
  };
  for (const [name, text] of texts) add(name, new TextEncoder().encode(text));
  for (const url of copied) {
    // A page stays alive between files.
    add(url, await source.read(url));
  }
  zip.end();
  return new Blob(parts, { type: 'application/zip' });
}
