import { describe, expect, it } from 'vitest';
import { oncePerContext, returnWetBulb, siteAltitude } from '@/lib/diagnostics/run-context';
import './support/matchers';
import { contextOfRun, contextOfUnknownRefrigerant } from './support/visit-of';

describe('context of a run', () => {
  it('identity: wet bulb as read beats the one from humidity; neither, none', () => {
    const read = contextOfRun({
      mode: 'cooling',
      returnAirF: 80,
      returnWetBulbF: 66,
      returnHumidityFrac: 0.9,
    });
    expect(returnWetBulb(read)).toMatchObject({ value: 66, basis: 'measured' });
    const worked = contextOfRun({ mode: 'cooling', returnAirF: 80, returnHumidityFrac: 0.511 });
    expect(returnWetBulb(worked)?.value).toBeCloseToWithin(67, 0.1);
    expect(returnWetBulb(contextOfRun({ mode: 'cooling', returnAirF: 80 }))).toBeUndefined();
  });

  it('identity: altitude given is exact, not given it is sea level and uncertain', () => {
    expect(siteAltitude({ altitudeFt: 5_000 })).toMatchObject({ value: 5_000, sd: 0, basis: 'measured' });
    expect(siteAltitude({})).toMatchObject({ value: 0, basis: 'assumed' });
    expect(siteAltitude({}).sd).toBeGreaterThan(0);
  });

  it('identity: worked out once for each context, however often asked, an absent answer too', () => {
    const asked: number[] = [];
    const outdoor = oncePerContext(({ run }) => {
      asked.push(run.outdoorAirF ?? 0);
      return run.outdoorAirF === undefined ? undefined : { outdoorF: run.outdoorAirF };
    });
    const hot = contextOfRun({ mode: 'cooling', outdoorAirF: 95 });
    const unread = contextOfRun({ mode: 'cooling' });
    expect([outdoor(hot), outdoor(unread), outdoor(hot), outdoor(unread)]).toEqual([
      { outdoorF: 95 },
      undefined,
      { outdoorF: 95 },
      undefined,
    ]);
    expect(asked).toEqual([95, 0]);
  });

  it('wiring: without a refrigerant there are no properties', () => {
    expect(contextOfUnknownRefrigerant({ mode: 'cooling' }).properties).toBeUndefined();
    expect(contextOfRun({ mode: 'cooling' }).properties?.name).toBe('R-410A');
  });
});
