import { describe, expect, it } from 'vitest';
import { climateFor } from '@/lib/energy/climate';
import type { Climate } from '@/lib/energy/climate-model';
import { withDegreeDays } from '@/lib/energy/degree-day-correction';
import words from '@/lib/energy/wording/en.json';

const stLouis = climateFor({ kind: 'city', city: 'st-louis-mo' });
const degreeDays = (climate: Climate, sign: 1 | -1) =>
  climate.hours.reduce((sum, h, i) => {
    const f = climate.binF[i % climate.binF.length] ?? 65;
    return sum + (h * Math.max(0, sign * (f - 65))) / 24;
  }, 0);

describe('identity: the user\u2019s own degree-days win', () => {
  it('ten percent fewer heating degree-days are just that, cooling untouched', () => {
    const own = withDegreeDays(stLouis, { hdd65Fday: 0.9 * (stLouis.hdd65Fday ?? 0) });
    expect(degreeDays(own, -1) / degreeDays(stLouis, -1)).toBeCloseTo(0.9, 9);
    expect(degreeDays(own, 1)).toBeCloseTo(degreeDays(stLouis, 1), 9);
    expect(own.hours).toEqual(stLouis.hours);
    expect(own.heatingDesignF).toBeGreaterThan(stLouis.heatingDesignF);
    expect(own.notes.at(-1)?.code).toBe('degreeDaysUsed');
  });

  it('bins keep their order', () => {
    const own = withDegreeDays(stLouis, { hdd65Fday: 3_200, cdd65Fday: 2_000 });
    const falling = own.binF.filter((f, i) => i > 0 && f <= (own.binF[i - 1] ?? f));
    expect(falling).toEqual([]);
  });

  it('without own figures nothing changes', () => {
    expect(withDegreeDays(stLouis, {})).toEqual(stLouis);
  });

  it('figures of another place are held, regions cannot be corrected, and both are said', () => {
    const held = withDegreeDays(stLouis, { hdd65Fday: 500 });
    expect(degreeDays(held, -1) / degreeDays(stLouis, -1)).toBeCloseTo(0.6, 9);
    expect(held.notes.at(-1)?.code).toBe('degreeDaysHeld');
    const region = withDegreeDays(climateFor({ kind: 'region', region: 'IV' }), { cdd65Fday: 900 });
    expect(region.notes.at(-1)?.code).toBe('degreeDaysUnusable');
    const phrases: Readonly<Record<string, string>> = words;
    const codes = ['degreeDaysUsed', 'degreeDaysHeld', 'degreeDaysUnusable'];
    expect(codes.filter((code) => phrases[code] === undefined)).toEqual([]);
  });
});
