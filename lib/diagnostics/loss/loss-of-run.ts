import { type Estimate, estimate, Z_10_90 } from '../../math/estimate';
import type { Uncertain } from '../../math/propagate';
import type { Mode } from '../../visit/run';
import type { Saying } from '../../visit/wording';
import data from '../data/loss.json';
import type { Loss, LossRoute } from '../findings';
import type { AgePrior } from './age-prior';
import { combine, fuse } from './fuse';
import type { Measured, RunEvidence } from './run-evidence';

/**
 * Loss of one mode from the evidence of one run and the age prior.
 *
 * Measured capacities are combined among themselves first, then set against the healthy unit, whose own uncertainty
 * they share; the age prior comes last and weakened, so that age alone never convicts.
 *
 * @param mode      mode of the run
 * @param evidence  what the run says; undefined = no usable run: the age prior alone, wide
 * @param prior     what age says
 * @returns log ratios and estimates, capped, with the routes that went in
 * Check: tests/diagnostics/loss.test.ts
 */
export function lossOfRun(mode: Mode, evidence: RunEvidence | undefined, prior: AgePrior): Loss {
  if (evidence?.healthy === undefined) return priorOnly(mode, prior, evidence?.notes ?? []);
  const { healthy, runId } = evidence;
  const notes: Saying[] = [...evidence.notes];
  const { weakening } = data.agePrior;
  const weak = (value: Uncertain): Uncertain => ({ value: value.value, sd: weakening * value.sd });
  const capacity = withPrior(
    evidence.capacity,
    healthy.sdLnCapacity,
    weak(prior.lnCapacity),
    prior.lnCapacity,
  );
  const power = withPrior(
    evidence.power === undefined ? [] : [evidence.power],
    healthy.sdLnPower,
    weak(prior.lnPower),
    prior.lnPower,
  );
  if (capacity.disagree) notes.push({ code: 'capacityRoutesDisagree' });
  if (!capacity.measured) notes.push({ code: 'capacityNotMeasured' });
  if (!power.measured) notes.push({ code: 'powerNotMeasured' });
  const routes = [
    ...evidence.capacity.map((m) => capacityRoute(m, runId, healthy.sdLnCapacity)),
    ...(evidence.power === undefined ? [] : [powerRoute(evidence.power, runId, healthy.sdLnPower)]),
    priorRoute(prior, capacity.measured || power.measured ? weakening : 1),
  ];
  return assembled(mode, capacity.value, power.value, {
    routes,
    basis: capacity.measured || power.measured ? 'measured' : 'assumed',
    notes,
  });
}

type Part = { readonly value: Uncertain; readonly measured: boolean; readonly disagree: boolean };

function withPrior(
  measured: readonly Measured[],
  baselineSd: number,
  weakPrior: Uncertain,
  fullPrior: Uncertain,
): Part {
  if (measured.length === 0) return { value: fullPrior, measured: false, disagree: false };
  const own = fuse(measured.map((m) => ({ value: m.mean, sd: m.sd })));
  const against = { value: own.value, sd: Math.hypot(own.sd, baselineSd) };
  return { value: combine(weakPrior, against), measured: true, disagree: own.disagree };
}

function priorOnly(mode: Mode, prior: AgePrior, notes: readonly Saying[]): Loss {
  return assembled(mode, prior.lnCapacity, prior.lnPower, {
    routes: [priorRoute(prior, 1)],
    basis: 'assumed',
    notes: [...notes, { code: 'agePriorOnly', values: { years: Math.round(prior.ageYears) } }],
  });
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

function capacityRoute(m: Measured, runId: string, baselineSd: number): LossRoute {
  return { id: m.id, runId, lnCapacity: { mean: m.mean, sd: Math.hypot(m.sd, baselineSd) } };
}

function powerRoute(m: Measured, runId: string, baselineSd: number): LossRoute {
  return { id: m.id, runId, lnPower: { mean: m.mean, sd: Math.hypot(m.sd, baselineSd) } };
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
  rest: Pick<Loss, 'routes' | 'basis' | 'notes'>,
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
