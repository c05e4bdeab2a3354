import { propagate, type Uncertain } from '../../math/propagate';
import data from '../data/targets.json';
import { dischargeSide } from '../derived/pressures';
import { psiaAt } from '../derived/refrigerant-side';
import { isOutOfRange } from '../refrigerant/out-of-range';
import type { RefrigerantProperties } from '../refrigerant/refrigerant-properties';
import { orNaN, partOrNaN } from '../refrigerant-or-nan';
import { assumption, type RunContext, reading } from '../run-context';
import { expectedEfficiency } from './expected-efficiency';
import { healthyCondensing, healthyEvaporating } from './healthy-pressures';

export type HealthyDischarge = Uncertain & {
  /** Healthy pressures at the conditions, or the pressures read when the conditions are not known. */
  readonly at: 'healthyPressures' | 'pressuresRead';
};

/**
 * Discharge line temperature of the healthy unit: lossless compression from the healthy suction state, divided by the
 * efficiency to expect at that ratio.
 *
 * @param context     run; healthy pressures are used when the conditions are known, else the pressures read
 * @param superheat   healthy suction superheat [F difference]
 * @returns [F] with its standard uncertainty; undefined without refrigerant, conditions and pressures, or beyond the
 * property tables
 * Source: targets/expected-efficiency.ts, targets/healthy-pressures.ts; bands taken as 90 % bands
 * Check: tests/diagnostics/targets/healthy-discharge.test.ts
 */
export function healthyDischarge(context: RunContext, superheat: Uncertain): HealthyDischarge | undefined {
  const { properties } = context;
  if (properties === undefined) return undefined;
  const found = conditionsOf(context, properties);
  if (found === undefined) return undefined;
  const shellLoss = assumption(context, 'shellLossFrac').value;
  const ratio = found.discharge.value / found.suction.value;
  const inputs = {
    suction: found.suction,
    discharge: found.discharge,
    superheat,
    efficiencyShift: { value: 0, sd: expectedEfficiency(properties.name, ratio, shellLoss).sd },
  };
  const compute = (v: Readonly<Record<keyof typeof inputs, number>>): number => {
    const efficiency =
      expectedEfficiency(properties.name, v.discharge / v.suction, shellLoss).value + v.efficiencyShift;
    return dischargeF(properties, v.suction, v.superheat, v.discharge, efficiency);
  };
  const best = { suction: found.suction.value, discharge: found.discharge.value, superheat: superheat.value };
  if (!Number.isFinite(compute({ ...best, efficiencyShift: 0 }))) return undefined;
  const { value, sd } = propagate(compute, inputs);
  return { value, sd, at: found.at };
}

/**
 * Discharge temperature of a compression with a given efficiency.
 *
 * @param p  refrigerant
 * @param suctionPsia    [psia]
 * @param superheatFd    suction superheat, >= 0 [F difference]; below 0 taken as 0
 * @param dischargePsia  [psia]
 * @param efficiencyFrac isentropic efficiency as the refrigerant sees it, > 0
 * @returns [F], NaN beyond the property tables
 * Check: tests/diagnostics/targets/healthy-discharge.test.ts
 */
export function dischargeF(
  p: RefrigerantProperties,
  suctionPsia: number,
  superheatFd: number,
  dischargePsia: number,
  efficiencyFrac: number,
): number {
  const suctionF = orNaN(p.dewF(suctionPsia)) + Math.max(0, superheatFd);
  const suction = p.vapourEnthalpyBtuLb(suctionPsia, suctionF);
  if (isOutOfRange(suction)) return Number.NaN;
  const lossless = partOrNaN(
    p.isentropicDischarge(suctionPsia, suctionF, dischargePsia),
    (d) => d.enthalpyBtuLb,
  );
  const enthalpy = suction + (lossless - suction) / efficiencyFrac;
  return Number.isFinite(enthalpy) ? orNaN(p.vapourFAtEnthalpy(dischargePsia, enthalpy)) : Number.NaN;
}

type Conditions = {
  readonly suction: Uncertain;
  readonly discharge: Uncertain;
  readonly at: HealthyDischarge['at'];
};

function conditionsOf(context: RunContext, p: RefrigerantProperties): Conditions | undefined {
  const evaporating = healthyEvaporating(context);
  const condensing = healthyCondensing(context);
  if (evaporating !== undefined && condensing !== undefined) {
    const suction = pressureAt(p.dewPsia, evaporating.temperatureF, evaporating.toleranceFd);
    const discharge = pressureAt(
      (f) => {
        const dew = p.dewPsia(f);
        const bubble = p.bubblePsia(f);
        return typeof dew === 'number' && typeof bubble === 'number' ? (dew + bubble) / 2 : dew;
      },
      condensing.temperatureF,
      condensing.toleranceFd,
    );
    if (suction !== undefined && discharge !== undefined && discharge.value > 1.05 * suction.value) {
      return { suction, discharge, at: 'healthyPressures' };
    }
  }
  const suctionGauge = reading(context, 'suctionPsig');
  const high = dischargeSide(context);
  if (suctionGauge === undefined || high === undefined) return undefined;
  const altitude = context.altitude.value;
  const suction = psiaAt(suctionGauge.value, altitude);
  const discharge = psiaAt(high.gauge.value, altitude);
  if (discharge <= suction) return undefined;
  return {
    suction: { value: suction, sd: suctionGauge.sd },
    discharge: { value: discharge, sd: high.gauge.sd },
    at: 'pressuresRead',
  };
}

function pressureAt(
  psiaOf: RefrigerantProperties['dewPsia'],
  temperatureF: number,
  toleranceFd: number,
): Uncertain | undefined {
  const sdF = toleranceFd / data.dischargeBandSigmas.value;
  const value = psiaOf(temperatureF);
  const upper = psiaOf(temperatureF + sdF);
  return typeof value === 'number' && typeof upper === 'number' ? { value, sd: upper - value } : undefined;
}
