import { type Estimate, estimate, Z_10_90 } from '../../math/estimate';
import type { Uncertain } from '../../math/propagate';
import type { Mode } from '../../visit/run';
import type { Saying } from '../../visit/wording';
import data from '../data/loss.json';
import type { Loss, LossRoute } from '../findings';
import type { AgePrior } from './age-prior';
import type { FaultRoute } from './fault-route';
import { combine, fuse } from './fuse';
import type { Measured, RunEvidence } from './run-evidence';

/**
 * Loss of one mode from the evidence of one run, the causes it points to, and the age prior.
 *
 * Measured capacities are combined among themselves first, then set against the healthy unit, whose own uncertainty
 * they share; published fault correlations join as a second opinion, which shares nothing with it. The age prior comes
 * last and weakened, so that age alone never convicts.
 *
 * @param mode      mode of the run
 * @param evidence  what the run says; undefined = no usable run
 * @param prior     what age says
 * @param route     what the likely causes do by published correlations; left out when the readings are too few
 * @returns log ratios and estimates, capped, with the routes that went in
 * Check: tests/diagnostics/loss.test.ts
 */
export function lossOfRun(
  mode: Mode,
  evidence: RunEvidence | undefined,
  prior: AgePrior,
  route?: FaultRoute | undefined,
): Loss {
  const notes: Saying[] = [...(evidence?.notes ?? [])];
  const healthy = evidence?.healthy;
  const capacity = together(
    measuredAgainst(evidence?.capacity ?? [], healthy?.sdLnCapacity),
    route?.lnCapacity,
    prior.lnCapacity,
  );
  const power = together(
    measuredAgainst(evidence?.power === undefined ? [] : [evidence.power], healthy?.sdLnPower),
    route?.lnPower,
    prior.lnPower,
  );
  if (capacity.measuredDisagree) notes.push({ code: 'capacityRoutesDisagree' });
  if (capacity.routesDisagree) notes.push({ code: 'measuredAgainstCauses', values: { what: 'capacity' } });
  if (power.routesDisagree) notes.push({ code: 'measuredAgainstCauses', values: { what: 'power' } });
  const measured = capacity.measured || power.measured;
  if (!measured && route === undefined) {
    notes.push({ code: 'agePriorOnly', values: { years: Math.round(prior.ageYears) } });
  } else {
    if (!capacity.measured) notes.push({ code: 'capacityNotMeasured' });
    if (!power.measured) notes.push({ code: 'powerNotMeasured' });
  }
  if (route?.beyondRange === true) notes.push({ code: 'correlationBeyondRange' });
  return assembled(mode, capacity.value, power.value, {
    routes: routesOf(evidence, prior, route, measured),
    basis: measured ? 'measured' : 'assumed',
    notes,
    ...(route === undefined ? {} : { shares: sharesOf(route, capacity.value, power.value) }),
  });
}

type Against = { readonly value: Uncertain; readonly disagree: boolean } | undefined;

function measuredAgainst(measured: readonly Measured[], baselineSd: number | undefined): Against {
  if (measured.length === 0 || baselineSd === undefined) return undefined;
  const own = fuse(measured.map((m) => ({ value: m.mean, sd: m.sd })));
  return { value: { value: own.value, sd: Math.hypot(own.sd, baselineSd) }, disagree: own.disagree };
}

type Together = {
  readonly value: Uncertain;
  readonly measured: boolean;
  readonly measuredDisagree: boolean;
  readonly routesDisagree: boolean;
};

function together(against: Against, route: Uncertain | undefined, prior: Uncertain): Together {
  const opinions = [against?.value, route].filter((value) => value !== undefined);
  if (opinions.length === 0) {
    return { value: prior, measured: false, measuredDisagree: false, routesDisagree: false };
  }
  const fused = fuse(opinions);
  const weak = { value: prior.value, sd: data.agePrior.weakening * prior.sd };
  return {
    value: combine(weak, fused),
    measured: against !== undefined,
    measuredDisagree: against?.disagree === true,
    routesDisagree: fused.disagree,
  };
}

function routesOf(
  evidence: RunEvidence | undefined,
  prior: AgePrior,
  route: FaultRoute | undefined,
  measured: boolean,
): readonly LossRoute[] {
  const healthy = evidence?.healthy;
  const against = (m: Measured, baselineSd: number) => ({ mean: m.mean, sd: Math.hypot(m.sd, baselineSd) });
  const own: LossRoute[] = [];
  if (evidence !== undefined && healthy !== undefined) {
    for (const m of evidence.capacity) {
      own.push({ id: m.id, runId: evidence.runId, lnCapacity: against(m, healthy.sdLnCapacity) });
    }
    if (evidence.power !== undefined) {
      own.push({
        id: 'measuredPower',
        runId: evidence.runId,
        lnPower: against(evidence.power, healthy.sdLnPower),
      });
    }
  }
  if (route !== undefined) {
    own.push({
      id: 'faultCorrelation',
      lnCapacity: { mean: route.lnCapacity.value, sd: route.lnCapacity.sd },
      lnPower: { mean: route.lnPower.value, sd: route.lnPower.sd },
      ...(evidence === undefined ? {} : { runId: evidence.runId }),
      ...(route.notes.length === 0 ? {} : { notes: route.notes }),
    });
  }
  const weakening = measured || route !== undefined ? data.agePrior.weakening : 1;
  return [...own, priorRoute(prior, weakening)];
}

function priorRoute(prior: AgePrior, weakening: number): LossRoute {
  return {
    id: 'agePrior',
    lnCapacity: { mean: prior.lnCapacity.value, sd: weakening * prior.lnCapacity.sd },
    lnPower: { mean: prior.lnPower.value, sd: weakening * prior.lnPower.sd },
    note: {
      code: prior.ageAssumed ? 'ageAssumed' : 'ageOfUnit',
      values: { years: Math.round(prior.ageYears) },
    },
  };
}

/** What no cause accounts for stays unexplained, so that no repair can give it back. */
function sharesOf(route: FaultRoute, capacity: Uncertain, power: Uncertain): NonNullable<Loss['shares']> {
  const explained = route.lostByCause.reduce((sum, { lnEfficiency }) => sum + lnEfficiency, 0);
  const whole = Math.max(explained, power.value - Math.min(0, capacity.value));
  if (whole <= 0) return [];
  return route.lostByCause
    .map(({ cause, lnEfficiency }) => ({ cause, shareFrac: lnEfficiency / whole }))
    .filter(({ shareFrac }) => shareFrac >= 0.01);
}

/**
 * A loss from log ratios: means capped to what a unit can do, estimates from the 10, 50 and 90 % points.
 *
 * @param lnCapacity,lnPower  log ratios to the healthy unit
 * @returns a capacity above healthy is taken as no loss and said so
 * Source: data/loss.json, limits
 * Check: tests/diagnostics/loss.test.ts
 */
export function assembled(
  mode: Mode,
  lnCapacity: Uncertain,
  lnPower: Uncertain,
  rest: Pick<Loss, 'routes' | 'basis' | 'notes' | 'shares'>,
): Loss {
  const { capacityRatioLow, capacityRatioLikelyHigh, capacityRatioHigh, powerRatioLow, powerRatioHigh } =
    data.limits;
  const capacity = capped(lnCapacity, capacityRatioLow, capacityRatioLikelyHigh);
  const power = capped(lnPower, powerRatioLow, powerRatioHigh);
  const notes = [...rest.notes];
  if (lnCapacity.value > 0.02) {
    notes.push({
      code: 'capacityAboveHealthy',
      values: { percent: Math.round(100 * Math.exp(lnCapacity.value)) },
    });
  }
  if (capacity.mean > lnCapacity.value || power.mean !== lnPower.value) notes.push({ code: 'lossCapped' });
  return {
    mode,
    capacityRatioToHealthy: ratioEstimate(capacity, capacityRatioLow, capacityRatioHigh),
    powerRatioToHealthy: ratioEstimate(power, powerRatioLow / 1.25, powerRatioHigh * 1.25),
    lnCapacity: capacity,
    lnPower: power,
    ...rest,
    notes,
  };
}

function capped(ln: Uncertain, low: number, high: number): { readonly mean: number; readonly sd: number } {
  return { mean: Math.min(Math.log(high), Math.max(Math.log(low), ln.value)), sd: ln.sd };
}

function ratioEstimate(
  ln: { readonly mean: number; readonly sd: number },
  low: number,
  high: number,
): Estimate {
  const at = (z: number): number => Math.min(high, Math.max(low, Math.exp(ln.mean + z * ln.sd)));
  return estimate(at(-Z_10_90), at(0), at(Z_10_90));
}
