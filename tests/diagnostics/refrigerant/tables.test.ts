import { describe, expect, test } from 'vitest';
import { buildTable } from '@/lib/diagnostics/refrigerant/build-table';
import { eosProperties } from '@/lib/diagnostics/refrigerant/eos-properties';
import { isOutOfRange } from '@/lib/diagnostics/refrigerant/out-of-range';
import { refrigerantProperties } from '@/lib/diagnostics/refrigerant/properties';
import { tables } from '@/lib/diagnostics/refrigerant/tables';
import { refrigerantNames } from './reference-rows';
import { expectWithin, valueIn } from './within';

/** Every number in a JSON value with the path to it. */
function numbersIn(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => numbersIn(part, `${path}.${key}`));
}

/** Pressures spread evenly in ln p over the valid range, ends included. */
function pressures(range: { readonly low: number; readonly high: number }, steps: number): number[] {
  return Array.from({ length: steps + 1 }, (_, i) =>
    i === steps ? range.high : range.low * (range.high / range.low) ** (i / steps),
  );
}

/** Temperatures from one end to the other, dense near the first. */
function temperatures(near: number, far: number, steps: number): number[] {
  return Array.from({ length: steps + 1 }, (_, i) => near + (far - near) * (i / steps) ** 2);
}

describe('refrigerant tables', () => {
  test('wiring: the checked-in tables are what npm run tables makes', () => {
    // Other engines may differ in the last bit of exp and log, which can move a rounded coefficient by one unit.
    let compared = 0;
    for (const name of refrigerantNames) {
      const made = buildTable(name);
      const stored = numbersIn(tables[name]);
      expect(Object.keys(made)).toEqual(Object.keys(tables[name]));
      expect(numbersIn(made).map(([path]) => path)).toEqual(stored.map(([path]) => path));
      const again = new Map(numbersIn(made));
      for (const [path, value] of stored) {
        expectWithin(`${name}${path}`, again.get(path) ?? {}, value, 1.5e-6 + 1e-9 * Math.abs(value));
        compared += 1;
      }
    }
    // 256 patch numbers each, 24 per saturation curve (blends have two), and 10 of range, end, fit, gas, spacings
    expect(compared).toBe(6 * (256 + 24 + 11) + 3 * 24);
  });

  test('wiring: each table is small', () => {
    for (const name of refrigerantNames) expect(JSON.stringify(tables[name]).length).toBeLessThan(5000);
    expect.assertions(6);
  });

  test('outside: saturation against the equation of state, whole range [computed]', () => {
    // asked of the product: 0.1 F; the fit does 0.0001 F
    let rows = 0;
    for (const name of refrigerantNames) {
      const table = refrigerantProperties(name);
      const eos = eosProperties(name);
      for (const psia of pressures(table.validPsia, 60)) {
        const label = `${name} ${psia} psia`;
        const dewF = valueIn(eos.dewF(psia));
        const bubbleF = valueIn(eos.bubbleF(psia));
        expectWithin(`${label} dew`, table.dewF(psia), dewF, 2e-4);
        expectWithin(`${label} bubble`, table.bubbleF(psia), bubbleF, 2e-4);
        expectWithin(`${label} glide`, table.glideFd(psia), valueIn(eos.glideFd(psia)), 4e-4);
        rows += 1;
      }
      for (const psia of pressures(table.validPsia, 60).slice(1, -1)) {
        const label = `${name} ${psia} psia`;
        expectWithin(`${label} p(dew)`, table.dewPsia(valueIn(eos.dewF(psia))), psia, 1e-5 * psia);
        expectWithin(`${label} p(bubble)`, table.bubblePsia(valueIn(eos.bubbleF(psia))), psia, 1e-5 * psia);
      }
    }
    expect(rows).toBe(6 * 61);
  });

  test('outside: vapour and liquid against the equation of state, whole range [computed]', () => {
    // asked of the product: enthalpy differences within 0.5 % (0.35 Btu/lb of a latent heat of 70 to 140); the fit
    // does 0.015 Btu/lb, entropy 2e-5 Btu/(lb R), density 0.04 %
    let rows = 0;
    for (const name of refrigerantNames) {
      const table = refrigerantProperties(name);
      const eos = eosProperties(name);
      for (const psia of pressures(table.validPsia, 24)) {
        const dewF = valueIn(eos.dewF(psia));
        const bubbleF = valueIn(eos.bubbleF(psia));
        for (const temperatureF of temperatures(dewF, table.vapourHighF, 10)) {
          const label = `${name} vapour ${psia} psia ${temperatureF} F`;
          const fitted = valueIn(table.vapour(psia, temperatureF));
          const exact = valueIn(eos.vapour(psia, temperatureF));
          expectWithin(`${label} h`, fitted.enthalpyBtuLb, exact.enthalpyBtuLb, 0.015);
          expectWithin(`${label} s`, fitted.entropyBtuLbR, exact.entropyBtuLbR, 2e-5);
          expectWithin(`${label} density`, fitted.densityLbFt3 / exact.densityLbFt3, 1, 5e-4);
          expect(table.vapourEnthalpyBtuLb(psia, temperatureF)).toBe(fitted.enthalpyBtuLb);
          const back = table.vapourFAtEnthalpy(psia, fitted.enthalpyBtuLb);
          expectWithin(`${label} F from h`, back, temperatureF, 1e-6);
          rows += 1;
        }
        for (const temperatureF of temperatures(bubbleF, table.liquidLowF, 10)) {
          const label = `${name} liquid ${psia} psia ${temperatureF} F`;
          const exact = valueIn(eos.liquidEnthalpyBtuLb(psia, temperatureF));
          expectWithin(label, table.liquidEnthalpyBtuLb(psia, temperatureF), exact, 0.016);
        }
        const latent = valueIn(eos.dewEnthalpyBtuLb(psia)) - valueIn(eos.bubbleEnthalpyBtuLb(psia));
        const fittedLatent = valueIn(table.dewEnthalpyBtuLb(psia)) - valueIn(table.bubbleEnthalpyBtuLb(psia));
        expectWithin(`${name} latent ${psia} psia`, fittedLatent / latent, 1, 0.002);
      }
    }
    expect(rows).toBe(6 * 25 * 11);
  });

  test('outside: isentropic discharge against the equation of state [computed]', () => {
    let rows = 0;
    let refused = 0;
    for (const name of refrigerantNames) {
      const table = refrigerantProperties(name);
      const eos = eosProperties(name);
      for (const psia of pressures(table.validPsia, 10)) {
        const dewF = valueIn(eos.dewF(psia));
        for (const superheatFd of [0, 10, 30, 60]) {
          for (const ratio of [1.2, 2.5, 5]) {
            const label = `${name} ${psia} psia superheat ${superheatFd} ratio ${ratio}`;
            const fitted = table.isentropicDischarge(psia, dewF + superheatFd, psia * ratio);
            const exact = eos.isentropicDischarge(psia, dewF + superheatFd, psia * ratio);
            const both = [fitted, exact].filter((state) => !isOutOfRange(state));
            expect([0, 2], `${label}: only one of table and equation gave a value`).toContain(both.length);
            refused += both.length === 0 ? 1 : 0;
            const [a, b] = both.map((state) => valueIn(state));
            expectWithin(`${label} F`, a?.dischargeF ?? 0, b?.dischargeF ?? 0, 0.03);
            expectWithin(`${label} h`, a?.enthalpyBtuLb ?? 0, b?.enthalpyBtuLb ?? 0, 0.006);
            rows += 1;
          }
        }
      }
    }
    expect(rows).toBe(6 * 11 * 4 * 3);
    expect(refused).toBeLessThan(rows / 2);
  });
});
