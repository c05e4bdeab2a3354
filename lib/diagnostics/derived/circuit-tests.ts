import { derive } from '../derive';
import type { DerivedValue } from '../findings';
import { orNaN } from '../refrigerant-or-nan';
import { type RunContext, reading } from '../run-context';
import { psiaAt } from './refrigerant-side';

/**
 * Saturation (mean of bubble and dew) at the pressure of the stopped unit over the air at the coil: what is left over
 * is air or another gas.
 *
 * @returns [F difference]
 * Source: trade training note on non-condensables; U.S. Army TM 55-1930-209-14P-15, status read
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function standingOverAir(context: RunContext): DerivedValue | undefined {
  const { properties } = context;
  if (properties === undefined) return undefined;
  return derive({
    id: 'standingOverAirFd',
    unit: 'Fd',
    formula: 'saturation temperature at (standing psig + local barometric pressure) - air at the coil',
    source:
      'Trade training note on non-condensables; U.S. Army TM 55-1930-209-14P-15, status read; saturation by equation of state',
    inputs: {
      psig: reading(context, 'standingPsig'),
      air: reading(context, 'standingCoilAirF'),
      altitude: context.altitude,
    },
    compute: ({ psig, air, altitude }) => {
      const psia = psiaAt(psig, altitude);
      return (orNaN(properties.bubbleF(psia)) + orNaN(properties.dewF(psia))) / 2 - air;
    },
  });
}

/**
 * Warming of the suction gas in the reversing valve.
 *
 * @returns [F difference]
 * Source: trade article on telling reversing-valve from compressor faults, status read
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function reversingValveRise(context: RunContext): DerivedValue | undefined {
  return derive({
    id: 'reversingValveRiseFd',
    unit: 'Fd',
    formula: 'rise = suction line at the compressor - suction line before the reversing valve',
    source: 'Trade article on telling reversing-valve from compressor faults, status read',
    inputs: {
      after: reading(context, 'suctionLineF'),
      before: reading(context, 'suctionBeforeValveF'),
    },
    compute: ({ after, before }) => after - before,
  });
}
