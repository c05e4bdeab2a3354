import type { ChargingTable } from '../../visit/unit';
import type { RunContext } from '../run-context';
import type { NoTarget, TargetPart } from './build-target';
import { chargingTablePressure, indoorFor } from './charging-table';

const PORTS = ['suctionPsig', 'dischargePsig'] as const;

/**
 * Pressures to read by the unit's own charging table.
 *
 * @param context  run with its unit
 * @returns one answer for each pressure the table of the run's mode has; none without such a table. Without the
 * conditions it is looked up by, what is missing; beyond its edge a note says so and the band is wider.
 * Source: the unit's plate
 * Check: tests/diagnostics/targets/table-targets.test.ts
 */
export function tableTargets(context: RunContext): readonly (TargetPart | NoTarget)[] {
  const table = context.visit.unit.chargingTables?.find(({ mode }) => mode === context.run.mode);
  if (table === undefined) return [];
  return PORTS.filter((port) => table[port] !== undefined).map((id) => {
    const found = chargingTablePressure(context, id);
    if (found === undefined) return { id, note: { code: whyNone(context, table) } };
    const { psig, tolerancePsi, stepsBeyond } = found;
    return {
      id,
      value: psig,
      low: psig - tolerancePsi,
      high: psig + tolerancePsi,
      unit: 'psig',
      source: "The unit's own charging table, typed in at the visit",
      status: 'nameplate',
      ...(stepsBeyond > 0
        ? { note: { code: 'beyondChargingTable', values: { steps: Math.round(stepsBeyond * 10) / 10 } } }
        : {}),
    };
  });
}

function whyNone(context: RunContext, table: ChargingTable): string {
  if (context.run.outdoorAirF === undefined) return 'tableNeedsOutdoor';
  if (indoorFor(context, table) !== undefined) return 'tableTooFar';
  return context.run.mode === 'cooling' ? 'tableNeedsWetBulb' : 'tableNeedsReturn';
}
