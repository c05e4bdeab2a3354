import { describe, expect, it } from 'vitest';
import { climateFor } from '@/lib/energy/climate';
import { ownClimate } from '@/lib/energy/own-climate';
import words from '@/lib/energy/wording/en.json';
import reference from '../reference/seasonal-climate.json';

const phrases: Readonly<Record<string, string>> = words;
const atlanta = climateFor({ kind: 'city', city: 'atlanta-ga' });
const row = reference.cities.find((c) => c.slug === 'atlanta-ga');
const table = (row?.bin_lower_edges_F ?? []).map((f, i) => `${f},${row?.hours_by_bin[i]}`).join('\n');
const codesOf = (text: string) => ownClimate(text, atlanta).notes.map((n) => n.code);

describe('outside: a city typed in as one\u2019s own table [TMY3 Atlanta, read]', () => {
  it('gives the same year back, lower edges understood', () => {
    const own = ownClimate(`Low edge F,Hours\n${table}`, atlanta);
    expect(own.kind).toBe('climate');
    const climate = own.kind === 'climate' ? own.climate : undefined;
    expect(climate?.binF).toEqual(atlanta.binF);
    expect(climate?.notes).toEqual([]);
    const off = atlanta.hours.map((h, i) => Math.abs(h - (climate?.hours[i] ?? Number.NaN)));
    expect(Math.max(...off)).toBeLessThan(1e-9);
  });
});

describe('wiring: tables as people have them', () => {
  it('takes middles, any column order, semicolons, rows in any order', () => {
    const own = ownClimate('hours;temp F\n3000;80\n2760;30\n3000;55\n', atlanta);
    expect(own.kind === 'climate' ? own.climate.binF : []).toEqual([30, 55, 80]);
    expect(own.notes).toEqual([]);
  });

  it('scales what does not sum to 8,760 and says so', () => {
    const own = ownClimate('bin,hours\n30,1000\n55,1000\n80,2000\n', atlanta);
    const total = own.kind === 'climate' ? own.climate.hours.reduce((a, b) => a + b, 0) : 0;
    expect(total).toBeCloseTo(8760, 6);
    expect(own.notes).toEqual([{ code: 'ownBinsSum', values: { hours: 4000 } }]);
  });

  it('names what it cannot use and uses the rest', () => {
    expect(codesOf('bin,hours\n30,2920\n55,abc\n60,2920\n80,2920\n')).toEqual(['ownBinsRowUnread']);
    expect(codesOf('bin,hours\n30,-5\n55,2920\n60,2920\n80,2920\n')).toEqual(['ownBinsRowUnread']);
  });

  it('refuses tables that mean nothing', () => {
    expect(codesOf('')).toEqual(['ownBinsEmpty']);
    expect(codesOf('a,b\n1,2')).toEqual(['ownBinsNoColumns']);
    expect(codesOf('bin,hours\n30,1\n30,2\n40,3')).toEqual(['ownBinsTwice']);
    expect(codesOf('bin,hours\n30,8760')).toEqual(['ownBinsTooFew']);
    const codes = Object.keys(words).filter((code) => code.startsWith('ownBins'));
    expect(codes).toHaveLength(6);
    expect(codes.filter((code) => phrases[code] === '')).toEqual([]);
  });
});
