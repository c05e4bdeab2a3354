'use client';

import { useDraftState } from '@/components/draft/draft-context';
import { listAt } from '@/components/draft/draft-tree';
import { fieldId } from '@/components/form/field-id';
import { FieldError } from '@/components/form/field-message';
import { PRESSED_WHEN_CHECKED } from '@/components/form/pick-field';
import { monthName } from '@/components/format/entry-words';
import { t } from '@/components/words/words';

const MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];

/** Months of a price, each a chip to press. */
export function MonthsField(props: {
  readonly path: string;
  readonly onPress: (month: number, on: boolean) => void;
}) {
  const chosen = useDraftState((s) => listAt(s.draft, props.path));
  return (
    <fieldset className="min-w-0 py-2">
      <legend className="font-medium">{t('tariff.months')}</legend>
      <div className="mt-1 grid grid-cols-4 gap-2 sm:grid-cols-6">
        {MONTHS.map((month) => (
          <label key={month} className={`${PRESSED_WHEN_CHECKED} px-2`}>
            <input
              type="checkbox"
              className="sr-only"
              id={month === 1 ? fieldId(props.path) : undefined}
              aria-label={monthName(month, 'long')}
              checked={chosen.includes(month)}
              onChange={(event) => props.onPress(month, event.target.checked)}
            />
            <span aria-hidden="true">{monthName(month, 'short')}</span>
          </label>
        ))}
      </div>
      <FieldError path={props.path} />
    </fieldset>
  );
}
