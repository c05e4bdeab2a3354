'use client';

import { useDraftStore, useDraftValue, useFieldEntry } from '@/components/draft/draft-context';
import { fieldId } from './field-id';
import { errorId, FieldError } from './field-message';
import { useIssueAt, useIssues } from './use-field-issues';

/** A line or a paragraph of text. */
export function TextField(props: {
  readonly path: string;
  readonly label?: string;
  readonly long?: boolean;
  readonly date?: boolean;
  readonly autoComplete?: string;
}) {
  const { path } = props;
  const entry = useFieldEntry(path);
  const store = useDraftStore();
  const value = useDraftValue(path);
  const issue = useIssueAt(path);
  const { typingIn } = useIssues();
  const label = props.label ?? entry.label;
  const shared = {
    id: fieldId(path),
    className: 'box mt-1 w-full',
    value: typeof value === 'string' || typeof value === 'number' ? String(value) : '',
    'aria-invalid': issue !== undefined,
    'aria-describedby': issue === undefined ? undefined : errorId(path),
    onChange: (event: { target: { value: string } }) => {
      typingIn(path);
      store.set(path, event.target.value === '' ? undefined : event.target.value, label);
    },
    onBlur: () => typingIn(undefined),
  };
  return (
    <div className="py-2">
      <label htmlFor={fieldId(path)} className="block font-medium">
        {label}
      </label>
      {props.long === true ? (
        <textarea {...shared} rows={3} />
      ) : (
        <input
          {...shared}
          type={props.date === true ? 'date' : 'text'}
          autoComplete={props.autoComplete ?? 'off'}
        />
      )}
      <FieldError path={path} />
    </div>
  );
}
