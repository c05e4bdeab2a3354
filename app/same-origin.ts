/** True when a request that changes something was made by this program's own pages. */
export function cameFromHere(request: Request): boolean {
  const origin = request.headers.get('origin');
  if (origin === null) return request.headers.get('sec-fetch-site') === null;
  try {
    return new URL(origin).host === request.headers.get('host');
  } catch {
    return false;
  }
}
