import {
  assetsOf,
  COMPARE_PAGE,
  LIST_PAGE,
  outdated,
  pagesOf,
  planRequest,
  VISIT_PAGE,
} from './plan-request';

declare const self: ServiceWorkerGlobalScope;
/** Filled in by `scripts/make-service-worker.mjs`. */
declare const KEEPWORTH_BUILD: string;
declare const KEEPWORTH_ASSETS: readonly string[];

/** A signal that takes longer than this to bring a page is no signal. */
const PATIENCE_MS = 5_000;

const ASSETS = assetsOf(KEEPWORTH_BUILD);
const PAGES = pagesOf(KEEPWORTH_BUILD);

/** When the page shown in a tab was kept, for tabs whose page came from here. */
const keptSince = new Map<string, number>();

self.addEventListener('install', (event) => event.waitUntil(fill()));

self.addEventListener('activate', (event) => event.waitUntil(takeOver()));

self.addEventListener('message', (event) => {
  if (event.data === 'takeOver') void self.skipWaiting();
  if (event.data === 'keptSince') {
    const id = event.source instanceof Client ? event.source.id : '';
    event.ports[0]?.postMessage(keptSince.get(id));
  }
  if (event.data === 'keepList') event.waitUntil(keepList());
});

self.addEventListener('fetch', (event) => {
  const plan = planRequest(event.request, self.location.origin);
  if (plan.kind === 'asset') event.respondWith(asset(event.request));
  if (plan.kind === 'page') event.respondWith(page(event, plan.keptAs, plan.keep));
});

/** Everything a visit needs from opening to sheet, before this version may take over. */
async function fill(): Promise<void> {
  const assets = await caches.open(ASSETS);
  await assets.addAll([...KEEPWORTH_ASSETS]);
  const pages = await caches.open(PAGES);
  await pages.addAll(
    [VISIT_PAGE, COMPARE_PAGE, LIST_PAGE].map((url) => new Request(url, { cache: 'reload' })),
  );
}

async function takeOver(): Promise<void> {
  const drop = outdated(await caches.keys(), KEEPWORTH_BUILD);
  await Promise.all(drop.map((name) => caches.delete(name)));
  await self.clients.claim();
}

async function keepList(): Promise<void> {
  const fresh = await fetch(new Request(LIST_PAGE, { cache: 'reload' })).catch(() => undefined);
  if (fresh?.ok === true) await (await caches.open(PAGES)).put(LIST_PAGE, fresh);
}

async function asset(request: Request): Promise<Response> {
  const kept = await caches.match(request);
  if (kept !== undefined) return atItsOwnAddress(request, kept);
  const fresh = await fetch(request);
  if (fresh.ok) await (await caches.open(ASSETS)).put(request, fresh.clone());
  return atItsOwnAddress(request, fresh);
}

/** A worker reads what it is to load after the "#" of its address, which an answer with an address would hide. */
function atItsOwnAddress(request: Request, answer: Response): Response {
  return request.destination === 'worker' ? new Response(answer.body, answer) : answer;
}

async function page(event: FetchEvent, keptAs: string, keep: boolean): Promise<Response> {
  const fresh = fetch(event.request);
  const soon = await Promise.race([fresh.catch(() => undefined), after(PATIENCE_MS)]);
  if (soon !== undefined && !isGateway(soon.status)) {
    if (keep && soon.ok) {
      const copy = soon.clone();
      event.waitUntil(caches.open(PAGES).then((pages) => pages.put(keptAs, copy)));
    }
    return soon;
  }
  const kept = await caches.open(PAGES).then((pages) => pages.match(keptAs));
  if (kept === undefined) return fresh;
  keptSince.set(event.resultingClientId, Date.parse(kept.headers.get('date') ?? '') || 0);
  return kept;
}

/** The office's machine answers, but Keepworth on it does not (yet). */
function isGateway(status: number): boolean {
  return status >= 502 && status <= 504;
}

function after(ms: number): Promise<undefined> {
  return new Promise((resolve) => setTimeout(() => resolve(undefined), ms));
}
