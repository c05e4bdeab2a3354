import type { ReactNode } from 'react';

/** A line that opens to what stands behind it. */
export function Opening(props: {
  readonly name: ReactNode;
  readonly value?: string;
  /** Second line of what is always in sight. */
  readonly below?: ReactNode;
  /** Terms with what they say. */
  readonly children: ReactNode;
  /** What comes below the terms. */
  readonly after?: ReactNode;
}) {
  return (
    <details className="border-t border-hair">
      <summary className="flex min-h-12 list-none flex-wrap items-baseline gap-x-3 py-2 [&::-webkit-details-marker]:hidden">
        <span aria-hidden="true" className="fold-mark">
          ▸
        </span>
        <span className="min-w-0 flex-1">{props.name}</span>
        {props.value === undefined ? null : <span className="text-lg font-semibold">{props.value}</span>}
        {props.below === undefined ? null : <span className="w-full pl-6">{props.below}</span>}
      </summary>
      <div className="border-l-2 border-hair pb-3 pl-4 sm:ml-1">
        <dl className="grid gap-2">{props.children}</dl>
        {props.after}
      </div>
    </details>
  );
}

/** One thing behind a line: what it is, and what it says. */
export function Item(props: { readonly term: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt className="font-semibold">{props.term}</dt>
      <dd className="break-words">{props.children}</dd>
    </div>
  );
}
