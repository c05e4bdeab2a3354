'use client';

import { type KeyboardEvent, useId } from 'react';
import type { DraftValue } from '@/components/draft/draft-tree';
import { type FieldEntry, shownNumber } from '@/components/draft/field-book';
import { t } from '@/components/words/words';
import { fieldId } from './field-id';
import { errorId, FieldError } from './field-message';
import { useField } from './use-field';
import { useIssues } from './use-field-issues';

type Props = {
  readonly path: string;
  /** Says more precisely what the schema's label leaves open. */
  readonly label?: string;
  readonly hint?: string;
  /** What the number means, told by the findings ("evaporates near 40 °F"). */
  readonly echo?: string | undefined;
  readonly stacked?: boolean;
};

/**
 * One reading: label, box, unit. The box takes any text; what is typed stays as typed. Where the number can be
 * negative a button changes the sign, since some keypads have no minus.
 */
export function NumberField(props: Props) {
  const { path } = props;
  const { entry, store, value, issue, label } = useField(path, props.label);
  const { typingIn } = useIssues();
  const hintId = useId();
  const text = shown(value, entry);
  const put = (typed: string) => {
    store.set(path, typed === '' ? undefined : typed, label);
  };
  const described = [
    issue === undefined ? undefined : errorId(path),
    props.hint === undefined ? undefined : `${hintId}-hint`,
    props.echo === undefined ? undefined : `${hintId}-echo`,
  ].filter((id) => id !== undefined);
  const unitSaid = [entry.sign === '$' ? t('unit.dollars') : '', entry.unit]
    .filter((w) => w !== '')
    .join(' ');

  return (
    <div className={props.stacked === true ? 'py-2' : 'py-2'}>
      <div className={props.stacked === true ? '' : 'flex items-center gap-3'}>
        <label
          htmlFor={fieldId(path)}
          className={props.stacked === true ? 'block font-medium' : 'min-w-0 flex-1 font-medium'}
        >
          {label}
          {unitSaid === '' ? null : <span className="sr-only">, {unitSaid}</span>}
        </label>
        <div className="flex shrink-0 items-center gap-1.5">
          {entry.min !== undefined && entry.min < 0 ? (
            <button
              type="button"
              className="press min-w-12 px-0 text-xl"
              aria-label={t('field.sign', { label })}
              onClick={() => put(withOtherSign(text))}
            >
              <span aria-hidden="true">±</span>
            </button>
          ) : null}
          {entry.sign === '' ? null : <span aria-hidden="true">{entry.sign}</span>}
          <input
            id={fieldId(path)}
            className={`box box-number ${widthOf(entry)}`}
            type="text"
            inputMode={entry.whole && (entry.min ?? 0) >= 0 ? 'numeric' : 'decimal'}
            enterKeyHint="next"
            autoComplete="off"
            value={text}
            aria-invalid={issue !== undefined}
            aria-describedby={described.length === 0 ? undefined : described.join(' ')}
            onChange={(event) => {
              typingIn(path);
              put(event.target.value);
            }}
            onBlur={() => setTimeout(() => typingIn(undefined), AFTER_TAP_MS)}
            onKeyDown={goOn}
          />
          <span
            aria-hidden="true"
            className={props.stacked === true ? '' : 'min-w-14 whitespace-nowrap text-soft'}
          >
            {entry.unit}
          </span>
        </div>
      </div>
      {props.hint === undefined ? null : (
        <p id={`${hintId}-hint`} className="text-soft">
          {props.hint}
        </p>
      )}
      {props.echo === undefined ? null : (
        <p id={`${hintId}-echo`} className={`text-soft ${props.stacked === true ? '' : 'text-right'}`}>
          {props.echo}
        </p>
      )}
      <FieldError path={path} />
    </div>
  );
}

/** A message that appears when a field is left must not move the button that is just being pressed. */
const AFTER_TAP_MS = 250;

function shown(value: DraftValue | undefined, entry: FieldEntry): string {
  if (typeof value === 'string') return value;
  return typeof value === 'number' ? shownNumber(value, entry) : '';
}

function withOtherSign(text: string): string {
  const bare = text.trim();
  return /^[-−]/.test(bare) ? bare.slice(1) : `-${bare}`;
}

function widthOf(entry: FieldEntry): string {
  if (entry.sign === '$' && entry.unit === '') return 'w-28';
  return (entry.max ?? 0) > 10_000 ? 'w-28' : 'w-24';
}

/** "Next" on the keypad goes to the next empty box. */
function goOn(event: KeyboardEvent<HTMLInputElement>): void {
  if (event.key !== 'Enter') return;
  event.preventDefault();
  const boxes = [...document.querySelectorAll<HTMLInputElement>('main input.box')];
  const here = boxes.indexOf(event.currentTarget);
  const after = boxes.slice(here + 1).filter((box) => box.offsetParent !== null);
  (after.find((box) => box.value === '') ?? after[0])?.focus();
}
