'use client';

import { useState } from 'react';
import type { FieldBook, FieldEntry } from '@/components/draft/field-book';
import { shownNumber } from '@/components/draft/field-book';
import { Titled } from '@/components/results/titled';
import { t, tCode } from '@/components/words/shop-words';
import type { RuleKey, ShopRuleValues } from '@/lib/visit/shop-rules';
import { type CheckedNumber, checkNumber, numberWords } from './check-entry';
import { NumberBox } from './entry-box';
import { type HistoryLine, HistoryList } from './history-list';
import { PutInForce } from './put-in-force';
import { RulesTrial } from './rules-trial';

export type RuleRow = {
  readonly key: RuleKey;
  readonly value?: number;
  readonly history: readonly HistoryLine[];
};

type Props = {
  readonly rows: readonly RuleRow[];
  readonly book: FieldBook;
  readonly revision: number;
  readonly today: string;
  readonly visitIds: readonly string[];
  /** Values that stand in the address, by key; an empty text is a rule taken out. */
  readonly address: Readonly<Record<string, string>>;
};

type Typed = Readonly<Partial<Record<RuleKey, string>>>;

/** The shop's thresholds: what they are and why they matter, tried on past visits before they are put in force. */
export function RulesEditor(props: Props) {
  const { rows, book } = props;
  const entryOf = (key: RuleKey): FieldEntry => book[key] ?? MISSING;
  const kept: Typed = Object.fromEntries(
    rows.map(({ key, value }) => [key, value === undefined ? '' : shownNumber(value, entryOf(key))]),
  );
  const [typed, setTyped] = useState<Typed>({ ...kept, ...props.address });
  const [trial, setTrial] = useState<ShopRuleValues | undefined>(() =>
    props.address.try === undefined ? undefined : valuesOf(typed, entryOf),
  );
  const checked = (key: RuleKey): CheckedNumber => checkNumber(typed[key] ?? '', entryOf(key));
  const changed = rows.filter(({ key }) => (typed[key] ?? '') !== (kept[key] ?? ''));
  const type = (key: RuleKey, text: string) => {
    const next = { ...typed, [key]: text };
    setTyped(next);
    setTrial(undefined);
    noteInAddress(next, kept, false);
  };
  const values = () => valuesOf(typed, entryOf);
  return (
    <>
      <div className="grid gap-x-8 lg:grid-cols-2">
        {rows.map(({ key, value, history }) => {
          const check = checked(key);
          return (
            <Titled key={key} title={entryOf(key).label} level={2} className="panel mt-6 min-w-0">
              <p>{tCode(`shop.rule.${key}`)}</p>
              <NumberBox
                id={`rule-${key}`}
                entry={entryOf(key)}
                label={t('shop.rules.threshold', { rule: entryOf(key).label })}
                value={typed[key] ?? ''}
                error={check.ok ? undefined : check.words}
                onType={(text) => type(key, text)}
              />
              <p className="text-soft">
                {value === undefined
                  ? t('shop.rules.noneNow')
                  : t('shop.rules.now', { value: numberWords(value, entryOf(key)) })}
              </p>
              <details>
                <summary className="flex min-h-12 list-none items-center gap-2 [&::-webkit-details-marker]:hidden">
                  <span aria-hidden="true" className="fold-mark">
                    ▸
                  </span>
                  {t('shop.historyOf', { n: history.length })}
                </summary>
                <HistoryList lines={history} today={props.today} />
              </details>
            </Titled>
          );
        })}
      </div>
      <Titled title={t('shop.rules.try')} level={2} className="panel mt-10">
        <p>{t('shop.rules.tryWhat')}</p>
        <p className="font-semibold">
          {changed.length === 0
            ? t('shop.rules.unchanged')
            : t('shop.rules.changed', { rules: changed.map(({ key }) => entryOf(key).label).join('; ') })}
        </p>
        <button
          type="button"
          className="press press-main mt-3"
          onClick={() => {
            const now = values();
            setTrial(now);
            noteInAddress(typed, kept, now !== undefined);
          }}
        >
          {t('shop.rules.tryPress')}
        </button>
        {values() === undefined ? (
          <p className="mt-2 font-semibold text-danger">{t('shop.lookAbove')}</p>
        ) : null}
        {trial === undefined ? null : <RulesTrial values={trial} visitIds={props.visitIds} />}
      </Titled>
      <Titled title={t('shop.rules.save')} level={2} className="panel mt-10">
        <p>{t('shop.rules.saveWhat')}</p>
        <PutInForce
          id="rules"
          revision={props.revision}
          button={t('shop.rules.savePress')}
          make={(mark) => {
            const now = values();
            return now === undefined ? undefined : { kind: 'rules', version: { ...mark, values: now } };
          }}
          onSaved={() => noteInAddress(kept, kept, false)}
        />
      </Titled>
    </>
  );
}

const MISSING: FieldEntry = { label: '', unit: '', sign: '', perFormUnit: 1, whole: false };

function valuesOf(typed: Typed, entryOf: (key: RuleKey) => FieldEntry): ShopRuleValues | undefined {
  const values: Partial<Record<RuleKey, number>> = {};
  for (const key of Object.keys(typed).filter((k) => k !== 'try') as RuleKey[]) {
    const check = checkNumber(typed[key] ?? '', entryOf(key));
    if (!check.ok) return undefined;
    if (check.value !== undefined) values[key] = check.value;
  }
  return values;
}

/** What is being tried stands in the address, so that a colleague sees the same. */
function noteInAddress(typed: Typed, kept: Typed, tried: boolean): void {
  const changes = Object.entries(typed).filter(
    ([key, text]) => key !== 'try' && text !== kept[key as RuleKey],
  );
  const params = new URLSearchParams([...changes, ...(tried ? [['try', '1']] : [])] as [string, string][]);
  const text = params.toString();
  window.history.replaceState(null, '', `${window.location.pathname}${text === '' ? '' : `?${text}`}`);
}
