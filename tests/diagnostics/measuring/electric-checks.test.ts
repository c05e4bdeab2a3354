import { describe, expect, it } from 'vitest';
import { deriveRun } from '@/lib/diagnostics/derived/derive-run';
import { capacitorChecks, stripCheck } from '@/lib/diagnostics/measuring/electric-checks';
import { targetsOfRun } from '@/lib/diagnostics/targets/targets-of-run';
import type { Run } from '@/lib/visit/run';
import '../support/matchers';
import { contextOfRun } from '../support/visit-of';

function checked(part: Partial<Run>) {
  const context = contextOfRun({ mode: 'heating', ...part });
  const values = deriveRun(context);
  const { targets } = targetsOfRun(context, values);
  return { capacitors: capacitorChecks(context, values), strips: stripCheck(context, values, targets) };
}

describe('run capacitors', () => {
  // Label tolerance classes 5, 6 and 10 % (EIA-456 / IEC 60252-1 label classes), status secondary.
  it.each([
    [40, 'within'],
    [37.6, 'within'],
    [42.4, 'within'],
    [37, 'low'],
    [36, 'low'],
    [35.9, 'weak'],
    [43, 'high'],
    [44.1, 'strong'],
  ])('outside: 40 uF on the label, %d measured: %s', (compressorCapUf, verdict) => {
    const [found] = checked({ compressorCapRatedUf: 40, compressorCapUf }).capacitors;
    expect(found).toMatchObject({ which: 'compressor', verdict });
  });

  it('identity: label or measurement alone checks nothing; the fan has its own', () => {
    expect(checked({ compressorCapUf: 40, fanCapRatedUf: 5 }).capacitors).toEqual([]);
    const [fan] = checked({ fanCapRatedUf: 5, fanCapUf: 4 }).capacitors;
    expect(fan).toMatchObject({ which: 'fan', verdict: 'weak' });
    expect(fan?.deviationFrac).toBeCloseToWithin(-0.2, 1e-9);
  });
});

describe('electric heat against its kilowatts', () => {
  // P = V^2 / R, status computed: a 5 kW element printed for 240 V draws 20.83 A at 240 V and 18.06 A at 208 V.
  it.each([
    [240, 20.83],
    [208, 18.06],
  ])('outside: 5 kW at %d V should draw %d A', (stripV, amps) => {
    const { strips } = checked({ stripKw: 5, stripV });
    expect(strips?.nominalA).toBeCloseToWithin(amps, 0.01);
    expect(strips).toMatchObject({ volts: stripV, voltsMeasured: true });
    expect(strips?.verdict).toBeUndefined();
  });

  it('identity: half the amps of two elements is one element out', () => {
    const { strips } = checked({ stripKw: 10, stripV: 240, stripElementCount: 2, stripA: 20.5 });
    expect(strips).toMatchObject({ verdict: 'below', elementCount: 2, carryingCount: 1 });
    expect(strips?.ampsPerElementA).toBeCloseToWithin(20.83, 0.01);
  });

  it('identity: amps between two counts say how many no more', () => {
    const of = (stripA: number) =>
      checked({ stripKw: 10, stripV: 240, stripElementCount: 2, stripA }).strips?.carryingCount;
    expect([of(0), of(31), of(41), of(60)]).toEqual([0, undefined, 2, undefined]);
  });

  it('identity: volts nobody read are assumed and said to be', () => {
    expect(checked({ stripKw: 10, stripA: 41 }).strips).toMatchObject({
      voltsMeasured: false,
      verdict: 'within',
    });
    expect(checked({ stripKw: 10, lineV: 230 }).strips).toMatchObject({ voltsMeasured: true, volts: 230 });
    expect(checked({ stripA: 41 }).strips).toBeUndefined();
  });
});
