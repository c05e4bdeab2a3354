'use client';

import { useEffect, useSyncExternalStore } from 'react';
import { pathOfHash } from '@/components/form/field-id';
import { type Place, placeOfHash } from './parts';

function subscribe(listener: () => void): () => void {
  window.addEventListener('hashchange', listener);
  return () => window.removeEventListener('hashchange', listener);
}

/** The place the address names; going to a field also puts the cursor there, opening what it is folded in. */
export function usePlace(): Place {
  const hash = useSyncExternalStore(
    subscribe,
    () => window.location.hash,
    () => '',
  );
  useEffect(() => {
    if (hash === '') return;
    const target =
      document.getElementById(hash.slice(1)) ?? document.getElementById(decodeURIComponent(hash.slice(1)));
    for (let fold = target?.closest('details'); fold; fold = fold.parentElement?.closest('details'))
      fold.open = true;
    if (pathOfHash(hash) === undefined) window.scrollTo({ top: 0 });
    else target?.focus();
  }, [hash]);
  return placeOfHash(hash);
}

/** Goes to a place of this visit; the browser's own "back" returns. */
export function goTo(hash: string): void {
  if (window.location.hash === hash) {
    window.dispatchEvent(new HashChangeEvent('hashchange'));
    return;
  }
  window.location.hash = hash;
}
