import type { Findings, Loss } from '../diagnostics/findings';

/**
 * Loss left after a repair whose effect was measured by a later run. The mode of that run takes the run's own loss;
 * the other mode takes the same ratios, unless it was measured itself: then nothing is claimed for it.
 *
 * @param findings  loss as found, and the loss each run shows
 * @param runId     run taken after the repair; left out or without usable readings = nothing was shown
 * @returns the loss after the repair, or undefined when nothing was shown
 * Check: tests/energy/shown-loss.test.ts
 */
export function shownLoss(
  findings: { readonly loss: Findings['loss']; readonly lossByRun?: Findings['lossByRun'] | undefined },
  runId: string | undefined,
): Findings['loss'] | undefined {
  const shown = findings.lossByRun?.find((entry) => entry.runId === runId)?.loss;
  if (shown === undefined) return undefined;
  const { cooling, heating } = findings.loss;
  const after = (found: Loss | undefined): Loss | undefined => {
    if (found === undefined || found.mode === shown.mode) return found && shown;
    return found.basis === 'measured' ? found : { ...shown, mode: found.mode, basis: 'assumed' };
  };
  const nowCooling = after(cooling);
  const nowHeating = after(heating);
  return {
    ...(nowCooling === undefined ? {} : { cooling: nowCooling }),
    ...(nowHeating === undefined ? {} : { heating: nowHeating }),
  };
}
