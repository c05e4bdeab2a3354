import { isOutOfRange } from './refrigerant/out-of-range';
import type { RefrigerantProperties } from './refrigerant/refrigerant-properties';
import { constant } from './sourced';

export type CompressionState = {
  readonly suctionPsia: number;
  readonly suctionLineF: number;
  readonly dischargePsia: number;
  readonly dischargeLineF: number;
};

export type HeatBalanceState = CompressionState & {
  readonly liquidPsia: number;
  readonly liquidLineF: number;
  /** Electric power of the compressor alone [W]. */
  readonly compressorW: number;
  /** Share of that power lost through the shell, 0..1. */
  readonly shellLossFrac: number;
};

/** Why a heat balance gives no answer. */
export type NoBalance = {
  readonly kind: 'none';
  readonly why:
    | 'beyond the property tables'
    | 'liquid in the suction line'
    | 'discharge pressure not above suction pressure'
    | 'discharge line cooler than lossless compression allows'
    | 'vapour in the liquid line';
};

/**
 * Overall isentropic efficiency of the compression as the refrigerant sees it.
 *
 * @param p      refrigerant
 * @param state  pressures [psia] and line temperatures [F] at the compressor
 * @returns (h_dis,isentropic - h_suc) / (h_dis - h_suc); above 1 when the discharge line is cooler than lossless
 * compression allows; `none` where the readings have no state
 * Source: definition in ASHRAE form, cycle-check conventions, status computed
 * Check: tests/diagnostics/heat-balance.test.ts
 */
export function isentropicEfficiency(p: RefrigerantProperties, state: CompressionState): number | NoBalance {
  const rise = enthalpyRise(p, state);
  if (typeof rise === 'object' && 'kind' in rise) return rise;
  if (rise.actualBtuLb <= 0) return none('discharge line cooler than lossless compression allows');
  return rise.isentropicBtuLb / rise.actualBtuLb;
}

/**
 * Refrigerant mass flow from the compressor's own energy balance.
 *
 * @param p      refrigerant
 * @param state  see `HeatBalanceState`
 * @returns [lb/h], or `none`; never from a discharge line cooler than lossless compression
 * Source: m = P (1 - q) / (h_dis - h_suc); internal method of heat-pump field measurement (P. Fahlen 2004, 2005,
 * abstracts read): agrees with external measurement typically within 5 %
 * Check: tests/diagnostics/heat-balance.test.ts
 */
export function massFlowLbH(
  p: RefrigerantProperties,
  state: Omit<HeatBalanceState, 'liquidPsia' | 'liquidLineF'>,
): number | NoBalance {
  const rise = enthalpyRise(p, state);
  if (typeof rise === 'object' && 'kind' in rise) return rise;
  if (rise.actualBtuLb < rise.isentropicBtuLb) {
    return none('discharge line cooler than lossless compression allows');
  }
  return (state.compressorW * constant('btuhPerW') * (1 - state.shellLossFrac)) / rise.actualBtuLb;
}

/**
 * Heat the indoor coil moves: taken up in cooling, given off in heating. Gross: blower heat is not in it.
 *
 * @param p      refrigerant
 * @param mode   mode of the run
 * @param state  see `HeatBalanceState`
 * @returns [Btu/h], or `none`; a liquid line warmer than bubble never becomes an enthalpy
 * Source: Q = m (h_suc - h_liq) in cooling, m (h_dis - h_liq) in heating, same source as `massFlowLbH`
 * Does not see: blower power, duct loss, defrost, losses of the line set.
 * Check: tests/diagnostics/heat-balance.test.ts
 */
export function refrigerantCapacityBtuh(
  p: RefrigerantProperties,
  mode: 'cooling' | 'heating',
  state: HeatBalanceState,
): number | NoBalance {
  const flow = massFlowLbH(p, state);
  if (typeof flow !== 'number') return flow;
  const liquid = p.liquidEnthalpyBtuLb(state.liquidPsia, state.liquidLineF);
  if (isOutOfRange(liquid)) {
    return none(
      liquid.why === 'warmer than bubble: vapour may be present'
        ? 'vapour in the liquid line'
        : 'beyond the property tables',
    );
  }
  const vapour =
    mode === 'cooling'
      ? p.vapourEnthalpyBtuLb(state.suctionPsia, state.suctionLineF)
      : p.vapourEnthalpyBtuLb(state.dischargePsia, state.dischargeLineF);
  return isOutOfRange(vapour) ? none('beyond the property tables') : flow * (vapour - liquid);
}

type Rise = { readonly actualBtuLb: number; readonly isentropicBtuLb: number };

function enthalpyRise(p: RefrigerantProperties, state: CompressionState): Rise | NoBalance {
  if (state.dischargePsia <= state.suctionPsia) return none('discharge pressure not above suction pressure');
  const suction = p.vapourEnthalpyBtuLb(state.suctionPsia, state.suctionLineF);
  if (isOutOfRange(suction)) {
    return none(
      suction.why === 'colder than dew: liquid may be present'
        ? 'liquid in the suction line'
        : 'beyond the property tables',
    );
  }
  const lossless = p.isentropicDischarge(state.suctionPsia, state.suctionLineF, state.dischargePsia);
  if (isOutOfRange(lossless)) return none('beyond the property tables');
  const discharge = p.vapourEnthalpyBtuLb(state.dischargePsia, state.dischargeLineF);
  if (isOutOfRange(discharge)) {
    return none(
      discharge.why === 'colder than dew: liquid may be present'
        ? 'discharge line cooler than lossless compression allows'
        : 'beyond the property tables',
    );
  }
  return { actualBtuLb: discharge - suction, isentropicBtuLb: lossless.enthalpyBtuLb - suction };
}

function none(why: NoBalance['why']): NoBalance {
  return { kind: 'none', why };
}
