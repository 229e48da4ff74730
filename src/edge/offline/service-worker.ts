/**
 * Keeps the whole app in the browser after its first visit, so that it opens without a network. Built on its own into
 * dist/service-worker.js by scripts/build.mjs, which puts in the list of files.
 */
import { precacheAndRoute, type PrecacheEntry } from 'workbox-precaching';

/** What a service worker's global offers of what is used here (the page's own types do not know it). */
interface WorkerScope {
  addEventListener(
    type: 'message' | 'activate',
    act: (event: { readonly data?: unknown; waitUntil(done: Promise<unknown>): void }) => void,
  ): void;
  skipWaiting(): Promise<void>;
  readonly clients: { claim(): Promise<void> };
}

declare const __FILES__: PrecacheEntry[];
declare const self: WorkerScope;

// A query only sets how the page draws: it asks for the same files.
precacheAndRoute(__FILES__, { ignoreURLParametersMatching: [/.*/] });

// The page that brought the first worker is served by it at once.
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

// A newer worker waits until a person says so: nobody's work is cut off by an update.
self.addEventListener('message', (event) => {
  if (event.data === 'use-now') event.waitUntil(self.skipWaiting());
});
