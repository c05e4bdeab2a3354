import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { answerView } from '@/components/appraisal/answer-view';
import { appraise } from '@/lib/appraise/appraise';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import type { Bill } from '@/lib/visit/bills';
import { readVisit } from '@/lib/visit/read-visit';
import type { Visit } from '@/lib/visit/visit';

function inputs(change: Partial<Visit>) {
  const reading = readVisit(JSON.parse(readFileSync('data-demo/restricted-orifice.json', 'utf8')));
  if (!reading.ok) throw new Error('demo');
  const { tariff: _typed, ...visit } = reading.value;
  const appraisal = appraise({ ...visit, ...change });
  return answerView(appraisal, composeSheet({ ...appraisal, locale: 'en' })).energyInputs;
}

/** Months that follow a line exactly: base 20 kWh a day, heating below 60 F, cooling above 65 F. */
const year: Bill[] = [38, 42, 50, 59, 67, 74, 78, 77, 71, 60, 50, 41].map((meanOutdoorF, m) => {
  const month = (n: number) => `${n > 12 ? 2026 : 2025}-${String(n > 12 ? n - 12 : n).padStart(2, '0')}-01`;
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][m] ?? 30;
  const perDay = 20 + 1.5 * Math.max(0, 60 - meanOutdoorF) + Math.max(0, meanOutdoorF - 65);
  const kwh = Math.round(days * perDay);
  return {
    fromDate: month(m + 1),
    toDate: month(m + 2),
    kwh,
    costUsd: Math.round(kwh * 14) / 100,
    meanOutdoorF,
  };
});

test('wiring: good bills are accepted, their two measures explained, and drawn with the fitted line', () => {
  const { bills } = inputs({ bills: year });
  expect(bills?.verdict).toBe('accept');
  expect(bills?.measures.map(({ name }) => name)).toEqual([
    'Scatter around the line, CV(RMSE)',
    'Lean to one side, NMBE',
  ]);
  expect(bills?.measures[0]?.meaning).toContain('Up to 20 % is good, over 30 % is of no use');
  expect(bills?.split).toMatch(/^In a typical year about [\d,]+ kWh for heating/);
  expect(bills?.plot?.points).toHaveLength(12);
  expect(bills?.plot?.line.length).toBeGreaterThan(2);
  expect(bills?.plot?.axis.ticks[0]?.at).toBe(0);
  expect(bills?.plot?.table.rows[0]?.[0]).toBe('Jan 1, 2025 to Feb 1, 2025');
});

test('wiring: each doubt stands at the bill it is about: swapped, estimated, overlapping, a gap before it', () => {
  const at = (i: number, change: Partial<Bill>) =>
    year.map((bill, j) => (i === j ? { ...bill, ...change } : bill));
  const doubts = (bills: Bill[], fromDate: string) =>
    inputs({ bills })
      .bills?.notes.filter((note) => note.fromDate === fromDate)
      .map((note) => note.words) ?? [];
  const third = year[2];
  const swapped = at(2, { kwh: third?.costUsd ?? 0, costUsd: third?.kwh ?? 0 });
  expect(doubts(swapped, '2025-03-01')).toEqual([
    'In the bill from Mar 1, 2025 kilowatt-hours and dollars were exchanged: turned round.',
  ]);
  expect(doubts(at(2, { estimated: true }), '2025-03-01').join()).toContain('was estimated');
  expect(doubts(at(2, { fromDate: '2025-02-10' }), '2025-02-10').join()).toContain('overlaps');
  const gap = year.filter((_, i) => i !== 2);
  expect(doubts(gap, '2025-04-01')).toEqual(['There is no bill from Mar 1, 2025 to Apr 1, 2025.']);
});

test('wiring: too few bills are told unusable, without a split', () => {
  const { bills } = inputs({ bills: year.slice(0, 4) });
  expect(bills?.verdict).toBe('unusable');
  expect(bills?.split).toBeUndefined();
});

test('wiring: without a tariff the average of the state stands in, assumed, with its year', () => {
  const { tariff } = inputs({});
  expect(tariff.assumed).toBe(true);
  expect(tariff.used).toMatch(/^Nothing typed: [\d.]+¢ a kWh is assumed\..*Average of [A-Z]{2}, 20\d\d/);
  expect(tariff.clocks).toEqual([]);
});

test('wiring: a gap in the day is drawn open and said, and closing it silences both', () => {
  const months = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
  const peak = { months, days: 'weekdays' as const, fromHour: 16, toHour: 21, energyUsdPerKwh: 0.3 };
  const open = inputs({ tariff: { kind: 'timeOfUse', periods: [peak] } }).tariff;
  expect(open.notes.length).toBeGreaterThan(0);
  expect(open.clocks[0]?.months).toBe('All year');
  expect(open.clocks[0]?.days[0]?.spans.map((span) => span.words)).toEqual([
    '0 to 16: no price',
    '16 to 21: 30¢',
    '21 to 24: no price',
  ]);
  expect(open.notes[0]).toMatch(/an average price of electricity \(0\.\d{2,3} USD\/kWh\) stands in/);
  expect(open.assumed).toBe(true);
  expect(open.used).toMatch(/so this price is doubtful\.$/);
  const closed = inputs({ tariff: { kind: 'timeOfUse', periods: [peak], otherUsdPerKwh: 0.11 } }).tariff;
  expect(closed.notes).toEqual([]);
  expect(closed.clocks[0]?.days[1]?.spans.map((span) => span.words)).toEqual(['0 to 24: 11¢']);
});

test('regression: what the unit pays in tiers is not called an average, and the assumed other use is said', () => {
  const months = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
  const tiers = [{ upToKwh: 500, energyUsdPerKwh: 0.1 }, { energyUsdPerKwh: 0.22 }];
  const tariff = { kind: 'tiered' as const, seasons: [{ months, tiers }] };
  const tiered = inputs({ tariff }).tariff;
  expect(tiered.used).toMatch(/^Used: 22¢ for a kWh of this unit, on top of what the rest of the house uses/);
  expect(tiered.notes).toEqual([
    'What the rest of the house uses is not known: 600 kWh a month are assumed, which fill the lower tiers first. The unit and every saving are priced in the tiers above them. A year of bills would tell.',
  ]);
  expect(inputs({ tariff, bills: year }).tariff.notes).toEqual([]);
});

test('wiring: a field left empty says what is assumed in its place', () => {
  const reading = readVisit(JSON.parse(readFileSync('data-demo/restricted-orifice.json', 'utf8')));
  if (!reading.ok) throw new Error('demo');
  const { heatingSetpointF: _, ...site } = reading.value.site;
  expect(inputs({ site }).assumed['site.heatingSetpointF']).toBe('Left empty: 70 °F, assumed');
  expect(
    inputs({ site: { ...site, heatingSetpointF: 68 } }).assumed['site.heatingSetpointF'],
  ).toBeUndefined();
});

test('wiring: comfort as the customer tells it is checked against the hours not met, and said', () => {
  const reading = readVisit(JSON.parse(readFileSync('data-demo/healthy.json', 'utf8')));
  if (!reading.ok) throw new Error('demo');
  const site = { ...reading.value.site, heatingComfort: 'fallsShort' as const };
  const appraisal = appraise({ ...reading.value, site });
  const view = answerView(appraisal, composeSheet({ ...appraisal, locale: 'en' }));
  expect(view.energyInputs.comfortNotes.join()).toMatch(/says the unit falls short in heating, but/);
});
