/** Where property functions give values. */
export type PropertyRange = {
  readonly lowPsia: number;
  readonly highPsia: number;
  readonly vapourHighF: number;
  readonly liquidLowF: number;
};

/** Saturation curve: temperature from pressure and back, each a polynomial in its coordinate (table-coordinates.ts). */
export type CurveData = {
  readonly temperatureF: readonly number[];
  readonly lnPsia: readonly number[];
  /** temperatures between which `lnPsia` was fitted [F] */
  readonly lowF: number;
  readonly highF: number;
};

/**
 * Generated property table of one refrigerant. Patches are polynomials of two coordinates, (order + 1)^2 numbers,
 * block j holding the rising powers of the pressure coordinate that multiply the j-th power of the temperature
 * coordinate.
 */
export type TableData = {
  readonly refrigerant: string;
  readonly source: string;
  readonly status: string;
  readonly range: PropertyRange;
  /** pressure and temperature the coordinates are measured from: the critical point, or the end of the fit */
  readonly end: { readonly psia: number; readonly f: number; readonly critical: boolean };
  /** pressures between which everything was fitted, a little wider than the range [psia] */
  readonly fit: { readonly lowPsia: number; readonly highPsia: number };
  /** gas constant [psi ft3/(lb R)] */
  readonly gasPsiFt3LbR: number;
  readonly dew: CurveData;
  /** left out for a pure refrigerant: same as dew */
  readonly bubble?: CurveData;
  readonly vapour: {
    readonly spacing: number;
    readonly enthalpyBtuLb: readonly number[];
    readonly entropyBtuLbR: readonly number[];
    readonly compressibility: readonly number[];
  };
  readonly liquid: { readonly spacing: number; readonly enthalpyBtuLb: readonly number[] };
};
