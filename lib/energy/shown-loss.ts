import type { Findings, Loss } from '../diagnostics/findings';
import { type Estimate, estimate } from '../math/estimate';
import data from './data/repair-effects.json';

/**
 * Loss left after a repair whose effect was measured by a later run. The mode of that run takes the run's own loss.
 * The other mode keeps the share of its own loss that is left in the measured one, unless it was measured itself: then
 * nothing is claimed for it.
 *
 * @param findings  loss as found, and the loss each run shows
 * @param runId     run taken after the repair; left out or without usable readings = nothing was shown
 * @returns the loss after the repair, or undefined when nothing was shown
 * Readings that show no change leave the other mode as it was; a loss too small to compare is taken as not changed.
 * Check: tests/energy/shown-loss.test.ts
 */
export function shownLoss(
  findings: { readonly loss: Findings['loss']; readonly lossByRun?: Findings['lossByRun'] | undefined },
  runId: string | undefined,
): Findings['loss'] | undefined {
  const shown = findings.lossByRun?.find((entry) => entry.runId === runId)?.loss;
  if (shown === undefined) return undefined;
  const { cooling, heating } = findings.loss;
  const measured = shown.mode === 'cooling' ? cooling : heating;
  const after = (found: Loss | undefined): Loss | undefined => {
    if (found === undefined || found.mode === shown.mode) return found && shown;
    return found.basis === 'measured' ? found : carriedOver(found, measured ?? shown, shown);
  };
  const nowCooling = after(cooling);
  const nowHeating = after(heating);
  return {
    ...(nowCooling === undefined ? {} : { cooling: nowCooling }),
    ...(nowHeating === undefined ? {} : { heating: nowHeating }),
  };
}

type Route = { readonly ratio: Estimate; readonly ln: Loss['lnCapacity'] };

/** The other mode's loss, with the share of it that is left in the measured mode. */
function carriedOver(found: Loss, before: Loss, after: Loss): Loss {
  const capacity = leftOver(
    { ratio: found.capacityRatioToHealthy, ln: found.lnCapacity },
    { ratio: before.capacityRatioToHealthy, ln: before.lnCapacity },
    { ratio: after.capacityRatioToHealthy, ln: after.lnCapacity },
  );
  const power = leftOver(
    { ratio: found.powerRatioToHealthy, ln: found.lnPower },
    { ratio: before.powerRatioToHealthy, ln: before.lnPower },
    { ratio: after.powerRatioToHealthy, ln: after.lnPower },
  );
  return {
    ...found,
    basis: 'assumed',
    capacityRatioToHealthy: capacity.ratio,
    lnCapacity: capacity.ln,
    powerRatioToHealthy: power.ratio,
    lnPower: power.ln,
  };
}

/** The likely value moves by the share left; the spread goes over from that of the loss found to that of the run shown. */
function leftOver(found: Route, before: Route, after: Route): Route {
  const wasLn = Math.log(before.ratio.likely);
  const comparable = Math.abs(wasLn) >= data.smallestComparedLogLoss.value;
  const leftFrac = comparable ? Math.min(1, Math.max(0, Math.log(after.ratio.likely) / wasLn)) : 1;
  const likelyLn = leftFrac * Math.log(found.ratio.likely);
  const end = (which: 'low' | 'high'): number => {
    const spread = (route: Route) => Math.log(route.ratio[which] / route.ratio.likely);
    return Math.exp(likelyLn + leftFrac * spread(found) + (1 - leftFrac) * spread(after));
  };
  return {
    ratio: estimate(end('low'), Math.exp(likelyLn), end('high')),
    ln: { mean: leftFrac * found.ln.mean, sd: leftFrac * found.ln.sd + (1 - leftFrac) * after.ln.sd },
  };
}
