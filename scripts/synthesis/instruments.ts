import { randomStream } from '../../lib/math/random';
import type { ReadingName } from '../../lib/visit/run';
import instruments from './data/instruments.json';
import type { TrueReadings } from './readings';

type Instrument = keyof typeof instruments.readings;

/** Which instrument gives a reading; readings left out here are known, not measured. */
const instrumentOf: Partial<Record<ReadingName, Instrument>> = {
  suctionPsig: 'pressure',
  dischargePsig: 'pressure',
  liquidPsig: 'pressure',
  suctionLineF: 'lineTemperature',
  dischargeLineF: 'lineTemperature',
  liquidLineF: 'lineTemperature',
  liquidBeforeMeteringF: 'lineTemperature',
  suctionBeforeValveF: 'lineTemperature',
  standingPsig: 'pressure',
  standingCoilAirF: 'airTemperature',
  outdoorAirF: 'airTemperature',
  returnAirF: 'airTemperature',
  returnWetBulbF: 'airTemperature',
  supplyAirF: 'airTemperature',
  supplyWetBulbF: 'airTemperature',
  heatRiseReturnF: 'airTemperature',
  heatRiseSupplyF: 'airTemperature',
  lineV: 'volts',
  stripV: 'volts',
  heatRiseV: 'volts',
  compressorA: 'amps',
  outdoorUnitA: 'amps',
  outdoorFanA: 'amps',
  blowerA: 'amps',
  stripA: 'amps',
  heatRiseA: 'amps',
  outdoorUnitW: 'watts',
  blowerW: 'watts',
  powerFactorFrac: 'powerFactor',
  airflowCfm: 'airflow',
  grilleFaceFpm: 'velocity',
  returnStaticInWc: 'static',
  supplyStaticInWc: 'static',
  filterDropInWc: 'static',
  coilDropInWc: 'static',
  compressorCapUf: 'capacitance',
  fanCapUf: 'capacitance',
};

/**
 * Readings as instruments would show them: optional noise, then rounded to the instrument's step.
 *
 * @param exact true values
 * @param noiseSeed seed of the noise; left out = rounding only
 * @returns readings; the noise of one reading does not depend on which others are asked for
 * Source: data/instruments.json
 * Check: tests/synthesis/instruments.test.ts
 */
export function asShown(exact: TrueReadings, noiseSeed?: number): TrueReadings {
  const names = Object.keys(exact) as ReadingName[];
  return Object.fromEntries(
    names.flatMap((name) => {
      const value = exact[name];
      if (value === undefined) return [];
      const instrument = instrumentOf[name];
      if (instrument === undefined) return [[name, toStep(value, 0.01)]];
      const { sdFrac, sdLeast, step } = instruments.readings[instrument];
      const sd = Math.max(sdLeast, sdFrac * Math.abs(value));
      const noise = noiseSeed === undefined ? 0 : sd * randomStream(noiseSeed, name).normal();
      return [[name, toStep(value + noise, step)]];
    }),
  );
}

/** Rounded to a step, without the tail a binary fraction would leave. */
export function toStep(value: number, step: number): number {
  const rounded = Number((Math.round(value / step) * step).toFixed(4));
  return rounded === 0 ? 0 : rounded;
}
