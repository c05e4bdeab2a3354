/** One billing period: mean outdoor temperature of its days, and use per day. */
export type BillPoint = { readonly meanF: number; readonly kwhPerDay: number };

/** Number of parameters (change points counted) and what bends: H heating, C cooling. */
export type ChangePointKind = '1P' | '2P' | '3PH' | '3PC' | '4P' | '5P';

export type Interval = { readonly low: number; readonly high: number };

/** Use per day = base + heating slope x max(heating change - T, 0) + cooling slope x max(T - cooling change, 0). */
export type ChangePointFit = {
  readonly kind: ChangePointKind;
  /** Billing periods and fitted parameters, change points counted. */
  readonly n: number;
  readonly p: number;
  readonly baseKwhPerDay: number;
  /** 0 where the kind has none; for 2P the line's own slope, which may have either sign, is `lineSlope`. */
  readonly heatingKwhPerDayF: number;
  readonly coolingKwhPerDayF: number;
  readonly lineKwhPerDayF: number;
  readonly heatingChangeF?: number;
  readonly coolingChangeF?: number;
  readonly sse: number;
  /** sqrt(SSE / (n - p)) [kWh/day]. */
  readonly rmseKwhPerDay: number;
  /** RMSE over the mean use. */
  readonly cvRmseFrac: number;
  /** Sum of residuals over (n - p) times the mean; 0 by construction for a fit with intercept. */
  readonly nmbeFrac: number;
  readonly r2: number;
  readonly adjustedR2: number;
  /** 95 % intervals: every parameter set whose squared error stays within the bound of Student's t. */
  readonly intervals: {
    readonly baseKwhPerDay: Interval;
    readonly heatingKwhPerDayF?: Interval;
    readonly coolingKwhPerDayF?: Interval;
    readonly heatingChangeF?: Interval;
    readonly coolingChangeF?: Interval;
  };
};

/** Use per day that a fit expects at an outdoor temperature [kWh/day]. */
export function expectedKwhPerDay(fit: ChangePointFit, meanF: number): number {
  return (
    fit.baseKwhPerDay +
    fit.lineKwhPerDayF * meanF +
    heatingKwhPerDay(fit, meanF) +
    coolingKwhPerDay(fit, meanF)
  );
}

/** Heating part of the use per day at an outdoor temperature [kWh/day]. */
export function heatingKwhPerDay(fit: ChangePointFit, meanF: number): number {
  return fit.heatingChangeF === undefined
    ? 0
    : fit.heatingKwhPerDayF * Math.max(0, fit.heatingChangeF - meanF);
}

/** Cooling part of the use per day at an outdoor temperature [kWh/day]. */
export function coolingKwhPerDay(fit: ChangePointFit, meanF: number): number {
  return fit.coolingChangeF === undefined
    ? 0
    : fit.coolingKwhPerDayF * Math.max(0, meanF - fit.coolingChangeF);
}
