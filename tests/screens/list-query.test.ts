import { expect, test } from 'vitest';
import type { ListRow } from '@/components/list/digest';
import { addressOfQuery, queryOfAddress, rowsFor, unitWords } from '@/components/list/list-query';

const rows: readonly ListRow[] = [
  {
    id: 'a',
    revision: 3,
    savedAt: '2026-03-01T09:00:00Z',
    customer: 'Núñez family',
    town: 'Mossgate',
    visitDate: '2025-12-30',
    unitKind: 'heatPump',
    nominalTons: '3',
    refrigerant: 'R-22',
    note: 'Dog in the yard',
    modes: ['heating'],
    chosen: { name: 'Clean the orifice', date: '2026-01-02' },
    digest: { headline: 'x', advice: 'repair', causes: ['meteringRestriction'] },
  },
  {
    id: 'b',
    revision: 1,
    savedAt: '2026-04-01T09:00:00Z',
    customer: 'Abel',
    visitDate: '2026-03-31',
    unitKind: 'airConditioner',
    modes: ['cooling'],
    digest: { headline: 'y', advice: 'open', causes: [] },
  },
  { id: 'c', revision: 1, savedAt: '2026-02-01T09:00:00Z', street: '4 Elm Row', town: 'Ashby' },
];
const found = (address: string) => rowsFor(rows, queryOfAddress(address)).map(({ id }) => id);

test('wiring: every word must be found, in names, address, unit and note, whatever its case or accents', () => {
  expect(found('?search=nunez')).toEqual(['a']);
  expect(found('?search=DOG+r-22')).toEqual(['a']);
  expect(found('?search=elm')).toEqual(['c']);
  expect(found('?search=air+conditioner')).toEqual(['b']);
  expect(found('?search=orifice')).toEqual(['a']);
  expect(found('?search=dog+elm')).toEqual([]);
});

test('wiring: filters leave what they name; a visit whose result is not worked out yet answers to none', () => {
  expect(found('?year=2025')).toEqual(['a']);
  expect(found('?advice=open')).toEqual(['b']);
  expect(found('?mode=heating')).toEqual(['a']);
  expect(found('?cause=meteringRestriction')).toEqual(['a']);
  expect(found('?chosen=yes')).toEqual(['a']);
  expect(found('?chosen=no')).toEqual(['b', 'c']);
  expect(found('?advice=repair&mode=cooling')).toEqual([]);
});

test('wiring: the order is the one asked for, the one saved last first by default, unknown last', () => {
  expect(found('')).toEqual(['b', 'a', 'c']);
  expect(found('?sort=date')).toEqual(['b', 'a', 'c']);
  expect(found('?sort=customer')).toEqual(['b', 'a', 'c']);
  expect(found('?sort=town')).toEqual(['c', 'a', 'b']);
  expect(found('?sort=nonsense')).toEqual(['b', 'a', 'c']);
});

test('identity: an address says its query and nothing else', () => {
  const addresses = ['', '?search=elm+row&year=2026&advice=repair&sort=date&page=3', '?chosen=no'];
  expect(addresses.map((address) => addressOfQuery(queryOfAddress(address)))).toEqual(addresses);
  expect(queryOfAddress('?page=-2').page).toBe(1);
  expect(queryOfAddress('?page=x').page).toBe(1);
});

test('regression: tons read the same whether or not the unit was typed along', () => {
  const row = { id: 't', revision: 1, savedAt: '2026-02-01T09:00:00Z' };
  const of = (nominalTons: string) => unitWords({ ...row, nominalTons });
  expect(['3', '3 tons', '3.0 ton', 'three'].map(of)).toEqual(['3 tons', '3 tons', '3 tons', 'three']);
});
