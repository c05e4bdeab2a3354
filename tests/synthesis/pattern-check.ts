import { calibrateUnit } from '../../scripts/synthesis/calibrate';
import type { SimulatedUnit } from '../../scripts/synthesis/circuit';
import { type Synthesis, synthesise } from '../../scripts/synthesis/synthesise';
import type { Conditions, ImposedFault } from '../../scripts/synthesis/unit-spec';

export type Feature = 'suction' | 'head' | 'superheat' | 'subcooling' | 'discharge' | 'amps' | 'split';

export type PatternRow = {
  readonly cause: string;
  readonly mode: string;
  readonly metering: string;
  readonly imposed: readonly { readonly fault: string; readonly level: number }[];
  readonly expected: Readonly<Record<Feature, string>>;
};

/** Smallest change that counts as high or low: about twice the noise of the instruments. */
const THRESHOLD: Readonly<Record<Feature, number>> = {
  suction: 1,
  head: 1,
  superheat: 2.5,
  subcooling: 2,
  discharge: 3,
  amps: 0.02,
  split: 0.7,
};

export type Direction = 'low' | 'normal' | 'high';
export type Cell = {
  readonly key: string;
  readonly expected: string;
  readonly change: number;
  readonly direction: Direction;
  readonly agrees: boolean | undefined;
};

const units = new Map<string, SimulatedUnit>();

/** Healthy unit the patterns are tried on: a 3-ton R-410A heat pump of 13 SEER. */
export function patternUnit(metering: 'fixedOrifice' | 'txv'): SimulatedUnit {
  const known = units.get(metering);
  if (known !== undefined) return known;
  const unit = calibrateUnit({
    kind: 'heatPump',
    refrigerant: 'R-410A',
    metering,
    nominalTons: 3,
    seer: 13,
    compressor: 'scroll',
    blower: 'psc',
    electricHeatKw: 10,
  });
  units.set(metering, unit);
  return unit;
}

const COOLING: Conditions = { mode: 'cooling', outdoorF: 88, returnF: 77, returnWetBulbF: 66 };
const HEATING: Conditions = { mode: 'heating', outdoorF: 45, returnF: 70 };
const COLD_ROOM_F = 62;

/** Every cell of a row: expected direction, simulated change, and whether they agree (undefined: nothing expected). */
export function checkRow(row: PatternRow): readonly Cell[] {
  const unit = patternUnit(row.metering === 'TXV' ? 'txv' : 'fixedOrifice');
  const strips = row.cause === 'supplementary heat fault';
  const usual: Conditions = {
    ...(row.mode === 'cooling' ? COOLING : HEATING),
    ...(strips ? { electricHeatOn: true } : {}),
  };
  const cold = row.cause.startsWith('low indoor temperature');
  const found = cold ? { ...usual, returnF: COLD_ROOM_F } : usual;
  const faulty = features(unit, synthesise(unit, found, row.imposed as readonly ImposedFault[]));
  const healthy = features(unit, synthesise(unit, usual, []));
  return (Object.keys(row.expected) as Feature[]).map((feature) => {
    const relative = feature === 'amps';
    const change = relative ? faulty[feature] / healthy[feature] - 1 : faulty[feature] - healthy[feature];
    const limit = THRESHOLD[feature];
    const direction: Direction = change > limit ? 'high' : change < -limit ? 'low' : 'normal';
    const expected = row.expected[feature];
    const open = expected === 'varies' || expected.startsWith('as ');
    return {
      key: `${row.mode}/${row.metering}/${row.cause}/${feature}`,
      expected,
      change,
      direction,
      agrees: open ? undefined : expected.split(' or ').includes(direction),
    };
  });
}

function features(unit: SimulatedUnit, s: Synthesis): Record<Feature, number> {
  const r = s.truth.readings;
  const barometerPsia = 14.696;
  const reading = (name: keyof typeof r): number => r[name] ?? Number.NaN;
  const lowF = unit.fluid.dewF(reading('suctionPsig') + barometerPsia);
  const highPsia = reading('dischargePsig') + barometerPsia;
  const split = reading('supplyAirF') - reading('returnAirF');
  return {
    suction: lowF,
    head: unit.fluid.dewF(highPsia),
    superheat: reading('suctionLineF') - lowF,
    subcooling: unit.fluid.bubbleF(highPsia) - reading('liquidLineF'),
    discharge: reading('dischargeLineF'),
    amps: reading('compressorA'),
    split: s.run.mode === 'cooling' ? -split : split,
  };
}
