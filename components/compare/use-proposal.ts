'use client';

import { useEffect, useState } from 'react';
import { useDraftState, useDraftStore, useVisitId } from '@/components/draft/draft-context';
import { t } from '@/components/words/words';
import { asProposed, changedSince, type Proposal, proposalOf } from './proposal';

type Kept = { readonly proposal: Proposal; readonly last: Proposal };

/**
 * What was proposed when this page was opened, how many values differ from it now, and the way back. A reload in the
 * middle of trying keeps it; a change made on another page makes a new proposal.
 */
export function useProposal() {
  const id = useVisitId();
  const store = useDraftStore();
  const [proposal, setProposal] = useState<Proposal | undefined>(undefined);
  const changed = useDraftState((s) => (proposal === undefined ? 0 : changedSince(proposal, s.draft)));
  useEffect(() => {
    const now = proposalOf(store.get().draft);
    const kept = readKept(id);
    const first =
      kept !== undefined && JSON.stringify(kept.last) === JSON.stringify(now) ? kept.proposal : now;
    setProposal(first);
    keep(id, { proposal: first, last: now });
    return store.subscribe(() => keep(id, { proposal: first, last: proposalOf(store.get().draft) }));
  }, [id, store]);
  return {
    changed,
    reset: () => {
      if (proposal !== undefined) store.change(t('try.reset'), (draft) => asProposed(draft, proposal));
    },
  };
}

const keyOf = (id: string) => `keepworth.proposed.${id}`;

function readKept(id: string): Kept | undefined {
  try {
    const text = window.sessionStorage.getItem(keyOf(id));
    return text === null ? undefined : (JSON.parse(text) as Kept);
  } catch {
    return undefined;
  }
}

function keep(id: string, kept: Kept): void {
  try {
    window.sessionStorage.setItem(keyOf(id), JSON.stringify(kept));
  } catch {
    // without room the proposal lasts until the page is left
  }
}
