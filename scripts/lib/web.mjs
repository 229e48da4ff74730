/** What both servers (plain and class host) and the page itself say of the web: types of files, and what the page may load. */

export const FILE_TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.wasm': 'application/wasm',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.bin': 'application/octet-stream',
  '.yaml': 'text/yaml; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
};

/** Its own files, and a school's record store. */
export const PAGE_POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  // A school's record store, where a person has set one; the class host's own policy leaves this out.
  "connect-src 'self' data: blob: https: http://localhost:* http://127.0.0.1:*",
  "worker-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'self'",
];
