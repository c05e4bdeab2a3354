import { derive } from '../derive';
import type { DerivedValue } from '../findings';
import { type RunContext, reading } from '../run-context';
import { allowance, constant, plateValue } from '../sourced';

/**
 * How far the compressor run capacitor is from its label.
 *
 * @returns [frac], negative when weak
 * Source: label tolerance classes (EIA-456 / IEC 60252-1), status secondary
 * Check: tests/diagnostics/derived-electric.test.ts
 */
export function compressorCapacitor(context: RunContext): DerivedValue | undefined {
  return capacitor(context, 'compressorCapacitorDeviationFrac', 'compressorCapUf', 'compressorCapRatedUf');
}

/** The same for the outdoor fan's run capacitor. Check: tests/diagnostics/derived-electric.test.ts */
export function fanCapacitor(context: RunContext): DerivedValue | undefined {
  return capacitor(context, 'fanCapacitorDeviationFrac', 'fanCapUf', 'fanCapRatedUf');
}

function capacitor(
  context: RunContext,
  id: string,
  measured: 'compressorCapUf' | 'fanCapUf',
  label: 'compressorCapRatedUf' | 'fanCapRatedUf',
): DerivedValue | undefined {
  return derive({
    id,
    unit: 'frac',
    formula: 'deviation = (measured uF - label uF) / label uF',
    source: 'Definition; label tolerance classes of run capacitors',
    inputs: {
      measured: reading(context, measured),
      label: plateValue(label, context.run[label], 'uF'),
    },
    compute: (v) => (v.measured - v.label) / v.label,
  });
}

/**
 * Amps the energised electric heat should draw: a resistor rated at 240 V.
 *
 * @returns [A] at the volts read (strip volts, else line volts, else nameplate or a typical service)
 * Source: P = V^2 / R, status computed; 5 kW draws 20.83 A at 240 V, 18.06 A at 208 V
 * Check: tests/diagnostics/derived-electric.test.ts
 */
export function stripNominalAmps(context: RunContext): DerivedValue | undefined {
  return derive({
    id: 'stripNominalA',
    unit: 'A',
    formula: 'A = kW x 1,000 / 240 x V / 240',
    source: 'P = V^2 / R with the kilowatts printed for 240 V',
    inputs: {
      kw: plateValue('stripKw', context.run.stripKw, 'kW'),
      volts: reading(context, 'stripV') ?? reading(context, 'lineV') ?? allowance('unmeasuredV'),
      element: allowance('elementResistanceFrac'),
    },
    compute: (v) =>
      ((v.kw * 1000) / constant('stripRatedV')) * (v.volts / constant('stripRatedV')) * v.element,
  });
}

/**
 * Strip-heat amps over what the energised kilowatts should draw.
 *
 * @returns [ratio]; below 1 an element or its circuit is out
 * Check: tests/diagnostics/derived-electric.test.ts
 */
export function stripAmpsRatio(context: RunContext): DerivedValue | undefined {
  return derive({
    id: 'stripAmpsRatio',
    unit: 'ratio',
    formula: 'ratio = A / (kW x 1,000 / 240 x V / 240)',
    source: 'P = V^2 / R with the kilowatts printed for 240 V',
    inputs: {
      amps: reading(context, 'stripA'),
      kw: plateValue('stripKw', context.run.stripKw, 'kW'),
      volts: reading(context, 'stripV') ?? reading(context, 'lineV') ?? allowance('unmeasuredV'),
      element: allowance('elementResistanceFrac'),
    },
    compute: (v) =>
      v.amps / (((v.kw * 1000) / constant('stripRatedV')) * (v.volts / constant('stripRatedV')) * v.element),
  });
}

/**
 * Voltage at the outdoor unit against its nameplate.
 *
 * @returns [frac]; absent without a nameplate voltage
 * Source: NEMA Condensed MG 1-2011, 9.9.1 (+/-10 % of rated voltage), status read
 * Check: tests/diagnostics/derived-electric.test.ts
 */
export function voltageDeviation(context: RunContext): DerivedValue | undefined {
  return derive({
    id: 'voltageDeviationFrac',
    unit: 'frac',
    formula: 'deviation = (V - nameplate V) / nameplate V',
    source: 'NEMA Condensed MG 1-2011, 9.9.1, status read',
    inputs: {
      volts: reading(context, 'lineV'),
      rated: plateValue('ratedV', context.visit.unit.ratedV, 'V'),
    },
    compute: (v) => (v.volts - v.rated) / v.rated,
  });
}

/**
 * Compressor amps over the nameplate's rated load amps.
 *
 * @returns [ratio]; RLA is a safety figure, not the amps to expect
 * Source: NEC 440, rated load current, status memory
 * Check: tests/diagnostics/derived-electric.test.ts
 */
export function loadAmpsRatio(context: RunContext): DerivedValue | undefined {
  return derive({
    id: 'compressorAmpsToRatedFrac',
    unit: 'frac',
    formula: 'compressor A / RLA',
    source: 'Nameplate rated load amps (NEC 440), status memory',
    inputs: {
      amps: reading(context, 'compressorA'),
      rated: plateValue('ratedLoadA', context.visit.unit.ratedLoadA, 'A'),
    },
    compute: (v) => v.amps / v.rated,
  });
}
