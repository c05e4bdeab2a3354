import type { Draft } from './draft-tree';

/** The copy of a draft that this device keeps, written on every change. */
export type LocalCopy = {
  readonly draft: Draft;
  /** Revision of the office it was made from; 0 when the office has never had it. */
  readonly baseRevision: number;
  /** True while the office has not got it. */
  readonly unsent: boolean;
  readonly at: number;
};

const PREFIX = 'keepworth.visit.';
const keyOf = (id: string) => `${PREFIX}${id}`;

/** Reads this device's copy; anything unreadable counts as none. */
export function readLocalCopy(id: string): LocalCopy | undefined {
  try {
    const kept = window.localStorage.getItem(keyOf(id));
    if (kept === null) return undefined;
    const copy = JSON.parse(kept) as Partial<LocalCopy>;
    if (typeof copy.draft !== 'object' || copy.draft === null) return undefined;
    if (typeof copy.baseRevision !== 'number') return undefined;
    return {
      draft: copy.draft,
      baseRevision: copy.baseRevision,
      unsent: copy.unsent === true,
      at: copy.at ?? 0,
    };
  } catch {
    return undefined;
  }
}

/**
 * Writes this device's copy. Where room is short, copies that the office has too make way, the oldest first; what is
 * unsent never does.
 *
 * @returns false when the browser refuses storage
 */
export function writeLocalCopy(id: string, copy: LocalCopy): boolean {
  const text = JSON.stringify(copy);
  if (tryWrite(id, text)) return true;
  for (const other of sentCopies(id)) {
    drop(other);
    if (tryWrite(id, text)) return true;
  }
  return false;
}

function tryWrite(id: string, text: string): boolean {
  try {
    window.localStorage.setItem(keyOf(id), text);
    return true;
  } catch {
    return false;
  }
}

function drop(id: string): void {
  try {
    window.localStorage.removeItem(keyOf(id));
  } catch {
    // Refused storage holds nothing to drop.
  }
}

function sentCopies(except: string): string[] {
  return localIds()
    .filter((id) => id !== except)
    .flatMap((id) => {
      const copy = readLocalCopy(id);
      return copy === undefined || copy.unsent ? [] : [{ id, at: copy.at }];
    })
    .sort((a, b) => a.at - b.at)
    .map(({ id }) => id);
}

/** Visits that this device has a copy of. */
export function localIds(): string[] {
  try {
    return Object.keys(window.localStorage)
      .filter((key) => key.startsWith(PREFIX))
      .map((key) => key.slice(PREFIX.length));
  } catch {
    return [];
  }
}

/** Copies that the office has not got, the newest first. */
export function unsentCopies(): (LocalCopy & { readonly id: string })[] {
  return localIds()
    .flatMap((id) => {
      const copy = readLocalCopy(id);
      return copy?.unsent === true ? [{ ...copy, id }] : [];
    })
    .sort((a, b) => b.at - a.at);
}

/** Calls back when another tab of this device wrote the same visit. */
export function onOtherTab(id: string, heard: () => void): () => void {
  const listen = (event: StorageEvent) => {
    if (event.key === keyOf(id)) heard();
  };
  window.addEventListener('storage', listen);
  return () => window.removeEventListener('storage', listen);
}
