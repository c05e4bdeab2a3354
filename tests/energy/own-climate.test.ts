import { describe, expect, it } from 'vitest';
import { climateFor } from '@/lib/energy/climate';
import { ownClimate } from '@/lib/energy/own-climate';
import { readBinsCsv } from '@/lib/energy/read-bins-csv';
import words from '@/lib/energy/wording/en.json';
import reference from '../reference/seasonal-climate.json';

const phrases: Readonly<Record<string, string>> = words;
const atlanta = climateFor({ kind: 'city', city: 'atlanta-ga' });
const row = reference.cities.find((c) => c.slug === 'atlanta-ga');
const table = (row?.bin_lower_edges_F ?? []).map((f, i) => `${f},${row?.hours_by_bin[i]}`).join('\n');
const bins = (...rows: [number, number][]) => rows.map(([outdoorF, yearHours]) => ({ outdoorF, yearHours }));
const climateOf = (own: ReturnType<typeof ownClimate>) => {
  if (own.kind === 'none') throw new Error('no climate');
  return own.climate;
};

describe('outside: a city typed in as one\u2019s own table [TMY3 Atlanta, read]', () => {
  const own = climateOf(ownClimate(readBinsCsv(`Low edge F,Hours\n${table}`).bins, atlanta));

  it('gives the same year back, lower edges understood', () => {
    expect(own.binF).toEqual(atlanta.binF);
    expect(own.notes).toEqual([]);
    const off = atlanta.hours.map((h, i) => Math.abs(h - (own.hours[i] ?? Number.NaN)));
    expect(Math.max(...off)).toBeLessThan(1e-9);
  });

  it('finds design temperatures within a bin of those printed in the file, which are of many years', () => {
    expect(Math.abs(own.heatingDesignF - atlanta.heatingDesignF)).toBeLessThan(5);
    expect(Math.abs(own.coolingDesignF - atlanta.coolingDesignF)).toBeLessThan(5);
  });
});

describe('wiring: tables as people have them', () => {
  it('takes middles, any column order, semicolons, rows in any order', () => {
    const read = readBinsCsv('hours;temp F\n3000;80\n2760;30\n3000;55\n');
    expect(read.notes).toEqual([]);
    const climate = climateOf(ownClimate(read.bins, atlanta));
    expect(climate.binF).toEqual([30, 55, 80]);
    expect(climate.notes).toEqual([]);
  });

  it('scales what does not sum to 8,760 and says so', () => {
    const climate = climateOf(ownClimate(bins([30, 1000], [55, 1000], [80, 2000]), atlanta));
    expect(climate.hours.reduce((a, b) => a + b, 0)).toBeCloseTo(8760, 6);
    expect(climate.notes).toEqual([{ code: 'ownBinsSum', values: { hours: 4000 } }]);
  });

  it('adds up a bin that stands there twice and says so', () => {
    const climate = climateOf(ownClimate(bins([30, 2000], [80, 2000], [55, 2760], [30, 2000]), atlanta));
    expect(climate.binF).toEqual([30, 55, 80]);
    expect(climate.notes).toEqual([{ code: 'ownBinsTwice', values: { f: 30 } }]);
    // by hand: 4,000 h at 35 F below 65 F and 2,760 h at 10 F below it
    expect(climate.hdd65Fday).toBeCloseTo((4000 * 35 + 2760 * 10) / 24, 6);
  });

  it('names what it cannot use and uses the rest', () => {
    const read = (text: string) => readBinsCsv(text);
    expect(read('bin,hours\n30,2920\n55,abc\n60,2920\n80,2920\n').notes.map((n) => n.code)).toEqual([
      'ownBinsRowUnread',
    ]);
    expect(read('bin,hours\n30,-5\n55,2920\n60,2920\n80,2920\n').bins).toHaveLength(3);
    expect(read('').notes).toEqual([{ code: 'ownBinsEmpty' }]);
    expect(read('a,b\n1,2').notes).toEqual([{ code: 'ownBinsNoColumns' }]);
  });

  it('falls back on the city of its calendar, marked assumed, when too few bins are left', () => {
    const few = climateFor({ kind: 'own', bins: bins([30, 8760]), calendarCity: 'duluth-mn' });
    expect(few).toMatchObject({ id: 'duluth-mn', basis: 'assumed' });
    expect(few.notes).toEqual([{ code: 'ownBinsTooFew', values: { climate: few.name } }]);
    // no city named for the calendar: the state's stands in, and it is not said that no climate was chosen
    const byState = climateFor({ kind: 'own', bins: bins([30, 8760]) }, 'AZ');
    expect(byState.notes).toEqual([{ code: 'ownBinsTooFew', values: { climate: 'Phoenix AZ' } }]);
    const whole = climateFor({ kind: 'own', bins: bins([30, 2920], [50, 2920], [80, 2920]) }, 'MN');
    expect(whole).toMatchObject({ kind: 'own', basis: 'measured' });
    const codes = Object.keys(words).filter((code) => code.startsWith('ownBins'));
    expect(codes).toHaveLength(6);
    expect(codes.filter((code) => phrases[code] === '')).toEqual([]);
  });
});
