'use client';

import { useState } from 'react';
import { t } from '@/components/words/shop-words';
import type { EntryLine } from '@/lib/visit/price-book';
import { checkNumber } from './check-entry';
import { NumberBox } from './entry-box';
import { HistoryList } from './history-list';
import type { ItemOption, JobRow, PriceEntries } from './price-rows';
import { PutInForce } from './put-in-force';

type TypedLine = {
  readonly key: number;
  readonly item: string;
  readonly perJob: string;
  readonly perTon: string;
};

/** What a job is put together from, and how it is to be from a date on. */
export function JobEditor(props: {
  readonly row: JobRow;
  readonly items: readonly ItemOption[];
  readonly entries: PriceEntries;
  readonly revision: number;
  readonly today: string;
}) {
  const { row, items, entries } = props;
  const [lines, setLines] = useState<readonly TypedLine[]>(() => row.lines.map(typedLine));
  const [warranty, setWarranty] = useState(row.warrantyYears === undefined ? '' : String(row.warrantyYears));
  const [hours, setHours] = useState(row.siteHours === undefined ? '' : String(row.siteHours));
  const change = (key: number, part: Partial<TypedLine>) =>
    setLines((now) => now.map((line) => (line.key === key ? { ...line, ...part } : line)));
  const errorOf = (typed: string, which: keyof PriceEntries, needed = false) => {
    const check = checkNumber(typed, entries[which], needed);
    return check.ok ? undefined : check.words;
  };
  return (
    <>
      <p>{t('shop.prices.example', { price: row.example })}</p>
      <ol className="rows mt-2">
        {lines.map((line, i) => {
          const n = i + 1;
          return (
            <li key={line.key} className="py-2">
              <fieldset className="grid min-w-0 items-start gap-x-4 sm:grid-cols-[1fr_auto_auto_auto]">
                <legend className="sr-only">{t('shop.prices.line', { n })}</legend>
                <div className="min-w-0 py-2">
                  <label htmlFor={`${row.id}-item-${line.key}`} className="block font-medium">
                    {t('shop.prices.lineItem')}
                  </label>
                  <select
                    id={`${row.id}-item-${line.key}`}
                    className="box mt-1 w-full"
                    value={line.item}
                    onChange={(event) => change(line.key, { item: event.target.value })}
                  >
                    {items.map((item) => (
                      <option key={item.id} value={item.id}>
                        {item.words}
                      </option>
                    ))}
                  </select>
                </div>
                <NumberBox
                  id={`${row.id}-job-${line.key}`}
                  entry={entries.perJob}
                  value={line.perJob}
                  error={errorOf(line.perJob, 'perJob', true)}
                  onType={(perJob) => change(line.key, { perJob })}
                />
                <NumberBox
                  id={`${row.id}-ton-${line.key}`}
                  entry={entries.perTon}
                  value={line.perTon}
                  error={errorOf(line.perTon, 'perTon')}
                  onType={(perTon) => change(line.key, { perTon })}
                />
                <button
                  type="button"
                  className="press press-plain self-end"
                  aria-label={t('shop.prices.removeLineN', { n })}
                  onClick={() => setLines((now) => now.filter((one) => one.key !== line.key))}
                >
                  {t('shop.prices.removeLine')}
                </button>
              </fieldset>
            </li>
          );
        })}
      </ol>
      <button
        type="button"
        className="press mt-2"
        onClick={() =>
          setLines((now) => [
            ...now,
            {
              key: Math.max(-1, ...now.map((line) => line.key)) + 1,
              item: items[0]?.id ?? '',
              perJob: '1',
              perTon: '',
            },
          ])
        }
      >
        {t('shop.prices.addLine')}
      </button>
      <div className="grid gap-x-4 sm:grid-cols-2">
        <NumberBox
          id={`${row.id}-warranty`}
          entry={entries.warranty}
          value={warranty}
          error={errorOf(warranty, 'warranty')}
          onType={setWarranty}
        />
        <NumberBox
          id={`${row.id}-hours`}
          entry={entries.siteHours}
          value={hours}
          error={errorOf(hours, 'siteHours')}
          onType={setHours}
        />
      </div>
      <PutInForce
        id={`set-${row.id}`}
        revision={props.revision}
        button={t('shop.prices.saveJob')}
        make={(mark) => {
          const made = lines.map((line) => lineOf(line, entries));
          const whole = made.flatMap((line) => line ?? []);
          const years = checkNumber(warranty, entries.warranty);
          const time = checkNumber(hours, entries.siteHours);
          if (whole.length === 0 || whole.length < made.length || !years.ok || !time.ok) return undefined;
          return {
            kind: 'job',
            entry: row.id,
            version: {
              ...mark,
              lines: whole,
              ...(years.value === undefined ? {} : { warrantyYears: years.value }),
              ...(time.value === undefined ? {} : { siteHours: time.value }),
            },
          };
        }}
      />
      <HistoryList lines={row.history} today={props.today} />
    </>
  );
}

function typedLine({ item, perJob, perTon }: EntryLine, key: number): TypedLine {
  return { key, item, perJob: String(perJob), perTon: perTon === undefined ? '' : String(perTon) };
}

function lineOf({ item, perJob, perTon }: TypedLine, entries: PriceEntries): EntryLine | undefined {
  const job = checkNumber(perJob, entries.perJob, true);
  const ton = checkNumber(perTon, entries.perTon);
  if (!job.ok || !ton.ok || job.value === undefined) return undefined;
  return { item, perJob: job.value, ...(ton.value === undefined ? {} : { perTon: ton.value }) };
}
