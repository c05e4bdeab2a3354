import { interpolateLinear } from '../../math/interpolate';
import type { Saying } from '../../visit/wording';
import data from '../data/targets.json';
import { sensibleFactor } from '../derived/air-side';
import { psiaAt } from '../derived/refrigerant-side';
import { steadyState } from '../healthy-unit/steady-state';
import { oncePerContext, type RunContext, reading } from '../run-context';
import { constant } from '../sourced';
import { chargingTablePressure } from './charging-table';
import { coolingWetBulb, healthyAt } from './healthy-state';

/** A saturation temperature of the healthy unit at the conditions of a run. */
export type HealthyTemperature = {
  readonly temperatureF: number;
  /** Half width of the band in which a healthy unit is accepted. */
  readonly toleranceFd: number;
  readonly lowFd?: number;
  readonly highFd?: number;
  readonly source: string;
  readonly status: string;
  readonly note?: Saying;
};

const OWN_TABLE = "The unit's own charging table, typed in at the visit";

/**
 * Older-procedure SEER of the healthy unit; a newer rating is divided by 0.95.
 *
 * Source: ANSI/RESNET/ICC 301-2022 Addendum C (SEER2 = 0.95 SEER, split ducted), status secondary
 */
export function seerClass(context: RunContext): number {
  const { procedure, seasonalBtuPerWh } = context.healthy.cooling;
  return procedure === 'newer' ? seasonalBtuPerWh / data.seer2PerSeer.value : seasonalBtuPerWh;
}

/**
 * Condensing temperature (mean of bubble and dew) of the healthy unit.
 *
 * @returns undefined without outdoor air (cooling) or return air and outdoor air (heating)
 * The unit's own charging table beats the class rule. Cooling rules are never used in heating.
 * Source: data/targets.json, condensingOverOutdoor and condensingOverReturn
 * Check: tests/diagnostics/targets/healthy-pressures.test.ts
 */
export const healthyCondensing = oncePerContext((context): HealthyTemperature | undefined => {
  const own = fromOwnTable(context, 'dischargePsig');
  if (own !== undefined) return own;
  return context.run.mode === 'cooling' ? classCondensing(context) : heatingCondensing(context);
});

/**
 * Evaporating temperature (dew) of the healthy unit.
 *
 * @returns undefined without return air (cooling) or outdoor air (heating)
 * Source: data/targets.json, evaporatingBelowReturn and evaporatingBelowOutdoor
 * Check: tests/diagnostics/targets/healthy-pressures.test.ts
 */
export const healthyEvaporating = oncePerContext((context): HealthyTemperature | undefined => {
  const own = fromOwnTable(context, 'suctionPsig');
  if (own !== undefined) return own;
  return context.run.mode === 'cooling' ? coolingEvaporating(context) : heatingEvaporating(context);
});

function fromOwnTable(
  context: RunContext,
  port: 'suctionPsig' | 'dischargePsig',
): HealthyTemperature | undefined {
  const { properties } = context;
  const pressure = chargingTablePressure(context, port);
  if (pressure === undefined || properties === undefined) return undefined;
  const at = (psig: number): number => {
    const psia = psiaAt(psig, context.altitude.value);
    const dew = properties.dewF(psia);
    const bubble = port === 'suctionPsig' ? dew : properties.bubbleF(psia);
    return typeof dew === 'number' && typeof bubble === 'number' ? (dew + bubble) / 2 : Number.NaN;
  };
  const temperatureF = at(pressure.psig);
  const upperF = at(pressure.psig + pressure.tolerancePsi);
  if (!Number.isFinite(temperatureF) || !Number.isFinite(upperF)) return undefined;
  return {
    temperatureF,
    toleranceFd: upperF - temperatureF,
    source: OWN_TABLE,
    status: 'nameplate',
    ...(pressure.stepsBeyond > 0
      ? {
          note: {
            code: 'beyondChargingTable',
            values: { steps: Math.round(pressure.stepsBeyond * 10) / 10 },
          },
        }
      : {}),
  };
}

function classCondensing(context: RunContext): HealthyTemperature | undefined {
  const outdoor = reading(context, 'outdoorAirF');
  if (outdoor === undefined) return undefined;
  const { seerBtuPerWh, valueFd, toleranceFd, source, status, outdoorLowF, outdoorHighF } =
    data.condensingOverOutdoor;
  if (outdoor.value < outdoorLowF || outdoor.value > outdoorHighF) return undefined;
  const over = interpolateLinear(seerBtuPerWh, valueFd, seerClass(context)).value;
  return { temperatureF: outdoor.value + over, toleranceFd, source, status, ...classNote(context) };
}

function coolingEvaporating(context: RunContext): HealthyTemperature | undefined {
  const returnAir = reading(context, 'returnAirF');
  if (returnAir === undefined) return undefined;
  const rule = data.evaporatingBelowReturn;
  const base = interpolateLinear(rule.seerBtuPerWh, rule.valueFd, seerClass(context)).value;
  const wet = coolingWetBulb(context);
  const outdoorF = reading(context, 'outdoorAirF')?.value ?? rule.atOutdoorF;
  const wetF = clamp(wet.indoor.value, rule.wetBulbLowF, rule.wetBulbHighF);
  const belowFd =
    base +
    rule.perReturnF * (returnAir.value - rule.atReturnF) +
    rule.perWetBulbF * (wetF - rule.atWetBulbF) +
    rule.perOutdoorF * (clamp(outdoorF, rule.outdoorLowF, rule.outdoorHighF) - rule.atOutdoorF);
  const toleranceFd = wet.assumed ? Math.hypot(rule.toleranceFd, 2 * wet.indoor.sd) : rule.toleranceFd;
  return {
    temperatureF: returnAir.value - belowFd,
    toleranceFd,
    source: rule.source,
    status: rule.status,
    ...(wet.assumed ? { note: { code: 'wetBulbAssumed' } } : classNote(context)),
  };
}

function heatingEvaporating(context: RunContext): HealthyTemperature | undefined {
  const outdoor = reading(context, 'outdoorAirF');
  const state = healthyAt(context);
  if (outdoor === undefined || state === undefined) return undefined;
  const rule = data.evaporatingBelowOutdoor;
  const at47 = steadyState(context.healthy, { mode: 'heating', outdoorF: rule.atOutdoorF, frost: 'none' });
  const takenUp = (s: { capacityBtuh: number; outdoorUnitW: number }): number =>
    s.capacityBtuh - constant('btuhPerW') * s.outdoorUnitW;
  const share = clamp(takenUp(state) / takenUp(at47), 0.3, 1.5);
  return {
    temperatureF: outdoor.value - rule.valueFd * share,
    toleranceFd: rule.toleranceFd,
    source: rule.source,
    status: rule.status,
  };
}

function heatingCondensing(context: RunContext): HealthyTemperature | undefined {
  const state = healthyAt(context);
  if (state === undefined) return undefined;
  const returnF = state.indoor.value;
  const rule = data.condensingOverReturn;
  const riseFd = state.capacityBtuh / (sensibleFactor(context.altitude.value) * context.healthy.airflowCfm);
  const at = (effectiveness: number): number => returnF + riseFd / effectiveness;
  const temperatureF = at(rule.effectivenessLikely);
  return {
    temperatureF,
    toleranceFd: (at(rule.effectivenessLow) - at(rule.effectivenessHigh)) / 2,
    lowFd: temperatureF - at(rule.effectivenessHigh),
    highFd: at(rule.effectivenessLow) - temperatureF,
    source: rule.source,
    status: rule.status,
    ...(state.indoorAssumed ? { note: { code: 'returnAirAssumed' } } : {}),
  };
}

function classNote(context: RunContext): { readonly note?: Saying } {
  return context.healthy.cooling.basis === 'assumed' ? { note: { code: 'classAssumed' } } : {};
}

function clamp(x: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, x));
}
