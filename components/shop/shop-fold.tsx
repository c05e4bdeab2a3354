'use client';

import { type ReactNode, useState } from 'react';

/** A row that opens; which one is open stands in the address, so that it can be sent to a colleague. */
export function ShopFold(props: {
  readonly id: string;
  readonly title: string;
  readonly aside: string;
  readonly open: boolean;
  readonly children: ReactNode;
}) {
  const [isOpen, setIsOpen] = useState(props.open);
  return (
    <details
      id={props.id}
      open={isOpen}
      onToggle={(event) => {
        const now = event.currentTarget.open;
        if (now === isOpen) return;
        setIsOpen(now);
        noteInAddress(props.id, now);
      }}
    >
      <summary className="flex min-h-12 list-none flex-wrap items-center gap-x-3 py-2 [&::-webkit-details-marker]:hidden">
        <span aria-hidden="true" className="fold-mark">
          ▸
        </span>
        <span className="min-w-0 flex-1 font-semibold">{props.title}</span>
        <span className="w-full pl-7 sm:w-auto sm:max-w-1/2 sm:pl-0 sm:text-right">{props.aside}</span>
      </summary>
      {/* Forms of closed rows would only weigh on the page. */}
      {isOpen ? <div className="pb-4 pl-0 sm:pl-7">{props.children}</div> : null}
    </details>
  );
}

function noteInAddress(id: string, open: boolean): void {
  const params = new URLSearchParams(window.location.search);
  if (open) params.set('open', id);
  else if (params.get('open') === id) params.delete('open');
  const text = params.toString();
  window.history.replaceState(null, '', `${window.location.pathname}${text === '' ? '' : `?${text}`}`);
}
