import { describe, expect, it } from 'vitest';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import { dischargeF, healthyDischarge } from '@/lib/diagnostics/targets/healthy-discharge';
import { RefrigerantName } from '@/lib/visit/refrigerant-names';
import checks from '../../reference/refrigerants-cycle-checks.json';
import '../support/matchers';
import { contextOfRun, contextOfUnknownRefrigerant } from '../support/visit-of';

const possible = checks.points.filter((point) => point.possible);

describe('discharge temperature of a compression', () => {
  // The check cycles print the discharge line and the efficiency that belongs to it: the way back within 0.3 F
  // (0.0005 of printed efficiency and 0.05 F of superheat move it by less).
  it.each(possible)('outside: $id: efficiency gives back the discharge line', (point) => {
    const { input, expected } = point;
    const p = refrigerantProperties(RefrigerantName.parse(input.refrigerant));
    const found = dischargeF(
      p,
      input.suction_psig + input.atmosphere_psia,
      expected.superheat_F,
      input.discharge_psig + input.atmosphere_psia,
      expected.isentropicEfficiency,
    );
    expect(found).toBeCloseToWithin(input.dischargeLine_F, 0.3);
  });

  it('identity: efficiency 1 is the lossless temperature; negative superheat counts as none', () => {
    const p = refrigerantProperties('R-410A');
    const lossless = p.isentropicDischarge(140, Number(p.dewF(140)) + 10, 380);
    expect(dischargeF(p, 140, 10, 380, 1)).toBeCloseToWithin(
      'dischargeF' in lossless ? lossless.dischargeF : null,
      0.1,
    );
    expect(dischargeF(p, 140, -5, 380, 0.7)).toBe(dischargeF(p, 140, 0, 380, 0.7));
    expect(dischargeF(p, 1e6, 10, 380, 0.7)).toBeNaN();
  });
});

describe('discharge line of a healthy unit', () => {
  const superheat = { value: 10, sd: 3 };

  // Trade article, read: 160-180 F on healthy units in hot humid summer weather, no class given. Today's R-410A units
  // are meant; 5 F to either side for classes the author did not see.
  it.each([10, 12, 13, 14])(
    'outside: an R-410A unit of %d SEER in summer weather lies within 155-185 F',
    (seer) => {
      const run = { mode: 'cooling', outdoorAirF: 92, returnAirF: 76, returnWetBulbF: 65 } as const;
      const context = contextOfRun(run, { ratings: { seerBtuPerWh: seer } });
      const value = healthyDischarge(context, superheat)?.value ?? Number.NaN;
      expect(value).toBeGreaterThan(155);
      expect(value).toBeLessThan(185);
    },
  );

  it('identity: more superheat or a hotter day makes it hotter', () => {
    const at = (outdoorAirF: number, value: number) =>
      healthyDischarge(contextOfRun({ mode: 'cooling', outdoorAirF, returnAirF: 76, returnWetBulbF: 64 }), {
        value,
        sd: 3,
      })?.value ?? Number.NaN;
    expect(at(90, 20)).toBeGreaterThan(at(90, 10));
    expect(at(100, 10)).toBeGreaterThan(at(85, 10));
  });

  it('identity: without conditions the pressures read stand in, without both there is none', () => {
    const read = contextOfRun({ mode: 'cooling', suctionPsig: 125, dischargePsig: 360 });
    expect(healthyDischarge(read, superheat)?.at).toBe('pressuresRead');
    expect(healthyDischarge(contextOfRun({ mode: 'cooling' }), superheat)).toBeUndefined();
    expect(
      healthyDischarge(contextOfUnknownRefrigerant({ mode: 'cooling', outdoorAirF: 90 }), superheat),
    ).toBeUndefined();
    const upsideDown = contextOfRun({ mode: 'cooling', suctionPsig: 300, dischargePsig: 120 });
    expect(healthyDischarge(upsideDown, superheat)).toBeUndefined();
  });
});
