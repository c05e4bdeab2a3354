'use client';

import type { FieldEntry } from '@/components/draft/field-book';
import { t } from '@/components/words/shop-words';

type Common = {
  readonly id: string;
  readonly value: string;
  readonly error?: string | undefined;
  readonly onType: (typed: string) => void;
};

/** A number with its unit beside the box; what is typed stays as typed. */
export function NumberBox(props: Common & { readonly entry: FieldEntry; readonly label?: string }) {
  const { id, entry, value, error } = props;
  return (
    <div className="py-2">
      <label htmlFor={id} className="block font-medium">
        {props.label ?? entry.label}
        {entry.unit === '' && entry.sign === '' ? null : (
          <span className="sr-only">
            , {entry.sign === '$' ? t('unit.dollars') : ''} {entry.unit}
          </span>
        )}
      </label>
      <span className="mt-1 flex items-center gap-1.5">
        {entry.sign === '' ? null : <span aria-hidden="true">{entry.sign}</span>}
        <input
          id={id}
          className="box box-number w-32"
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={value}
          aria-invalid={error !== undefined}
          aria-describedby={error === undefined ? undefined : `${id}-error`}
          onChange={(event) => props.onType(event.target.value)}
        />
        {entry.unit === '' ? null : (
          <span aria-hidden="true" className="text-soft">
            {entry.unit}
          </span>
        )}
      </span>
      <BoxError id={id} words={error} />
    </div>
  );
}

/** A line of text or a date. */
export function TextBox(
  props: Common & { readonly label: string; readonly date?: boolean; readonly longest: number },
) {
  const { id, error } = props;
  return (
    <div className="py-2">
      <label htmlFor={id} className="block font-medium">
        {props.label}
      </label>
      <input
        id={id}
        className={`box mt-1 ${props.date === true ? 'w-48' : 'w-full'}`}
        type={props.date === true ? 'date' : 'text'}
        autoComplete="off"
        maxLength={props.longest}
        value={props.value}
        aria-invalid={error !== undefined}
        aria-describedby={error === undefined ? undefined : `${id}-error`}
        onChange={(event) => props.onType(event.target.value)}
      />
      <BoxError id={id} words={error} />
    </div>
  );
}

function BoxError(props: { readonly id: string; readonly words: string | undefined }) {
  if (props.words === undefined) return null;
  return (
    <p id={`${props.id}-error`} className="mt-1 font-semibold text-danger">
      <span className="sr-only">{t('issue.error')} </span>
      {props.words}
    </p>
  );
}
