import { describe, expect, it } from 'vitest';
import {
  compressorCapacitor,
  fanCapacitor,
  loadAmpsRatio,
  stripAmpsRatio,
  stripNominalAmps,
  voltageDeviation,
} from '@/lib/diagnostics/derived/electric-side';
import './support/matchers';
import { contextOfRun } from './support/visit-of';

describe('electric side', () => {
  // P = V^2 / R for 5 kW printed at 240 V (11.52 ohm): 20.83, 19.97 and 18.06 A, printed to 0.01 A.
  it.each([
    [240, 20.83],
    [230, 19.97],
    [208, 18.06],
  ])('outside: a 5 kW strip draws its amps at %d V: %f A', (stripV, amps) => {
    const context = contextOfRun({ mode: 'heating', stripKw: 5, stripV });
    expect(stripNominalAmps(context)?.value).toBeCloseToWithin(amps, 0.01);
  });

  it('outside: 5 kW strips draw about 19-21 A between 220 and 242 V [common practice]', () => {
    const at = (stripV: number) =>
      stripNominalAmps(contextOfRun({ mode: 'heating', stripKw: 5, stripV }))?.value ?? 0;
    expect(at(220)).toBeGreaterThanOrEqual(19);
    expect(at(242)).toBeLessThanOrEqual(21.05);
  });

  it('identity: strip ratio is amps over nominal; volts fall back to the line', () => {
    const context = contextOfRun({ mode: 'heating', stripKw: 10, stripA: 20.83, stripV: 240 });
    expect(stripAmpsRatio(context)?.value).toBeCloseToWithin(0.5, 0.001);
    const line = contextOfRun({ mode: 'heating', stripKw: 5, stripA: 19.97, lineV: 230 });
    expect(stripAmpsRatio(line)?.value).toBeCloseToWithin(1, 0.001);
  });

  // Homeowner case, read: 33 uF found on a 40 uF label is -17.5 %.
  it('outside: 33 of 40 uF is 17.5 % low', () => {
    const context = contextOfRun({ mode: 'cooling', compressorCapUf: 33, compressorCapRatedUf: 40 });
    expect(compressorCapacitor(context)?.value).toBeCloseToWithin(-0.175, 1e-9);
  });

  it('outside: 4.5 of 5 uF is just 10 % low [common practice]', () => {
    const context = contextOfRun({ mode: 'cooling', fanCapUf: 4.5, fanCapRatedUf: 5 });
    expect(fanCapacitor(context)?.value).toBeCloseToWithin(-0.1, 1e-9);
  });

  it('identity: voltage and amps against the nameplate; absent without it', () => {
    const run = { mode: 'cooling', lineV: 207, compressorA: 12 } as const;
    const context = contextOfRun(run, { ratedV: 230, ratedLoadA: 16 });
    expect(voltageDeviation(context)?.value).toBeCloseToWithin(-0.1, 1e-9);
    expect(loadAmpsRatio(context)?.value).toBeCloseToWithin(0.75, 1e-9);
    expect(voltageDeviation(contextOfRun(run))).toBeUndefined();
    expect(loadAmpsRatio(contextOfRun(run))).toBeUndefined();
  });
});
