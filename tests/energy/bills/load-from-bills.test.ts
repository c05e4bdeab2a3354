import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { climateFor } from '@/lib/energy/climate';
import { monthMeansF } from '@/lib/energy/climate-model';
import words from '@/lib/energy/wording/en.json';
import { yearlyEnergy } from '@/lib/energy/yearly-energy';
import type { Bill } from '@/lib/visit/bills';
import { exampleLoss, exampleVisit, scenarioNamed } from '../example-visit';

const visit = exampleVisit({
  suspectedCause: { cause: 'meteringRestriction' },
  choices: [
    {
      kind: 'repair',
      id: 'clean',
      name: 'Clean the orifice',
      priceLines: [],
      actions: ['meteringOrificeCleaning'],
    },
    {
      kind: 'replace',
      id: 'new',
      name: 'New heat pump',
      priceLines: [],
      unitKind: 'heatPump',
      tier: 'variableSpeed',
      nominalTons: 3,
      ratings: { seer2BtuPerWh: 18, hspf2BtuPerWh: 9 },
    },
  ],
});
const healthy = healthyUnit({ unit: visit.unit, visitDate: visit.visitDate });
const climate = climateFor(visit.site.climate);
const means = monthMeansF(climate);

/** Invented bills that follow a known line exactly. */
function billsWith(base: number, heating: number, cooling: number): Bill[] {
  return means.map((f, m) => {
    const fromDate = `2025-${String(m + 1).padStart(2, '0')}-01`;
    const toDate = m === 11 ? '2026-01-01' : `2025-${String(m + 2).padStart(2, '0')}-01`;
    const days = (Date.parse(toDate) - Date.parse(fromDate)) / 86_400_000;
    const perDay = base + heating * Math.max(0, 58 - f) + cooling * Math.max(0, f - 66);
    return { fromDate, toDate, kwh: perDay * days, meanOutdoorF: f };
  });
}

const withBills = (bills: readonly Bill[]) =>
  yearlyEnergy({ visit: { ...visit, bills: [...bills] }, healthy, loss: exampleLoss, climate });

describe('identity: the load scaled to the bills', () => {
  const bills = billsWith(20, 1.4, 1.7);
  const result = withBills(bills);

  it('the unit as found uses what the bills hold for heating and cooling', () => {
    const asFound = scenarioNamed(result, 'asFound').likely;
    const { heatingKwhPerYear = 0, coolingKwhPerYear = 0 } = result.bills ?? {};
    expect(heatingKwhPerYear + coolingKwhPerYear).toBeGreaterThan(4_000);
    // standby is part of the bills' base
    expect(
      Math.abs(asFound.totalKwh - asFound.standbyKwh - heatingKwhPerYear - coolingKwhPerYear),
    ).toBeLessThan(30);
    expect(result.load.basis).toBe('bill');
    expect(result.load.heatingBalanceF).toBeCloseTo(58, 6);
    expect(result.load.coolingBalanceF).toBeCloseTo(66, 6);
  });

  it('bills leave only the range of their own scatter: next to none on a line, more when scattered', () => {
    const signs = [1, -1, -1, 1, 1, -1, 1, -1, -1, 1, -1, 1];
    const scattered = (size: number) =>
      withBills(bills.map((b, i) => ({ ...b, kwh: b.kwh * (1 + size * (signs[i] ?? 0)) })));
    const width = (r: typeof result) => {
      const { likely, loadLow, loadHigh } = scenarioNamed(r, 'asFound');
      return ((loadHigh?.costUsd ?? Number.NaN) - (loadLow?.costUsd ?? Number.NaN)) / likely.costUsd;
    };
    expect(width(result)).toBeLessThan(0.001);
    expect(width(scattered(0.08))).toBeGreaterThan(0.02);
    expect(width(scattered(0.16))).toBeGreaterThan(width(scattered(0.08)));
    expect(width(yearlyEnergy({ visit, healthy, loss: exampleLoss, climate }))).toBeGreaterThan(0.2);
  });

  it('even at the upper end heating and cooling never ask for more than all that was billed', () => {
    const signs = [1, -1, -1, 1, 1, -1, 1, -1, -1, 1, -1, 1];
    const tight = billsWith(1.5, 1.4, 1.7).map((b, i) => ({
      ...b,
      kwh: b.kwh * (1 + 0.15 * (signs[i] ?? 0)),
    }));
    const r = withBills(tight);
    const { baseKwhPerYear = 0, heatingKwhPerYear = 0, coolingKwhPerYear = 0 } = r.bills ?? {};
    const high = scenarioNamed(r, 'asFound').loadHigh?.totalKwh ?? Number.NaN;
    expect(r.load.basis).toBe('bill');
    expect(high).toBeGreaterThan(scenarioNamed(r, 'asFound').likely.totalKwh);
    // standby is part of the unit's use and of the billed base
    const standby = scenarioNamed(r, 'asFound').likely.standbyKwh;
    expect(high - standby).toBeLessThanOrEqual(
      (baseKwhPerYear + heatingKwhPerYear + coolingKwhPerYear) * 1.001,
    );
  });

  it('no saving exceeds what is spent on heating and cooling', () => {
    const line = fc.record({
      base: fc.double({ min: 5, max: 40, noNaN: true }),
      heating: fc.double({ min: 0.2, max: 3, noNaN: true }),
      cooling: fc.double({ min: 0.2, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(line, ({ base, heating, cooling }) => {
        const r = withBills(billsWith(base, heating, cooling));
        const spent = ((r.bills?.heatingKwhPerYear ?? 0) + (r.bills?.coolingKwhPerYear ?? 0)) * 0.15;
        const asFound = scenarioNamed(r, 'asFound').costUsd.likely;
        const cheapest = Math.min(...r.scenarios.map((s) => s.costUsd.likely));
        expect(asFound - cheapest).toBeLessThanOrEqual(spent + 1e-6);
      }),
      { numRuns: 20 },
    );
  });
});

describe('wiring: bills that do not help', () => {
  it('bills without heating leave no heating to save', () => {
    const r = withBills(billsWith(20, 0, 1.7));
    expect(scenarioNamed(r, 'asFound').likely.heatingCompressorKwh).toBeLessThan(1);
    expect(r.notes).toContainEqual({ code: 'billsLoadSmall', values: { mode: 'heating' } });
  });

  it('more cooling than the unit can use is named, and less than the bills is used', () => {
    const r = withBills(billsWith(20, 1, 60));
    expect(r.notes).toContainEqual({ code: 'billsLoadLarge', values: { mode: 'cooling' } });
    expect(scenarioNamed(r, 'asFound').likely.coolingKwh).toBeLessThan(r.bills?.coolingKwhPerYear ?? 0);
  });

  it('unusable bills leave the load as it was, and say so', () => {
    const plain = yearlyEnergy({ visit, healthy, loss: exampleLoss, climate });
    const r = withBills(billsWith(20, 1.4, 1.7).slice(0, 6));
    expect(r.scenarios).toEqual(plain.scenarios);
    expect(r.notes.map((n) => n.code)).toContain('billsNotUsed');
    expect(r.bills?.verdict).toBe('unusable');
  });

  it('has words for every note', () => {
    const phrases: Readonly<Record<string, string>> = words;
    const codes = ['billsNotUsed', 'billsLoadSmall', 'billsLoadLarge'];
    expect(codes.filter((code) => phrases[code] === undefined)).toEqual([]);
  });
});
