import { expect, it } from 'vitest';
import { diagnose } from '@/lib/diagnostics/diagnose';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import { healthyOf, type RunPart, visitOf } from '../support/visit-of';

function measuring(run: RunPart) {
  const visit = visitOf([run]);
  const found = diagnose({ visit, healthy: healthyOf(visit), properties: refrigerantProperties('R-410A') });
  return found.runs[0]?.measuring;
}

it('wiring: a run without such readings has only what a traverse would stand on', () => {
  expect(measuring({ mode: 'heating' })).toEqual({ airflows: [], grille: expect.anything(), capacitors: [] });
});

it('wiring: every part with its readings is found', () => {
  const found = measuring({
    mode: 'heating',
    grilleFacePointsFpm: [400, 420],
    heatRiseV: 240,
    heatRiseA: 40,
    heatRiseSupplyF: 100,
    heatRiseReturnF: 70,
    filterDropInWc: 0.2,
    fanCapRatedUf: 5,
    fanCapUf: 5,
    stripKw: 10,
  });
  expect(Object.keys(found ?? {}).sort()).toEqual([
    'airflows',
    'capacitors',
    'grille',
    'heatRise',
    'statics',
    'strips',
  ]);
  expect(found?.grille.traverse?.meanFpm).toBe(410);
  expect(found?.capacitors).toHaveLength(1);
});
