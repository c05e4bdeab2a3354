/**
 * A visit open in a tab sends its own draft; whoever sends for closed visits must leave it alone, or the two would
 * find each other in conflict.
 */
const openHere = new Set<string>();

const nameOf = (id: string) => `keepworth.visit.${id}`;

/** Browsers give locks to safe addresses only; without them this tab still knows its own visits. */
function locks(): LockManager | undefined {
  return typeof navigator === 'object' && 'locks' in navigator ? navigator.locks : undefined;
}

/**
 * Marks a visit as open until released.
 *
 * @returns ready: nobody else is sending it any more
 */
export function holdOpen(id: string): { readonly ready: Promise<void>; readonly release: () => void } {
  openHere.add(id);
  let release = () => {};
  const released = new Promise<void>((resolve) => {
    release = resolve;
  });
  const ready = new Promise<void>((resolve) => {
    const manager = locks();
    if (manager === undefined) return resolve();
    manager
      .request(nameOf(id), { mode: 'shared' }, () => {
        resolve();
        return released;
      })
      .catch(() => resolve());
  });
  return {
    ready,
    release: () => {
      openHere.delete(id);
      release();
    },
  };
}

/** Does the work unless the visit is open in this or another tab; `undefined` when it is. */
export async function ifClosed<T>(id: string, work: () => Promise<T>): Promise<T | undefined> {
  if (openHere.has(id)) return undefined;
  const manager = locks();
  if (manager === undefined) return work();
  return manager.request(nameOf(id), { ifAvailable: true }, (lock) => (lock === null ? undefined : work()));
}
