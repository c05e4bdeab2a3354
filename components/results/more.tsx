import type { ReactNode } from 'react';

/** What is of use to few, a tap away. */
export function More(props: {
  readonly title: string;
  readonly strong?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <details className="border-t border-hair">
      <summary
        className={`flex min-h-12 list-none items-baseline gap-x-3 py-3 [&::-webkit-details-marker]:hidden ${props.strong === true ? 'font-semibold' : ''}`}
      >
        <span aria-hidden="true" className="fold-mark">
          ▸
        </span>
        <span className="min-w-0 flex-1">{props.title}</span>
      </summary>
      <div className="pb-3 pl-4">{props.children}</div>
    </details>
  );
}
