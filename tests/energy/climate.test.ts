import { describe, expect, it } from 'vitest';
import procedure from '@/lib/diagnostics/healthy-unit/data/test-procedure.json';
import type { Region } from '@/lib/diagnostics/healthy-unit/seasonal-rating';
import { cities, findCity } from '@/lib/energy/city-list';
import { climateFor } from '@/lib/energy/climate';
import { type Climate, hoursByMonthAndBin } from '@/lib/energy/climate-model';
import { loadClimate } from '@/lib/energy/load-climate';
import words from '@/lib/energy/wording/en.json';
import reference from '../reference/seasonal-climate.json';

const regions: readonly Region[] = ['I', 'II', 'III', 'IV', 'V', 'VI'];
const daysOfMonth = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const city = (slug: string) => climateFor({ kind: 'city', city: slug });

function hoursByBin(climate: Climate): number[] {
  const bins = climate.binF.length;
  const result = new Array<number>(bins).fill(0);
  climate.hours.forEach((h, i) => {
    result[i % bins] = (result[i % bins] ?? 0) + h;
  });
  return result;
}

function degreeDays(climate: Climate, excess: (f: number) => number): number {
  return hoursByBin(climate).reduce((sum, h, bin) => sum + (h * excess(climate.binF[bin] ?? 0)) / 24, 0);
}

describe('outside: typical years [TMY3, reduced independently of the packing]', () => {
  it('there are as many cities as files read', () => {
    expect(reference.cities).toHaveLength(29);
    expect(cities.map((c) => c.slug)).toEqual(reference.cities.map((c) => c.slug));
  });

  it.each(reference.cities)('$city: bins, hours, months and design temperatures', (row) => {
    const climate = city(row.slug);
    expect(climate.binF).toEqual(row.bin_lower_edges_F.map((f) => f + 2.5));
    expect(hoursByBin(climate)).toEqual(row.hours_by_bin);
    expect(climate.hours.reduce((a, b) => a + b, 0)).toBe(8760);
    const bins = climate.binF.length;
    const months = hoursByMonthAndBin(climate);
    daysOfMonth.forEach((days, m) => {
      const hours = months.slice(m * bins, (m + 1) * bins).reduce((a, b) => a + b, 0);
      expect(hours).toBe(days * 24);
    });
    const july = (6 * 24 + 15) * bins;
    expect(climate.hours.slice(july, july + bins)).toEqual(row.july_hour_16_by_bin);
    expect(climate.heatingDesignF).toBe(row.heating_99_db_F);
    expect(climate.coolingDesignF).toBe(row.cooling_1_db_F);
  });

  it.each(reference.cities)('$city: mean temperatures from bin middles are those of the hours', (row) => {
    const climate = city(row.slug);
    const bins = climate.binF.length;
    const months = hoursByMonthAndBin(climate);
    expect.assertions(13);
    let year = 0;
    row.monthly_mean_db_F.forEach((mean, m) => {
      let sum = 0;
      climate.binF.forEach((f, bin) => {
        sum += f * (months[m * bins + bin] ?? 0);
      });
      year += sum / 8760;
      // bins are 5 F wide: a month's mean from their middles is off by a few tenths
      expect(Math.abs(sum / ((daysOfMonth[m] ?? 0) * 24) - mean)).toBeLessThan(0.6);
    });
    expect(Math.abs(year - row.annual_mean_db_F)).toBeLessThan(0.3);
  });

  it.each(reference.cities)(
    '$city: degree-days from bins stand to those of daily means as they must',
    (row) => {
      const climate = city(row.slug);
      const heating = degreeDays(climate, (f) => Math.max(0, 65 - f));
      const cooling = degreeDays(climate, (f) => Math.max(0, f - 65));
      // degree-hours are never less than degree-days of daily means; days that straddle 65 F add up to about 400 a year
      expect(heating - row.hdd65_from_daily_hourly_mean).toBeGreaterThan(-35);
      expect(heating - row.hdd65_from_daily_hourly_mean).toBeLessThan(450);
      expect(cooling - row.cdd65_from_daily_hourly_mean).toBeGreaterThan(-35);
      expect(cooling - row.cdd65_from_daily_hourly_mean).toBeLessThan(450);
      // heating less cooling is linear in temperature, so here both ways agree
      const net = row.hdd65_from_daily_hourly_mean - row.cdd65_from_daily_hourly_mean;
      expect(Math.abs(heating - cooling - net)).toBeLessThan(100);
      expect(climate.hdd65Fday).toBe(row.hdd65_F_day);
      expect(climate.cdd65Fday).toBe(row.cdd65_F_day);
    },
  );

  it('Atlanta agrees with a published reduction of the same file [weather cache of an open residential model, read]', () => {
    const atlanta = reference.cities.find((c) => c.slug === 'atlanta-ga');
    expect(
      Math.abs((atlanta?.hdd65_from_daily_hourly_mean ?? 0) - reference.published.hdd65_published),
    ).toBeLessThan(1);
    const climate = city('Atlanta');
    const mean = hoursByBin(climate).reduce((sum, h, bin) => sum + (h * (climate.binF[bin] ?? 0)) / 8760, 0);
    expect(Math.abs(mean - reference.published.mean_published)).toBeLessThan(0.25);
  });
});

describe('identity: test-procedure regions as a year', () => {
  it.each(regions)('region %s has 8,760 hours and gives its load hours back', (region) => {
    const climate = climateFor({ kind: 'region', region });
    const table = procedure.regions[region];
    const hours = hoursByBin(climate);
    expect(hours.reduce((a, b) => a + b, 0)).toBeCloseTo(8760, 6);
    let heating = 0;
    let cooling = 0;
    climate.binF.forEach((f, bin) => {
      heating += ((hours[bin] ?? 0) * Math.max(0, 65 - f)) / (65 - table.outdoorDesignF);
      cooling += ((hours[bin] ?? 0) * Math.max(0, f - 65)) / 30;
    });
    expect(heating).toBeCloseTo(table.older.loadHours, 6);
    expect(cooling).toBeCloseTo(table.coolingLoadHours, 6);
  });

  it.each(regions)('region %s keeps its bin fractions', (region) => {
    const climate = climateFor({ kind: 'region', region });
    const hours = hoursByBin(climate);
    const table = procedure.regions[region];
    const heatingHours = procedure.heatingBinF.map((f) => hours[climate.binF.indexOf(f)] ?? 0);
    const total = heatingHours.reduce((a, b) => a + b, 0);
    const sum = table.older.binFrac.reduce((a, b) => a + b, 0);
    expect.assertions(18);
    heatingHours.forEach((h, i) => {
      expect(h / total).toBeCloseTo((table.older.binFrac[i] ?? 0) / sum, 9);
    });
  });
});

describe('wiring: choosing a climate', () => {
  it('finds a city by slug, name, name and state, in any case', () => {
    expect.assertions(8);
    for (const text of ['new-york-jfk-ny', 'New York', 'new york ny', 'NEW YORK, NY', '  New  York ']) {
      expect(findCity(text)?.slug).toBe('new-york-jfk-ny');
    }
    expect(findCity('Chicago, IL')?.slug).toBe('chicago-ohare-il');
    expect(findCity('Portland ME')).toBeUndefined();
    expect(findCity(' ')).toBeUndefined();
  });

  it('stands in for an unknown or missing choice, and says so in words that exist', () => {
    const phrases: Readonly<Record<string, string>> = words;
    const unknown = climateFor({ kind: 'city', city: 'Erewhon' }, 'TN');
    const byState = climateFor(undefined, 'TN');
    const nothing = climateFor(undefined);
    expect(unknown.id).toBe('atlanta-ga');
    expect(unknown.notes.map((n) => n.code)).toEqual(['climateUnknownCity', 'climateByState']);
    expect(byState.basis).toBe('assumed');
    expect(nothing.id).toBe('region-IV');
    expect(nothing.notes.map((n) => n.code)).toEqual(['climateAssumedRegion']);
    const codes = [...unknown.notes, ...nothing.notes].map((n) => n.code);
    expect(codes.filter((code) => phrases[code] === undefined)).toEqual([]);
  });

  it('loading one city gives the same climate as the whole table', async () => {
    expect.assertions(31);
    for (const { slug } of cities) {
      expect(await loadClimate({ kind: 'city', city: slug })).toEqual(city(slug));
    }
    expect(await loadClimate({ kind: 'region', region: 'VI' })).toEqual(
      climateFor({ kind: 'region', region: 'VI' }),
    );
    expect(await loadClimate(undefined, 'OH')).toEqual(climateFor(undefined, 'OH'));
  });
});
