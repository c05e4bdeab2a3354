import { describe, expect, it } from 'vitest';
import { Run } from '@/lib/visit/run';
import { synthesise } from '../../scripts/synthesis/synthesise';
import type { Conditions, UnitSpec } from '../../scripts/synthesis/unit-spec';

const spec: UnitSpec = {
  kind: 'airConditioner',
  refrigerant: 'R-410A',
  metering: 'fixedOrifice',
  nominalTons: 2.5,
  seer: 13,
  compressor: 'scroll',
  blower: 'psc',
};
const conditions: Conditions = { mode: 'cooling', outdoorF: 93, returnF: 77, returnWetBulbF: 66 };

describe('synthesised runs', () => {
  it('wiring: every run passes the schema of the visit', () => {
    expect(Run.safeParse(synthesise(spec, conditions, [], { noiseSeed: 4 }).run).success).toBe(true);
  });

  it('identity: the same seed gives the same run, another seed another, no seed the bare truth rounded', () => {
    const at = (noiseSeed?: number) =>
      synthesise(
        spec,
        conditions,
        [{ fault: 'lowCharge', level: 0.2 }],
        noiseSeed === undefined ? {} : { noiseSeed },
      );
    expect(at(7)).toEqual(at(7));
    expect(at(7).run).not.toEqual(at(8).run);
    expect(
      Math.abs((at().run.suctionPsig ?? 0) - (at().truth.readings.suctionPsig ?? 99)),
    ).toBeLessThanOrEqual(0.5);
  });

  it('identity: a healthy unit has ratios of exactly 1', () => {
    const { truth } = synthesise(spec, conditions, []);
    expect(truth.capacityRatioToHealthy).toBe(1);
    expect(truth.powerRatioToHealthy).toBe(1);
  });

  it('property: readings not taken are left out, and do not change the noise of the others', () => {
    const all = synthesise(spec, conditions, [], { noiseSeed: 3 }).run;
    const few = synthesise(spec, conditions, [], { noiseSeed: 3, keep: ['suctionPsig', 'compressorA'] }).run;
    expect(few.suctionPsig).toBe(all.suctionPsig);
    expect(few.compressorA).toBe(all.compressorA);
    expect(Object.keys(few).sort()).toEqual(['compressorA', 'id', 'mode', 'runningMinutes', 'suctionPsig']);
  });
});
