import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coolingHour, heatingHour } from '@/lib/energy/bin-hour';

const BTUH_PER_W = 3.412142;
const heatPump = { grossBtuh: 20_000, outdoorW: 2_500, blowerW: 500, stripW: 10_000, cyclicFrac: 0.2 };

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
    const hour = heatingHour({ ...heatPump, grossBtuh: 0, loadBtuh: full / 4 });
    expect(hour.stripW).toBeCloseTo(2_500, 9);
    expect(hour.blowerW).toBeCloseTo(125, 9);
    expect(hour.outdoorW).toBe(0);
    expect(hour.stripBtuh).toBeCloseTo(full / 4, 9);
  });

  it('without strips and compressor everything is unmet', () => {
    const hour = heatingHour({ ...heatPump, grossBtuh: 0, stripW: 0, loadBtuh: 9_000 });
    expect(hour).toMatchObject({ stripW: 0, blowerW: 0, stripBtuh: 0, unmetBtuh: 9_000 });
  });
});

describe('outside: cooling hours worked by hand', () => {
  const unit = { grossBtuh: 36_000, outdoorW: 3_000, blowerW: 600, cyclicFrac: 0.1 };

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

const positive = (max: number) => fc.double({ min: 0, max, noNaN: true });
const heatingInput = fc.record({
  loadBtuh: positive(80_000),
  grossBtuh: positive(60_000),
  outdoorW: positive(6_000),
  blowerW: positive(1_000),
  stripW: positive(20_000),
  cyclicFrac: positive(0.25),
});

describe('identity: energy closes in every hour', () => {
  it('heating: load is what compressor and strips give, plus unmet', () => {
    fc.assert(
      fc.property(heatingInput, (input) => {
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
      fc.property(heatingInput, (input) => {
        const hour = coolingHour(input);
        expect(Math.abs(hour.deliveredBtuh + hour.unmetBtuh - input.loadBtuh)).toBeLessThan(1e-6);
        expect(hour.unmetBtuh).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe('property: less capacity or more power never draws less', () => {
  it('heating', () => {
    fc.assert(
      fc.property(heatingInput, positive(0.9), positive(2_000), (input, lost, more) => {
        const total = (i: typeof input) => {
          const hour = heatingHour(i);
          return hour.outdoorW + hour.blowerW + hour.stripW;
        };
        fc.pre(input.grossBtuh > 100);
        expect(total({ ...input, outdoorW: input.outdoorW + more })).toBeGreaterThanOrEqual(total(input));
        expect(total({ ...input, grossBtuh: input.grossBtuh * (1 - lost) })).toBeGreaterThanOrEqual(
          total(input) - 1e-9,
        );
      }),
    );
  });

  it('cooling', () => {
    fc.assert(
      fc.property(heatingInput, positive(0.9), positive(2_000), (input, lost, more) => {
        const total = (i: typeof input) => {
          const hour = coolingHour(i);
          return hour.outdoorW + hour.blowerW;
        };
        expect(total({ ...input, outdoorW: input.outdoorW + more })).toBeGreaterThanOrEqual(total(input));
        expect(total({ ...input, grossBtuh: input.grossBtuh * (1 - lost) })).toBeGreaterThanOrEqual(
          total(input) - 1e-9,
        );
      }),
    );
  });
});
