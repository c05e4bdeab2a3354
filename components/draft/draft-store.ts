import type { Issue } from '@/lib/visit/issue';
import { type Draft, type DraftValue, withValue } from './draft-tree';

/** Why the office did not take a draft: what it found, or a sentence of its own. */
export type Refusal = { readonly issues: readonly Issue[]; readonly sentence?: string };

/** How a draft stands between this device and the office. */
export type SaveState =
  | { readonly kind: 'untouched' }
  | { readonly kind: 'onDevice'; readonly at: number; readonly why?: 'offline' | 'gone' }
  | { readonly kind: 'onDevice'; readonly at: number; readonly why: 'refused'; readonly refusal: Refusal }
  | { readonly kind: 'sent'; readonly at: number }
  | { readonly kind: 'nowhere'; readonly at: number };

/** Two people saved at once: both drafts, for the user to choose from. */
export type Conflict = {
  readonly theirs: Draft;
  readonly theirRevision: number;
  readonly savedAt?: string;
  /** Somebody took the visit off the list meanwhile. */
  readonly deleted?: boolean;
};

export type DraftState = {
  readonly draft: Draft;
  readonly baseRevision: number;
  /** Counts changes made here; two states with one version are the same. */
  readonly version: number;
  /** Version that the office has. */
  readonly sentVersion: number;
  readonly save: SaveState;
  readonly conflict?: Conflict;
  /** What undo would take back, newest last. */
  readonly past: readonly { readonly what: string; readonly draft: Draft; readonly path?: string }[];
};

const KEPT_STEPS = 60;

/** Holds one draft; screens subscribe to it and see only what they ask for. */
export type DraftStore = {
  readonly get: () => DraftState;
  readonly subscribe: (listener: () => void) => () => void;
  /** Sets one field; typing on in the same field is one step of undo. */
  readonly set: (path: string, value: DraftValue | undefined, what: string) => void;
  /** Any other change: adding, copying and deleting rows. */
  readonly change: (what: string, next: (draft: Draft) => Draft) => void;
  readonly undo: () => void;
  /** Takes over a draft from elsewhere as the common ground. */
  readonly adopt: (draft: Draft, revision: number) => void;
  /** Takes over an unsent draft of this device. */
  readonly restore: (draft: Draft, baseRevision: number) => void;
  /** The same draft, from now on made from another revision of the office. */
  readonly rebase: (baseRevision: number) => void;
  readonly noteSave: (save: SaveState) => void;
  readonly noteSent: (version: number, revision: number, at: number) => void;
  readonly noteConflict: (conflict: Conflict) => void;
  /** Ends a conflict with the draft the user chose. */
  readonly settle: (draft: Draft) => void;
};

export function createDraftStore(draft: Draft, revision: number): DraftStore {
  const listeners = new Set<() => void>();
  let state: DraftState = {
    draft,
    baseRevision: revision,
    version: 0,
    sentVersion: 0,
    save: { kind: 'untouched' },
    past: [],
  };
  const put = (next: DraftState) => {
    state = next;
    for (const listener of listeners) listener();
  };
  const edit = (what: string, next: Draft, path?: string) => {
    const last = state.past.at(-1);
    const sameField = path !== undefined && last?.path === path;
    const step = { what, draft: state.draft, ...(path === undefined ? {} : { path }) };
    const past = sameField ? state.past : [...state.past, step].slice(-KEPT_STEPS);
    put({ ...state, draft: next, past, version: state.version + 1 });
  };
  return {
    get: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    set: (path, value, what) => edit(what, withValue(state.draft, path, value), path),
    change: (what, next) => edit(what, next(state.draft)),
    undo: () => {
      const last = state.past.at(-1);
      if (last === undefined) return;
      put({ ...state, draft: last.draft, past: state.past.slice(0, -1), version: state.version + 1 });
    },
    adopt: (next, baseRevision) => {
      const version = state.version + 1;
      put({ ...withoutConflict(state), draft: next, baseRevision, version, sentVersion: version });
    },
    restore: (next, baseRevision) => {
      put({ ...state, draft: next, baseRevision, version: state.version + 1 });
    },
    rebase: (baseRevision) => put({ ...state, baseRevision }),
    noteSave: (save) => put({ ...state, save }),
    noteSent: (version, baseRevision, at) => {
      put({ ...state, baseRevision, sentVersion: version, save: { kind: 'sent', at } });
    },
    noteConflict: (conflict) => put({ ...state, conflict }),
    settle: (next) => {
      const baseRevision = state.conflict?.theirRevision ?? state.baseRevision;
      put({ ...withoutConflict(state), draft: next, baseRevision, version: state.version + 1 });
    },
  };
}

function withoutConflict(state: DraftState): DraftState {
  const { conflict: _settled, ...rest } = state;
  return rest;
}
