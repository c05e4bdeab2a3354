import splitData from '../data/target-split.json';
import superheatData from '../data/target-superheat.json';
import data from '../data/targets.json';
import { asSourced } from '../derive';
import { derivedById } from '../derived/derive-run';
import { unitVolts } from '../derived/power';
import type { DerivedInput, DerivedValue, Target } from '../findings';
import { type RunContext, reading, returnWetBulb } from '../run-context';
import { plateValue, type Sourced } from '../sourced';
import { seerClass } from '../targets/healthy-pressures';
import { coolingWetBulb, healthyAt } from '../targets/healthy-state';

/** How a target came about: its rule in trade notation, and the conditions it was read at. */
export type TargetRule = { readonly formula: string; readonly conditions: readonly DerivedInput[] };

type Parts = readonly [string, ...(Sourced | undefined)[]];

const BAND: Parts = ['fixed band, whatever the conditions'];

/**
 * The rule behind a target and the conditions it was asked at.
 *
 * @param context  run with its unit and site
 * @param values   derived values of the same run
 * @param target   target of that run
 * @returns conditions that were read, typed or assumed; a fixed band has none
 * Source: the rules themselves, lib/diagnostics/targets; data/targets.json
 * Check: tests/diagnostics/explain/target-rule.test.ts
 */
export function targetRule(
  context: RunContext,
  values: readonly DerivedValue[],
  target: Pick<Target, 'id' | 'status' | 'note'>,
): TargetRule {
  const [formula, ...conditions] = ruleOf(context, values, target);
  return { formula, conditions: conditions.flatMap((one) => (one === undefined ? [] : [asCondition(one)])) };
}

function asCondition({ name, value, unit, basis, source }: Sourced): DerivedInput {
  return { name, value, unit, basis, ...(source === undefined ? {} : { source }) };
}

function ruleOf(
  context: RunContext,
  values: readonly DerivedValue[],
  target: Pick<Target, 'id' | 'status' | 'note'>,
): Parts {
  const outdoor = reading(context, 'outdoorAirF');
  const returnAir = reading(context, 'returnAirF');
  switch (target.id) {
    case 'suctionPsig':
    case 'dischargePsig':
      return [
        "the unit's own charging table, straight lines between its cells",
        outdoor,
        context.run.mode === 'cooling' ? returnWetBulb(context) : returnAir,
      ];
    case 'suctionSuperheatFd':
      return superheatRule(context, outdoor);
    case 'liquidSubcoolingFd':
      return subcoolingRule(context);
    case 'condensingOverOutdoorFd':
    case 'condensingOverReturnFd':
    case 'evaporatingBelowReturnFd':
    case 'evaporatingBelowOutdoorFd':
      return saturationRule(context, target);
    case 'dischargeLineF':
      return dischargeRule(context, target);
    case 'compressionRatio':
      return ['band by efficiency class, near design conditions', seer(context), outdoor];
    case 'isentropicEfficiencyFrac':
      return [
        'efficiency to expect at the compression ratio',
        asSourced(derivedById(values, 'compressionRatio')),
      ];
    case 'airSplitFd':
      return [
        `table of return air and return wet bulb, +/-${splitData.tolerance.value} F`,
        returnAir,
        returnWetBulb(context),
      ];
    case 'airRiseFd':
      return [
        'rise = (heat of the healthy unit + blower heat) / (1.08 x cfm x p/p0)',
        outdoor,
        healthyAt(context)?.indoor,
        asSourced(derivedById(values, 'airflowCfm')) ?? healthyAirflow(context),
        context.altitude,
      ];
    case 'outdoorUnitW':
    case 'refrigerantCapacityBtuh':
    case 'totalCapacityBtuh':
      return ['ratings of the unit, moved along published curves', outdoor, healthyAt(context)?.indoor];
    case 'compressorA':
      return [
        'A = watts of the healthy unit x (1 - fan share) / (V x power factor)',
        outdoor,
        healthyAt(context)?.indoor,
        unitVolts(context),
      ];
    case 'totalExternalStaticInWc':
      return target.status === 'nameplate'
        ? [
            'up to the static of the nameplate',
            plateValue('ratedStaticInWc', context.visit.unit.ratedStaticInWc, 'in. w.c.'),
          ]
        : BAND;
    default:
      return BAND;
  }
}

function superheatRule(context: RunContext, outdoor: Sourced | undefined): Parts {
  const tabled = context.run.mode === 'cooling' && context.visit.unit.metering === 'fixedOrifice';
  if (!tabled) return ['band of expansion valves, whatever the conditions'];
  const tolerance = superheatData.tolerance.value;
  return [`table of outdoor air and return wet bulb, +/-${tolerance} F`, outdoor, returnWetBulb(context)];
}

function subcoolingRule({ visit }: RunContext): Parts {
  const { nameplateSubcoolingFd, metering } = visit.unit;
  if (nameplateSubcoolingFd === undefined) {
    const kind = metering === 'txv' ? 'expansion valves' : 'fixed metering';
    return [`usual band of ${kind}, whatever the conditions`];
  }
  return [
    `nameplate +/-${data.subcooling.nameplateToleranceFd} F`,
    plateValue('nameplateSubcoolingFd', nameplateSubcoolingFd, 'Fd'),
  ];
}

function saturationRule(context: RunContext, { id, status }: Pick<Target, 'id' | 'status'>): Parts {
  const outdoor = reading(context, 'outdoorAirF');
  const returnAir = reading(context, 'returnAirF');
  if (status === 'nameplate') {
    const indoor = context.run.mode === 'cooling' ? returnWetBulb(context) : returnAir;
    const air = id.endsWith('ReturnFd') ? returnAir : undefined;
    return [
      "pressure of the unit's own charging table, as saturation temperature, against the air",
      outdoor,
      indoor,
      ...(air === undefined || air.name === indoor?.name ? [] : [air]),
      context.altitude,
    ];
  }
  if (id === 'condensingOverOutdoorFd') return ['difference by efficiency class', seer(context)];
  if (id === 'condensingOverReturnFd') {
    return [
      'difference = rise of the healthy unit over its coil / effectiveness of the coil',
      outdoor,
      healthyAt(context)?.indoor,
      context.altitude,
    ];
  }
  if (id === 'evaporatingBelowOutdoorFd') {
    const { valueFd, atOutdoorF } = data.evaporatingBelowOutdoor;
    return [
      `difference = ${valueFd} F x heat taken up / heat taken up at ${atOutdoorF} F outdoors`,
      outdoor,
      healthyAt(context)?.indoor,
    ];
  }
  const { atReturnF, atWetBulbF, atOutdoorF, perWetBulbF, perOutdoorF } = data.evaporatingBelowReturn;
  return [
    `difference = class value + (return - ${atReturnF}) - ${-perWetBulbF} x (wet bulb - ${atWetBulbF}) - ${-perOutdoorF} x (outdoor - ${atOutdoorF})`,
    seer(context),
    returnAir,
    coolingWetBulb(context).indoor,
    outdoor,
  ];
}

function dischargeRule(context: RunContext, { note }: Pick<Target, 'note'>): Parts {
  const formula = 'lossless compression from healthy superheat / efficiency to expect at that ratio';
  if (note?.code === 'dischargeAtPressuresRead') {
    const high = reading(context, 'dischargePsig') ?? reading(context, 'liquidPsig');
    return [formula, reading(context, 'suctionPsig'), high, context.altitude];
  }
  const wet = context.run.mode === 'cooling' ? coolingWetBulb(context).indoor : undefined;
  return [formula, reading(context, 'outdoorAirF'), reading(context, 'returnAirF'), wet, context.altitude];
}

/** Efficiency class the rules ask for: SEER by the older procedure. */
function seer(context: RunContext): Sourced {
  const { basis } = context.healthy.cooling;
  return { name: 'ratings.seerBtuPerWh', value: seerClass(context), sd: 0, unit: 'Btu/Wh', basis };
}

function healthyAirflow({ healthy }: RunContext): Sourced {
  return { name: 'airflowCfm', value: healthy.airflowCfm, sd: 0, unit: 'cfm', basis: 'assumed' };
}
