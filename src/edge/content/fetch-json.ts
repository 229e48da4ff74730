/** Fetches JSON that may not be there. */

/** The data at `url`; null where nothing of that name is served. */
export async function fetchJson(url: string): Promise<unknown> {
  const response = await fetch(url);
  if (response.status === 404) return null;
  if (!response.ok) throw new Error(`edge/fetchJson: ${url}, got status ${response.status}`);
  // a server of single-page apps answers what it does not have with its page
  if (!(response.headers.get('content-type') ?? '').includes('json')) return null;
  return response.json();
}
