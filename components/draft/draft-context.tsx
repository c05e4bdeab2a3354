'use client';

import { createContext, type ReactNode, useContext, useRef, useSyncExternalStore } from 'react';
import { createDraftStore, type DraftState, type DraftStore } from './draft-store';
import type { Draft, DraftValue } from './draft-tree';
import { patternOf, valueAt } from './draft-tree';
import type { FieldBook, FieldEntry } from './field-book';
import { useKeepDraft } from './use-keep-draft';

type Held = { readonly id: string; readonly store: DraftStore; readonly book: FieldBook };
const Holder = createContext<Held | undefined>(undefined);

/** Holds the draft of one visit for every screen below it and keeps it on this device and at the office. */
export function DraftHolder(props: {
  readonly id: string;
  readonly draft: Draft;
  readonly revision: number;
  readonly book: FieldBook;
  readonly children: ReactNode;
}) {
  const held = useRef<Held | undefined>(undefined);
  held.current ??= {
    id: props.id,
    store: createDraftStore(props.draft, props.revision),
    book: props.book,
  };
  useKeepDraft(held.current.id, held.current.store);
  return <Holder.Provider value={held.current}>{props.children}</Holder.Provider>;
}

function useHeld(): Held {
  const held = useContext(Holder);
  if (held === undefined) throw new Error('a visit screen stands outside its DraftHolder');
  return held;
}

export function useDraftStore(): DraftStore {
  return useHeld().store;
}

export function useVisitId(): string {
  return useHeld().id;
}

/** What the form knows about a field; an unknown path is our own slip and shows its key. */
export function useFieldEntry(path: string): FieldEntry {
  const entry = useHeld().book[patternOf(path)];
  return entry ?? { label: path.split('.').at(-1) ?? path, unit: '', sign: '', perFormUnit: 1, whole: false };
}

export function useFieldBook(): FieldBook {
  return useHeld().book;
}

/** A part of the draft's state; the screen is drawn again only when that part changes. */
export function useDraftState<T>(select: (state: DraftState) => T): T {
  const { store } = useHeld();
  return useSyncExternalStore(
    store.subscribe,
    () => select(store.get()),
    () => select(store.get()),
  );
}

/** Value at a path of the draft. */
export function useDraftValue(path: string): DraftValue | undefined {
  return useDraftState((state) => valueAt(state.draft, path));
}
