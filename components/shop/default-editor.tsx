'use client';

import { useState } from 'react';
import type { FieldEntry } from '@/components/draft/field-book';
import { t } from '@/components/words/shop-words';
import type { AssumptionKey } from '@/lib/visit/assumption-keys';
import { checkNumber } from './check-entry';
import { NumberBox, TextBox } from './entry-box';
import { type HistoryLine, HistoryList } from './history-list';
import { PutInForce } from './put-in-force';

/** An assumption as its page shows it. */
export type DefaultRow = {
  readonly key: AssumptionKey;
  readonly entry: FieldEntry;
  /** Value and range in force, in words. */
  readonly words: string;
  /** In force, as the form shows them. */
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly source: string;
  readonly isShops: boolean;
  readonly history: readonly HistoryLine[];
};

const ENDS = ['low', 'likely', 'high'] as const;
type End = (typeof ENDS)[number];

/** What new visits assume of one thing: low, likely and high, with its source. */
export function DefaultEditor(props: {
  readonly row: DefaultRow;
  readonly revision: number;
  readonly today: string;
}) {
  const { row } = props;
  const [typed, setTyped] = useState<Readonly<Record<End, string>>>({
    low: row.low,
    likely: row.likely,
    high: row.high,
  });
  const [source, setSource] = useState('');
  const [isBack, setIsBack] = useState(false);
  const [isTried, setIsTried] = useState(false);
  const entryOf = (end: End): FieldEntry => ({ ...row.entry, label: t(`shop.defaults.${end}`) });
  const checks = ENDS.map((end) => checkNumber(typed[end], entryOf(end), true));
  const [low, likely, high] = checks.map((check) => (check.ok ? check.value : undefined));
  const disorder =
    low !== undefined && likely !== undefined && high !== undefined && !(low <= likely && likely <= high);
  const sourceError =
    isTried && source.trim() === '' ? t('shop.needed', { label: t('shop.defaults.source') }) : undefined;
  return (
    <>
      <p className="text-soft">{t('shop.defaults.sourceNow', { source: row.source })}</p>
      <label className="flex min-h-12 items-center gap-3 py-1">
        <input
          type="checkbox"
          className="size-7 accent-plum"
          checked={isBack}
          onChange={(event) => setIsBack(event.target.checked)}
        />
        {t('shop.defaults.back')}
      </label>
      {isBack ? null : (
        <>
          <div className="flex flex-wrap gap-x-6">
            {ENDS.map((end, i) => {
              const check = checks[i];
              return (
                <NumberBox
                  key={end}
                  id={`${row.key}-${end}`}
                  entry={entryOf(end)}
                  value={typed[end]}
                  error={check === undefined || check.ok ? undefined : check.words}
                  onType={(text) => setTyped((now) => ({ ...now, [end]: text }))}
                />
              );
            })}
          </div>
          {disorder ? (
            <p role="alert" className="font-semibold text-danger">
              {t('shop.defaults.order')}
            </p>
          ) : null}
          <TextBox
            id={`${row.key}-source`}
            label={t('shop.defaults.source')}
            longest={250}
            value={source}
            error={sourceError}
            onType={setSource}
          />
        </>
      )}
      <PutInForce
        id={`set-${row.key}`}
        revision={props.revision}
        button={t('shop.defaults.save')}
        make={(mark) => {
          if (isBack) return { kind: 'assumption', assumption: { ...mark, key: row.key } };
          setIsTried(true);
          const whole = low !== undefined && likely !== undefined && high !== undefined && !disorder;
          if (!whole || source.trim() === '') return undefined;
          const values = { low, likely, high, source: source.trim() };
          return { kind: 'assumption', assumption: { ...mark, key: row.key, values } };
        }}
        onSaved={() => {
          setSource('');
          setIsTried(false);
        }}
      />
      {row.history.length === 0 ? null : <HistoryList lines={row.history} today={props.today} />}
    </>
  );
}
