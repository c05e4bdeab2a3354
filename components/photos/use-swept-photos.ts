'use client';

import { useEffect } from 'react';
import { useDraftStore, useVisitId } from '@/components/draft/draft-context';
import { listAt } from '@/components/draft/draft-tree';
import { sweepPhotos } from './photo-store';

/** On opening: photos of this visit that were removed long ago make room. */
export function useSweptPhotos(): void {
  const store = useDraftStore();
  const visitId = useVisitId();
  useEffect(() => {
    const named = listAt(store.get().draft, 'observations').flatMap((one) => listAt(one, 'photoIds'));
    const ids = new Set(named.filter((id) => typeof id === 'string'));
    sweepPhotos(visitId, ids, Date.now()).catch(() => undefined);
  }, [store, visitId]);
}
