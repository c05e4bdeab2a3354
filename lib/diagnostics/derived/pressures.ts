import type { RunContext } from '../run-context';
import { reading } from '../run-context';
import { allowance, type Sourced } from '../sourced';

/**
 * The four numbers every refrigerant-side value needs beside its temperatures: gauge pressures, the altitude that
 * turns them into absolute ones, and the allowance for the pressure drop between discharge and liquid port.
 */
export type HighSide = {
  readonly gauge: Sourced;
  /** Pressure difference allowed for when the other port was read [frac of absolute pressure]. */
  readonly drop: Sourced;
};

const none: Sourced = {
  name: 'pressureDropFrac',
  value: 0,
  sd: 0,
  unit: 'frac',
  basis: 'measured',
  source: 'read at this port',
};

/**
 * Pressure at the compressor discharge: as read, else the liquid-line reading with an allowance for the drop.
 *
 * @returns undefined when neither was read
 * Source: data/instruments.json, allowance pressureDropFrac
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function dischargeSide(context: RunContext): HighSide | undefined {
  return side(reading(context, 'dischargePsig'), reading(context, 'liquidPsig'));
}

/** Pressure of the liquid leaving the condenser: as read, else the discharge reading with the same allowance. */
export function liquidSide(context: RunContext): HighSide | undefined {
  return side(reading(context, 'liquidPsig'), reading(context, 'dischargePsig'));
}

function side(own: Sourced | undefined, other: Sourced | undefined): HighSide | undefined {
  if (own !== undefined) return { gauge: own, drop: none };
  return other === undefined ? undefined : { gauge: other, drop: allowance('pressureDropFrac') };
}
