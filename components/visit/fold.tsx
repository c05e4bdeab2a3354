import type { ReactNode } from 'react';

/** Something that opens on demand: one row, as big as a thumb. */
export function Fold(props: {
  readonly title: ReactNode;
  readonly aside?: ReactNode;
  readonly open?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <details className="border-t border-hair" open={props.open}>
      <summary className="flex min-h-12 list-none items-center gap-3 py-2 font-semibold [&::-webkit-details-marker]:hidden">
        <span aria-hidden="true" className="fold-mark">
          ▸
        </span>
        <span className="min-w-0 flex-1">{props.title}</span>
        {props.aside === undefined ? null : <span className="font-normal text-soft">{props.aside}</span>}
      </summary>
      <div className="pb-3 pl-0 sm:pl-7">{props.children}</div>
    </details>
  );
}

/** A titled group of rows. */
export function Group(props: {
  readonly title: string;
  readonly note?: string;
  readonly children: ReactNode;
}) {
  return (
    <fieldset className="mt-6 min-w-0">
      <legend className="w-full border-b-2 border-ink pb-1 font-serif text-xl font-bold">
        {props.title}
      </legend>
      {props.note === undefined ? null : <p className="mt-1 text-soft">{props.note}</p>}
      <div className="rows">{props.children}</div>
    </fieldset>
  );
}
