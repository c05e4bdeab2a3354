import type { Mode } from '../../visit/run';
import procedures from './data/test-procedure.json';
import type { CurveName } from './performance-curve';
import { curvePoint } from './performance-curve';
import { type Speed, type SpeedTable, speedPoint } from './speed-table';

export type GrossPoint = {
  readonly capacityBtuh: number;
  readonly powerW: number;
  readonly beyondRange: boolean;
};

/**
 * Gross capacity and outdoor-unit power of one speed, the rating test's blower taken out; indoor conditions away
 * from those of the rating enter through the single-speed curve.
 *
 * @param table  test points
 * @param speed  one of its speeds
 * @param curve  single-speed curve of the mode
 * @param indoorF  cooling: return wet bulb; heating: dry bulb [F]
 * @param outdoorF outdoor dry bulb [F]
 * Beyond the table or the curve: held at the edge and marked. At least a twentieth of the net power is left to the
 * outdoor unit.
 * Check: tests/diagnostics/healthy-unit/speed-table.test.ts
 */
export function speedGross(
  table: SpeedTable,
  speed: Speed,
  curve: CurveName,
  indoorF: number,
  outdoorF: number,
): GrossPoint {
  const heating = curve === 'heatPumpHeating';
  const net = speedPoint(table, speed, outdoorF);
  const { capacityBtuh, powerW } = withoutBlower(table, speed, net, heating ? 'heating' : 'cooling');
  const there = curvePoint(curve, indoorF, outdoorF);
  const rated = curvePoint(curve, heating ? 70 : 67, outdoorF);
  const capacityRatio = there.capacityRatio / rated.capacityRatio;
  return {
    capacityBtuh: capacityBtuh * capacityRatio,
    powerW: powerW * capacityRatio * (there.eirRatio / rated.eirRatio),
    beyondRange: net.beyondRange,
  };
}

/**
 * Gross capacity and outdoor-unit power at the nominal speed and the rating point (95 F or 47 F).
 *
 * Check: tests/diagnostics/healthy-unit/speed-table.test.ts
 */
export function nominalGross(
  table: SpeedTable,
  mode: Mode,
): { readonly capacityBtuh: number; readonly powerW: number } {
  const speed = table.speeds[table.nominal] ?? { netCapacityBtuh: [], netPowerW: [], blowerRatio: 1 };
  return withoutBlower(table, speed, speedPoint(table, speed, mode === 'heating' ? 47 : 95), mode);
}

function withoutBlower(
  table: SpeedTable,
  speed: Speed,
  net: { readonly netCapacityBtuh: number; readonly netPowerW: number },
  mode: Mode,
): { readonly capacityBtuh: number; readonly powerW: number } {
  const blowerW = Math.min(table.ratedBlowerW * speed.blowerRatio, 0.95 * net.netPowerW);
  const blowerBtuh = procedures.btuhPerW.value * blowerW;
  return {
    capacityBtuh: net.netCapacityBtuh + (mode === 'heating' ? -blowerBtuh : blowerBtuh),
    powerW: net.netPowerW - blowerW,
  };
}
