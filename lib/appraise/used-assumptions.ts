import type { Findings } from '../diagnostics/findings';
import { renewsCompressor } from '../finance/new-compressor';
import { type ResolvedAssumption, resolveAssumption } from '../visit/assumption';
import { type AssumptionKey, assumptionKeys } from '../visit/assumption-keys';
import type { Run } from '../visit/run';
import type { Visit } from '../visit/visit';

type Situation = { readonly visit: Visit; readonly findings: Findings };

/** When an assumption stands in for something nobody measured; a key not listed here is always in use. */
const inUse: Partial<Record<AssumptionKey, (s: Situation) => boolean>> = {
  shellLossFrac: ({ findings }) => hasRoute(findings, 'heatBalance'),
  powerFactorFrac: ({ visit }) => visit.runs.some((r) => usesAmps(r) && r.powerFactorFrac === undefined),
  outdoorFanShareFrac: ({ visit }) =>
    visit.runs.some((r) => r.outdoorUnitW !== undefined || r.outdoorUnitA !== undefined),
  liquidSubcoolingFd: ({ visit }) =>
    visit.runs.some((r) => r.dischargeLineF !== undefined && r.liquidLineF === undefined),
  grilleFreeAreaFrac: ({ visit }) =>
    visit.runs.some(
      (r) =>
        (r.grilleFaceFpm ?? r.grilleFacePointsFpm?.[0]) !== undefined && r.grilleFreeAreaFrac === undefined,
    ),
  heatingBalanceF: ({ visit }) => visit.unit.kind === 'heatPump',
  stayYears: ({ visit }) => visit.site.stayYears === undefined,
  ageYears: ({ visit }) => visit.unit.manufactureYear === undefined,
  electricityUsdPerKwh: ({ visit }) => visit.tariff === undefined,
  replacementUsdPerTon: ({ visit }) => !visit.choices.some((c) => c.kind === 'replace'),
  repairSuccessFrac: ({ visit }) => visit.choices.some((c) => c.kind === 'repair'),
  newCompressorHazardRatio: ({ visit }) => visit.choices.some(renewsCompressor),
  hotDischargeHazardRatio: ({ findings }) =>
    findings.flags.some((f) => f.severity === 'danger' && f.readings.includes('dischargeLineF')),
};

function hasRoute(findings: Findings, id: string): boolean {
  return [findings.loss.cooling, findings.loss.heating].some((loss) =>
    loss?.routes.some((route) => route.id === id),
  );
}

function usesAmps(run: Run): boolean {
  return run.outdoorUnitW === undefined && (run.compressorA !== undefined || run.outdoorUnitA !== undefined);
}

/**
 * The assumptions that stand behind this visit's numbers; one that a reading or an entry replaced is left out.
 *
 * @returns each with low / likely / high, unit, source and who set it, in the table's order
 * Check: tests/appraise/used-assumptions.test.ts
 */
export function usedAssumptions(situation: Situation): ResolvedAssumption[] {
  return assumptionKeys
    .filter((key) => inUse[key]?.(situation) ?? true)
    .map((key) => resolveAssumption(situation.visit.assumptions, key));
}
