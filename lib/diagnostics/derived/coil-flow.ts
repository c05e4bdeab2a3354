import { asSourced, derive } from '../derive';
import type { DerivedValue } from '../findings';
import { orNaN } from '../refrigerant-or-nan';
import { assumption, type RunContext, reading } from '../run-context';
import { constant, type Sourced } from '../sourced';
import { blowerPower, compressorPath } from './power';
import { dischargeSide } from './pressures';
import { psiaAt } from './refrigerant-side';

/** Blower watts not read: those of the healthy unit, give or take this share; judgement, as in the capacity check. */
const BLOWER_SD_FRAC = 0.3;

/**
 * Refrigerant that passes through the indoor coil, from the heat the air shows. The suction state does not enter, so
 * it answers with liquid in the suction line, too.
 *
 * @param context  run with its unit and site
 * @param net      heat on the air side, net of blower heat: total in cooling, sensible in heating
 * @returns [lb/h]; absent when a reading is missing, with electric heat on, or with a wet discharge
 * Source: energy balance of the whole circuit: coil heat + compressor heat = m (h_dis - h_liq) in cooling, coil heat
 * = m (h_dis - h_liq) in heating; status computed. Losses of the line set are left out
 * Check: tests/diagnostics/coil-flow.test.ts
 */
export function coilFlow(context: RunContext, net: DerivedValue | undefined): DerivedValue | undefined {
  const { properties, run } = context;
  const high = dischargeSide(context);
  const power = compressorPath(context);
  if (properties === undefined || high === undefined || power === undefined) return undefined;
  if (run.electricHeatOn === true) return undefined;
  const cooling = run.mode === 'cooling';
  const heat = constant('btuhPerW');
  return derive({
    id: 'coilFlowLbH',
    unit: 'lb/h',
    formula: cooling
      ? 'm = (air-side heat + blower heat + P (1 - q) x 3.412) / (h_dis - h_liq)'
      : 'm = (air-side heat - blower heat) / (h_dis - h_liq)',
    source: 'Energy balance of the whole circuit; line losses left out',
    inputs: {
      air: asSourced(net),
      blower: blowerW(context),
      dischargePsig: high.gauge,
      dischargeDrop: high.drop,
      dischargeLine: reading(context, 'dischargeLineF'),
      liquidLine: reading(context, 'liquidLineF'),
      altitude: context.altitude,
      shellLoss: assumption(context, 'shellLossFrac'),
      ...(power.inputs as Readonly<Record<keyof typeof power.inputs, Sourced | undefined>>),
    },
    compute: (v) => {
      const psia = psiaAt(v.dischargePsig, v.altitude, v.dischargeDrop);
      const bubble = orNaN(properties.bubbleF(psia));
      const liquid = orNaN(properties.liquidEnthalpyBtuLb(psia, Math.min(v.liquidLine, bubble)));
      const discharge = orNaN(properties.vapourEnthalpyBtuLb(psia, v.dischargeLine));
      const work = cooling ? power.watts(v) * (1 - v.shellLoss) : 0;
      const blower = cooling ? v.blower : -v.blower;
      const flow = (v.air + heat * (blower + work)) / (discharge - liquid);
      return flow > 0 ? flow : Number.NaN;
    },
  });
}

function blowerW(context: RunContext): Sourced {
  const healthyW = context.healthy.blowerW;
  return (
    asSourced(blowerPower(context)) ?? {
      name: 'blowerW',
      value: healthyW,
      sd: BLOWER_SD_FRAC * healthyW,
      unit: 'W',
      basis: 'assumed',
      source: 'Blower of the healthy unit',
    }
  );
}
