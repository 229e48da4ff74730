/**
 * The built app as a table of paths: what is not in it is not served, so no address leads anywhere else on the disk.
 * Texts and machine data are packed once and kept, since thirty phones load them over one radio.
 */
import { createHash } from 'node:crypto';
import { createReadStream, readdirSync, readFileSync, statSync } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { extname, join, relative, sep } from 'node:path';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { FILE_TYPES, PAGE_POLICY } from '../../../scripts/lib/web.mjs';

const PACKED = ['.html', '.js', '.mjs', '.css', '.json', '.wasm', '.svg', '.bin', '.yaml', '.webmanifest'];

/** As the page itself says; `frame-ancestors` counts only in a header. */
const POLICY = [
  ...PAGE_POLICY.map((rule) => (rule.startsWith('connect-src') ? "connect-src 'self' data: blob:" : rule)),
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

export const SAFE_HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': POLICY,
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(), microphone=(), geolocation=(), usb=(), serial=()',
};

interface Served {
  readonly path: string;
  readonly type: string;
  readonly size: number;
  readonly etag: string;
  readonly cache: string;
  packed?: Promise<Buffer>;
}

const pack = promisify(gzip);

export function tableOf(folder: string): ReadonlyMap<string, Served> {
  const table = new Map<string, Served>();
  for (const entry of readdirSync(folder, { withFileTypes: true, recursive: true })) {
    if (!entry.isFile()) continue;
    const path = join(entry.parentPath, entry.name);
    const { size, mtimeMs } = statSync(path);
    const address = `/${relative(folder, path).split(sep).join('/')}`;
    const served: Served = {
      path,
      type: FILE_TYPES[extname(path)] ?? 'application/octet-stream',
      size,
      etag: `"${createHash('sha256').update(`${address} ${size} ${mtimeMs}`).digest('hex').slice(0, 20)}"`,
      // Names of bundles hold a hash of what is in them.
      cache: address.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
    };
    table.set(address, served);
    if (address === '/index.html') table.set('/', served);
  }
  return table;
}

/** Answers a GET or HEAD of one file. */
export async function serveFile(
  file: Served,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const head = { ...SAFE_HEADERS, 'content-type': file.type, etag: file.etag, 'cache-control': file.cache };
  if (request.headers['if-none-match'] === file.etag) {
    response.writeHead(304, head).end();
    return;
  }
  const packs =
    PACKED.includes(extname(file.path)) && /\bgzip\b/.test(String(request.headers['accept-encoding'] ?? ''));
  if (packs) {
    file.packed ??= pack(readFileSync(file.path));
    const body = await file.packed;
    response.writeHead(200, {
      ...head,
      'content-encoding': 'gzip',
      'content-length': body.length,
      vary: 'accept-encoding',
    });
    response.end(request.method === 'HEAD' ? undefined : body);
    return;
  }
  response.writeHead(200, { ...head, 'content-length': file.size });
  if (request.method === 'HEAD') response.end();
  else
    createReadStream(file.path)
      .on('error', () => response.destroy())
      .pipe(response);
}
