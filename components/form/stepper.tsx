'use client';

import { useRef } from 'react';
import { useDraftStore, useDraftValue, useFieldEntry } from '@/components/draft/draft-context';
import type { DraftValue } from '@/components/draft/draft-tree';
import { type FieldEntry, shownNumber } from '@/components/draft/field-book';
import { t } from '@/components/words/words';
import { parseNumber } from '@/lib/visit/parse-number';
import { NumberField } from './number-field';
import { type SlideRange, slideRange } from './slide-range';

/** A number with a slider and with "less" and "more" buttons, for trying values at the table. */
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
  const now = numberOf(value, entry);
  const put = (next: number) => {
    const inside = Math.min(entry.max ?? Number.MAX_VALUE, Math.max(entry.min ?? 0, next));
    store.set(props.path, String(Number(inside.toFixed(4))), label);
  };
  const move = (by: number) => put((now ?? props.start ?? entry.min ?? 0) + by);
  return (
    <div>
      <div className="flex items-end gap-x-2">
        <div className="min-w-0 flex-1">
          <NumberField
            path={props.path}
            stacked
            {...(props.label === undefined ? {} : { label: props.label })}
          />
        </div>
        <LessMore label={label} less={() => move(-props.step)} more={() => move(props.step)} />
      </div>
      <Slider label={label} value={now} start={props.start} limits={entry} step={props.step} put={put} />
    </div>
  );
}

/** One step down, one step up. */
export function LessMore(props: {
  readonly label: string;
  readonly less: () => void;
  readonly more: () => void;
}) {
  return (
    <div className="flex gap-2 pb-2">
      <button
        type="button"
        className="press min-w-12 px-0 text-xl"
        aria-label={t('field.less', { label: props.label })}
        onClick={props.less}
      >
        <span aria-hidden="true">−</span>
      </button>
      <button
        type="button"
        className="press min-w-12 px-0 text-xl"
        aria-label={t('field.more', { label: props.label })}
        onClick={props.more}
      >
        <span aria-hidden="true">+</span>
      </button>
    </div>
  );
}

/** A slider whose ends stay where they were when it was first shown, unless the value leaves them. */
export function Slider(props: {
  readonly label: string;
  readonly value: number | undefined;
  readonly start?: number | undefined;
  readonly limits: { readonly min?: number; readonly max?: number };
  readonly step: number;
  readonly put: (value: number) => void;
}) {
  const { value, limits, step } = props;
  const range = useRef<SlideRange | undefined>(undefined);
  if (range.current === undefined || (value ?? 0) > range.current.max) {
    range.current = slideRange(value ?? props.start, limits, step);
  }
  const { min, max } = range.current;
  return (
    <input
      type="range"
      className="block h-12 w-full accent-plum"
      aria-label={t('field.slide', { label: props.label })}
      min={min}
      max={max}
      step={step}
      value={value ?? props.start ?? min}
      onChange={(event) => props.put(Number(event.target.value))}
    />
  );
}

function numberOf(value: DraftValue | undefined, entry: FieldEntry): number | undefined {
  const typed =
    typeof value === 'number' ? shownNumber(value, entry) : typeof value === 'string' ? value : '';
  const parsed = parseNumber(typed);
  return parsed.kind === 'number' ? parsed.value : undefined;
}
