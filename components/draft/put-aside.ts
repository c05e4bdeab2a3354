import type { DraftValue } from './draft-tree';

/** What screens took out of a visit without anybody deleting it, for as long as the page is open; by visit and place. */
const aside = new Map<string, DraftValue>();

/**
 * Keeps what a switch takes out of the visit, so that switching back brings it back; `undefined` forgets it.
 *
 * @param visitId  the visit
 * @param place    what was switched, such as "climate own"
 * Check: tests/screens/put-aside.test.ts
 */
export function putAside(visitId: string, place: string, value: DraftValue | undefined): void {
  const key = `${visitId} ${place}`;
  if (value === undefined) aside.delete(key);
  else aside.set(key, value);
}

/** What was put aside last, `undefined` if nothing was. Check: tests/screens/put-aside.test.ts */
export function asideOf(visitId: string, place: string): DraftValue | undefined {
  return aside.get(`${visitId} ${place}`);
}
