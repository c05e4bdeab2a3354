'use client';

import { useDraftStore, useDraftValue, useFieldEntry } from '@/components/draft/draft-context';
import { shownNumber } from '@/components/draft/field-book';
import { t } from '@/components/words/words';
import { parseNumber } from '@/lib/visit/parse-number';
import { NumberField } from './number-field';

/** A number with "less" and "more" buttons, for trying values at the table. */
export function Stepper(props: {
  readonly path: string;
  readonly step: number;
  /** Where counting starts while the field is empty, in the unit of the form. */
  readonly start?: number;
  readonly label?: string;
}) {
  const entry = useFieldEntry(props.path);
  const store = useDraftStore();
  const value = useDraftValue(props.path);
  const label = props.label ?? entry.label;
  const move = (by: number) => {
    const typed =
      typeof value === 'number' ? shownNumber(value, entry) : typeof value === 'string' ? value : '';
    const parsed = parseNumber(typed);
    const now = parsed.kind === 'number' ? parsed.value : (props.start ?? entry.min ?? 0);
    const next = Math.min(entry.max ?? Number.MAX_VALUE, Math.max(entry.min ?? 0, now + by));
    store.set(props.path, String(Number(next.toFixed(4))), label);
  };
  return (
    <div className="flex flex-wrap items-center gap-x-2">
      <div className="min-w-0 flex-1">
        <NumberField path={props.path} {...(props.label === undefined ? {} : { label: props.label })} />
      </div>
      <div className="flex gap-2">
        <button
          type="button"
          className="press min-w-12 px-0 text-xl"
          aria-label={t('field.less', { label })}
          onClick={() => move(-props.step)}
        >
          <span aria-hidden="true">−</span>
        </button>
        <button
          type="button"
          className="press min-w-12 px-0 text-xl"
          aria-label={t('field.more', { label })}
          onClick={() => move(props.step)}
        >
          <span aria-hidden="true">+</span>
        </button>
      </div>
    </div>
  );
}
