/** Fetches the machine that ships with the app, baked at build time. */
import { decodeDocument, type MachineDocument } from '../../core/document';

/** Loads a baked machine; `onProgress` gets the share of its bytes that have come, 0 to 1. */
export async function loadShipped(
  onProgress: (share: number) => void,
  url = './baked/alder-one.bin',
): Promise<MachineDocument> {
  const response = await fetch(url);
  if (!response.ok || response.body === null)
    throw new Error(`edge/loadShipped: ${url}, got status ${response.status}`);
  const total = Number(response.headers.get('content-length') ?? 0);
  const chunks: Uint8Array[] = [];
  let received = 0;
  const reader = response.body.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    chunks.push(value);
    received += value.length;
    if (total > 0) onProgress(Math.min(1, received / total));
  }
  const bytes = new Uint8Array(received);
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return decodeDocument(bytes.buffer);
}
