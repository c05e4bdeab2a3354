const SCRIPT = '/service-worker.js';

/** The page comes first: only once it stands still are the rest of the files fetched. */
const CALM_MS = 2_500;

/** A new version that waits to be taken over. */
export type Offer = { readonly take: () => void };

/**
 * Lets this browser keep the app's pages, in production only. An older version goes on until the user takes the new
 * one over or closes the app.
 *
 * @param offered called when a new version waits
 * @returns stops listening
 */
export function registerWorker(offered: (offer: Offer) => void): () => void {
  if (process.env.NODE_ENV !== 'production' || !('serviceWorker' in navigator)) return () => {};
  let stopped = false;
  const watch = async () => {
    const registration = await navigator.serviceWorker.register(SCRIPT, {
      scope: '/',
      updateViaCache: 'none',
    });
    const look = () => {
      const { waiting } = registration;
      if (stopped || waiting === null || navigator.serviceWorker.controller === null) return;
      offered({ take: () => takeOver(waiting) });
    };
    look();
    registration.addEventListener('updatefound', () => {
      registration.installing?.addEventListener('statechange', look);
    });
  };
  const timer = setTimeout(() => {
    watch().catch((thrown: unknown) =>
      console.info('Keepworth will not open without a signal here:', thrown),
    );
  }, CALM_MS);
  return () => {
    stopped = true;
    clearTimeout(timer);
  };
}

/** The page is drawn again by the new version once that has taken over. */
function takeOver(waiting: ServiceWorker): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => window.location.reload(), {
    once: true,
  });
  waiting.postMessage('takeOver');
}

/** Whether pages open here without a signal. */
export function keepsPages(): boolean {
  return 'serviceWorker' in navigator && navigator.serviceWorker.controller !== null;
}

/** Asks for the list to be kept as it is now at the office. */
export function keepList(): void {
  if (keepsPages()) navigator.serviceWorker.controller?.postMessage('keepList');
}

/** When the page shown was kept [ms]; `undefined` when it came from the office just now. */
export async function keptSince(): Promise<number | undefined> {
  const worker = 'serviceWorker' in navigator ? navigator.serviceWorker.controller : null;
  if (worker === null) return undefined;
  return new Promise((resolve) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = (event: MessageEvent<number | undefined>) => resolve(event.data);
    worker.postMessage('keptSince', [channel.port2]);
  });
}
