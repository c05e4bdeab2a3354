import { interpolateBilinear } from '../../math/interpolate';
import type { ChargingTable } from '../../visit/unit';
import data from '../data/targets.json';
import { type RunContext, reading, returnWetBulb } from '../run-context';

export type TablePressure = {
  readonly psig: number;
  readonly tolerancePsi: number;
  /** Steps of the table the conditions lie beyond its edge; 0 inside. */
  readonly stepsBeyond: number;
};

/**
 * Healthy pressure from the unit's own charging table, typed in by the technician.
 *
 * @param context  run with outdoor air and, for more than one column, indoor air (wet bulb in cooling)
 * @param port     which pressures of the table
 * @returns undefined without such a table or without the conditions, or so far beyond the table that no pressure is left
 * Inside the table bilinear; outside continued by its last step, marked, tolerance widened for each step.
 * Source: the unit's plate; tolerances in data/targets.json
 * Check: tests/diagnostics/targets/charging-table.test.ts
 */
export function chargingTablePressure(
  context: RunContext,
  port: 'suctionPsig' | 'dischargePsig',
): TablePressure | undefined {
  const table = context.visit.unit.chargingTables?.find((t) => t.mode === context.run.mode);
  const cells = table?.[port];
  const outdoor = reading(context, 'outdoorAirF');
  if (table === undefined || cells === undefined || outdoor === undefined) return undefined;
  const indoor = indoorFor(context, table);
  if (indoor === undefined) return undefined;
  const { value } = interpolateBilinear(
    table.outdoorF,
    table.indoorF,
    cells,
    outdoor.value,
    indoor,
    'continue',
  );
  if (value <= 0) return undefined;
  const stepsBeyond = Math.hypot(
    stepsOutside(table.outdoorF, outdoor.value),
    table.indoorF.length > 1 ? stepsOutside(table.indoorF, indoor) : 0,
  );
  const { toleranceFrac, beyondPerStepFrac } = data.chargingTable;
  return {
    psig: value,
    tolerancePsi: (toleranceFrac + beyondPerStepFrac * stepsBeyond) * value,
    stepsBeyond,
  };
}

/** Indoor temperature the table is looked up by: wet bulb in cooling, dry bulb in heating, its own if it has one. */
export function indoorFor(context: RunContext, table: ChargingTable): number | undefined {
  if (table.indoorF.length === 1) return table.indoorF[0];
  return context.run.mode === 'cooling'
    ? returnWetBulb(context)?.value
    : reading(context, 'returnAirF')?.value;
}

function stepsOutside(grid: readonly number[], x: number): number {
  const [first = x, second = x] = grid;
  const last = grid.at(-1) ?? x;
  const before = grid.at(-2) ?? x;
  if (x < first) return (first - x) / (second - first);
  return x > last ? (x - last) / (last - before) : 0;
}
