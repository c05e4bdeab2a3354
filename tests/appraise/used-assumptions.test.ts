import { expect, it } from 'vitest';
import { appraise } from '@/lib/appraise/appraise';
import type { Visit } from '@/lib/visit/visit';
import { bareVisit } from '../visit/visit-fixture';
import { demoFiles } from './demo-files';

const keysOf = (visit: Visit) => appraise(visit).assumptions.map((a) => a.key);

it('wiring: what was entered is no longer assumed', () => {
  const assumed = ['stayYears', 'ageYears', 'electricityUsdPerKwh'];
  expect(keysOf(bareVisit())).toEqual(expect.arrayContaining(assumed));
  const entered = bareVisit({
    site: { stayYears: 7 },
    unit: { kind: 'heatPump', nominalTons: 3, manufactureYear: 2012 },
    tariff: { kind: 'flat', energyUsdPerKwh: 0.15 },
  });
  expect(keysOf(entered).filter((key) => assumed.includes(key))).toEqual([]);
});

it('wiring: the shell loss is assumed only where a heat balance was made', () => {
  expect(keysOf(bareVisit())).not.toContain('shellLossFrac');
  expect(keysOf(demoFiles.find((v) => v.id === 'end-of-life') as Visit)).toContain('shellLossFrac');
});

it('wiring: what a new compressor does to the risk is assumed only where one is offered', () => {
  const repair = (action: 'compressor' | 'blowerService') => {
    const choice = { kind: 'repair' as const, id: 'r', name: 'Repair', actions: [action], priceLines: [] };
    return keysOf(bareVisit({ choices: [choice] }));
  };
  expect(repair('compressor')).toContain('newCompressorHazardRatio');
  expect(repair('blowerService')).not.toContain('newCompressorHazardRatio');
});

it("wiring: the visit's own assumption shows who set it", () => {
  const own = {
    key: 'discountFracPerYear' as const,
    low: 0.02,
    likely: 0.03,
    high: 0.04,
    source: 'savings account',
  };
  const found = appraise(bareVisit({ assumptions: [own] })).assumptions.find(
    (a) => a.key === 'discountFracPerYear',
  );
  expect(found).toMatchObject({ likely: 0.03, setBy: 'visit', source: 'savings account' });
});

it("property: a shop's better thermometers narrow the superheat, and are told only where they were set", () => {
  const visit = demoFiles.find((v) => v.id === 'low-charge') as Visit;
  const own = { key: 'clampErrorFd', low: 0.2, likely: 0.3, high: 0.5, source: 'shop' } as const;
  const set = { ...visit, assumptions: [...visit.assumptions, own] };
  const spread = (v: Visit) =>
    appraise(v).findings.runs[0]?.derived.find((d) => d.id === 'suctionSuperheatFd')?.sd ?? Number.NaN;
  expect(spread(set)).toBeLessThan(spread(visit));
  expect(keysOf(visit)).not.toContain('clampErrorFd');
  expect(keysOf(set)).toContain('clampErrorFd');
});
