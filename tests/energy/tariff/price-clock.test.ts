import { expect, test } from 'vitest';
import { priceClocks } from '@/lib/energy/tariff/price-clock';
import type { TimeOfUseTariff } from '@/lib/visit/tariff';

const all = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const summer = [6, 7, 8, 9];

const peak: TimeOfUseTariff['periods'][number] = {
  months: summer,
  days: 'weekdays',
  fromHour: 16,
  toHour: 21,
  energyUsdPerKwh: 0.3,
};

test('identity: every day of every month runs from 0 to 24 without a hole, gaps included', () => {
  const clocks = priceClocks({ kind: 'timeOfUse', periods: [peak] });
  expect(clocks.flatMap((clock) => clock.months).sort((a, b) => a - b)).toEqual(all);
  const days = clocks.flatMap((clock) => clock.days);
  expect(days.length).toBe(4);
  for (const { spans } of days) {
    expect(spans[0]?.fromHour).toBe(0);
    expect(spans.at(-1)?.toHour).toBe(24);
    expect(spans.slice(1).every((span, i) => span.fromHour === spans[i]?.toHour)).toBe(true);
    expect(spans.every((span) => span.hours === span.toHour - span.fromHour)).toBe(true);
  }
});

test('wiring: hours without a price stay open, and a price for the rest closes them', () => {
  const open = priceClocks({ kind: 'timeOfUse', periods: [{ ...peak, months: all }] });
  expect(open).toHaveLength(1);
  expect(open[0]?.days[0]?.spans).toEqual([
    { fromHour: 0, toHour: 16, hours: 16, contested: false },
    { fromHour: 16, toHour: 21, hours: 5, usdPerKwh: 0.3, contested: false },
    { fromHour: 21, toHour: 24, hours: 3, contested: false },
  ]);
  expect(open[0]?.days[1]?.spans).toEqual([{ fromHour: 0, toHour: 24, hours: 24, contested: false }]);
  const closed = priceClocks({ kind: 'timeOfUse', periods: [peak], otherUsdPerKwh: 0.1 });
  expect(closed.map((clock) => clock.months)).toEqual([[1, 2, 3, 4, 5, 10, 11, 12], summer]);
  const prices = closed.flatMap((c) => c.days).flatMap((d) => d.spans.map((span) => span.usdPerKwh));
  expect(prices).not.toContain(undefined);
});

test('wiring: a period over midnight covers both ends, and hours named twice are told with the first price', () => {
  const night = { ...peak, months: all, days: 'all' as const, fromHour: 22, toHour: 6, energyUsdPerKwh: 0.1 };
  const day = { ...night, fromHour: 5, toHour: 22, energyUsdPerKwh: 0.2 };
  const [clock] = priceClocks({ kind: 'timeOfUse', periods: [night, day] });
  expect(clock?.days[0]?.spans).toEqual([
    { fromHour: 0, toHour: 5, hours: 5, usdPerKwh: 0.1, contested: false },
    { fromHour: 5, toHour: 6, hours: 1, usdPerKwh: 0.1, contested: true },
    { fromHour: 6, toHour: 22, hours: 16, usdPerKwh: 0.2, contested: false },
    { fromHour: 22, toHour: 24, hours: 2, usdPerKwh: 0.1, contested: false },
  ]);
});
