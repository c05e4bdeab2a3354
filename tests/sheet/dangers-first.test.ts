import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { headlineOf } from '@/components/appraisal/answer-view';
import { appraise } from '@/lib/appraise/appraise';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import type { ObservationId } from '@/lib/visit/observation';
import { readVisit } from '@/lib/visit/read-visit';
import type { Run } from '@/lib/visit/run';
import type { Unit } from '@/lib/visit/unit';
import type { Visit } from '@/lib/visit/visit';

const healthy = (() => {
  const reading = readVisit(JSON.parse(readFileSync('data-demo/healthy.json', 'utf8')));
  if (!reading.ok) throw new Error('healthy.json');
  return reading.value;
})();

function told(change: Partial<Visit>): { readonly dangers: readonly string[]; readonly headline: string } {
  const appraisal = appraise({ ...healthy, ...change });
  const { pageOne } = composeSheet({ ...appraisal, locale: 'en' });
  return { dangers: pageOne.finding.dangers, headline: headlineOf(appraisal) };
}

const seen: readonly (readonly ObservationId[])[] = [
  ['shortToGround'],
  ['burntSmell'],
  ['breakerTrips'],
  ['stripsStayOn'],
  ['burntWires'],
  ['bulgedCapacitor'],
  ['compressorKnocks'],
  ['frozenIndoorCoil'],
  ['blowerNotRunning'],
  ['escapingRefrigerant'],
  ['carbonMonoxideAlarm'],
  ['stripsStayOn', 'blowerNotRunning'],
];

const measured: readonly (readonly [string, Partial<Run>, Partial<Unit>])[] = [
  ['discharge line at its limit', { dischargeLineF: 226 }, {}],
  ['voltage outside the nameplate', { lineV: 190 }, { ratedV: 230 }],
  ['amps over the rating', { compressorA: 30 }, { ratedLoadA: 16 }],
  ['suction near vacuum', { suctionPsig: 3 }, {}],
  ['a failed capacitor', { compressorCapRatedUf: 40, compressorCapUf: 10 }, {}],
  ['electric heat while cooling', { stripA: 20 }, {}],
  ['static twice the rated', { returnStaticInWc: -0.7, supplyStaticInWc: 0.6 }, { electricHeatKw: 10 }],
];

describe('dangers come first on the sheet, whatever the economics say', () => {
  test('identity: the visit these are made from has none', () => {
    expect(told({}).dangers).toEqual([]);
    expect(told({}).headline).not.toMatch(/safety/i);
  });

  test.each(seen.map((ids) => ({ ids })))(
    'wiring: $ids is told to the homeowner and leads the result',
    ({ ids }) => {
      const { dangers, headline } = told({ observations: ids.map((id) => ({ id })) });
      expect(dangers).toHaveLength(1);
      expect(dangers[0]).toMatch(/^Safety: /);
      expect(headline).toMatch(/^A safety fault comes first\./);
    },
  );

  test.each(measured)('wiring: %s is told to the homeowner and leads the result', (_, run, unit) => {
    const runs = healthy.runs.map((one) => ({ ...one, ...run }));
    const { dangers, headline } = told({ runs, unit: { ...healthy.unit, ...unit } });
    expect(dangers.length).toBeGreaterThan(0);
    expect(dangers.filter((sentence) => !sentence.startsWith('Safety: '))).toEqual([]);
    expect(headline).toMatch(/^A safety fault comes first\./);
  });
});
