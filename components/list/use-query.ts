'use client';

import { useEffect, useState } from 'react';
import { addressOfQuery, type ListQuery, queryOfAddress } from './list-query';

/**
 * What the list is asked for, held in the address.
 *
 * @param first the address's query as the server saw it, so that the first drawing is the same on both sides
 */
export function useQuery(first: string): readonly [ListQuery, (change: Partial<ListQuery>) => void] {
  const [query, setQuery] = useState(() => queryOfAddress(first));
  useEffect(() => {
    const look = () => setQuery(queryOfAddress(window.location.search));
    look();
    window.addEventListener('popstate', look);
    return () => window.removeEventListener('popstate', look);
  }, []);
  const change = (part: Partial<ListQuery>) => {
    const next = { ...query, page: 1, ...part };
    setQuery(next);
    window.history.replaceState(null, '', `${window.location.pathname}${addressOfQuery(next)}`);
  };
  return [query, change];
}
