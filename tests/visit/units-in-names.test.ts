import { expect, it } from 'vitest';
import { z } from 'zod';
import { PriceBook } from '@/lib/visit/price-book';
import { ShopRules } from '@/lib/visit/shop-rules';
import { Visit } from '@/lib/visit/visit';

/** Suffix that a key must end in, by unit. */
const suffixes: Record<string, string> = {
  psig: 'Psig',
  F: 'F',
  Fd: 'Fd',
  A: 'A',
  V: 'V',
  W: 'W',
  kW: 'Kw',
  cfm: 'Cfm',
  fpm: 'Fpm',
  in: 'In',
  in2: 'In2',
  count: 'Count',
  ft2: 'Ft2',
  ft: 'Ft',
  'in. w.c.': 'InWc',
  uF: 'Uf',
  frac: 'Frac',
  'frac/year': 'FracPerYear',
  min: 'Minutes',
  years: 'Years',
  months: 'Months',
  ton: 'Tons',
  year: 'Year',
  'Btu/Wh': 'BtuPerWh',
  'Btu/h': 'Btuh',
  'USD/kWh': 'UsdPerKwh',
  'USD/month': 'UsdPerMonth',
  USD: 'Usd',
  h: 'Hours',
  kWh: 'Kwh',
  'USD/therm': 'UsdPerTherm',
  'USD/gallon': 'UsdPerGallon',
  'calendar month': 'Months',
  'clock hour': 'Hour',
  'h/day': 'HoursPerDay',
  'h/year': 'Hours',
  'F-day': 'Fday',
};
/** Numbers whose unit is carried by a neighbour: the assumption's key, the price line's kind, the share's own parent. */
const exceptions = [
  'low',
  'likely',
  'high',
  'amount',
  'schemaVersion',
  'paidAfterMonths',
  'perJob',
  'perTon',
  'priceBookVersion',
  'shopRulesVersion',
];

type Node = {
  type?: string;
  unit?: string;
  properties?: Record<string, Node>;
  items?: Node;
  oneOf?: Node[];
  anyOf?: Node[];
  const?: unknown;
};

function numbers(node: Node, key: string): { key: string; unit: string | undefined }[] {
  const own = node.type === 'number' || node.type === 'integer' ? [{ key, unit: node.unit }] : [];
  const inside = Object.entries(node.properties ?? {}).flatMap(([k, n]) => numbers(n, k));
  const options = [...(node.oneOf ?? []), ...(node.anyOf ?? []), ...(node.items ? [node.items] : [])].flatMap(
    (n) => numbers(n, key),
  );
  return [...own, ...inside, ...options];
}

/** A key may be nothing but its unit (`kwh`, `months`). */
function names(key: string, suffix: string): boolean {
  return key.endsWith(suffix) || key === suffix.charAt(0).toLowerCase() + suffix.slice(1);
}

it('wiring: every number of the visit has a unit, and its key ends in it', () => {
  const all = numbers(z.toJSONSchema(Visit) as Node, 'visit').filter((n) => !exceptions.includes(n.key));
  expect(all.length).toBeGreaterThan(60);
  const wrong = all.filter((n) => n.unit === undefined || !names(n.key, suffixes[n.unit] ?? '?'));
  expect(wrong).toEqual([]);
});

it('wiring: so has every number of the price book and of the shop rules', () => {
  const all = [PriceBook, ShopRules]
    .flatMap((schema) => numbers(z.toJSONSchema(schema) as Node, 'book'))
    .filter((n) => !exceptions.includes(n.key));
  expect(all.length).toBeGreaterThan(10);
  const wrong = all.filter((n) => n.unit === undefined || !n.key.endsWith(suffixes[n.unit] ?? '?'));
  expect(wrong).toEqual([]);
});
