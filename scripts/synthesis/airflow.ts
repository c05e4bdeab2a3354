import { fanConstants as k } from './constants';
import type { ImposedFault, UnitSpec } from './unit-spec';

/** Duct system and blower as found. */
export type AirSide = {
  readonly cfm: number;
  readonly blowerW: number;
  readonly returnInWc: number;
  readonly supplyInWc: number;
  readonly filterDropInWc: number;
  readonly coilDropInWc: number;
};

const DESIGN_STATIC_IN_WC = 0.5;

/**
 * Airflow, blower power and static pressures with airflow faults.
 *
 * A blockage moves the blower up its curve: static rises, airflow falls. A weak blower leaves the ducts as they are:
 * static falls with the square of airflow.
 * @param ratedCfm airflow of the healthy system
 * Source: fan laws (textbook), blower curves in data/cycle-constants.json
 * Check: tests/synthesis/airflow.test.ts
 */
export function airSide(spec: UnitSpec, ratedCfm: number, faults: readonly ImposedFault[]): AirSide {
  const kept = (fault: ImposedFault['fault']): number => 1 - levelOf(faults, fault);
  const blockages = ['dirtyFilter', 'closedRegisters', 'dirtyIndoorCoil'] as const;
  const throttled = blockages.reduce((product, fault) => product * kept(fault), 1);
  const ratio = throttled * kept('weakBlower');
  const psc = spec.blower === 'psc';
  const ratedStatic = spec.externalStaticInWc ?? DESIGN_STATIC_IN_WC;
  const slope = (psc ? k.pscFlowPerStatic : k.ecmFlowPerStatic).value;
  const ducts = ratedStatic * ratio ** 2;
  const blower = ratedStatic * (1 + (1 - throttled) / slope) * kept('weakBlower') ** 2;
  const extra = throttled < 1 ? blower - ducts : 0;
  const shareOf = (fault: (typeof blockages)[number]): number => {
    const whole = blockages.reduce((sum, f) => sum + levelOf(faults, f), 0);
    return whole === 0 ? 0 : levelOf(faults, fault) / whole;
  };
  const filterExtra = extra * shareOf('dirtyFilter');
  const ratedW = (psc ? k.pscBlowerWPerCfm : k.ecmBlowerWPerCfm).value * ratedCfm;
  return {
    cfm: ratedCfm * ratio,
    blowerW: ratedW * ratio ** (psc ? k.pscPowerExponent : k.ecmPowerExponent).value,
    returnInWc: -(ducts * k.returnStaticShareFrac.value + filterExtra),
    supplyInWc: ducts * (1 - k.returnStaticShareFrac.value) + extra * shareOf('closedRegisters'),
    filterDropInWc: k.filterDropInWc.value * ratio ** 2 + filterExtra,
    coilDropInWc: k.coilDropInWc.value * ratio ** 2 + extra * shareOf('dirtyIndoorCoil'),
  };
}

/** Size of a fault in a list; a fault named twice counts with its larger size. */
export function levelOf(faults: readonly ImposedFault[], fault: ImposedFault['fault']): number {
  return faults.reduce(
    (most, f) => (f.fault === fault && Math.abs(f.level) > Math.abs(most) ? f.level : most),
    0,
  );
}
