import { findRoot } from '../../math/brent';
import { invariant } from '../../math/invariant';
import type { RefrigerantName } from '../../visit/refrigerant-names';
import facts from './data/refrigerant-facts.json';
import { eosData } from './eos-data';
import { compileEos, densityAt, type Eos, type StateSi, stateAt } from './helmholtz';
import { fFromK, J_KG_PER_BTU_LB, J_KGK_PER_BTU_LBR, KG_M3_PER_LB_FT3, kFromF, PA_PER_PSI } from './ip-units';
import { isOutOfRange, type OutOfRange, outOfRange } from './out-of-range';
import {
  type Discharge,
  EDGE_SLACK_FD,
  type RefrigerantProperties,
  type Vapour,
} from './refrigerant-properties';
import { type Boundary, saturationEndK, saturationEndPa, saturationK, saturationPa } from './saturation';
import type { PropertyRange } from './table-format';
import { propertyRange } from './table-range';

type Source = { readonly eos: Eos; readonly range: PropertyRange };

/**
 * The same functions as `refrigerantProperties`, computed from the equation of state at every call: the yardstick
 * for tables and benches, some thousand times slower. Nothing on the run-time path imports this.
 *
 * @param name  refrigerant
 * Outside the range: as `RefrigerantProperties`.
 * Check: tests/diagnostics/refrigerant/check-values.test.ts
 */
export function eosProperties(name: RefrigerantName): RefrigerantProperties {
  const eos = compileEos(eosData[name]);
  const source: Source = { eos, range: propertyRange(name, eos) };
  const { range } = source;
  return {
    name,
    safetyClass: facts.safetyClass.value[name] === 'A2L' ? 'A2L' : 'A1',
    gwp100: facts.gwp100.value[name],
    publishedUncertainty: facts.publishedUncertainty.value[name],
    isBlend: eos.data.saturationAncillaries.p_sat_Pa === undefined,
    ...(eos.data.critical === undefined
      ? {}
      : { critical: { f: fFromK(saturationEndK(eos)), psia: saturationEndPa(eos) / PA_PER_PSI } }),
    validPsia: { low: range.lowPsia, high: range.highPsia },
    vapourHighF: range.vapourHighF,
    liquidLowF: range.liquidLowF,
    dewF: (psia) => saturationF(source, psia, 'dew'),
    bubbleF: (psia) => saturationF(source, psia, 'bubble'),
    dewPsia: (temperatureF) => saturationPsia(source, temperatureF, 'dew'),
    bubblePsia: (temperatureF) => saturationPsia(source, temperatureF, 'bubble'),
    glideFd: (psia) =>
      refusedPsia(range, psia) ?? boundaryF(eos, psia, 'dew') - boundaryF(eos, psia, 'bubble'),
    vapour: (psia, temperatureF) => vapour(source, psia, temperatureF),
    vapourEnthalpyBtuLb: (psia, temperatureF) => {
      const state = vapourState(source, psia, temperatureF);
      return isOutOfRange(state) ? state : enthalpyBtuLb(state);
    },
    dewEnthalpyBtuLb: (psia) =>
      refusedPsia(range, psia) ?? enthalpyBtuLb(phaseState(eos, psia, boundaryF(eos, psia, 'dew'), 'vapour')),
    liquidEnthalpyBtuLb: (psia, liquidLineF) => liquidEnthalpy(source, psia, liquidLineF),
    bubbleEnthalpyBtuLb: (psia) =>
      refusedPsia(range, psia) ??
      enthalpyBtuLb(phaseState(eos, psia, boundaryF(eos, psia, 'bubble'), 'liquid')),
    isentropicDischarge: (suctionPsia, suctionF, dischargePsia) =>
      isentropicDischarge(source, suctionPsia, suctionF, dischargePsia),
    vapourFAtEnthalpy: (psia, wanted) => vapourFAt(source, psia, (state) => enthalpyBtuLb(state) - wanted),
  };
}

function enthalpyBtuLb(state: StateSi): number {
  return state.enthalpyJKg / J_KG_PER_BTU_LB;
}

function phaseState(eos: Eos, psia: number, temperatureF: number, phase: 'vapour' | 'liquid'): StateSi {
  const temperatureK = kFromF(temperatureF);
  return stateAt(eos, temperatureK, densityAt(eos, temperatureK, psia * PA_PER_PSI, phase));
}

function boundaryF(eos: Eos, psia: number, boundary: Boundary): number {
  return fFromK(saturationK(eos, psia * PA_PER_PSI, boundary));
}

function refusedPsia(range: PropertyRange, psia: number): OutOfRange | undefined {
  if (psia >= range.lowPsia && psia <= range.highPsia) return undefined;
  return psia > range.highPsia ? outOfRange.pressureHigh : outOfRange.pressureLow;
}

function saturationF({ eos, range }: Source, psia: number, boundary: Boundary): number | OutOfRange {
  return refusedPsia(range, psia) ?? boundaryF(eos, psia, boundary);
}

function saturationPsia(
  { eos, range }: Source,
  temperatureF: number,
  boundary: Boundary,
): number | OutOfRange {
  if (!(temperatureF >= boundaryF(eos, range.lowPsia, boundary))) return outOfRange.temperatureLow;
  if (temperatureF > boundaryF(eos, range.highPsia, boundary)) return outOfRange.temperatureHigh;
  return saturationPa(eos, kFromF(temperatureF), boundary) / PA_PER_PSI;
}

function vapourState({ eos, range }: Source, psia: number, temperatureF: number): StateSi | OutOfRange {
  const refused = refusedPsia(range, psia);
  if (refused !== undefined) return refused;
  if (temperatureF > range.vapourHighF + EDGE_SLACK_FD) return outOfRange.temperatureHigh;
  const dry = temperatureF >= boundaryF(eos, psia, 'dew') - EDGE_SLACK_FD;
  return dry ? phaseState(eos, psia, temperatureF, 'vapour') : outOfRange.wet;
}

function vapour(source: Source, psia: number, temperatureF: number): Vapour | OutOfRange {
  const state = vapourState(source, psia, temperatureF);
  if (isOutOfRange(state)) return state;
  return {
    enthalpyBtuLb: enthalpyBtuLb(state),
    entropyBtuLbR: state.entropyJKgK / J_KGK_PER_BTU_LBR,
    densityLbFt3: state.densityKgM3 / KG_M3_PER_LB_FT3,
  };
}

function liquidEnthalpy({ eos, range }: Source, psia: number, liquidLineF: number): number | OutOfRange {
  const refused = refusedPsia(range, psia);
  if (refused !== undefined) return refused;
  if (!(liquidLineF >= range.liquidLowF)) return outOfRange.temperatureLow;
  if (liquidLineF > boundaryF(eos, psia, 'bubble') + EDGE_SLACK_FD) return outOfRange.flashing;
  return enthalpyBtuLb(phaseState(eos, psia, liquidLineF, 'liquid'));
}

function isentropicDischarge(
  source: Source,
  suctionPsia: number,
  suctionF: number,
  dischargePsia: number,
): Discharge | OutOfRange {
  const suction = vapourState(source, suctionPsia, suctionF);
  if (isOutOfRange(suction)) return suction;
  const refused = refusedPsia(source.range, dischargePsia);
  if (refused !== undefined) return refused;
  if (dischargePsia <= suctionPsia) return outOfRange.notCompressed;
  const dischargeF = vapourFAt(source, dischargePsia, (state) => state.entropyJKgK - suction.entropyJKgK);
  if (typeof dischargeF !== 'number') return dischargeF;
  const state = phaseState(source.eos, dischargePsia, dischargeF, 'vapour');
  return { dischargeF, enthalpyBtuLb: enthalpyBtuLb(state) };
}

/** Vapour temperature on an isobar at which a property that rises with temperature passes 0. */
function vapourFAt(
  { eos, range }: Source,
  psia: number,
  miss: (state: StateSi) => number,
): number | OutOfRange {
  const refused = refusedPsia(range, psia);
  if (refused !== undefined) return refused;
  const at = (temperatureF: number): number => miss(phaseState(eos, psia, temperatureF, 'vapour'));
  const lowF = boundaryF(eos, psia, 'dew') - EDGE_SLACK_FD;
  const highF = range.vapourHighF + EDGE_SLACK_FD;
  if (at(lowF) > 0) return outOfRange.wet;
  if (at(highF) < 0) return outOfRange.temperatureHigh;
  const root = findRoot(at, lowF, highF, 1e-9);
  invariant(root.kind === 'root', `no vapour temperature at ${psia} psia`);
  return root.x;
}
