/** Sends statements to a learning record store over HTTP. Source: ADL, Experience API 1.0.3, part 3 (communication). */

export interface StoreAccess {
  /** Address of the store, without `/statements`. */
  readonly endpoint: string;
  readonly user: string;
  readonly secret: string;
}

export const XAPI_VERSION = '1.0.3';
/** A store that says nothing in this time is taken for unreachable. */
const PATIENCE_ms = 20_000;

/** Name and secret of HTTP's basic scheme, in UTF-8 (RFC 7617). */
export function basicAuth(user: string, secret: string): string {
  const bytes = new TextEncoder().encode(`${user}:${secret}`);
  return `Basic ${btoa(String.fromCharCode(...bytes))}`;
}

export const resourceUrl = (endpoint: string, path: string): string =>
  `${endpoint.replace(/\/+$/, '')}/${path}`;

/** @returns status of HTTP and what the store said; null where no answer came */
export async function sendStatements(
  { endpoint, user, secret }: StoreAccess,
  statements: readonly object[],
): Promise<{ readonly status: number | null; readonly text: string }> {
  try {
    const response = await fetch(resourceUrl(endpoint, 'statements'), {
      method: 'POST',
      headers: {
        'content-type': 'application/json',
        'x-experience-api-version': XAPI_VERSION,
        authorization: basicAuth(user, secret),
      },
      body: JSON.stringify(statements),
      credentials: 'omit',
      signal: AbortSignal.timeout(PATIENCE_ms),
    });
    const text = (await response.text().catch(() => '')).slice(0, 300);
    return { status: response.status, text };
  } catch {
    return { status: null, text: '' };
  }
}
