import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coolingHour, heatingHour } from '@/lib/energy/bin-hour';

const BTUH_PER_W = 3.412142;
const step = { grossBtuh: 20_000, outdoorW: 2_500, blowerW: 500 };
const heatPump = { steps: [step], stripW: 10_000, stripBlowerW: 500, cyclicFrac: 0.2 };

describe('outside: heating hours worked by hand [part-load factor of AHRI 210/240; 1 W = 3.412142 Btu/h]', () => {
  it('half load with coefficient 0.2 runs 0.5 / 0.9 of the time', () => {
    const netBtuh = 20_000 + 500 * BTUH_PER_W;
    const hour = heatingHour({ ...heatPump, loadBtuh: netBtuh / 2 });
    expect(hour.runningFrac).toBeCloseTo(0.5 / 0.9, 12);
    expect(hour.outdoorW).toBeCloseTo((2_500 * 0.5) / 0.9, 9);
    expect(hour.blowerW).toBeCloseTo((500 * 0.5) / 0.9, 9);
    expect(hour.stripW).toBe(0);
  });

  it('strips carry the rest at 3.412 Btu/h per watt, and 5 kW gives 17,061 Btu/h', () => {
    const netBtuh = 20_000 + 500 * BTUH_PER_W;
    const hour = heatingHour({ ...heatPump, loadBtuh: netBtuh + 17_060.71 });
    expect(hour.stripW).toBeCloseTo(5_000, 6);
    expect(hour.runningFrac).toBe(1);
    expect(hour.unmetBtuh).toBe(0);
  });

  it('what strips cannot carry is unmet', () => {
    const netBtuh = 20_000 + 500 * BTUH_PER_W;
    const hour = heatingHour({ ...heatPump, loadBtuh: netBtuh + 10_000 * BTUH_PER_W + 123 });
    expect(hour.stripW).toBeCloseTo(10_000, 9);
    expect(hour.unmetBtuh).toBeCloseTo(123, 6);
  });

  it('with the compressor off, strips and blower share the hour', () => {
    const full = 10_000 * BTUH_PER_W + 500 * BTUH_PER_W;
    const hour = heatingHour({ ...heatPump, steps: [], loadBtuh: full / 4 });
    expect(hour.stripW).toBeCloseTo(2_500, 9);
    expect(hour.blowerW).toBeCloseTo(125, 9);
    expect(hour.outdoorW).toBe(0);
    expect(hour.stripBtuh).toBeCloseTo(full / 4, 9);
  });

  it('without strips and compressor everything is unmet', () => {
    const hour = heatingHour({ ...heatPump, steps: [], stripW: 0, loadBtuh: 9_000 });
    expect(hour).toMatchObject({ stripW: 0, blowerW: 0, stripBtuh: 0, unmetBtuh: 9_000 });
  });
});

describe('outside: cooling hours worked by hand', () => {
  const unit = { steps: [{ grossBtuh: 36_000, outdoorW: 3_000, blowerW: 600 }], cyclicFrac: 0.1 };

  it('blower heat comes off the capacity; half load runs 0.5 / 0.95 of the time', () => {
    const netBtuh = 36_000 - 600 * BTUH_PER_W;
    const hour = coolingHour({ ...unit, loadBtuh: netBtuh / 2 });
    expect(hour.runningFrac).toBeCloseTo(0.5 / 0.95, 12);
    expect(hour.outdoorW).toBeCloseTo((3_000 * 0.5) / 0.95, 9);
    expect(hour.unmetBtuh).toBe(0);
  });

  it('beyond its capacity it runs all hour and leaves the rest', () => {
    const netBtuh = 36_000 - 600 * BTUH_PER_W;
    const hour = coolingHour({ ...unit, loadBtuh: netBtuh + 1_000 });
    expect(hour.runningFrac).toBe(1);
    expect(hour.outdoorW).toBe(3_000);
    expect(hour.unmetBtuh).toBeCloseTo(1_000, 9);
  });

  it('nothing is asked, nothing runs', () => {
    expect(coolingHour({ ...unit, loadBtuh: 0 }).outdoorW).toBe(0);
    expect(heatingHour({ ...heatPump, loadBtuh: 0 }).blowerW).toBe(0);
  });
});

describe('outside: two speeds share the hour [AHRI 210/240, secondary; worked by hand]', () => {
  const low = { grossBtuh: 20_000, outdoorW: 1_200, blowerW: 0 };
  const high = { grossBtuh: 30_000, outdoorW: 2_400, blowerW: 0 };
  const unit = { steps: [low, high], cyclicFrac: 0.08 };

  it('below the low speed it cycles, between them it shares, above it runs full', () => {
    expect(coolingHour({ ...unit, loadBtuh: 10_000 }).outdoorW).toBeCloseTo((1_200 * 0.5) / 0.96, 9);
    expect(coolingHour({ ...unit, loadBtuh: 20_000 }).outdoorW).toBeCloseTo(1_200, 9);
    expect(coolingHour({ ...unit, loadBtuh: 25_000 }).outdoorW).toBeCloseTo(1_800, 9);
    expect(coolingHour({ ...unit, loadBtuh: 40_000 })).toMatchObject({ outdoorW: 2_400, unmetBtuh: 10_000 });
  });
});

describe('outside: a variable speed runs between its speeds [2023 rule of AHRI 210/240, memory; worked by hand]', () => {
  const low = { grossBtuh: 10_000, outdoorW: 500, blowerW: 0 };
  const high = { grossBtuh: 30_000, outdoorW: 3_000, blowerW: 0 };
  const unit = { steps: [low, high], cyclicFrac: 0.4, mixing: 'modulate' as const };

  it('its efficiency lies between theirs in proportion to the load', () => {
    // 20 and 10 Btu/Wh: half way 15, so 20,000 Btu/h take 1,333 W; sharing the hour would take 1,750 W
    expect(coolingHour({ ...unit, loadBtuh: 20_000 }).outdoorW).toBeCloseTo(20_000 / 15, 9);
    expect(coolingHour({ ...unit, mixing: 'share', loadBtuh: 20_000 }).outdoorW).toBeCloseTo(1_750, 9);
    expect(coolingHour({ ...unit, loadBtuh: 30_000 }).outdoorW).toBeCloseTo(3_000, 9);
    expect(coolingHour({ ...unit, loadBtuh: 5_000 }).outdoorW).toBeCloseTo((500 * 0.5) / 0.8, 9);
  });
});

const positive = (max: number) => fc.double({ min: 0, max, noNaN: true });
const stepArbitrary = fc.record({
  grossBtuh: fc.double({ min: 1_000, max: 40_000, noNaN: true }),
  outdoorW: positive(5_000),
  blowerW: positive(800),
});
/** One to three speeds, each with more of everything than the one below. */
const stepsArbitrary = fc.array(stepArbitrary, { minLength: 1, maxLength: 3 }).map((parts) =>
  parts.map((_, i) => ({
    grossBtuh: parts.slice(0, i + 1).reduce((a, s) => a + s.grossBtuh, 0),
    outdoorW: parts.slice(0, i + 1).reduce((a, s) => a + s.outdoorW, 0),
    blowerW: parts[0]?.blowerW ?? 0,
  })),
);
const hourInput = fc.record({
  loadBtuh: positive(90_000),
  steps: stepsArbitrary,
  stripW: positive(20_000),
  stripBlowerW: positive(1_000),
  cyclicFrac: positive(0.4),
  mixing: fc.constantFrom('share' as const, 'modulate' as const),
});
type HourInput = Parameters<typeof heatingHour>[0];
const scaled = (input: HourInput, capacity: number, moreW: number): HourInput => ({
  ...input,
  steps: input.steps.map((s) => ({
    ...s,
    grossBtuh: s.grossBtuh * capacity,
    outdoorW: s.outdoorW + moreW,
  })),
});

describe('identity: energy closes in every hour', () => {
  it('heating: load is what compressor and strips give, plus unmet', () => {
    fc.assert(
      fc.property(hourInput, (input) => {
        const hour = heatingHour(input);
        const given = hour.compressorBtuh + hour.stripBtuh + hour.unmetBtuh;
        expect(Math.abs(given - input.loadBtuh)).toBeLessThan(1e-6);
        expect(hour.unmetBtuh).toBeGreaterThanOrEqual(-1e-9);
        expect(hour.runningFrac).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('cooling: load is what the unit gives, plus unmet', () => {
    fc.assert(
      fc.property(hourInput, (input) => {
        const hour = coolingHour(input);
        expect(Math.abs(hour.deliveredBtuh + hour.unmetBtuh - input.loadBtuh)).toBeLessThan(1e-6);
        expect(hour.unmetBtuh).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe('property: less capacity or more power never draws less', () => {
  it('heating', () => {
    const total = (i: HourInput) => {
      const hour = heatingHour(i);
      return hour.outdoorW + hour.blowerW + hour.stripW;
    };
    fc.assert(
      fc.property(hourInput, positive(0.9), positive(2_000), (input, lost, more) => {
        expect(total(scaled(input, 1, more))).toBeGreaterThanOrEqual(total(input) - 1e-9);
        expect(total(scaled(input, 1 - lost, 0))).toBeGreaterThanOrEqual(total(input) - 1e-9);
      }),
    );
  });

  it('cooling', () => {
    const total = (i: HourInput) => {
      const hour = coolingHour(i);
      return hour.outdoorW + hour.blowerW;
    };
    fc.assert(
      fc.property(hourInput, positive(0.9), positive(2_000), (input, lost, more) => {
        expect(total(scaled(input, 1, more))).toBeGreaterThanOrEqual(total(input) - 1e-9);
        expect(total(scaled(input, 1 - lost, 0))).toBeGreaterThanOrEqual(total(input) - 1e-9);
      }),
    );
  });
});
