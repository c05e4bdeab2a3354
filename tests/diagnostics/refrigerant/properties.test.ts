import { readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { eosProperties } from '@/lib/diagnostics/refrigerant/eos-properties';
import { isOutOfRange } from '@/lib/diagnostics/refrigerant/out-of-range';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import type { RefrigerantProperties } from '@/lib/diagnostics/refrigerant/refrigerant-properties';
import { RefrigerantName } from '@/lib/visit/refrigerant-names';
import { refrigerantNames } from './reference-rows';
import { expectWithin, valueIn } from './within';

const anyName = fc.constantFrom(...refrigerantNames);
const share = fc.double({ min: 0, max: 1, noNaN: true });

/** Pressure at a share of the valid range, evenly in ln p. */
function psiaAt({ validPsia }: RefrigerantProperties, part: number): number {
  return Math.min(validPsia.high, validPsia.low * (validPsia.high / validPsia.low) ** part);
}

function dewF(properties: RefrigerantProperties, psia: number): number {
  return valueIn(properties.dewF(psia));
}

/** Vapour temperature at a share of the way from dew to the hottest. */
function vapourFAt(properties: RefrigerantProperties, psia: number, part: number): number {
  const low = dewF(properties, psia);
  return Math.min(properties.vapourHighF, low + (properties.vapourHighF - low) * part);
}

describe('refrigerant properties', () => {
  test('property: pressure to temperature and back', () => {
    fc.assert(
      fc.property(anyName, share, (name, part) => {
        const properties = refrigerantProperties(name);
        const psia = psiaAt(properties, part);
        const dew = valueIn(properties.dewPsia(dewF(properties, psia)));
        const bubble = valueIn(properties.bubblePsia(valueIn(properties.bubbleF(psia))));
        expectWithin(`${properties.name} ${psia} dew`, dew / psia, 1, 1e-5);
        expectWithin(`${properties.name} ${psia} bubble`, bubble / psia, 1, 1e-5);
      }),
      { numRuns: 500 },
    );
  });

  test('property: bubble never above dew, equal for pure refrigerants only', () => {
    fc.assert(
      fc.property(anyName, share, (name, part) => {
        const properties = refrigerantProperties(name);
        const psia = psiaAt(properties, part);
        const glideFd = valueIn(properties.glideFd(psia));
        const difference = dewF(properties, psia) - valueIn(properties.bubbleF(psia));
        expect(glideFd).toBe(difference);
        expect(glideFd > 0).toBe(properties.isBlend);
        expect(glideFd).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 500 },
    );
  });

  test('property: saturation temperature rises with pressure', () => {
    fc.assert(
      fc.property(anyName, share, share, (name, a, b) => {
        const properties = refrigerantProperties(name);
        const [low, high] = [psiaAt(properties, Math.min(a, b)), psiaAt(properties, Math.max(a, b))];
        const rounding = 1e-9;
        expect(dewF(properties, high)).toBeGreaterThanOrEqual(dewF(properties, low) - rounding);
        expect(valueIn(properties.bubbleF(high))).toBeGreaterThanOrEqual(
          valueIn(properties.bubbleF(low)) - rounding,
        );
      }),
      { numRuns: 500 },
    );
  });

  test('property: along an isobar enthalpy and entropy rise with temperature and density falls', () => {
    fc.assert(
      fc.property(anyName, share, share, share, (name, part, a, b) => {
        const properties = refrigerantProperties(name);
        const psia = psiaAt(properties, part);
        const least = 0.05;
        const [from, to] = [Math.min(a, b), Math.max(a, b)].map((x) => vapourFAt(properties, psia, x));
        const low = Math.min(from ?? 0, properties.vapourHighF - least);
        const high = Math.max(to ?? 0, low + least);
        const cool = valueIn(properties.vapour(psia, low));
        const warm = valueIn(properties.vapour(psia, high));
        expect(warm.enthalpyBtuLb).toBeGreaterThan(cool.enthalpyBtuLb);
        expect(warm.entropyBtuLbR).toBeGreaterThan(cool.entropyBtuLbR);
        expect(warm.densityLbFt3).toBeLessThan(cool.densityLbFt3);
      }),
      { numRuns: 500 },
    );
  });

  test('property: liquid enthalpy rises with temperature and lies below vapour enthalpy', () => {
    fc.assert(
      fc.property(anyName, share, share, share, (name, part, a, b) => {
        const properties = refrigerantProperties(name);
        const psia = psiaAt(properties, part);
        const bubbleF = valueIn(properties.bubbleF(psia));
        const at = (x: number): number => properties.liquidLowF + (bubbleF - properties.liquidLowF) * x;
        const cool = valueIn(properties.liquidEnthalpyBtuLb(psia, at(Math.min(a, b))));
        const warm = valueIn(properties.liquidEnthalpyBtuLb(psia, at(Math.max(a, b))));
        expect(warm).toBeGreaterThanOrEqual(cool - 1e-4);
        expect(warm).toBeLessThan(valueIn(properties.dewEnthalpyBtuLb(psia)));
      }),
      { numRuns: 500 },
    );
  });

  test('property: temperature to enthalpy and back', () => {
    fc.assert(
      fc.property(anyName, share, share, (name, part, along) => {
        const properties = refrigerantProperties(name);
        const psia = psiaAt(properties, part);
        const temperatureF = vapourFAt(properties, psia, along);
        const enthalpy = valueIn(properties.vapourEnthalpyBtuLb(psia, temperatureF));
        const back = properties.vapourFAtEnthalpy(psia, enthalpy);
        expectWithin(`${properties.name} ${psia} psia ${temperatureF} F`, back, temperatureF, 1e-5);
      }),
      { numRuns: 500 },
    );
  });

  test('property: isentropic compression keeps entropy and heats the vapour', () => {
    let values = 0;
    fc.assert(
      fc.property(anyName, share, share, share, (name, part, along, further) => {
        const properties = refrigerantProperties(name);
        const suctionPsia = psiaAt(properties, 0.6 * part);
        const suctionF = dewF(properties, suctionPsia) + 60 * along;
        const dischargePsia = psiaAt(properties, 0.6 * part + 0.02 + 0.38 * further);
        const suction = valueIn(properties.vapour(suctionPsia, suctionF));
        const found = properties.isentropicDischarge(suctionPsia, suctionF, dischargePsia);
        fc.pre(!isOutOfRange(found));
        const { dischargeF, enthalpyBtuLb } = valueIn(found);
        const after = valueIn(properties.vapour(dischargePsia, dischargeF));
        expectWithin(properties.name, after.entropyBtuLbR, suction.entropyBtuLbR, 1e-8);
        expectWithin(properties.name, after.enthalpyBtuLb, enthalpyBtuLb, 1e-6);
        expect(dischargeF).toBeGreaterThan(suctionF);
        expect(enthalpyBtuLb).toBeGreaterThan(suction.enthalpyBtuLb);
        values += 1;
      }),
      { numRuns: 500 },
    );
    expect(values).toBeGreaterThan(400);
  });

  test('property: any numbers give a finite value or a reason, never NaN', () => {
    const anyNumber = fc.oneof(fc.double(), fc.double({ min: -200, max: 1000, noNaN: true }));
    fc.assert(
      fc.property(anyName, anyNumber, anyNumber, anyNumber, (name, a, b, c) => {
        const properties = refrigerantProperties(name);
        const results = [
          properties.dewF(a),
          properties.bubbleF(a),
          properties.glideFd(a),
          properties.dewPsia(a),
          properties.bubblePsia(a),
          properties.dewEnthalpyBtuLb(a),
          properties.bubbleEnthalpyBtuLb(a),
          properties.vapour(a, b),
          properties.vapourEnthalpyBtuLb(a, b),
          properties.liquidEnthalpyBtuLb(a, b),
          properties.vapourFAtEnthalpy(a, b),
          properties.isentropicDischarge(a, b, c),
        ];
        for (const result of results) {
          const numbers = typeof result === 'number' ? [result] : Object.values(result);
          const sound = isOutOfRange(result) || numbers.every((x) => Number.isFinite(x));
          expect(sound, `${properties.name} ${a} ${b} ${c}: ${JSON.stringify(result)}`).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });
});

// Table and equation must refuse the same things for the same reasons.
describe.each([
  ['tables', refrigerantProperties],
  ['equation of state', eosProperties],
] as const)('edges of the range, %s', (_, propertiesOf) => {
  const properties = propertiesOf('R-410A');
  const { low, high } = properties.validPsia;
  const dew = valueIn(properties.dewF(150));
  const bubble = valueIn(properties.bubbleF(350));

  test('wiring: pressure just inside, on and just outside', () => {
    for (const inside of [low, low * 1.0001, high * 0.9999, high]) {
      expect(isOutOfRange(properties.dewF(inside))).toBe(false);
    }
    expect(properties.dewF(low * 0.9999)).toEqual({ kind: 'none', why: 'pressure below the table' });
    expect(properties.bubbleF(high * 1.0001)).toEqual({ kind: 'none', why: 'pressure above the table' });
    expect(properties.dewF(Number.NaN)).toEqual({ kind: 'none', why: 'pressure below the table' });
    expect.assertions(7);
  });

  test('wiring: saturation pressure at the ends of the temperature range', () => {
    const lowF = valueIn(properties.dewF(low));
    const highF = valueIn(properties.dewF(high));
    expectWithin('low', properties.dewPsia(lowF), low, 1e-4 * low);
    expectWithin('high', properties.dewPsia(highF), high, 1e-4 * high);
    expect(properties.dewPsia(lowF - 0.001)).toEqual({ kind: 'none', why: 'temperature below the table' });
    expect(properties.dewPsia(highF + 0.001)).toEqual({ kind: 'none', why: 'temperature above the table' });
  });

  test('wiring: vapour just above and just below dew, and at the hottest', () => {
    const hot = properties.vapourHighF;
    expect(isOutOfRange(properties.vapour(150, dew))).toBe(false);
    expect(isOutOfRange(properties.vapour(150, dew - 0.19))).toBe(false);
    expect(properties.vapour(150, dew - 0.21)).toEqual({
      kind: 'none',
      why: 'colder than dew: liquid may be present',
    });
    expect(isOutOfRange(properties.vapour(150, hot + 0.19))).toBe(false);
    expect(properties.vapourEnthalpyBtuLb(150, hot + 0.21)).toEqual({
      kind: 'none',
      why: 'temperature above the table',
    });
  });

  test('wiring: liquid just below and just above bubble, and at the coldest', () => {
    const cold = properties.liquidLowF;
    expect(isOutOfRange(properties.liquidEnthalpyBtuLb(350, bubble))).toBe(false);
    expect(isOutOfRange(properties.liquidEnthalpyBtuLb(350, bubble + 0.19))).toBe(false);
    expect(properties.liquidEnthalpyBtuLb(350, bubble + 0.21)).toEqual({
      kind: 'none',
      why: 'warmer than bubble: vapour may be present',
    });
    expect(isOutOfRange(properties.liquidEnthalpyBtuLb(350, cold))).toBe(false);
    expect(properties.liquidEnthalpyBtuLb(350, cold - 0.01)).toEqual({
      kind: 'none',
      why: 'temperature below the table',
    });
  });

  test('wiring: compression that is none, wet, or too hot', () => {
    expect(properties.isentropicDischarge(150, 60, 150)).toEqual({
      kind: 'none',
      why: 'discharge pressure not above suction pressure',
    });
    expect(isOutOfRange(properties.isentropicDischarge(150, 60, 150.1))).toBe(false);
    expect(properties.isentropicDischarge(150, 20, 300)).toEqual({
      kind: 'none',
      why: 'colder than dew: liquid may be present',
    });
    expect(properties.isentropicDischarge(20, 280, 600)).toEqual({
      kind: 'none',
      why: 'temperature above the table',
    });
    expect(properties.isentropicDischarge(150, 60, 700)).toEqual({
      kind: 'none',
      why: 'pressure above the table',
    });
  });

  test('wiring: enthalpy outside the vapour', () => {
    const saturated = valueIn(properties.dewEnthalpyBtuLb(150));
    expect(isOutOfRange(properties.vapourFAtEnthalpy(150, saturated))).toBe(false);
    expect(properties.vapourFAtEnthalpy(150, saturated - 1)).toEqual({
      kind: 'none',
      why: 'colder than dew: liquid may be present',
    });
    expect(properties.vapourFAtEnthalpy(150, saturated + 200)).toEqual({
      kind: 'none',
      why: 'temperature above the table',
    });
  });
});

describe('facts and wiring', () => {
  test('wiring: every refrigerant of the visit schema has properties, made once', () => {
    expect([...RefrigerantName.options].sort()).toEqual([...refrigerantNames].sort());
    for (const name of RefrigerantName.options) {
      expect(refrigerantProperties(name).name).toBe(name);
      expect(refrigerantProperties(name)).toBe(refrigerantProperties(name));
    }
    expect.assertions(13);
  });

  test('outside: critical points [cited in data/eos] and safety classes [ASHRAE 34, status memory]', () => {
    const expected = [
      ['R-22', 205.06, 723.7, 'A1'],
      ['R-410A', 160.42, 710.86, 'A1'],
      ['R-407C', 187.15, 671.77, 'A1'],
      ['R-32', 172.59, 838.61, 'A2L'],
      ['R-134a', 213.91, 588.75, 'A1'],
    ] as const;
    for (const [name, f, psia, safetyClass] of expected) {
      const properties = refrigerantProperties(name);
      expect(properties.critical?.f, name).toBeCloseTo(f, 1);
      expect(properties.critical?.psia, name).toBeCloseTo(psia, 0);
      expect(properties.safetyClass, name).toBe(safetyClass);
    }
    expect(refrigerantProperties('R-454B').safetyClass).toBe('A2L');
    expect('critical' in refrigerantProperties('R-454B')).toBe(false);
    expect(refrigerantProperties('R-454B').gwp100).toBe(466);
    expect.assertions(18);
  });

  test('wiring: the table and the equation of state state the same facts and range', () => {
    for (const name of refrigerantNames) {
      const facts = (properties: RefrigerantProperties): unknown =>
        Object.fromEntries(Object.entries(properties).filter(([, value]) => typeof value !== 'function'));
      expect(facts(refrigerantProperties(name))).toEqual(facts(eosProperties(name)));
    }
    expect.assertions(6);
  });

  test('wiring: run time reaches no equation of state', () => {
    const folder = fileURLToPath(new URL('../../../lib/diagnostics/refrigerant/', import.meta.url));
    const reached = new Set<string>();
    const visit = (file: string): void => {
      if (reached.has(file)) return;
      reached.add(file);
      if (file.endsWith('.json')) return;
      const text = readFileSync(file, 'utf8');
      for (const match of text.matchAll(/^import (?!type )[^;]*? from '(\.[^']+)';/gms)) {
        const target = resolve(dirname(file), match[1] ?? '');
        visit(target.endsWith('.json') ? target : `${target}.ts`);
      }
    };
    visit(`${folder}properties.ts`);
    visit(`${folder}gauge.ts`);
    const names = [...reached].map((file) => file.slice(file.lastIndexOf('/lib/')));
    expect(names.filter((name) => /eos|helmholtz|saturation\.ts|build-table/.test(name))).toEqual([]);
    expect(names.filter((name) => name.includes('/data/tables/')).length).toBe(6);
    expect(names).toContain('/lib/diagnostics/refrigerant/table-kernel.ts');
  });
});
