/** The files that this page's app is served from: over the network, or from what the browser keeps of it. */
import type { AppFile } from '../../core/records';

const LIST = './files.json';

/** Null where no list was built (a development server). */
export async function appFiles(): Promise<readonly AppFile[] | null> {
  try {
    const response = await fetch(LIST);
    if (!response.ok || !(response.headers.get('content-type') ?? '').includes('json')) return null;
    const { files } = (await response.json()) as { files: readonly AppFile[] };
    return files;
  } catch {
    return null;
  }
}

export async function readAppFile(url: string): Promise<Uint8Array> {
  const response = await fetch(`./${url}`);
  if (!response.ok) throw new Error(`edge/readAppFile: ${url}, got status ${response.status}`);
  return new Uint8Array(await response.arrayBuffer());
}
