/** Brings the service worker in and tells how far it is. */

/** `saving`: being kept; `ready`: opens without a network; `update`: a newer one waits; `none`: cannot be kept here. */
export type OfflinePhase = 'saving' | 'ready' | 'update' | 'none' | 'needs-host';

export interface Offline {
  /** Takes the newer version; the page loads anew. */
  useUpdate(): void;
}

/**
 * Registers `service-worker.js` beside the page. A page that came over plain http from another machine may not keep
 * itself (browsers ask for https or localhost): `needs-host`.
 */
export function keepOffline(tell: (phase: OfflinePhase) => void): Offline {
  let waiting: ServiceWorker | null = null;
  const offer = (worker: ServiceWorker): void => {
    waiting = worker;
    tell('update');
  };
  const start = async (): Promise<void> => {
    if (!window.isSecureContext) {
      tell('needs-host');
      return;
    }
    if (!('serviceWorker' in navigator)) {
      tell('none');
      return;
    }
    const { serviceWorker } = navigator;
    try {
      const known = serviceWorker.controller !== null;
      const registration = await serviceWorker.register('./service-worker.js');
      tell(registration.active !== null ? 'ready' : 'saving');
      if (registration.waiting !== null) offer(registration.waiting);
      const follow = (worker: ServiceWorker | null): void =>
        worker?.addEventListener('statechange', () => {
          if (worker.state === 'installed' && registration.active !== null) offer(worker);
          else if (worker.state === 'activated' && worker !== waiting) tell('ready');
          else if (worker.state === 'redundant' && !known && registration.active === null) tell('none');
        });
      follow(registration.installing);
      registration.addEventListener('updatefound', () => follow(registration.installing));
    } catch {
      // Refused (private mode, storage full, blocked): the app goes on with the network.
      tell('none');
    }
  };
  void start();
  return {
    useUpdate() {
      if (waiting === null) return;
      navigator.serviceWorker.addEventListener('controllerchange', () => window.location.reload(), {
        once: true,
      });
      waiting.postMessage('use-now');
    },
  };
}
