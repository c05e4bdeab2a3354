import { formUnit } from '@/components/draft/build-field-book';
import { type FieldEntry, shownNumber } from '@/components/draft/field-book';
import { numberWords } from '@/components/shop/check-entry';
import type { DefaultRow } from '@/components/shop/default-editor';
import { t } from '@/components/words/shop-words';
import { shopLimits } from '@/lib/finance/shop-limits';
import type { Estimate } from '@/lib/math/estimate';
import { resolveAssumption } from '@/lib/visit/assumption';
import type { AssumptionKey } from '@/lib/visit/assumption-keys';
import { type ShopDefaults, shopAssumptionOn } from '@/lib/visit/shop-defaults';

/** One assumption with what is in force on a date, and the shop's history of it. */
export function defaultRow(defaults: ShopDefaults, key: AssumptionKey, today: string): DefaultRow {
  const own = resolveAssumption([], key);
  const entry = entryOf(key, own.label, own.unit);
  const set = shopAssumptionOn(defaults, key, today)?.values;
  const { low, likely, high, source } = set ?? own;
  return {
    key,
    entry,
    words: t(set === undefined ? 'shop.defaults.own' : 'shop.defaults.shops', {
      value: rangeOf({ low, likely, high }, entry),
    }),
    low: shownNumber(low, entry),
    likely: shownNumber(likely, entry),
    high: shownNumber(high, entry),
    source,
    isShops: set !== undefined,
    history: defaults.history
      .filter((one) => one.key === key)
      .map((one, i) => ({ one, i }))
      .sort((a, b) => b.one.fromDate.localeCompare(a.one.fromDate) || b.i - a.i)
      .map(({ one: { fromDate, setBy, why, values } }) => ({
        fromDate,
        setBy,
        why,
        words:
          values === undefined
            ? t('shop.defaults.backAgain')
            : t('shop.defaults.withSource', { value: rangeOf(values, entry), source: values.source }),
      })),
  };
}

function entryOf(key: AssumptionKey, label: string, unit: string): FieldEntry {
  const form = formUnit(unit);
  const { min, max } = shopLimits(key);
  const shown = (limit: number) => Number((limit / form.perFormUnit).toPrecision(6));
  return { label, ...form, min: shown(min), max: shown(max), whole: false };
}

function rangeOf({ low, likely, high }: Estimate, entry: FieldEntry): string {
  return t('shop.defaults.range', {
    likely: numberWords(likely, entry),
    low: numberWords(low, { ...entry, unit: '' }),
    high: numberWords(high, { ...entry, unit: '' }),
  });
}
