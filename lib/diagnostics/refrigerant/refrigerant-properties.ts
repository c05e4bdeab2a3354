import type { RefrigerantName } from '../../visit/refrigerant-names';
import type { OutOfRange } from './out-of-range';

export type Vapour = {
  readonly enthalpyBtuLb: number;
  readonly entropyBtuLbR: number;
  readonly densityLbFt3: number;
};

export type Discharge = { readonly dischargeF: number; readonly enthalpyBtuLb: number };

/**
 * Properties of one refrigerant in the trade's units. Pressures are absolute [psia] (see gauge.ts), temperatures
 * [F]. Only differences of enthalpy and of entropy of one refrigerant mean anything (zero points are arbitrary).
 *
 * Outside the range every function gives `{ kind: 'none', why }`, never a clamped or continued value. Vapour is
 * accepted down to 0.2 F below dew and liquid up to 0.2 F above bubble, where the metastable value is given, and
 * vapour up to 0.2 F above `vapourHighF`, so that rounding at an edge does not turn into a refusal.
 */
export type RefrigerantProperties = {
  readonly name: RefrigerantName;
  readonly safetyClass: 'A1' | 'A2L';
  /** 100-year global warming potential */
  readonly gwp100: number;
  /** published uncertainty of the underlying equation, in words; much larger than the table's own error */
  readonly publishedUncertainty: string;
  /** false for a pure refrigerant, where bubble and dew are the same */
  readonly isBlend: boolean;
  /** left out for R-454B, whose source has no critical point */
  readonly critical?: { readonly f: number; readonly psia: number };
  readonly validPsia: { readonly low: number; readonly high: number };
  /** highest vapour temperature [F] */
  readonly vapourHighF: number;
  /** lowest liquid temperature [F] */
  readonly liquidLowF: number;

  /** Temperature at which the last liquid boils away: superheat is counted from it. */
  readonly dewF: (psia: number) => number | OutOfRange;
  /** Temperature at which liquid begins to boil: subcooling is counted from it. */
  readonly bubbleF: (psia: number) => number | OutOfRange;
  readonly dewPsia: (temperatureF: number) => number | OutOfRange;
  readonly bubblePsia: (temperatureF: number) => number | OutOfRange;
  /** dewF - bubbleF; 0 for a pure refrigerant [F difference] */
  readonly glideFd: (psia: number) => number | OutOfRange;
  readonly vapour: (psia: number, temperatureF: number) => Vapour | OutOfRange;
  readonly vapourEnthalpyBtuLb: (psia: number, temperatureF: number) => number | OutOfRange;
  /** Saturated vapour at dew. */
  readonly dewEnthalpyBtuLb: (psia: number) => number | OutOfRange;
  /** Subcooled liquid; the effect of pressure is included. */
  readonly liquidEnthalpyBtuLb: (psia: number, liquidLineF: number) => number | OutOfRange;
  /** Saturated liquid at bubble. */
  readonly bubbleEnthalpyBtuLb: (psia: number) => number | OutOfRange;
  /** State after lossless compression without heat exchange: same entropy at the discharge pressure. */
  readonly isentropicDischarge: (
    suctionPsia: number,
    suctionF: number,
    dischargePsia: number,
  ) => Discharge | OutOfRange;
  /** Vapour temperature at a pressure and enthalpy. */
  readonly vapourFAtEnthalpy: (psia: number, enthalpyBtuLb: number) => number | OutOfRange;
};

/** Slack at saturation and at the hottest vapour within which a temperature is still taken as inside [F difference]. */
export const EDGE_SLACK_FD = 0.2;
