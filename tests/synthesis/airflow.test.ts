import { describe, expect, it } from 'vitest';
import { airSide } from '../../scripts/synthesis/airflow';
import type { ImposedFault, UnitSpec } from '../../scripts/synthesis/unit-spec';

const spec: UnitSpec = {
  kind: 'heatPump',
  refrigerant: 'R-410A',
  metering: 'txv',
  nominalTons: 3,
  seer: 14,
  compressor: 'scroll',
  blower: 'psc',
  externalStaticInWc: 0.5,
};
const at = (faults: readonly ImposedFault[], over: Partial<UnitSpec> = {}) =>
  airSide({ ...spec, ...over }, 1200, faults);
const external = (side: ReturnType<typeof at>): number => side.supplyInWc - side.returnInWc;

describe('air side', () => {
  // Web design guide, read: 1,200 cfm at 0.5 in. w.c. gives about 800 at 0.9; illustration, so 0.02 in. w.c.
  it('outside: a PSC blower throttled from 1,200 to 800 cfm shows about 0.9 in. w.c.', () => {
    const side = at([{ fault: 'closedRegisters', level: 1 / 3 }]);
    expect(side.cfm).toBeCloseTo(800, 6);
    expect(external(side)).toBeCloseTo(0.9, 1);
  });

  it('identity: the healthy system has its design static, and a weak blower follows the fan law', () => {
    expect(external(at([]))).toBeCloseTo(0.5, 9);
    const weak = at([{ fault: 'weakBlower', level: 0.3 }]);
    expect(external(weak)).toBeCloseTo(0.5 * 0.7 ** 2, 9);
    expect(weak.cfm).toBeCloseTo(840, 9);
  });

  it('identity: a weak blower against shut registers makes the pressure of its slower wheel', () => {
    const both = at([
      { fault: 'closedRegisters', level: 0.25 },
      { fault: 'weakBlower', level: 0.2 },
    ]);
    const throttled = external(at([{ fault: 'closedRegisters', level: 0.25 }]));
    expect(external(both) / throttled).toBeCloseTo(0.8 ** 2, 9);
    expect(both.cfm).toBeCloseTo(1200 * 0.75 * 0.8, 9);
  });

  it('property: the drop rises where the blockage is', () => {
    const clean = at([]);
    const filter = at([{ fault: 'dirtyFilter', level: 0.25 }]);
    const registers = at([{ fault: 'closedRegisters', level: 0.25 }]);
    const coil = at([{ fault: 'dirtyIndoorCoil', level: 0.25 }]);
    expect(filter.filterDropInWc).toBeGreaterThan(clean.filterDropInWc + 0.1);
    expect(filter.returnInWc).toBeLessThan(clean.returnInWc);
    expect(registers.supplyInWc).toBeGreaterThan(clean.supplyInWc + 0.1);
    expect(coil.coilDropInWc).toBeGreaterThan(clean.coilDropInWc + 0.1);
    expect(external(coil)).toBeLessThan(external(clean));
  });

  // Common practice, status memory: PSC watts fall, ECM watts rise when static rises.
  it('outside: PSC watts fall and ECM watts rise against a blockage', () => {
    const blocked: ImposedFault[] = [{ fault: 'dirtyFilter', level: 0.25 }];
    expect(at(blocked).blowerW).toBeLessThan(at([]).blowerW);
    expect(at(blocked, { blower: 'ecm' }).blowerW).toBeGreaterThan(at([], { blower: 'ecm' }).blowerW);
  });
});
