'use client';

import { useEffect } from 'react';
import type { DraftStore } from './draft-store';
import { onOtherTab, readLocalCopy, writeLocalCopy } from './local-copy';
import { sendDraft } from './send-draft';
import { holdOpen } from './visit-lock';

const QUIET_MS = 700;
const RETRY_MS = 15_000;

/**
 * Keeps a draft: on this device at every change, at the office after a short quiet; an unsent copy of this device
 * is taken up again on opening, and a newer revision at the office is shown beside it, never overwritten.
 */
export function useKeepDraft(id: string, store: DraftStore): void {
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    let busy: Promise<void> | undefined;
    let isOurs = false;
    takeUp(id, store);
    const open = holdOpen(id);
    void open.ready.then(() => {
      isOurs = true;
      const { baseRevision } = store.get();
      const kept = readLocalCopy(id)?.baseRevision ?? 0;
      // Sent for us just before we opened it.
      if (kept > baseRevision) store.rebase(kept);
    });

    const later = (ms: number) => {
      clearTimeout(timer);
      timer = setTimeout(() => void send(false), ms);
    };
    const send = async (lasting: boolean): Promise<void> => {
      if (!isOurs && !lasting) await open.ready;
      if (busy !== undefined && !lasting) return busy;
      const { version, sentVersion, draft, baseRevision, conflict } = store.get();
      if (version === sentVersion || conflict !== undefined) return;
      const job = (async () => {
        const answer = await sendDraft(id, baseRevision, draft, lasting);
        if (answer.kind === 'saved') store.noteSent(version, answer.revision, Date.now());
        else if (answer.kind === 'stale') store.noteConflict(answer);
        else {
          const at = Date.now();
          if (answer.kind === 'refused')
            store.noteSave({ kind: 'onDevice', at, why: 'refused', refusal: answer.refusal });
          else store.noteSave({ kind: 'onDevice', at, why: answer.kind });
          // What the office will not take as it is waits for a change.
          if (answer.kind === 'offline') later(RETRY_MS);
        }
        keepLocally(id, store);
      })();
      busy = job;
      await job;
      busy = undefined;
      const after = store.get();
      if (answerIsBehind(after.version, after.sentVersion, version)) later(QUIET_MS);
    };

    let seen = store.get().version;
    const unsubscribe = store.subscribe(() => {
      const { version, sentVersion } = store.get();
      if (version === seen) return;
      seen = version;
      const kept = keepLocally(id, store);
      if (version === sentVersion) return;
      const at = Date.now();
      store.noteSave(kept ? { kind: 'onDevice', at } : { kind: 'nowhere', at });
      later(QUIET_MS);
    });
    if (store.get().version !== store.get().sentVersion) later(0);

    const leave = () => {
      if (document.visibilityState === 'hidden') void send(true);
    };
    const online = () => later(0);
    const flush = (event: Event) => {
      (event as CustomEvent<Promise<void>[]>).detail.push(flushed(send));
    };
    document.addEventListener('visibilitychange', leave);
    window.addEventListener('online', online);
    window.addEventListener(FLUSH_EVENT, flush);
    const stopListening = onOtherTab(id, () => takeUpFromOtherTab(id, store));
    return () => {
      void send(true);
      clearTimeout(timer);
      open.release();
      unsubscribe();
      stopListening();
      document.removeEventListener('visibilitychange', leave);
      window.removeEventListener('online', online);
      window.removeEventListener(FLUSH_EVENT, flush);
    };
  }, [id, store]);
}

const FLUSH_EVENT = 'keepworth:flush';

/** Waits until everything typed has reached the office (or cannot). */
export async function flushDrafts(): Promise<void> {
  const jobs: Promise<void>[] = [];
  window.dispatchEvent(new CustomEvent(FLUSH_EVENT, { detail: jobs }));
  await Promise.all(jobs);
}

async function flushed(send: (lasting: boolean) => Promise<void>): Promise<void> {
  await send(false);
  await send(false);
}

function answerIsBehind(version: number, sentVersion: number, tried: number): boolean {
  return version !== sentVersion && version !== tried;
}

function keepLocally(id: string, store: DraftStore): boolean {
  const { draft, baseRevision, version, sentVersion } = store.get();
  return writeLocalCopy(id, { draft, baseRevision, unsent: version !== sentVersion, at: Date.now() });
}

/** On opening: the device's unsent copy goes on where it stopped; a sent one only if the page came from a cache. */
function takeUp(id: string, store: DraftStore): void {
  const copy = readLocalCopy(id);
  const { baseRevision } = store.get();
  if (copy === undefined || !copy.unsent) {
    if (copy !== undefined && copy.baseRevision > baseRevision) store.adopt(copy.draft, copy.baseRevision);
    // What was once open here opens again without a signal.
    else keepLocally(id, store);
    return;
  }
  const office = store.get().draft;
  store.restore(copy.draft, copy.baseRevision);
  if (copy.baseRevision < baseRevision) {
    store.noteConflict({ theirs: office, theirRevision: baseRevision });
  } else {
    store.noteSave({ kind: 'onDevice', at: copy.at });
  }
}

/** Another tab went on with the same visit: follow it, unless this one holds something unsent. */
function takeUpFromOtherTab(id: string, store: DraftStore): void {
  const { version, sentVersion, baseRevision } = store.get();
  const copy = readLocalCopy(id);
  if (copy === undefined || copy.unsent || version !== sentVersion) return;
  if (copy.baseRevision > baseRevision) store.adopt(copy.draft, copy.baseRevision);
}
