'use client';

import { useEffect, useState } from 'react';

const AT_ONCE = 3;

export type PastState<T> =
  | { readonly kind: 'working'; readonly done: number; readonly total: number }
  | { readonly kind: 'ready'; readonly answer: T }
  | { readonly kind: 'failed' };

/**
 * Has past visits worked out a few at a time, then asks for what is to be made of them.
 *
 * @param ids  visits; the same list keeps what was asked
 * @param ask  asks for the answer; a new function asks again
 */
export function usePast<T>(ids: readonly string[], ask: () => Promise<T>): PastState<T> {
  const [state, setState] = useState<PastState<T>>({ kind: 'working', done: 0, total: ids.length });
  useEffect(() => {
    let wanted = true;
    const tell = (next: PastState<T>) => {
      if (wanted) setState(next);
    };
    const work = async () => {
      tell({ kind: 'working', done: 0, total: ids.length });
      for (let at = 0; at < ids.length && wanted; at += AT_ONCE) {
        const some = ids.slice(at, at + AT_ONCE);
        const query = new URLSearchParams(some.map((id) => ['id', id]));
        const answer = await fetch(`/shop/past.json?${query}`);
        if (!answer.ok) throw new Error(String(answer.status));
        tell({ kind: 'working', done: at + some.length, total: ids.length });
      }
      if (wanted) tell({ kind: 'ready', answer: await ask() });
    };
    work().catch(() => tell({ kind: 'failed' }));
    return () => {
      wanted = false;
    };
  }, [ids, ask]);
  return state;
}
