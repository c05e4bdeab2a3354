import { sensibleFactor } from '../derived/air-side';
import { type RunContext, reading } from '../run-context';
import data from './data/measuring.json';
import type { HeatRise } from './measuring';

/**
 * Heat put in and temperature rise of the electric-heat airflow test.
 *
 * @param context  run with its site
 * @returns [kW, F difference]; blower watts, when read, count as heat; absent until all four readings are there
 * Source: trade note, airflow by electric heat with worked example (235 V, 75 A, 36 F), status read
 * Check: tests/diagnostics/measuring/heat-rise.test.ts
 */
export function heatRiseOf(context: RunContext): HeatRise | undefined {
  const volts = reading(context, 'heatRiseV');
  const amps = reading(context, 'heatRiseA');
  const supply = reading(context, 'heatRiseSupplyF');
  const back = reading(context, 'heatRiseReturnF');
  if (volts === undefined || amps === undefined || supply === undefined || back === undefined)
    return undefined;
  const blower = reading(context, 'blowerW');
  const riseFd = supply.value - back.value;
  const small = riseFd < data.heatRise.smallRiseFd.value;
  return {
    heatKw: (volts.value * amps.value + (blower?.value ?? 0)) / 1_000,
    riseFd,
    sensibleBtuhPerCfmFd: sensibleFactor(context.altitude.value),
    blowerCounted: blower !== undefined,
    ...(riseFd <= 0 ? { doubt: 'noRise' } : small ? { doubt: 'smallRise' } : {}),
  };
}
