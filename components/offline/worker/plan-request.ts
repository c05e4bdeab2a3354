/** What the service worker does with a request. */
export type Plan =
  /** Built files carry their content in their name: one kept is as good as one fetched. */
  | { readonly kind: 'asset' }
  /** A page: from the office, else what is kept under `keptAs`; `keep` when the answer is to be kept there. */
  | { readonly kind: 'page'; readonly keptAs: string; readonly keep: boolean }
  /** Data, downloads and everything sent: never answered from here, so nothing stale looks fresh. */
  | { readonly kind: 'pass' };

/** Page of any visit, drawn from this device's own copy of it. */
export const VISIT_PAGE = '/kept/visit';
export const COMPARE_PAGE = '/kept/compare';
/** The list of visits as it was last seen. */
export const LIST_PAGE = '/';

/**
 * Decides what becomes of a request.
 *
 * @param request its method, address and whether it opens a page
 * @param origin  of this program
 * Check: tests/screens/plan-request.test.ts
 */
export function planRequest(
  request: { readonly method: string; readonly url: string; readonly mode: string },
  origin: string,
): Plan {
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== origin) return { kind: 'pass' };
  if (url.pathname.startsWith('/_next/static/') || url.pathname === '/icon.svg') return { kind: 'asset' };
  if (request.mode !== 'navigate') return { kind: 'pass' };
  if (url.pathname === LIST_PAGE) return { kind: 'page', keptAs: LIST_PAGE, keep: url.search === '' };
  const page = /^\/visits\/[a-z0-9-]+(\/compare)?\/?$/.exec(url.pathname);
  if (page !== null) {
    return { kind: 'page', keptAs: page[1] === undefined ? VISIT_PAGE : COMPARE_PAGE, keep: false };
  }
  const isKept = url.pathname === VISIT_PAGE || url.pathname === COMPARE_PAGE;
  return isKept ? { kind: 'page', keptAs: url.pathname, keep: false } : { kind: 'pass' };
}

const PREFIX = 'keepworth-';

/** Names of what is kept for a build. */
export const assetsOf = (build: string) => `${PREFIX}assets-${build}`;
export const pagesOf = (build: string) => `${PREFIX}pages-${build}`;

/**
 * Which kept things a new build drops. The built files of the build before stay: a page still open on another tab
 * may yet ask for one of them.
 *
 * @param names of everything kept, the oldest first
 * Check: tests/screens/plan-request.test.ts
 */
export function outdated(names: readonly string[], build: string): readonly string[] {
  const own = [assetsOf(build), pagesOf(build)];
  const others = names.filter((name) => name.startsWith(PREFIX) && !own.includes(name));
  const before = others.filter((name) => name.startsWith(assetsOf(''))).at(-1);
  return others.filter((name) => name !== before);
}
