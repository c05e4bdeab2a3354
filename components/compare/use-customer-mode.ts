'use client';

import { useEffect, useState } from 'react';

const NAME = 'for';
const VALUE = 'customer';

/** Whether an address asks for the customer's view. */
export function isForCustomer(search: string): boolean {
  return new URLSearchParams(search).get(NAME) === VALUE;
}

/**
 * The customer's view, kept in the address so that it can be sent, reloaded and left with "back".
 *
 * @param first  what the address said when the page was made
 */
export function useCustomerMode(first: boolean): {
  readonly on: boolean;
  readonly turn: (on: boolean) => void;
} {
  const [on, setOn] = useState(first);
  useEffect(() => {
    const look = () => setOn(isForCustomer(window.location.search));
    look();
    window.addEventListener('popstate', look);
    return () => window.removeEventListener('popstate', look);
  }, []);
  useEffect(() => {
    if (on) takeOutPageData();
  }, [on]);
  return {
    on,
    turn: (next) => {
      const query = new URLSearchParams(window.location.search);
      if (next) query.set(NAME, VALUE);
      else query.delete(NAME);
      const text = query.toString();
      window.history.pushState(null, '', `${window.location.pathname}${text === '' ? '' : `?${text}`}`);
      setOn(next);
      window.scrollTo(0, 0);
    },
  };
}

/** Scripts that brought the whole visit with the page have done their work by now; its part prices leave with them. */
function takeOutPageData(): void {
  for (const script of document.querySelectorAll('script:not([src])')) script.remove();
}
