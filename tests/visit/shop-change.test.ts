import { expect, test } from 'vitest';
import { defaultPriceBook } from '@/lib/finance/default-price-book';
import { defaultShopRules, rulesOn } from '@/lib/finance/shop-rules/default-rules';
import { OWN_REFRIGERANT, partOf, type Shop, type ShopChange, withChange } from '@/lib/visit/shop-change';
import { noShopDefaults } from '@/lib/visit/shop-defaults';
import { ruleSteps } from '@/lib/visit/shop-rules';

const shop: Shop = { rules: defaultShopRules, prices: defaultPriceBook, defaults: noShopDefaults };
const mark = { fromDate: '2026-12-01', setBy: 'Ada', why: 'dearer' };
const changed = (change: ShopChange, from = shop): Shop => {
  const done = withChange(from, change);
  if (!done.ok) throw new Error(done.why);
  return done.shop;
};
const price: ShopChange = { kind: 'price', item: 'labour', price: { ...mark, priceUsd: 149.5 } };

test('property: a change is added and everything older stays', () => {
  const after = changed(price);
  const labour = (s: Shop) => s.prices.items.find((item) => item.id === 'labour')?.prices ?? [];
  expect(labour(after)).toEqual([...labour(shop), { ...mark, priceUsd: 149.5 }]);
  expect(after.rules).toBe(shop.rules);
  expect(after.prices.items.filter((i) => i.id !== 'labour')).toEqual(
    shop.prices.items.filter((i) => i.id !== 'labour'),
  );
  const job: ShopChange = {
    kind: 'job',
    entry: shop.prices.entries[0]?.id ?? '',
    version: { ...mark, lines: [{ item: OWN_REFRIGERANT, perJob: 1 }] },
  };
  expect(changed(job).prices.entries[0]?.versions).toHaveLength(
    (shop.prices.entries[0]?.versions.length ?? 0) + 1,
  );
  expect([partOf(price), partOf(job)]).toEqual(['prices', 'prices']);
  const tax = changed({ kind: 'tax', tax: { ...mark, taxFrac: 0.07 } });
  expect(tax.prices.tax?.at(-1)?.taxFrac).toBe(0.07);
});

test('property: what has no place in the shop is refused and named', () => {
  const why = (change: ShopChange) => {
    const done = withChange(shop, change);
    return done.ok ? 'taken' : done.why;
  };
  expect(why({ ...price, item: 'nothing' } as ShopChange)).toBe('noSuchItem');
  const lines = [{ item: 'nothing', perJob: 1 }];
  expect(why({ kind: 'job', entry: 'nothing', version: { ...mark, lines } })).toBe('noSuchJob');
  const entry = shop.prices.entries[0]?.id ?? '';
  expect(why({ kind: 'job', entry, version: { ...mark, lines } })).toBe('noSuchItem');
  const [item] = shop.prices.items;
  expect(item === undefined ? 'no item' : why({ kind: 'newItem', item })).toBe('itemThere');
});

test('property: a history that is full takes nothing more', () => {
  const full = { ...shop, rules: { ...shop.rules, history: Array(500).fill(shop.rules.history[0]) } };
  expect(withChange(full, { kind: 'rules', version: { ...mark, values: {} } })).toEqual({
    ok: false,
    why: 'full',
  });
});

test('property: a threshold tells only the versions in which it changed, newest first', () => {
  const values = rulesOn(shop.rules, '2026-11-01');
  const one = changed({ kind: 'rules', version: { ...mark, values: { ...values, warnDischargeF: 230 } } });
  const { warnDischargeF: _gone, ...rest } = values;
  const two = changed({ kind: 'rules', version: { ...mark, fromDate: '2027-01-01', values: rest } }, one);
  expect(ruleSteps(two.rules, 'warnDischargeF').map((s) => s.value)).toEqual([undefined, 230, 225]);
  expect(ruleSteps(two.rules, 'longestPaybackYears')).toHaveLength(1);
  expect(two.rules.invented).toBeUndefined();
  expect(rulesOn(two.rules, '2026-12-15').warnDischargeF).toBe(230);
});
