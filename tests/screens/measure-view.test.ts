import { describe, expect, test } from 'vitest';
import { buildView } from '@/components/appraisal/build-view';
import { fieldBook } from '@/components/draft/build-field-book';
import type { Draft } from '@/components/draft/draft-tree';
import en from '@/components/words/en.json';

const visit = (runs: Draft[], unit: Draft = {}): Draft => ({
  schemaVersion: 1,
  id: 'measuring',
  visitDate: '2026-11-25',
  site: { altitudeFt: '0' },
  unit: { kind: 'heatPump', nominalTons: '3', refrigerant: 'R-410A', ...unit },
  runs,
  observations: [],
  assumptions: [],
  choices: [{ id: 'leave', kind: 'leave', name: 'Leave as is', priceLines: [] }],
});

const answerOf = (runs: Draft[], unit: Draft = {}) => {
  const view = buildView(visit(runs, unit), fieldBook());
  if (view.answer === undefined) throw new Error(view.failure ?? JSON.stringify(view.issues));
  return view.answer;
};
const measureOf = (run: Draft, unit: Draft = {}) => {
  const view = answerOf([{ id: 'a', mode: 'cooling', ...run }], unit).measures.a;
  if (view === undefined) throw new Error('no view of the run');
  return view;
};

describe('what the measuring screens say', () => {
  // Trade note with worked example, status read: 235 V, 75 A, 110 F over 74 F -> 1,548 cfm.
  test('outside: the published electric-heat example, rounded to what it supports, with its formula', () => {
    const { heatRise } = measureOf({
      heatRiseV: '235',
      heatRiseA: '75',
      heatRiseSupplyF: '110',
      heatRiseReturnF: '74',
    });
    expect(heatRise?.result).toMatchObject({
      value: '1,540 cfm',
      perTon: '520 cfm per ton',
      off: true,
      worked: '17.63 kW × 3,412 / (1.08 × 36 °F); 1.08 is corrected for altitude',
    });
    expect(heatRise?.result?.verdict).toBe('too high; healthy is 350 to 450 cfm/ton');
  });

  test('wiring: a traverse says its points, spread, factor and what it lacks', () => {
    const { grille } = measureOf({ grilleFacePointsFpm: ['300', '500', '700'] });
    expect(grille.lines.map(({ name, value }) => `${name}: ${value}`)).toEqual([
      'Points: 3 of 9',
      'Mean: 500 fpm',
      'Spread: 300 to 700 fpm (standard deviation 200 fpm)',
    ]);
    expect(grille.result).toBeUndefined();
    expect(grille.factor).toContain('assumed: 0.70');
    expect(grille.notes).toHaveLength(4);
  });

  test('wiring: the static budget names who takes most and what it says', () => {
    const { statics } = measureOf(
      {
        returnStaticInWc: '-0.4',
        supplyStaticInWc: '0.35',
        filterDropInWc: '0.25',
        coilDropInWc: '0.2',
      },
      { coilCountedIn: 'supplyStatic', ratedStaticInWc: '0.8' },
    );
    expect(statics?.line).toBe('total 0.75 in. w.c. of 0.8 in. w.c.');
    expect(statics?.says).toEqual([
      '0.75 in. w.c. in total: within the 0.8 in. w.c. of the nameplate.',
      'Filter takes the most: 0.25 in. w.c., 33\u00a0% of the total.',
      'The filter takes more than usual: it is dirty, or too fine for its size. Change it and measure again.',
    ]);
    expect(statics?.rows.map(({ id, off }) => [id, off])).toEqual([
      ['returnDucts', false],
      ['filter', true],
      ['coil', false],
      ['supplyDucts', false],
    ]);
  });

  test('wiring: capacitor and strips each end in one plain verdict', () => {
    const { capacitors, strips } = measureOf({
      compressorCapRatedUf: '40',
      compressorCapUf: '37',
      stripKw: '10',
      stripElementCount: '2',
      stripV: '240',
      stripA: '20.5',
    });
    expect(capacitors[0]?.verdict).toMatch(/^Getting weak/);
    expect(capacitors[0]?.line).toBe('Compressor capacitor \u22128\u00a0%');
    expect(strips?.verdict).toMatch(/^The amps fit 1 of 2 elements/);
    expect(strips?.line).toBe('20.5 A of 41.7 A');
  });

  test('wiring: without readings nothing is said, and no result is made up', () => {
    const view = measureOf({});
    expect([view.direct, view.heatRise, view.statics, view.strips]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    expect([view.capacitors, view.table]).toEqual([[], []]);
  });

  test('wiring: pairs say which changes are real and which conditions differ', () => {
    const run = { mode: 'heating', outdoorAirF: '35', returnAirF: '70', suctionPsig: '88' };
    const [pair] = answerOf([
      { id: 'a', ...run, dischargePsig: '400' },
      { id: 'b', ...run, dischargePsig: '330', outdoorAirF: '42' },
    ]).pairs;
    expect(pair).toMatchObject({ fromId: 'a', toId: 'b' });
    expect(pair?.warnings[0]).toMatch(/^Outdoor air changed from 35 to 42 °F/);
    expect(pair?.rows.find(({ id }) => id === 'dischargePsig')).toMatchObject({
      name: 'Discharge pressure, psig',
      before: '400',
      after: '330',
      change: '\u221270',
      real: true,
    });
    expect(pair?.rows.find(({ id }) => id === 'suctionPsig')).toMatchObject({ real: false, change: '0' });
  });

  test('wiring: no place of a measuring sentence is left unfilled, and none shows its code', () => {
    const said = JSON.stringify(
      answerOf([
        {
          id: 'a',
          mode: 'cooling',
          grilleFacePointsFpm: ['300', '500'],
          grilleFaceFpm: '400',
          grilleAreaIn2: '400',
          heatRiseV: '235',
          heatRiseA: '75',
          heatRiseSupplyF: '80',
          heatRiseReturnF: '74',
          airflowCfm: '900',
          returnStaticInWc: '-0.4',
          supplyStaticInWc: '0.5',
          filterDropInWc: '0.3',
          coilDropInWc: '0.4',
          fanCapRatedUf: '5',
          fanCapUf: '6',
          stripKw: '10',
        },
      ]).measures,
    );
    expect(said).not.toMatch(/\{\w+\}|measure\.\w+/);
    const codes = Object.keys(en).filter((code) => code.startsWith('measure.'));
    expect(codes.length).toBeGreaterThan(150);
  });
});
