/** A plain static server for dist/ on the loopback (or a chosen) interface. */
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { FILE_TYPES } from './web.mjs';

/** Serves `folder`; resolves to { server, url } once it listens. Port 0 picks a free one; a taken port moves on. */
export function serveFolder(folder, { port = 0, host = '127.0.0.1' } = {}) {
  const server = createServer((request, response) => {
    let path;
    try {
      path = decodeURIComponent(new URL(request.url ?? '/', 'http://local').pathname);
    } catch {
      response.writeHead(400).end();
      return;
    }
    const file = normalize(join(folder, path.endsWith('/') ? `${path}index.html` : path));
    const inside = file === folder || file.startsWith(folder.endsWith(sep) ? folder : folder + sep);
    if (!inside || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404, { 'content-type': 'text/plain' }).end('not found');
      return;
    }
    response.writeHead(200, {
      'content-type': FILE_TYPES[extname(file)] ?? 'application/octet-stream',
      'content-length': statSync(file).size,
      'cache-control': 'no-cache',
      'x-content-type-options': 'nosniff',
    });
    if (request.method === 'HEAD') response.end();
    else createReadStream(file).pipe(response);
  });
  return new Promise((resolve, reject) => {
    let wish = port;
    server.on('error', (error) => {
      if (error.code === 'EADDRINUSE' && port !== 0 && wish < port + 20) server.listen(++wish, host);
      else reject(error);
    });
    server.on('listening', () => {
      const { port: taken } = server.address();
      resolve({ server, url: `http://${host === '0.0.0.0' ? 'localhost' : host}:${taken}/` });
    });
    server.listen(wish, host);
  });
}
