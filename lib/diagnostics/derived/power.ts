import { derive } from '../derive';
import type { DerivedValue } from '../findings';
import { assumption, oncePerContext, type RunContext, reading } from '../run-context';
import { allowance, plateValue, type Sourced } from '../sourced';

type PowerKey = 'watts' | 'volts' | 'amps' | 'powerFactor' | 'fanShare' | 'fanAmps' | 'fanPowerFactor';
type PowerValues = Readonly<Partial<Record<PowerKey, number>>>;

/** A way from readings to watts: its raw inputs and the arithmetic, so that a result can be propagated from them. */
export type PowerPath = {
  readonly inputs: Readonly<Partial<Record<PowerKey, Sourced>>>;
  readonly watts: (values: PowerValues) => number;
  readonly formula: string;
};

const SOURCE = 'Single-phase power, watts = volts x amps x power factor (textbook); a watt reading beats it';

/** Volts as read at the outdoor unit, else the nameplate's, else a typical service, each with its uncertainty. */
export function unitVolts(context: RunContext): Sourced {
  const read = reading(context, 'lineV');
  if (read !== undefined) return read;
  const { ratedV } = context.visit.unit;
  const spread = allowance('unmeasuredVoltageFrac').sd;
  return plateValue('ratedV', ratedV, 'V', spread * (ratedV ?? 0)) ?? allowance('unmeasuredV');
}

/** Power factor as read, else assumed; a weak compressor capacitor widens the assumption. */
export function compressorPowerFactor(context: RunContext): Sourced {
  const read = reading(context, 'powerFactorFrac');
  if (read !== undefined) return read;
  const usual = assumption(context, 'powerFactorFrac');
  const { compressorCapUf, compressorCapRatedUf } = context.run;
  const weak =
    compressorCapUf !== undefined &&
    compressorCapRatedUf !== undefined &&
    compressorCapUf < 0.94 * compressorCapRatedUf;
  return weak ? { ...usual, sd: Math.max(usual.sd, allowance('weakCapacitorPowerFactorSdFrac').sd) } : usual;
}

/**
 * Way to the electric power of the outdoor unit (compressor and fan).
 *
 * @returns watts as read; else volts x amps x power factor; undefined without watts and amps
 * Check: tests/diagnostics/derived-power.test.ts
 */
export function outdoorUnitPath(context: RunContext): PowerPath | undefined {
  const watts = reading(context, 'outdoorUnitW');
  if (watts !== undefined) return { inputs: { watts }, watts: (v) => of(v.watts), formula: 'watts as read' };
  const volts = unitVolts(context);
  const powerFactor = compressorPowerFactor(context);
  const unitAmps = reading(context, 'outdoorUnitA');
  if (unitAmps !== undefined) {
    return {
      inputs: { volts, amps: unitAmps, powerFactor },
      watts: (v) => of(v.volts) * of(v.amps) * of(v.powerFactor),
      formula: 'W = V x A x PF',
    };
  }
  const amps = reading(context, 'compressorA');
  if (amps === undefined) return undefined;
  const fanAmps = reading(context, 'outdoorFanA');
  if (fanAmps !== undefined) {
    return {
      inputs: { volts, amps, powerFactor, fanAmps, fanPowerFactor: allowance('fanPowerFactorFrac') },
      watts: (v) => of(v.volts) * (of(v.amps) * of(v.powerFactor) + of(v.fanAmps) * of(v.fanPowerFactor)),
      formula: 'W = V x (compressor A x PF + fan A x fan PF)',
    };
  }
  return {
    inputs: { volts, amps, powerFactor, fanShare: assumption(context, 'outdoorFanShareFrac') },
    watts: (v) => (of(v.volts) * of(v.amps) * of(v.powerFactor)) / (1 - of(v.fanShare)),
    formula: 'W = V x compressor A x PF / (1 - fan share)',
  };
}

/**
 * Way to the electric power of the compressor alone.
 *
 * @returns outdoor-unit watts less the fan; else volts x compressor amps x power factor; else the same from the
 * outdoor unit's amps less the fan; undefined without watts and amps
 * Source: outdoor fan about 5 % of compressor plus fan on split units (Cheung and Braun, NREL/SR-5500-65030, 2015,
 * section D), status read
 * Check: tests/diagnostics/derived-power.test.ts
 */
export function compressorPath(context: RunContext): PowerPath | undefined {
  const watts = reading(context, 'outdoorUnitW');
  const volts = unitVolts(context);
  const powerFactor = compressorPowerFactor(context);
  const fanAmps = reading(context, 'outdoorFanA');
  const fanPowerFactor = allowance('fanPowerFactorFrac');
  const fanShare = assumption(context, 'outdoorFanShareFrac');
  if (watts !== undefined) {
    return fanAmps === undefined
      ? {
          inputs: { watts, fanShare },
          watts: (v) => of(v.watts) * (1 - of(v.fanShare)),
          formula: 'W = outdoor unit W x (1 - fan share)',
        }
      : {
          inputs: { watts, volts, fanAmps, fanPowerFactor },
          watts: (v) => of(v.watts) - of(v.volts) * of(v.fanAmps) * of(v.fanPowerFactor),
          formula: 'W = outdoor unit W - V x fan A x fan PF',
        };
  }
  const amps = reading(context, 'compressorA');
  if (amps !== undefined) {
    return {
      inputs: { volts, amps, powerFactor },
      watts: (v) => of(v.volts) * of(v.amps) * of(v.powerFactor),
      formula: 'W = V x A x PF',
    };
  }
  const unitAmps = reading(context, 'outdoorUnitA');
  if (unitAmps === undefined) return undefined;
  return {
    inputs: { volts, amps: unitAmps, powerFactor, fanShare },
    watts: (v) => of(v.volts) * of(v.amps) * of(v.powerFactor) * (1 - of(v.fanShare)),
    formula: 'W = V x outdoor unit A x PF x (1 - fan share)',
  };
}

/** Electric power of the outdoor unit [W]. Check: tests/diagnostics/derived-power.test.ts */
export const outdoorUnitPower = oncePerContext((context): DerivedValue | undefined => {
  return fromPath('outdoorUnitW', outdoorUnitPath(context));
});

/** Electric power of the compressor alone [W]. Check: tests/diagnostics/derived-power.test.ts */
export function compressorPower(context: RunContext): DerivedValue | undefined {
  return fromPath('compressorW', compressorPath(context));
}

/**
 * Blower power: watts as read, else volts x amps x an assumed power factor.
 *
 * @returns [W]
 * Check: tests/diagnostics/derived-power.test.ts
 */
export function blowerPower(context: RunContext): DerivedValue | undefined {
  const watts = reading(context, 'blowerW');
  if (watts !== undefined) {
    return derive({
      id: 'blowerW',
      unit: 'W',
      formula: 'watts as read',
      source: SOURCE,
      inputs: { watts },
      compute: (v) => v.watts,
    });
  }
  return derive({
    id: 'blowerW',
    unit: 'W',
    formula: 'W = V x A x PF',
    source: SOURCE,
    inputs: {
      volts: unitVolts(context),
      amps: reading(context, 'blowerA'),
      powerFactor: allowance('blowerPowerFactorFrac'),
    },
    compute: (v) => v.volts * v.amps * v.powerFactor,
  });
}

/**
 * Power factor, where both watts and volts x amps of the outdoor unit were read.
 *
 * @returns [frac]; above 1 is a conflict and flagged as one
 * Check: tests/diagnostics/derived-power.test.ts
 */
export function powerFactor(context: RunContext): DerivedValue | undefined {
  return derive({
    id: 'powerFactorFrac',
    unit: 'frac',
    formula: 'PF = W / (V x A)',
    source: SOURCE,
    inputs: {
      watts: reading(context, 'outdoorUnitW'),
      volts: reading(context, 'lineV'),
      amps: reading(context, 'outdoorUnitA'),
    },
    compute: (v) => v.watts / (v.volts * v.amps),
  });
}

function fromPath(id: string, path: PowerPath | undefined): DerivedValue | undefined {
  if (path === undefined) return undefined;
  return derive({
    id,
    unit: 'W',
    formula: path.formula,
    source: SOURCE,
    inputs: path.inputs as Readonly<Record<PowerKey, Sourced | undefined>>,
    compute: path.watts,
  });
}

function of(value: number | undefined): number {
  return value ?? Number.NaN;
}
