'use client';

import { fieldId } from './field-id';
import { errorId, FieldError } from './field-message';
import { useField } from './use-field';
import { useIssues } from './use-field-issues';

/** A line or a paragraph of text. */
export function TextField(props: {
  readonly path: string;
  readonly label?: string;
  readonly long?: boolean;
  readonly date?: boolean;
  readonly autoComplete?: string;
}) {
  const { path } = props;
  const { store, value, issue, label } = useField(path, props.label);
  const { typingIn } = useIssues();
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
