import { eosProperties } from '../lib/diagnostics/refrigerant/eos-properties';
import { refrigerantProperties } from '../lib/diagnostics/refrigerant/properties';
import type { RefrigerantProperties } from '../lib/diagnostics/refrigerant/refrigerant-properties';
import type { RefrigerantName } from '../lib/visit/refrigerant-names';
import { durationText, timeCalls } from './bench-timing';

const REFRIGERANTS: readonly RefrigerantName[] = ['R-22', 'R-410A'];

/** So many different states, so that no call is answered from the one before. */
const STATES = 256;

type Call = { readonly name: string; readonly call: (p: RefrigerantProperties, i: number) => number };

/** Pressures of an evaporator and a condenser in ordinary running, spread evenly. */
const suctionPsia = (i: number) => 50 + (90 * (i % STATES)) / STATES;
const dischargePsia = (i: number) => 200 + (180 * (i % STATES)) / STATES;

const CALLS: readonly Call[] = [
  { name: 'dew temperature', call: (p, i) => numberOf(p.dewF(suctionPsia(i))) },
  { name: 'vapour enthalpy', call: (p, i) => numberOf(p.vapourEnthalpyBtuLb(suctionPsia(i), 90)) },
  { name: 'liquid enthalpy', call: (p, i) => numberOf(p.liquidEnthalpyBtuLb(dischargePsia(i), 60)) },
  { name: 'isentropic discharge', call: isentropic },
];

function isentropic(p: RefrigerantProperties, i: number): number {
  const discharge = p.isentropicDischarge(suctionPsia(i), 90, dischargePsia(i));
  return 'kind' in discharge ? outside() : discharge.dischargeF;
}

function numberOf(value: number | { readonly kind: 'none' }): number {
  return typeof value === 'number' ? value : outside();
}

function outside(): never {
  throw new Error('a state of the bench lies outside the tables: it would time a refusal');
}

/** Rows: refrigerant and call, table, equation of state, equation over table. */
export function benchRefrigerant(): string[][] {
  return REFRIGERANTS.flatMap((name) => {
    const table = refrigerantProperties(name);
    const equation = eosProperties(name);
    return CALLS.map(({ name: what, call }) => {
      const fast = timeCalls((i) => call(table, i)).nsPerCall;
      const slow = timeCalls((i) => call(equation, i)).nsPerCall;
      return [`${name} ${what}`, durationText(fast), durationText(slow), `${(slow / fast).toFixed(0)} x`];
    });
  });
}
