import type { Findings } from '../diagnostics/findings';
import type { EnergyResult } from '../energy/energy-result';
import { renewsCompressor } from '../finance/new-compressor';
import { type ResolvedAssumption, resolveAssumption } from '../visit/assumption';
import { type AssumptionKey, assumptionKeys } from '../visit/assumption-keys';
import type { Run } from '../visit/run';
import type { Visit } from '../visit/visit';

type Situation = { readonly visit: Visit; readonly findings: Findings; readonly energy: EnergyResult };

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
  heatingBalanceF: (s) => loadAssumed(s) && heats(s),
  coolingBalanceF: loadAssumed,
  sizingFactorFrac: (s) => loadAssumed(s) && s.visit.site.floorAreaFt2 === undefined,
  heatLossPerTon: (s) => loadAssumed(s) && heats(s) && s.visit.site.floorAreaFt2 === undefined,
  heatLossPerFloor: (s) => loadAssumed(s) && heats(s) && s.visit.site.floorAreaFt2 !== undefined,
  coolingPerFloor: (s) => loadAssumed(s) && s.visit.site.floorAreaFt2 !== undefined,
  frostRatio: ({ visit }) => visit.unit.kind === 'heatPump' && visit.site.otherHeat !== true,
  stayYears: ({ visit }) => visit.site.stayYears === undefined,
  ageYears: ({ visit }) => visit.unit.manufactureYear === undefined,
  electricityUsdPerKwh: ({ energy }) => energy.priceBasis === 'assumed',
  replacementUsdPerTon: ({ visit }) => !visit.choices.some((c) => c.kind === 'replace'),
  repairSuccessFrac: ({ visit }) => visit.choices.some((c) => c.kind === 'repair'),
  newCompressorHazardRatio: ({ visit }) => visit.choices.some(renewsCompressor),
  hotDischargeHazardRatio: ({ findings }) =>
    findings.flags.some((f) => f.severity === 'danger' && f.readings.includes('dischargeLineF')),
  gaugeErrorFrac: setOnly('gaugeErrorFrac'),
  clampErrorFd: setOnly('clampErrorFd'),
  airErrorFd: setOnly('airErrorFd'),
  ampsErrorFrac: setOnly('ampsErrorFrac'),
  airflowErrorFrac: setOnly('airflowErrorFrac'),
};

/** Instruments are told only where somebody set them: every reading carries its own doubt already. */
function setOnly(key: AssumptionKey): (s: Situation) => boolean {
  return ({ visit }) => visit.assumptions.some((one) => one.key === key);
}

/** Bills leave nothing of the house's need to assume. */
function loadAssumed({ energy }: Situation): boolean {
  return energy.load.basis === 'assumed';
}

function heats({ visit }: Situation): boolean {
  return visit.unit.kind === 'heatPump' && visit.site.otherHeat !== true;
}

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
