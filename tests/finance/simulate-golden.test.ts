import { expect, test } from 'vitest';
import { healthyUnit } from '@/lib/diagnostics/healthy-unit/healthy-unit';
import { climateFor } from '@/lib/energy/climate';
import { energySurfaces } from '@/lib/energy/energy-surface';
import { yearlyEnergy } from '@/lib/energy/yearly-energy';
import { simulate } from '@/lib/finance/simulate';
import { exampleLoss, exampleVisit } from '../energy/example-visit';
import { chancesOf, drier, findingsOf, leave, orifice, single } from './fixtures';

test('regression: our own figures of draws that read surfaces, to the dollar', () => {
  const visit = exampleVisit({
    choices: [leave, orifice, drier, single],
    site: { climate: { kind: 'city', city: 'atlanta-ga' }, stayYears: 10 },
  });
  const { unit, visitDate, assumptions } = visit;
  const given = {
    visit,
    healthy: healthyUnit({ unit, visitDate, assumptions }),
    loss: exampleLoss,
    chances: chancesOf(['meteringRestriction', 1]),
    climate: climateFor(visit.site.climate),
  };
  const findings = { ...findingsOf('meteringRestriction'), loss: exampleLoss };
  const surfaces = energySurfaces(given);
  const { choices } = simulate({
    visit,
    findings,
    energy: yearlyEnergy(given),
    surfaces,
    draws: 10_000,
    seed: 20_261_103,
  });
  expect(choices.map((c) => c.id)).toEqual(['leave', 'orifice', 'drier', 'single']);
  expect(choices.map((c) => Math.round(c.meanTodayUsd))).toEqual([19_159, 18_777, 20_032, 19_260]);
  expect(choices.map((c) => Math.round(100 * c.cheapestFrac))).toEqual([14, 63, 0, 22]);
});
