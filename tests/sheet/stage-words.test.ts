import { describe, expect, test } from 'vitest';
import effectsEn from '@/lib/diagnostics/fault-effects/wording/en.json';
import diagnosticsEn from '@/lib/diagnostics/wording/en.json';
import energyEn from '@/lib/energy/wording/en.json';
import financeEn from '@/lib/finance/wording/en.json';
import { namesOf } from '@/lib/sheet/composing';
import { wordsOf } from '@/lib/sheet/phrase';
import { stageWords } from '@/lib/sheet/stage-words';
import { orificeComparison } from './fixtures/orifice-heat-pump';

const words = wordsOf('en');
const names = namesOf(words, orificeComparison);
const told = (code: string, values?: Record<string, string | number>) =>
  stageWords(words, values === undefined ? { code } : { code, values }, names);

describe('stageWords', () => {
  test('wiring: no two stages use one code, and none is lost when they are joined', () => {
    const codes = [diagnosticsEn, effectsEn, energyEn, financeEn].flatMap((phrases) =>
      Object.keys(phrases).map((code) => (phrases === effectsEn ? `effect.${code}` : code)),
    );
    expect(new Set(codes).size).toBe(codes.length);
    expect(Object.keys(wordsOf('en').stages).length).toBe(codes.length);
    expect(codes.length).toBeGreaterThan(150);
  });

  test('wiring: money is rounded, ids become names, quotation marks are printed ones', () => {
    expect(told('repairStaysBelow', { choice: 'clean-orifice', priceUsd: 1819 })).toBe(
      '\u201cClean the orifice, new filter-drier\u201d costs least as long as its price stays below $1,800.',
    );
  });

  test('wiring: money quoted to the cent keeps its cents', () => {
    expect(told('rebateOverPrice', { rebate: 'R', amountUsd: '1200.00', countedUsd: '950.50' })).toContain(
      '$1,200.00',
    );
  });

  test('wiring: codes of notes and flags are found under their family', () => {
    expect(told('carriedOver', { from: 'heating' })).toMatch(/^Not measured in this mode/);
    expect(told('altitudeUnknown')).toMatch(/^Altitude not given/);
    expect(told('blockage')).toMatch(/^Low airflow with high static pressure/);
  });

  test('wiring: a list of readings is told by their names', () => {
    const text = told('narrow.airSide', {
      mode: 'cooling',
      readings: 'supplyAirF, returnWetBulbF',
      percent: 12,
    });
    expect(text).toContain('supply air and return wet bulb');
    expect(text).toContain('12\u00a0%');
  });

  test('identity: an unknown code is shown as it is, so that the gap is seen', () => {
    expect(told('noSuchCode')).toBe('noSuchCode');
  });

  test('regression: degrees are written with their sign in every sentence', () => {
    const bare = Object.entries(wordsOf('en').stages).filter(([, text]) => /(\d|\}) F\b/.test(text));
    expect(bare).toEqual([]);
    expect(told('flag.coilBelowFreezing', { reading: 28.7, limit: 32 })).toContain('28.7 °F');
  });
});
