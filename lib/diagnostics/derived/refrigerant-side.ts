import limits from '../data/limits.json';
import { derive } from '../derive';
import type { DerivedValue } from '../findings';
import { baroPsiaAtAltitude, psigToPsia } from '../refrigerant/gauge';
import { orNaN } from '../refrigerant-or-nan';
import { type RunContext, reading } from '../run-context';
import type { Sourced } from '../sourced';
import { dischargeSide, liquidSide } from './pressures';

const SATURATION = 'published equation of state of the refrigerant, status beside its coefficients';

/** Absolute pressure of a gauge reading at the site, with the allowance for a port that was not read. */
export function psiaAt(psig: number, altitudeFt: number, dropFrac = 0): number {
  return psigToPsia(psig, baroPsiaAtAltitude(altitudeFt)) * (1 + dropFrac);
}

/**
 * Evaporating temperature (dew) at the suction pressure.
 *
 * @returns [F]; absent without suction pressure or refrigerant, or beyond the property table
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function evaporatingDew(context: RunContext): DerivedValue | undefined {
  const { properties } = context;
  if (properties === undefined) return undefined;
  return derive({
    id: 'evaporatingF',
    unit: 'F',
    formula: 'evaporating temperature = dew temperature at (suction psig + local barometric pressure)',
    source: SATURATION,
    inputs: { psig: reading(context, 'suctionPsig'), altitude: context.altitude },
    compute: ({ psig, altitude }) => orNaN(properties.dewF(psiaAt(psig, altitude))),
  });
}

/**
 * Condensing temperature: for a blend the mean of bubble and dew at the high-side pressure.
 *
 * @returns [F]
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function condensingMean(context: RunContext): DerivedValue | undefined {
  const { properties } = context;
  const high = liquidSide(context);
  if (properties === undefined || high === undefined) return undefined;
  return derive({
    id: 'condensingF',
    unit: 'F',
    formula: 'condensing temperature = (bubble + dew) / 2 at (high-side psig + local barometric pressure)',
    source: SATURATION,
    inputs: { psig: high.gauge, drop: high.drop, altitude: context.altitude },
    compute: ({ psig, drop, altitude }) => {
      const psia = psiaAt(psig, altitude, drop);
      return (orNaN(properties.bubbleF(psia)) + orNaN(properties.dewF(psia))) / 2;
    },
  });
}

/**
 * Suction superheat: suction line above dew at the suction pressure. Negative when the line reads colder than
 * saturation, which is a conflict and flagged as one.
 *
 * @returns [F difference]
 * Source: regulatory definition (California Energy Commission 2008, RA3.2), status read; dew for blends
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function suctionSuperheat(context: RunContext): DerivedValue | undefined {
  const { properties } = context;
  if (properties === undefined) return undefined;
  return derive({
    id: 'suctionSuperheatFd',
    unit: 'Fd',
    formula: 'superheat = suction line - dew temperature at suction pressure',
    source:
      'California Energy Commission, 2008 Residential Appendices, RA3.2, status read; dew line for blends',
    inputs: {
      line: reading(context, 'suctionLineF'),
      psig: reading(context, 'suctionPsig'),
      altitude: context.altitude,
    },
    compute: ({ line, psig, altitude }) => line - orNaN(properties.dewF(psiaAt(psig, altitude))),
  });
}

/**
 * Liquid subcooling: bubble at the liquid-line pressure above the liquid line.
 *
 * @returns [F difference]; negative is a conflict and flagged as one
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function liquidSubcooling(context: RunContext): DerivedValue | undefined {
  const { properties } = context;
  const high = liquidSide(context);
  if (properties === undefined || high === undefined) return undefined;
  return derive({
    id: 'liquidSubcoolingFd',
    unit: 'Fd',
    formula: 'subcooling = bubble temperature at liquid-line pressure - liquid line',
    source:
      'California Energy Commission, 2008 Residential Appendices, RA3.2, status read; bubble line for blends',
    inputs: {
      line: reading(context, 'liquidLineF'),
      psig: high.gauge,
      drop: high.drop,
      altitude: context.altitude,
    },
    compute: ({ line, psig, drop, altitude }) =>
      orNaN(properties.bubbleF(psiaAt(psig, altitude, drop))) - line,
  });
}

/**
 * Discharge superheat: discharge line above dew at the discharge pressure.
 *
 * @returns [F difference]
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function dischargeSuperheat(context: RunContext): DerivedValue | undefined {
  const { properties } = context;
  const high = dischargeSide(context);
  if (properties === undefined || high === undefined) return undefined;
  return derive({
    id: 'dischargeSuperheatFd',
    unit: 'Fd',
    formula: 'discharge superheat = discharge line - dew temperature at discharge pressure',
    source: SATURATION,
    inputs: {
      line: reading(context, 'dischargeLineF'),
      psig: high.gauge,
      drop: high.drop,
      altitude: context.altitude,
    },
    compute: ({ line, psig, drop, altitude }) => line - orNaN(properties.dewF(psiaAt(psig, altitude, drop))),
  });
}

/**
 * Compression ratio of absolute pressures.
 *
 * @returns [ratio]
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function compressionRatio(context: RunContext): DerivedValue | undefined {
  const high = dischargeSide(context);
  return derive({
    id: 'compressionRatio',
    unit: 'ratio',
    formula: 'compression ratio = (discharge psig + barometric) / (suction psig + barometric)',
    source:
      'Trade definition on absolute pressures (trade training article on compression ratio), status read',
    inputs: {
      suction: reading(context, 'suctionPsig'),
      discharge: high?.gauge,
      drop: high?.drop,
      altitude: context.altitude,
    },
    compute: ({ suction, discharge, drop, altitude }) =>
      psiaAt(discharge, altitude, drop) / psiaAt(suction, altitude),
  });
}

/**
 * Condensing temperature over the air that takes the heat away: outdoor air in cooling, return air in heating.
 *
 * @returns [F difference], id `condensingOverOutdoorFd` or `condensingOverReturnFd`
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function condensingOverAir(context: RunContext): DerivedValue | undefined {
  const { properties } = context;
  const high = liquidSide(context);
  if (properties === undefined || high === undefined) return undefined;
  const cooling = context.run.mode === 'cooling';
  return derive({
    id: cooling ? 'condensingOverOutdoorFd' : 'condensingOverReturnFd',
    unit: 'Fd',
    formula: `condensing temperature - ${cooling ? 'outdoor' : 'return'} air; condensing = (bubble + dew) / 2`,
    source: SATURATION,
    inputs: {
      air: reading(context, cooling ? 'outdoorAirF' : 'returnAirF'),
      psig: high.gauge,
      drop: high.drop,
      altitude: context.altitude,
    },
    compute: ({ air, psig, drop, altitude }) => {
      const psia = psiaAt(psig, altitude, drop);
      return (orNaN(properties.bubbleF(psia)) + orNaN(properties.dewF(psia))) / 2 - air;
    },
  });
}

/**
 * Evaporating temperature below the air that gives the heat: return air in cooling, outdoor air in heating.
 *
 * @returns [F difference], id `evaporatingBelowReturnFd` or `evaporatingBelowOutdoorFd`
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function evaporatingBelowAir(context: RunContext): DerivedValue | undefined {
  const { properties } = context;
  if (properties === undefined) return undefined;
  const cooling = context.run.mode === 'cooling';
  return derive({
    id: cooling ? 'evaporatingBelowReturnFd' : 'evaporatingBelowOutdoorFd',
    unit: 'Fd',
    formula: `${cooling ? 'return' : 'outdoor'} air - dew temperature at suction pressure`,
    source: SATURATION,
    inputs: {
      air: reading(context, cooling ? 'returnAirF' : 'outdoorAirF'),
      psig: reading(context, 'suctionPsig'),
      altitude: context.altitude,
    },
    compute: ({ air, psig, altitude }) => air - orNaN(properties.dewF(psiaAt(psig, altitude))),
  });
}

/**
 * Temperature drop of the liquid between the outdoor unit and the metering device: filter-drier and line.
 *
 * @returns [F difference]
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function drierDrop(context: RunContext): DerivedValue | undefined {
  return derive({
    id: 'drierDropFd',
    unit: 'Fd',
    formula: 'drop = liquid line - liquid just before the metering device',
    source: 'Trade training article on clogged liquid-line driers, updated 2023, status read',
    inputs: {
      line: reading(context, 'liquidLineF'),
      before: reading(context, 'liquidBeforeMeteringF'),
    },
    compute: ({ line, before }) => line - before,
  });
}

/**
 * Glide of a blend at the suction pressure: dew less bubble. Superheat counts from dew, subcooling from bubble.
 *
 * @returns [F difference]; absent for pure refrigerants and where it is too small to matter
 * Source: data/limits.json, glideShownFd
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function suctionGlide(context: RunContext): DerivedValue | undefined {
  const { properties } = context;
  if (properties === undefined || !properties.isBlend) return undefined;
  const glide = derive({
    id: 'glideFd',
    unit: 'Fd',
    formula: 'glide = dew - bubble at suction pressure',
    source: SATURATION,
    inputs: { psig: reading(context, 'suctionPsig'), altitude: context.altitude },
    compute: ({ psig, altitude }) => orNaN(properties.glideFd(psiaAt(psig, altitude))),
  });
  return glide !== undefined && glide.value >= limits.glideShownFd.value ? glide : undefined;
}

/**
 * Bubble at the suction pressure, and dew and bubble at the high side, of a blend whose glide matters.
 *
 * @returns [F]; dew at the suction pressure is the evaporating temperature itself; none for pure refrigerants, for a
 * small glide, and where the pressure was not read
 * Source: data/limits.json, glideShownFd
 * Check: tests/diagnostics/derived-refrigerant.test.ts
 */
export function glideTemperatures(context: RunContext): readonly DerivedValue[] {
  const { properties, altitude } = context;
  if (properties === undefined || !properties.isBlend) return [];
  const suction = reading(context, 'suctionPsig');
  const high = liquidSide(context);
  const at = (id: string, line: 'bubble' | 'dew', port: string, psig: Sourced | undefined, drop?: Sourced) =>
    derive<string>({
      id,
      unit: 'F',
      formula: `${line} temperature at (${port} psig + local barometric pressure)`,
      source: SATURATION,
      inputs: { psig, altitude, ...(drop === undefined ? {} : { drop }) },
      compute: (v) => {
        const { psig: gauge = Number.NaN, altitude: heightFt = 0, drop: share } = v;
        const psia = psiaAt(gauge, heightFt, share);
        return orNaN(line === 'dew' ? properties.dewF(psia) : properties.bubbleF(psia));
      },
    });
  const dew = at('highSideDewF', 'dew', 'high-side', high?.gauge, high?.drop);
  const bubble = at('highSideBubbleF', 'bubble', 'high-side', high?.gauge, high?.drop);
  const apart = (dew?.value ?? 0) - (bubble?.value ?? 0) >= limits.glideShownFd.value;
  const low =
    suctionGlide(context) === undefined ? undefined : at('suctionBubbleF', 'bubble', 'suction', suction);
  return [low, ...(apart ? [dew, bubble] : [])].filter((value) => value !== undefined);
}
