/** Who may talk to the host at all: pages that it served itself, under an address that is its own. */
import type { IncomingMessage } from 'node:http';
import { isIP } from 'node:net';
import { hostname } from 'node:os';

const nameIn = (host: string): string => {
  const bare = host.replace(/:\d+$/, '');
  return bare.startsWith('[') ? bare.slice(1, -1) : bare;
};

/**
 * Whether the Host header names this machine: an address in figures, localhost, or its own name. A name of another
 * site that was made to lead here (DNS rebinding) is none of these.
 */
export function isOwnHost(host: string | undefined, names: readonly string[] = []): boolean {
  if (host === undefined || !/^[[\]A-Za-z0-9.:-]{1,255}$/.test(host)) return false;
  const name = nameIn(host).toLowerCase();
  const machine = hostname().toLowerCase();
  return isIP(name) !== 0 || ['localhost', machine, `${machine}.local`, ...names].includes(name);
}

/** Whether a socket is asked for by a page that this host served. Browsers always say where a page came from. */
export function isOwnPage(request: IncomingMessage): boolean {
  const { origin, host } = request.headers;
  if (origin === undefined || host === undefined) return false;
  try {
    return new URL(origin).host === host.toLowerCase();
  } catch {
    return false;
  }
}

export const addressOf = (request: IncomingMessage): string => request.socket.remoteAddress ?? 'unknown';
