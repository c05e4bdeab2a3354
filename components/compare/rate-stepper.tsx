'use client';

import { useId, useState } from 'react';
import type { TriedRate } from '@/components/appraisal/tried-rates';
import { useDraftState, useDraftStore } from '@/components/draft/draft-context';
import { LessMore, Slider } from '@/components/form/stepper';
import { t } from '@/components/words/words';
import { parseNumber } from '@/lib/visit/parse-number';
import { likelyOf, withRate } from './assumption-draft';

const PER_PERCENT = 0.01;
/** Percent a year; money that grows faster than this is no longer a household's. Ours. */
const LIMITS = { min: 0, max: 20 };
const STEP = 0.5;

/** A yearly rate that nobody measured, in percent, to be tried at the table. */
export function RateStepper(props: { readonly rate: TriedRate }) {
  const { rate } = props;
  const id = useId();
  const store = useDraftStore();
  const [typed, setTyped] = useState<string | undefined>(undefined);
  // What was just set stands in the draft before the engine has answered.
  const likely = useDraftState((s) => likelyOf(s.draft, rate));
  const now = Number((likely / PER_PERCENT).toFixed(2));
  const label = t(`try.${rate.key}`);
  const put = (percent: number) => {
    const inside = Math.min(LIMITS.max, Math.max(LIMITS.min, percent));
    store.change(label, (draft) => withRate(draft, rate, inside * PER_PERCENT, t('try.setHere')));
  };
  const unreadable = typed !== undefined && !isInside(typed);
  return (
    <div>
      <label htmlFor={id} className="block pt-2 font-medium">
        {label}
        <span className="sr-only">, {t('try.percent')}</span>
      </label>
      <div className="flex items-end gap-x-2">
        <input
          id={id}
          className="box box-number mb-2 w-24"
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={typed ?? String(now)}
          aria-invalid={unreadable}
          aria-describedby={unreadable ? `${id}-error` : undefined}
          onChange={(event) => {
            setTyped(event.target.value);
            const parsed = parseNumber(event.target.value);
            if (parsed.kind === 'number' && isInside(event.target.value)) put(parsed.value);
          }}
          onBlur={() => setTyped(undefined)}
        />
        <span aria-hidden="true" className="flex-1 self-center">
          {t('try.percentShort')}
        </span>
        <LessMore label={label} less={() => put(now - STEP)} more={() => put(now + STEP)} />
      </div>
      {unreadable ? (
        <p id={`${id}-error`} className="font-semibold text-danger">
          {t('try.range', { label, ...LIMITS })}
        </p>
      ) : null}
      <Slider label={label} value={now} limits={LIMITS} step={STEP} put={put} />
    </div>
  );
}

function isInside(typed: string): boolean {
  const parsed = parseNumber(typed);
  return parsed.kind === 'number' && parsed.value >= LIMITS.min && parsed.value <= LIMITS.max;
}
