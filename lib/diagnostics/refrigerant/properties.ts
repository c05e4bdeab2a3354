import type { RefrigerantName } from '../../visit/refrigerant-names';
import facts from './data/refrigerant-facts.json';
import { RANKINE_AT_0F } from './ip-units';
import { isOutOfRange, type OutOfRange, outOfRange } from './out-of-range';
import {
  type Discharge,
  EDGE_SLACK_FD,
  type RefrigerantProperties,
  type Vapour,
} from './refrigerant-properties';
import {
  coordinateAtF,
  coordinateOfValue,
  curveF,
  curvePsia,
  fAtCoordinate,
  type Isobar,
  type LoadedCurve,
  type LoadedTable,
  liquidIsobar,
  loadTable,
  patchAt,
  pressureCoordinate,
  vapourIsobar,
} from './table-kernel';
import { tables } from './tables';

const loaded = new Map<RefrigerantName, RefrigerantProperties>();

/**
 * Properties of a refrigerant from its compact table.
 *
 * @param name  refrigerant
 * @returns pure functions in psia, F, Btu/lb, Btu/(lb R), lb/ft3; the same object at every call
 * Outside the table: `{ kind: 'none', why }`, see `RefrigerantProperties`.
 * Source: tables fitted to the published equations of state in data/eos, status computed. Table against equation,
 * whole range: saturation within 0.0002 F, enthalpy 0.016 Btu/lb, density 0.05 %, isentropic discharge 0.03 F
 * Check: tests/diagnostics/refrigerant/properties.test.ts, tables.test.ts
 */
export function refrigerantProperties(name: RefrigerantName): RefrigerantProperties {
  const known = loaded.get(name);
  if (known !== undefined) return known;
  const made = propertiesFromTable(name, loadTable(tables[name]));
  loaded.set(name, made);
  return made;
}

function propertiesFromTable(name: RefrigerantName, table: LoadedTable): RefrigerantProperties {
  const { data } = table;
  const { end, range } = data;
  return {
    name,
    safetyClass: safetyClass(name),
    gwp100: facts.gwp100.value[name],
    publishedUncertainty: facts.publishedUncertainty.value[name],
    isBlend: data.bubble !== undefined,
    ...(end.critical ? { critical: { f: end.f, psia: end.psia } } : {}),
    validPsia: { low: range.lowPsia, high: range.highPsia },
    vapourHighF: range.vapourHighF,
    liquidLowF: range.liquidLowF,
    dewF: (psia) => saturationF(table, table.dew, psia),
    bubbleF: (psia) => saturationF(table, table.bubble, psia),
    dewPsia: saturationPsia(table, table.dew),
    bubblePsia: saturationPsia(table, table.bubble),
    glideFd: (psia) => glideFd(table, psia),
    vapour: (psia, temperatureF) => vapour(table, psia, temperatureF),
    vapourEnthalpyBtuLb: (psia, temperatureF) => vapourEnthalpy(table, psia, temperatureF),
    dewEnthalpyBtuLb: (psia) =>
      refusedPsia(table, psia) ?? patchAt(table.vapour.enthalpy, pressureCoordinate(table, psia), -1),
    liquidEnthalpyBtuLb: (psia, liquidLineF) => liquidEnthalpy(table, psia, liquidLineF),
    bubbleEnthalpyBtuLb: (psia) =>
      refusedPsia(table, psia) ?? patchAt(table.liquidEnthalpy, pressureCoordinate(table, psia), -1),
    isentropicDischarge: (suctionPsia, suctionF, dischargePsia) =>
      isentropicDischarge(table, suctionPsia, suctionF, dischargePsia),
    vapourFAtEnthalpy: (psia, enthalpyBtuLb) => vapourFAtEnthalpy(table, psia, enthalpyBtuLb),
  };
}

function safetyClass(name: RefrigerantName): 'A1' | 'A2L' {
  return facts.safetyClass.value[name] === 'A2L' ? 'A2L' : 'A1';
}

function refusedPsia(table: LoadedTable, psia: number): OutOfRange | undefined {
  const { lowPsia, highPsia } = table.data.range;
  if (psia >= lowPsia && psia <= highPsia) return undefined;
  return psia > highPsia ? outOfRange.pressureHigh : outOfRange.pressureLow;
}

function saturationF(table: LoadedTable, curve: LoadedCurve, psia: number): number | OutOfRange {
  return refusedPsia(table, psia) ?? curveF(curve, pressureCoordinate(table, psia));
}

function saturationPsia(
  table: LoadedTable,
  curve: LoadedCurve,
): (temperatureF: number) => number | OutOfRange {
  const { lowPsia, highPsia } = table.data.range;
  const lowF = curveF(curve, pressureCoordinate(table, lowPsia));
  const highF = curveF(curve, pressureCoordinate(table, highPsia));
  return (temperatureF) => {
    if (!(temperatureF >= lowF)) return outOfRange.temperatureLow;
    if (temperatureF > highF) return outOfRange.temperatureHigh;
    return Math.min(highPsia, Math.max(lowPsia, curvePsia(table, curve, temperatureF)));
  };
}

function glideFd(table: LoadedTable, psia: number): number | OutOfRange {
  const refused = refusedPsia(table, psia);
  if (refused !== undefined) return refused;
  const u = pressureCoordinate(table, psia);
  return curveF(table.dew, u) - curveF(table.bubble, u);
}

function vapourRefused(table: LoadedTable, dewF: number, temperatureF: number): OutOfRange | undefined {
  if (temperatureF > table.data.range.vapourHighF + EDGE_SLACK_FD) return outOfRange.temperatureHigh;
  return temperatureF >= dewF - EDGE_SLACK_FD ? undefined : outOfRange.wet;
}

function vapour(table: LoadedTable, psia: number, temperatureF: number): Vapour | OutOfRange {
  const refused = refusedPsia(table, psia);
  if (refused !== undefined) return refused;
  const isobar = vapourIsobar(table, psia);
  const wrong = vapourRefused(table, isobar.nearF, temperatureF);
  if (wrong !== undefined) return wrong;
  const v = coordinateAtF(isobar, temperatureF);
  const compressibility = patchAt(table.vapour.compressibility, isobar.u, v);
  return {
    enthalpyBtuLb: patchAt(table.vapour.enthalpy, isobar.u, v),
    entropyBtuLbR: patchAt(table.vapour.entropy, isobar.u, v),
    densityLbFt3: psia / (compressibility * table.data.gasPsiFt3LbR * (temperatureF + RANKINE_AT_0F)),
  };
}

function vapourEnthalpy(table: LoadedTable, psia: number, temperatureF: number): number | OutOfRange {
  const refused = refusedPsia(table, psia);
  if (refused !== undefined) return refused;
  const isobar = vapourIsobar(table, psia);
  const wrong = vapourRefused(table, isobar.nearF, temperatureF);
  return wrong ?? patchAt(table.vapour.enthalpy, isobar.u, coordinateAtF(isobar, temperatureF));
}

function liquidEnthalpy(table: LoadedTable, psia: number, liquidLineF: number): number | OutOfRange {
  const refused = refusedPsia(table, psia);
  if (refused !== undefined) return refused;
  const isobar = liquidIsobar(table, psia);
  if (!(liquidLineF >= isobar.farF)) return outOfRange.temperatureLow;
  if (liquidLineF > isobar.nearF + EDGE_SLACK_FD) return outOfRange.flashing;
  return patchAt(table.liquidEnthalpy, isobar.u, coordinateAtF(isobar, liquidLineF));
}

function isentropicDischarge(
  table: LoadedTable,
  suctionPsia: number,
  suctionF: number,
  dischargePsia: number,
): Discharge | OutOfRange {
  const suction = vapour(table, suctionPsia, suctionF);
  if (isOutOfRange(suction)) return suction;
  const refused = refusedPsia(table, dischargePsia);
  if (refused !== undefined) return refused;
  if (dischargePsia <= suctionPsia) return outOfRange.notCompressed;
  const isobar = vapourIsobar(table, dischargePsia);
  const v = coordinateOfValue(table.vapour.entropy, isobar.u, suction.entropyBtuLbR);
  const dischargeF = vapourF(table, isobar, v);
  if (typeof dischargeF !== 'number') return dischargeF;
  return { dischargeF, enthalpyBtuLb: patchAt(table.vapour.enthalpy, isobar.u, v) };
}

function vapourFAtEnthalpy(table: LoadedTable, psia: number, enthalpyBtuLb: number): number | OutOfRange {
  const refused = refusedPsia(table, psia);
  if (refused !== undefined) return refused;
  const isobar = vapourIsobar(table, psia);
  return vapourF(table, isobar, coordinateOfValue(table.vapour.enthalpy, isobar.u, enthalpyBtuLb));
}

/** Temperature at a coordinate found on an isobar, if it lies in the vapour range. */
function vapourF(table: LoadedTable, isobar: Isobar, v: number): number | OutOfRange {
  if (v === Number.POSITIVE_INFINITY) return outOfRange.temperatureHigh;
  if (v === Number.NEGATIVE_INFINITY) return outOfRange.wet;
  const temperatureF = fAtCoordinate(isobar, v);
  return vapourRefused(table, isobar.nearF, temperatureF) ?? temperatureF;
}
