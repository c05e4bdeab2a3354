import data from './data/emission-factors.json';

export type EmissionFactor = {
  readonly lbPerKwh: number;
  /** Name of the grid region. */
  readonly region: string;
  readonly kind: 'marginal' | 'average';
  readonly source: string;
  readonly status: string;
};

type Region = { readonly name: string; readonly marginalLbPerKwh: number; readonly averageLbPerKwh?: number };

/**
 * Carbon dioxide of one more or one less kilowatt-hour.
 *
 * @param stateCode  two-letter state; unknown = United States
 * @param kind  `marginal` (long-run, for a change that lasts years) or `average`
 * @returns factor [lb CO2-equivalent per kWh] with its region's name and source
 * A region without an average gets the national one, and says so by its name.
 * Source: data/emission-factors.json, status read (marginal), secondary (average), memory (state to region)
 * Check: tests/energy/emission-factor.test.ts
 */
export function emissionFactor(
  stateCode: string | undefined,
  kind: 'marginal' | 'average' = 'marginal',
): EmissionFactor {
  const byState: Readonly<Record<string, string>> = data.regionByState;
  const regions: Readonly<Record<string, Region>> = data.regions;
  const code = stateCode === undefined ? undefined : byState[stateCode];
  const region = code === undefined ? undefined : regions[code];
  const national = data.unitedStates;
  if (kind === 'average') {
    const own = region?.averageLbPerKwh;
    return {
      lbPerKwh: own ?? national.averageLbPerKwh,
      region: own === undefined ? national.name : (region?.name ?? national.name),
      kind,
      source: data.averageSource,
      status: data.averageStatus,
    };
  }
  return {
    lbPerKwh: region?.marginalLbPerKwh ?? national.marginalLbPerKwh,
    region: region?.name ?? national.name,
    kind,
    source: region === undefined ? national.source : data.marginalSource,
    status: region === undefined ? national.status : data.marginalStatus,
  };
}
