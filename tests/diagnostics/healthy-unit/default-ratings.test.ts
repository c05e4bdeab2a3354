import { describe, expect, it } from 'vitest';
import { defaultRatings } from '@/lib/diagnostics/healthy-unit/default-ratings';
import reference from '../../reference/seasonal-ratings.json';

type Row = (typeof reference.minimumStandards)[number];
const stateOf: Readonly<Record<string, string>> = { North: 'OH', Southeast: 'GA', Southwest: 'AZ' };

const cases = reference.minimumStandards.flatMap((row: Row) => {
  const kinds = row.class.includes('HP') ? (['heatPump'] as const) : (['airConditioner'] as const);
  const region = Object.keys(stateOf).find((name) => row.class.includes(name));
  return kinds.map((kind) => ({
    title: `${row.class} from ${row.from}`,
    kind,
    year: Number.parseInt(row.from.slice(0, 4), 10),
    state: region === undefined ? undefined : stateOf[region],
    cooling95Btuh: row.class.includes('>= 45') ? 48_000 : 36_000,
    row,
  }));
});

describe('outside: default ratings are the published minima [10 CFR 430.32(c), status per row]', () => {
  it('covers every split-system row', () => {
    expect(cases).toHaveLength(14);
  });

  it.each(cases)('$title', ({ kind, year, state, cooling95Btuh, row }) => {
    const ratings = defaultRatings(kind, year, cooling95Btuh, state);
    expect(ratings.seerBtuPerWh).toBe(row.SEER);
    expect(ratings.hspfBtuPerWh).toBe(row.HSPF);
    expect(ratings.seer2BtuPerWh).toBe(row.SEER2);
    expect(ratings.hspf2BtuPerWh).toBe(row.HSPF2);
    expect(ratings.status).toBe(row.status);
  });

  it.each(cases)(
    '$title still holds in the last year before the next rule',
    ({ kind, year, state, cooling95Btuh }) => {
      const next = [1992, 2006, 2015, 2023].find((y) => y > year) ?? 2040;
      expect(defaultRatings(kind, next - 1, cooling95Btuh, state)).toEqual(
        defaultRatings(kind, year, cooling95Btuh, state),
      );
    },
  );
});

describe('outside: before the first minimum [rough shipment averages, memory]', () => {
  it('runs from 7 to 9 and is held at its ends', () => {
    expect(defaultRatings('heatPump', 1984, 36_000).seerBtuPerWh).toBeCloseTo(8, 9);
    expect(defaultRatings('heatPump', 1984, 36_000).hspfBtuPerWh).toBeCloseTo(6, 9);
    expect(defaultRatings('airConditioner', 1970, 36_000).seerBtuPerWh).toBe(7);
    expect(defaultRatings('airConditioner', 1991, 36_000)).toMatchObject({ seerBtuPerWh: 9 });
    expect(defaultRatings('airConditioner', 1991, 36_000).hspfBtuPerWh).toBeUndefined();
  });

  it('an unknown state counts as north', () => {
    expect(defaultRatings('airConditioner', 2020, 36_000)).toEqual(
      defaultRatings('airConditioner', 2020, 36_000, 'MN'),
    );
  });
});
