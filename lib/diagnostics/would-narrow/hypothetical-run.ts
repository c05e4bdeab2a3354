import { fieldAt } from '../../visit/field-at';
import type { Mode, ReadingName, Run } from '../../visit/run';
import data from '../data/targets.json';
import { sensibleFactor } from '../derived/air-side';
import { dischargeSide } from '../derived/pressures';
import { psiaAt } from '../derived/refrigerant-side';
import { wetBulbF } from '../moist-air';
import { baroPsiaAtAltitude, psiaToPsig } from '../refrigerant/gauge';
import { orNaN } from '../refrigerant-or-nan';
import { assumption, type RunContext, reading, runContext } from '../run-context';
import { expectedEfficiency } from '../targets/expected-efficiency';
import { dischargeF } from '../targets/healthy-discharge';
import { healthyCondensing, healthyEvaporating } from '../targets/healthy-pressures';
import { healthyAt } from '../targets/healthy-state';
import { healthySuperheat } from '../targets/refrigerant-targets';

/** Outdoor and indoor conditions to suppose where none were read. */
const SUPPOSED: Readonly<Record<Mode, { readonly outdoorF: number; readonly returnF: number }>> = {
  cooling: { outdoorF: 90, returnF: 75 },
  heating: { outdoorF: 40, returnF: 70 },
};

/**
 * The run with some readings supposed to be taken, at values a healthy unit would give beside the readings that are
 * there. Only the width of what follows from it means anything, never its values.
 *
 * @param context  run as read
 * @param names    readings to suppose; those already there stay as read
 * @returns context with the supposed readings; a reading for which no value can be worked out stays absent
 * Check: tests/diagnostics/would-narrow.test.ts
 */
export function supposing(context: RunContext, names: readonly ReadingName[]): RunContext {
  let current = context;
  for (const name of order(names)) {
    if (current.run[name] !== undefined) continue;
    const value = supposed(current, name);
    if (value === undefined || !readable(name, value)) continue;
    const run: Run = { ...current.run, [name]: value };
    current = runContext({ ...current, run });
  }
  return current;
}

/** Whether a run could hold the value at all: beside a wild reading, a supposed one may come out absurd. */
function readable(name: ReadingName, value: number): boolean {
  const { min, max } = fieldAt(['runs', '0', name]);
  return Number.isFinite(value) && (min === undefined || value >= min) && (max === undefined || value <= max);
}

/** Conditions first, then pressures, then line temperatures, which hang on them. */
const ORDER: readonly ReadingName[] = [
  'outdoorAirF',
  'returnAirF',
  'returnWetBulbF',
  'suctionPsig',
  'dischargePsig',
  'suctionLineF',
  'dischargeLineF',
  'liquidLineF',
  'outdoorUnitW',
  'airflowCfm',
  'supplyAirF',
  'supplyWetBulbF',
];

function order(names: readonly ReadingName[]): readonly ReadingName[] {
  return ORDER.filter((name) => names.includes(name));
}

function supposed(context: RunContext, name: ReadingName): number | undefined {
  const { mode } = context.run;
  switch (name) {
    case 'outdoorAirF':
      return SUPPOSED[mode].outdoorF;
    case 'returnAirF':
      return SUPPOSED[mode].returnF;
    case 'returnWetBulbF':
      return wetBulbF(
        context.run.returnAirF ?? SUPPOSED[mode].returnF,
        data.indoorUnmeasured.humidityFrac,
        baroPsiaAtAltitude(context.altitude.value),
      );
    case 'suctionPsig':
      return gauge(context, 'suction');
    case 'dischargePsig':
      return gauge(context, 'discharge');
    case 'suctionLineF':
      return suctionLine(context);
    case 'dischargeLineF':
      return dischargeLine(context);
    case 'liquidLineF':
      return liquidLine(context);
    case 'outdoorUnitW':
      return healthyAt(context)?.outdoorUnitW;
    case 'airflowCfm':
      return context.healthy.airflowCfm;
    case 'supplyAirF':
      return supplyAir(context);
    case 'supplyWetBulbF':
      return supplyWetBulb(context);
    default:
      return undefined;
  }
}

function gauge(context: RunContext, side: 'suction' | 'discharge'): number | undefined {
  const { properties } = context;
  const healthy = side === 'suction' ? healthyEvaporating(context) : healthyCondensing(context);
  if (properties === undefined || healthy === undefined) return undefined;
  const psia = orNaN(properties.dewPsia(healthy.temperatureF));
  return psiaToPsig(psia, baroPsiaAtAltitude(context.altitude.value));
}

function suctionLine(context: RunContext): number | undefined {
  const { properties } = context;
  const suction = reading(context, 'suctionPsig');
  if (properties === undefined || suction === undefined) return undefined;
  const dew = orNaN(properties.dewF(psiaAt(suction.value, context.altitude.value)));
  return dew + Math.max(6, healthySuperheat(context).value);
}

function dischargeLine(context: RunContext): number | undefined {
  const { properties } = context;
  const suction = reading(context, 'suctionPsig');
  const line = reading(context, 'suctionLineF');
  const high = dischargeSide(context);
  if (properties === undefined || suction === undefined || line === undefined || high === undefined)
    return undefined;
  const suctionPsia = psiaAt(suction.value, context.altitude.value);
  const dischargePsia = psiaAt(high.gauge.value, context.altitude.value);
  const superheat = line.value - orNaN(properties.dewF(suctionPsia));
  const shellLoss = assumption(context, 'shellLossFrac').value;
  const efficiency = expectedEfficiency(properties.name, dischargePsia / suctionPsia, shellLoss).value;
  return dischargeF(properties, suctionPsia, superheat, dischargePsia, efficiency);
}

function liquidLine(context: RunContext): number | undefined {
  const { properties } = context;
  const high = dischargeSide(context);
  if (properties === undefined || high === undefined) return undefined;
  const bubble = orNaN(properties.bubbleF(psiaAt(high.gauge.value, context.altitude.value)));
  return bubble - assumption(context, 'liquidSubcoolingFd').value;
}

function supplyAir(context: RunContext): number | undefined {
  const state = healthyAt(context);
  const returnAir = reading(context, 'returnAirF');
  if (state === undefined || returnAir === undefined) return undefined;
  const cfm = context.run.airflowCfm ?? context.healthy.airflowCfm;
  const differenceFd = state.capacityBtuh / (sensibleFactor(context.altitude.value) * cfm);
  return context.run.mode === 'heating'
    ? returnAir.value + differenceFd
    : returnAir.value - 0.75 * differenceFd;
}

function supplyWetBulb(context: RunContext): number | undefined {
  const supply = reading(context, 'supplyAirF');
  return supply === undefined ? undefined : supply.value - 1.5;
}
