import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { fieldBook } from '@/components/draft/build-field-book';
import { type Draft, withValue } from '@/components/draft/draft-tree';
import { pricesFromBook } from '@/components/visit/fill-prices';
import { defaultPriceBook } from '@/lib/finance/default-price-book';
import { readVisit } from '@/lib/visit/read-visit';

const demo = JSON.parse(readFileSync('data-demo/restricted-orifice.json', 'utf8')) as Draft;
const choices = demo.choices as { id: string; kind: string }[];
const idOf = (kind: string) => choices.find((choice) => choice.kind === kind)?.id ?? 'none';

test('wiring: a repair and a replacement get lines that the visit takes, with what the book lacks said', () => {
  for (const kind of ['repair', 'replace']) {
    const filled = pricesFromBook(demo, fieldBook(), idOf(kind), defaultPriceBook);
    expect(filled.lines?.length ?? 0, kind).toBeGreaterThan(2);
    expect(filled.notes[0], kind).toContain('invented');
    const at = choices.findIndex(({ id }) => id === idOf(kind));
    expect(readVisit(withValue(demo, `choices.${at}.priceLines`, [...(filled.lines ?? [])])).ok, kind).toBe(
      true,
    );
  }
});

test('wiring: leaving it has nothing to fill, and a choice that cannot be read says so', () => {
  expect(pricesFromBook(demo, fieldBook(), idOf('leave'), defaultPriceBook)).not.toHaveProperty('lines');
  expect(pricesFromBook(demo, fieldBook(), 'not-there', defaultPriceBook).notes[0]).toContain(
    'cannot be read',
  );
});

test('property: prices that the shop set are filled in, and no longer called invented', () => {
  const labour = { fromDate: '2026-02-01', setBy: 'Ada', why: 'dearer', priceUsd: 149.5 };
  const { invented: _invented, ...own } = defaultPriceBook;
  const items = own.items.map((item) =>
    item.id === 'labour' ? { ...item, prices: [...item.prices, labour] } : item,
  );
  const filled = pricesFromBook(demo, fieldBook(), idOf('repair'), { ...own, items });
  expect(filled.lines).toContainEqual(expect.objectContaining({ kind: 'labour', unitPriceUsd: 149.5 }));
  expect(filled.notes[0]).not.toContain('invented');
});
