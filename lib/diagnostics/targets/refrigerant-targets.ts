import type { Uncertain } from '../../math/propagate';
import limits from '../data/limits.json';
import superheatData from '../data/target-superheat.json';
import data from '../data/targets.json';
import { type RunContext, reading, returnWetBulb } from '../run-context';
import type { NoTarget, TargetPart } from './build-target';
import { healthyDischarge } from './healthy-discharge';
import {
  type HealthyTemperature,
  healthyCondensing,
  healthyEvaporating,
  seerClass,
} from './healthy-pressures';
import { targetSuperheatFd } from './target-superheat';

type Answer = TargetPart | NoTarget;

const BAND = data.dischargeBandSigmas.value;

/**
 * Target suction superheat.
 *
 * @returns fixed metering in cooling: the regulatory table, +/-5 F; expansion valve in cooling: up to 25 F; in heating
 * only an expansion valve has a published band. Otherwise why there is no target.
 * Never from below the 5 F makers ask for at the service valve. Cooling only from 55 F outdoors; outside the table no verdict.
 * Source: data/target-superheat.json, data/targets.json
 * Check: tests/diagnostics/targets/refrigerant-targets.test.ts
 */
export function superheatTarget(context: RunContext): Answer {
  const answer = publishedSuperheat(context);
  const { floor, source } = limits.suctionSuperheatFd;
  if (!('value' in answer) || answer.low >= floor) return answer;
  return { ...answer, low: floor, source: `${answer.source}; lower edge: ${source}` };
}

function publishedSuperheat(context: RunContext): Answer {
  const id = 'suctionSuperheatFd';
  const { metering } = context.visit.unit;
  if (metering === undefined) return none(id, 'meteringUnknown');
  if (context.run.mode === 'heating') {
    if (metering === 'fixedOrifice') return none(id, 'noHeatingSuperheatRule');
    return band(id, 'Fd', data.heatingSuperheatTxv);
  }
  return metering === 'txv' ? band(id, 'Fd', data.txvSuperheat) : fixedSuperheat(context, id);
}

function fixedSuperheat(context: RunContext, id: string): Answer {
  const outdoor = reading(context, 'outdoorAirF');
  const wet = returnWetBulb(context);
  if (outdoor === undefined || wet === undefined) return none(id, 'needsOutdoorAndWetBulb');
  const found = targetSuperheatFd(outdoor.value, wet.value);
  if (found.kind === 'none') return none(id, NO_SUPERHEAT[found.why]);
  const { value: toleranceFd } = superheatData.tolerance;
  const { source, status } = superheatData;
  return {
    id,
    value: found.value,
    low: found.value - toleranceFd,
    high: found.value + toleranceFd,
    unit: 'Fd',
    source,
    status,
    sd: toleranceFd / BAND,
  };
}

const NO_SUPERHEAT = {
  dash: 'noTargetDash',
  rowBelow: 'tooColdForCharging',
  rowAbove: 'tooHotForTable',
  columnBelow: 'tooDryForTable',
  columnAbove: 'tooHumidForTable',
} as const;

/**
 * Target subcooling in cooling: nameplate +/-3 F; without one 8-12 F for an expansion valve, 5-15 F as the usual
 * range of fixed metering.
 *
 * @returns in heating no rule is published
 * Source: data/targets.json, subcooling
 * Check: tests/diagnostics/targets/refrigerant-targets.test.ts
 */
export function subcoolingTarget(context: RunContext): Answer {
  const id = 'liquidSubcoolingFd';
  const { metering, nameplateSubcoolingFd } = context.visit.unit;
  if (context.run.mode === 'heating') return none(id, 'noHeatingSubcoolingRule');
  const { nameplateToleranceFd, txv, fixed, source, status } = data.subcooling;
  if (nameplateSubcoolingFd !== undefined) {
    return {
      id,
      value: nameplateSubcoolingFd,
      low: nameplateSubcoolingFd - nameplateToleranceFd,
      high: nameplateSubcoolingFd + nameplateToleranceFd,
      unit: 'Fd',
      source: 'Nameplate; tolerance: California Energy Commission 2008, RA3.2',
      status: 'nameplate',
      sd: nameplateToleranceFd / BAND,
    };
  }
  if (metering === undefined) return none(id, 'meteringUnknown');
  return band(id, 'Fd', { ...(metering === 'txv' ? txv : fixed), source, status });
}

/** Target condensing temperature over the air that cools it. Check: tests/diagnostics/targets/refrigerant-targets.test.ts */
export function condensingTarget(context: RunContext): Answer {
  const cooling = context.run.mode === 'cooling';
  const id = cooling ? 'condensingOverOutdoorFd' : 'condensingOverReturnFd';
  const air = reading(context, cooling ? 'outdoorAirF' : 'returnAirF');
  const healthy = healthyCondensing(context);
  if (healthy === undefined || air === undefined) {
    const { outdoorLowF: low, outdoorHighF: high } = data.condensingOverOutdoor;
    if (cooling && air !== undefined)
      return { id, note: { code: 'condensingRuleRange', values: { low, high } } };
    return none(id, cooling ? 'needsOutdoor' : 'needsOutdoorAndReturn');
  }
  return fromTemperature(id, healthy, healthy.temperatureF - air.value, 1);
}

/** Target evaporating temperature below the air that warms it. Check: tests/diagnostics/targets/refrigerant-targets.test.ts */
export function evaporatingTarget(context: RunContext): Answer {
  const cooling = context.run.mode === 'cooling';
  const id = cooling ? 'evaporatingBelowReturnFd' : 'evaporatingBelowOutdoorFd';
  const air = reading(context, cooling ? 'returnAirF' : 'outdoorAirF');
  const healthy = healthyEvaporating(context);
  if (healthy === undefined || air === undefined) return none(id, cooling ? 'needsReturn' : 'needsOutdoor');
  return fromTemperature(id, healthy, air.value - healthy.temperatureF, -1);
}

function fromTemperature(id: string, healthy: HealthyTemperature, value: number, sign: 1 | -1): TargetPart {
  const below = healthy.lowFd ?? healthy.toleranceFd;
  const above = healthy.highFd ?? healthy.toleranceFd;
  return {
    id,
    value,
    low: value - (sign === 1 ? below : above),
    high: value + (sign === 1 ? above : below),
    unit: 'Fd',
    source: healthy.source,
    status: healthy.status,
    sd: healthy.toleranceFd / BAND,
    ...(healthy.note === undefined ? {} : { note: healthy.note }),
  };
}

/** Target compression ratio in cooling near design conditions. Check: tests/diagnostics/targets/refrigerant-targets.test.ts */
export function compressionRatioTarget(context: RunContext): Answer {
  const id = 'compressionRatio';
  const rule = data.compressionRatioCooling;
  const outdoor = reading(context, 'outdoorAirF');
  if (context.run.mode === 'heating') return none(id, 'noHeatingRatioRule');
  if (outdoor === undefined || outdoor.value < rule.outdoorLowF || outdoor.value > rule.outdoorHighF) {
    return none(id, 'ratioRuleNearDesignOnly');
  }
  const { low, high } = seerClass(context) >= rule.modernFromSeerBtuPerWh ? rule.modern : rule.older;
  return { id, value: (low + high) / 2, low, high, unit: 'ratio', source: rule.source, status: rule.status };
}

/**
 * Target discharge line temperature: worked out from healthy pressures, superheat and efficiency. In heating between
 * 35 and 60 F the trade rule (outdoor + 100 F) may lie lower: both are accepted.
 *
 * Source: targets/healthy-discharge.ts; data/targets.json, heatingDischarge
 * Check: tests/diagnostics/targets/refrigerant-targets.test.ts
 */
export function dischargeTarget(context: RunContext): Answer {
  const id = 'dischargeLineF';
  const rule = heatingRule(context);
  const healthy = healthyDischarge(context, healthySuperheat(context));
  if (healthy === undefined) {
    if (rule === undefined) return none(id, 'needsConditionsOrPressures');
    const { source, status } = data.heatingDischarge;
    return { id, ...rule, unit: 'F', source, status, sd: data.heatingDischarge.toleranceFd / BAND };
  }
  const low = healthy.value - BAND * healthy.sd;
  return {
    id,
    value: healthy.value,
    low: rule === undefined ? low : Math.min(low, rule.low),
    high: healthy.value + BAND * healthy.sd,
    unit: 'F',
    source: 'Lossless compression divided by the efficiency to expect at that ratio, from healthy superheat',
    status: 'computed',
    sd: healthy.sd,
    ...(healthy.at === 'pressuresRead' ? { note: { code: 'dischargeAtPressuresRead' } } : {}),
  };
}

function heatingRule(context: RunContext): { value: number; low: number; high: number } | undefined {
  const outdoor = reading(context, 'outdoorAirF');
  const { overOutdoorFd, toleranceFd, outdoorLowF, outdoorHighF } = data.heatingDischarge;
  if (context.run.mode === 'cooling' || outdoor === undefined) return undefined;
  if (outdoor.value < outdoorLowF || outdoor.value > outdoorHighF) return undefined;
  const value = outdoor.value + overOutdoorFd;
  return { value, low: value - toleranceFd, high: value + toleranceFd };
}

/**
 * Superheat a healthy unit would have here, for computed targets; wide where no rule is published. A heating rule never
 * stands in for cooling.
 *
 * Source: data/targets.json, coolingSuperheatUnpublished and heatingSuperheatUnpublished, status assumption
 * Check: tests/diagnostics/targets/refrigerant-targets.test.ts, tests/diagnostics/causes/at-target.test.ts
 */
export function healthySuperheat(context: RunContext): Uncertain {
  const answer = publishedSuperheat(context);
  if ('value' in answer) {
    const sd = Math.min(answer.value - answer.low, answer.high - answer.value) / BAND;
    return { value: answer.value, sd };
  }
  if (context.run.mode === 'heating') return heatingOrificeSuperheat(context);
  const { valueFd, sdFd, dashFd, dashSdFd } = data.coolingSuperheatUnpublished;
  return answer.note.code === 'noTargetDash' ? { value: dashFd, sd: dashSdFd } : { value: valueFd, sd: sdFd };
}

/**
 * Superheat fixed metering may show in heating: less in the cold, more in mild weather. An expectation inside other
 * computations, never a target.
 *
 * @returns [F difference], wide
 * Source: data/targets.json, heatingSuperheatUnpublished, status assumption
 * Check: tests/diagnostics/targets/refrigerant-targets.test.ts
 */
export function heatingOrificeSuperheat(context: RunContext): Uncertain {
  const { valueFd, sdFd, atOutdoorF, perOutdoorF, lowFd, highFd } = data.heatingSuperheatUnpublished;
  const outdoorF = context.run.outdoorAirF ?? atOutdoorF;
  return {
    value: Math.min(highFd, Math.max(lowFd, valueFd + perOutdoorF * (outdoorF - atOutdoorF))),
    sd: sdFd,
  };
}

type BandRow = {
  readonly valueFd: number;
  readonly lowFd: number;
  readonly highFd: number;
  readonly source: string;
  readonly status: string;
};

function band(id: string, unit: string, row: BandRow): TargetPart {
  const { valueFd, lowFd, highFd, source, status } = row;
  return {
    id,
    value: valueFd,
    low: lowFd,
    high: highFd,
    unit,
    source,
    status,
    sd: (highFd - lowFd) / (2 * BAND),
  };
}

function none(id: string, code: string): NoTarget {
  return { id, note: { code } };
}
