import { describe, expect, it } from 'vitest';
import { heatRiseAirflow } from '@/lib/diagnostics/derived/air-side';
import { heatRiseOf } from '@/lib/diagnostics/measuring/heat-rise';
import '../support/matchers';
import { contextOfRun } from '../support/visit-of';

// Trade note, airflow by electric heat with worked example, status read:
// 235 V, 75 A, 110 F supply, 74 F return -> 60,171 Btu/h (with 3.414) and 1,548 cfm.
const note = {
  mode: 'heating',
  heatRiseV: 235,
  heatRiseA: 75,
  heatRiseSupplyF: 110,
  heatRiseReturnF: 74,
} as const;

describe('airflow by electric heat', () => {
  it('outside: heat and rise of the published example', () => {
    const found = heatRiseOf(contextOfRun(note));
    expect((found?.heatKw ?? 0) * 3_414).toBeCloseToWithin(60_171, 1);
    expect(found).toMatchObject({ riseFd: 36, blowerCounted: false, sensibleBtuhPerCfmFd: 1.08 });
    expect(found?.doubt).toBeUndefined();
  });

  it('identity: the parts shown give the airflow shown, at altitude and with the blower counted', () => {
    for (const altitudeFt of [0, 5_000]) {
      const context = contextOfRun({ ...note, blowerW: 400 }, {}, { site: { altitudeFt } });
      const found = heatRiseOf(context);
      const cfm =
        ((found?.heatKw ?? 0) * 3_412) / ((found?.sensibleBtuhPerCfmFd ?? 0) * (found?.riseFd ?? 0));
      expect(found?.blowerCounted).toBe(true);
      expect(cfm).toBeCloseToWithin(heatRiseAirflow(context)?.value ?? 0, 1e-6);
    }
  });

  it('identity: a small rise and none at all are doubts', () => {
    const at = (heatRiseSupplyF: number) => heatRiseOf(contextOfRun({ ...note, heatRiseSupplyF }))?.doubt;
    expect([at(89), at(88.9), at(74), at(70)]).toEqual([undefined, 'smallRise', 'noRise', 'noRise']);
  });

  it('identity: absent until all four readings are there', () => {
    const { heatRiseA: _left, ...rest } = note;
    expect(heatRiseOf(contextOfRun(rest))).toBeUndefined();
  });
});
