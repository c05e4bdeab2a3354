'use client';

import { type SubmitEvent, useRef, useState } from 'react';
import { blankVisit, localDate, newVisitId } from '@/components/draft/blank-visit';
import { type LocalCopy, writeLocalCopy } from '@/components/draft/local-copy';
import { sendDraft } from '@/components/draft/send-draft';
import { keepsPages } from '@/components/offline/register-worker';
import { t } from '@/components/words/words';
import type { Assumption } from '@/lib/visit/assumption';

/** A technician at the door waits no longer for the office than this. */
const PATIENCE_MS = 4_000;

/**
 * Starts a visit on this device and opens it; the office gets it at once or when there is signal.
 *
 * @param props.assumptions what the shop assumes for new visits, as the list was last seen
 * @param props.onServer starts it at the office instead, for a browser that may not store
 */
export function StartVisit(props: {
  readonly onServer: () => Promise<void>;
  readonly assumptions: readonly Assumption[];
}) {
  const [words, setWords] = useState('');
  const busy = useRef(false);
  const start = (event: SubmitEvent<HTMLFormElement>) => {
    if (busy.current) return event.preventDefault();
    const now = new Date();
    const id = newVisitId(now);
    const copy: LocalCopy = {
      draft: blankVisit(id, localDate(now), props.assumptions),
      baseRevision: 0,
      unsent: true,
      at: now.getTime(),
    };
    if (!writeLocalCopy(id, copy)) return;
    event.preventDefault();
    busy.current = true;
    setWords(t('app.loading'));
    void askToKeep();
    void sendDraft(id, 0, copy.draft, false, PATIENCE_MS).then((answer) => {
      if (answer.kind === 'saved') {
        writeLocalCopy(id, { ...copy, baseRevision: answer.revision, unsent: false });
      } else if (!keepsPages()) {
        busy.current = false;
        setWords(t('list.keptNotOpen'));
        return;
      }
      window.location.assign(`/visits/${id}`);
    });
  };
  return (
    <form action={props.onServer} onSubmit={start} className="w-full sm:w-auto">
      <button type="submit" className="press press-main w-full px-6 sm:w-auto">
        {t('list.new')}
      </button>
      <p role="status" className="max-w-80 text-soft">
        {words}
      </p>
    </form>
  );
}

/** Without this a browser short of room may drop what it keeps. */
async function askToKeep(): Promise<void> {
  await navigator.storage?.persist?.().catch(() => false);
}
