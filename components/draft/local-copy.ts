import type { Draft } from './draft-tree';

/** The copy of a draft that this device keeps, written on every change. */
export type LocalCopy = {
  readonly draft: Draft;
  readonly baseRevision: number;
  /** True while the office has not got it. */
  readonly unsent: boolean;
  readonly at: number;
};

const keyOf = (id: string) => `keepworth.visit.${id}`;

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

/** Writes this device's copy; false when the browser refuses storage. */
export function writeLocalCopy(id: string, copy: LocalCopy): boolean {
  try {
    window.localStorage.setItem(keyOf(id), JSON.stringify(copy));
    return true;
  } catch {
    return false;
  }
}

/** Calls back when another tab of this device wrote the same visit. */
export function onOtherTab(id: string, heard: () => void): () => void {
  const listen = (event: StorageEvent) => {
    if (event.key === keyOf(id)) heard();
  };
  window.addEventListener('storage', listen);
  return () => window.removeEventListener('storage', listen);
}
