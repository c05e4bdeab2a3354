'use client';

import { useFieldEntry } from '@/components/draft/draft-context';
import { t, tCode } from '@/components/words/words';
import { fieldId } from './field-id';
import { errorId, FieldError } from './field-message';
import { useField } from './use-field';

type Option = { readonly value: string; readonly words: string };

type Props = {
  readonly path: string;
  readonly label?: string;
  /** Code in the words under which the schema's options are found ("metering"). */
  readonly words?: string;
  readonly options?: readonly Option[];
  /** Adds "not known", which leaves the field out. */
  readonly unknown?: boolean;
  readonly onPick?: (value: string | undefined) => void;
};

function useOptions(props: Props): readonly Option[] {
  const entry = useFieldEntry(props.path);
  const own =
    props.options ??
    (entry.options ?? []).map((value) => ({
      value,
      words: props.words === undefined ? value : tCode(`option.${props.words}.${value}`),
    }));
  return props.unknown === true ? [...own, { value: '', words: t('field.notKnown') }] : own;
}

/** One of a few: every answer is in sight and one tap away. */
export function PickField(props: Props) {
  const { store, value, issue, label } = useField(props.path, props.label);
  const options = useOptions(props);
  const current = typeof value === 'string' ? value : '';
  return (
    <div className="py-2">
      <fieldset className="min-w-0" aria-describedby={issue === undefined ? undefined : errorId(props.path)}>
        <legend className="font-medium">{label}</legend>
        <PressRow
          name={fieldId(props.path)}
          options={options}
          current={current}
          onPick={(value) => {
            const picked = value === '' ? undefined : value;
            store.set(props.path, picked, label);
            props.onPick?.(picked);
          }}
        />
        <FieldError path={props.path} />
      </fieldset>
    </div>
  );
}

/** Answers side by side, one of them pressed; the first carries the name as its id, for links to it. */
export function PressRow(props: {
  readonly name: string;
  readonly options: readonly Option[];
  readonly current: string;
  readonly onPick: (value: string) => void;
}) {
  return (
    <div className="mt-1 flex flex-wrap gap-2">
      {props.options.map((option, i) => (
        <label key={option.value} className={PRESSED_WHEN_CHECKED}>
          <input
            type="radio"
            className="sr-only"
            name={props.name}
            id={i === 0 ? props.name : undefined}
            value={option.value}
            checked={props.current === option.value}
            onChange={() => props.onPick(option.value)}
          />
          {option.words}
        </label>
      ))}
    </div>
  );
}

/** A label that looks pressed while the box inside it is checked. */
export const PRESSED_WHEN_CHECKED =
  'press cursor-pointer font-normal text-ink has-checked:bg-plum has-checked:font-semibold has-checked:text-on-plum has-focus-visible:outline-3 has-focus-visible:outline-offset-2 has-focus-visible:outline-plum';

/** One of many, in a list that the device draws in its own way. */
export function ListField(props: Props & { readonly empty?: string }) {
  const { store, value, issue, label } = useField(props.path, props.label);
  const options = useOptions(props);
  return (
    <div className="py-2">
      <label htmlFor={fieldId(props.path)} className="block font-medium">
        {label}
      </label>
      <select
        id={fieldId(props.path)}
        className="box mt-1 w-full"
        value={typeof value === 'string' ? value : ''}
        aria-invalid={issue !== undefined}
        aria-describedby={issue === undefined ? undefined : errorId(props.path)}
        onChange={(event) => {
          const picked = event.target.value === '' ? undefined : event.target.value;
          store.set(props.path, picked, label);
          props.onPick?.(picked);
        }}
      >
        {props.unknown === true ? null : <option value="">{props.empty ?? t('field.choose')}</option>}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.words}
          </option>
        ))}
      </select>
      <FieldError path={props.path} />
    </div>
  );
}

/** Yes or no. */
export function TickField(props: { readonly path: string; readonly label?: string }) {
  const { store, value, label } = useField(props.path, props.label);
  return (
    <label className="flex min-h-12 cursor-pointer items-center gap-3 py-1">
      <input
        type="checkbox"
        id={fieldId(props.path)}
        className="size-7 accent-plum"
        checked={value === true}
        onChange={(event) => store.set(props.path, event.target.checked ? true : undefined, label)}
      />
      <span>{label}</span>
    </label>
  );
}
