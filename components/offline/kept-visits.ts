'use client';

import { useSyncExternalStore } from 'react';
import { unsentCopies } from '@/components/draft/local-copy';
import { type SentState, sendAllKept } from '@/components/draft/send-kept';
import { visitName } from '@/components/visit/parts';

/** A visit of this device that the office has not got. */
export type KeptVisit = {
  readonly id: string;
  readonly name: string;
  readonly at: number;
  readonly state: SentState;
};

const NONE: readonly KeptVisit[] = [];
const listeners = new Set<() => void>();
let states: ReadonlyMap<string, SentState> = new Map();
let kept = NONE;

function look(): void {
  const next = unsentCopies().map(({ id, draft, at }) => ({
    id,
    name: visitName(draft),
    at,
    state: states.get(id) ?? ('waiting' as const),
  }));
  if (JSON.stringify(next) === JSON.stringify(kept)) return;
  kept = next;
  for (const listener of listeners) listener();
}

let busy: Promise<void> | undefined;

/** Sends what waits on this device; several calls at once are one. */
export function sendWaiting(): Promise<void> {
  look();
  if (kept.length === 0) return Promise.resolve();
  busy ??= sendAllKept()
    .then((found) => {
      states = found;
      look();
    })
    .finally(() => {
      busy = undefined;
    });
  return busy;
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  look();
  return () => listeners.delete(listener);
}

/** What waits on this device, the newest first. */
export function useKeptVisits(): readonly KeptVisit[] {
  return useSyncExternalStore(
    subscribe,
    () => kept,
    () => NONE,
  );
}
