import { describe, expect, it } from 'vitest';
import { bestChangePoint, fitChangePoint } from '@/lib/energy/bills/change-point-fit';
import { type BillPoint, expectedKwhPerDay } from '@/lib/energy/bills/change-point-model';
import { randomStream } from '@/lib/math/random';
import reference from '../../reference/seasonal-bills.json';

const { checks } = reference;
const pointsOf = (kwhPerDay: readonly number[]): BillPoint[] =>
  checks.temperatures_F.map((meanF, i) => ({ meanF, kwhPerDay: kwhPerDay[i] ?? 0 }));

describe('outside: constructed data sets with known answers [constructed, fitted there on the same 0.1 F grid]', () => {
  it('exact five-parameter set is recovered', () => {
    const fit = fitChangePoint(pointsOf(checks.exact_5P.kWh_per_day), '5P');
    const { true: truth } = checks.exact_5P;
    expect(fit?.baseKwhPerDay).toBeCloseTo(truth.b0, 9);
    expect(fit?.heatingKwhPerDayF).toBeCloseTo(truth.heating_slope, 9);
    expect(fit?.coolingKwhPerDayF).toBeCloseTo(truth.cooling_slope, 9);
    expect(fit?.heatingChangeF).toBe(truth.ch);
    expect(fit?.coolingChangeF).toBe(truth.cc);
    expect(fit?.sse).toBeLessThan(1e-18);
  });

  it('noisy five-parameter set: change points, coefficients and statistics', () => {
    const fit = fitChangePoint(pointsOf(checks.noisy_5P.kWh_per_day), '5P');
    const answer = checks.noisy_5P['fit_0.1F_grid'];
    expect([fit?.heatingChangeF, fit?.coolingChangeF]).toEqual(answer.change_points_F);
    // printed to four decimals
    expect(fit?.baseKwhPerDay).toBeCloseTo(answer.coefficients[0] ?? 0, 4);
    expect(fit?.heatingKwhPerDayF).toBeCloseTo(answer.coefficients[1] ?? 0, 4);
    expect(fit?.coolingKwhPerDayF).toBeCloseTo(answer.coefficients[2] ?? 0, 4);
    expect(fit?.sse).toBeCloseTo(answer.SSE, 5);
    expect(fit?.rmseKwhPerDay).toBeCloseTo(answer.RMSE, 4);
    expect((fit?.cvRmseFrac ?? 0) * 100).toBeCloseTo(answer.CV_RMSE_pct, 3);
    expect(fit?.r2).toBeCloseTo(answer.R2, 5);
    expect(fit?.p).toBe(answer.p);
  });

  it('exact three-parameter cooling set is recovered, and preferred over kinds with more parameters', () => {
    const fit = bestChangePoint(pointsOf(checks.exact_3P_cooling.kWh_per_day));
    expect(fit?.kind).toBe('3PC');
    expect(fit?.coolingChangeF).toBe(checks.exact_3P_cooling.true.c);
    expect(fit?.coolingKwhPerDayF).toBeCloseTo(checks.exact_3P_cooling.true.slope, 9);
    expect(fit?.baseKwhPerDay).toBeCloseTo(checks.exact_3P_cooling.true.b0, 9);
  });

  it('the five-parameter sets are preferred where they belong', () => {
    expect(bestChangePoint(pointsOf(checks.exact_5P.kWh_per_day))?.kind).toBe('5P');
    expect(bestChangePoint(pointsOf(checks.noisy_5P.kWh_per_day))?.kind).toBe('5P');
  });
});

describe('identity: statistics follow their formulas', () => {
  it('RMSE, CV(RMSE) and NMBE with n - p, change points counted', () => {
    const points = pointsOf(checks.noisy_5P.kWh_per_day);
    const fit = fitChangePoint(points, '4P');
    const residuals = points.map(
      (q) => q.kwhPerDay - (fit === undefined ? 0 : expectedKwhPerDay(fit, q.meanF)),
    );
    const sse = residuals.reduce((a, r) => a + r * r, 0);
    const mean = points.reduce((a, q) => a + q.kwhPerDay, 0) / 12;
    expect(fit?.p).toBe(4);
    expect(fit?.sse).toBeCloseTo(sse, 9);
    expect(fit?.rmseKwhPerDay).toBeCloseTo(Math.sqrt(sse / 8), 9);
    expect(fit?.cvRmseFrac).toBeCloseTo(Math.sqrt(sse / 8) / mean, 12);
    // least squares with an intercept: residuals add up to nothing
    expect(Math.abs(fit?.nmbeFrac ?? 1)).toBeLessThan(1e-12);
  });

  it('a straight line is the textbook regression', () => {
    const fit = fitChangePoint(
      [
        { meanF: 40, kwhPerDay: 50 },
        { meanF: 50, kwhPerDay: 42 },
        { meanF: 60, kwhPerDay: 30 },
        { meanF: 70, kwhPerDay: 22 },
      ],
      '2P',
    );
    // slope = sum (x - 55)(y - 36) / sum (x - 55)^2 = -480 / 500
    expect(fit?.lineKwhPerDayF).toBeCloseTo(-0.96, 12);
    expect(fit?.baseKwhPerDay).toBeCloseTo(36 + 0.96 * 55, 9);
  });

  it('the plain mean is the mean', () => {
    const fit = fitChangePoint(pointsOf(checks.temperatures_F.map((_, i) => i)), '1P');
    expect(fit?.baseKwhPerDay).toBeCloseTo(5.5, 12);
    expect(fit?.r2).toBeCloseTo(0, 12);
  });
});

describe('property: fits of noisy data', () => {
  it('find known parameters within their own 95 % intervals in at least 90 % of 100 seeded sets', () => {
    const truth = { base: 22, heating: 1.55, ch: 60, cooling: 1.9, cc: 65 };
    let base = 0;
    let heating = 0;
    let cooling = 0;
    let changes = 0;
    for (let seed = 0; seed < 100; seed += 1) {
      const stream = randomStream(seed, 'bills');
      const points = checks.temperatures_F.map((meanF) => ({
        meanF,
        kwhPerDay:
          truth.base +
          truth.heating * Math.max(0, truth.ch - meanF) +
          truth.cooling * Math.max(0, meanF - truth.cc) +
          1.2 * stream.normal(),
      }));
      const fit = fitChangePoint(points, '5P');
      const within = (value: number, at: { low: number; high: number } | undefined) =>
        at !== undefined && at.low <= value && value <= at.high ? 1 : 0;
      base += within(truth.base, fit?.intervals.baseKwhPerDay);
      heating += within(truth.heating, fit?.intervals.heatingKwhPerDayF);
      cooling += within(truth.cooling, fit?.intervals.coolingKwhPerDayF);
      changes += within(truth.ch, fit?.intervals.heatingChangeF);
    }
    expect(base).toBeGreaterThanOrEqual(90);
    expect(heating).toBeGreaterThanOrEqual(90);
    expect(cooling).toBeGreaterThanOrEqual(90);
    expect(changes).toBeGreaterThanOrEqual(90);
  });

  it('too few points give no fit', () => {
    expect(fitChangePoint(pointsOf(checks.exact_5P.kWh_per_day).slice(0, 5), '5P')).toBeUndefined();
    expect(bestChangePoint([])).toBeUndefined();
  });

  it('use that falls with heat and with cold has no change-point line, only a mean', () => {
    const upsideDown = checks.temperatures_F.map((meanF) => ({
      meanF,
      kwhPerDay: 60 - Math.abs(meanF - 60),
    }));
    expect(fitChangePoint(upsideDown, '5P')).toBeUndefined();
    expect(bestChangePoint(upsideDown)?.p).toBeLessThanOrEqual(3);
  });
});
