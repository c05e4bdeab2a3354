/** Readings in the order in which gauges and clamps are put on. Order: ours, to be asked of technicians. */
export type ReadingGroup = {
  readonly code: 'air' | 'gauges' | 'pipes' | 'power' | 'capacitors' | 'airflow' | 'statics' | 'strips';
  /** Open from the start: with these a first answer is possible. */
  readonly first: boolean;
  readonly names: readonly string[];
};

export const READING_GROUPS: readonly ReadingGroup[] = [
  { code: 'gauges', first: true, names: ['suctionPsig', 'dischargePsig', 'liquidPsig'] },
  {
    code: 'pipes',
    first: true,
    names: ['suctionLineF', 'liquidLineF', 'dischargeLineF', 'liquidBeforeMeteringF'],
  },
  {
    code: 'air',
    first: true,
    names: [
      'outdoorAirF',
      'returnAirF',
      'returnWetBulbF',
      'returnHumidityFrac',
      'supplyAirF',
      'supplyWetBulbF',
    ],
  },
  {
    code: 'power',
    first: true,
    names: [
      'lineV',
      'compressorA',
      'outdoorUnitA',
      'outdoorFanA',
      'powerFactorFrac',
      'outdoorUnitW',
      'blowerA',
      'blowerW',
    ],
  },
  {
    code: 'airflow',
    first: false,
    names: [
      'airflowCfm',
      'grilleAreaIn2',
      'grilleFreeAreaFrac',
      'grilleFaceFpm',
      'heatRiseReturnF',
      'heatRiseSupplyF',
      'heatRiseV',
      'heatRiseA',
    ],
  },
  {
    code: 'statics',
    first: false,
    names: ['returnStaticInWc', 'supplyStaticInWc', 'filterDropInWc', 'coilDropInWc'],
  },
  {
    code: 'capacitors',
    first: false,
    names: ['compressorCapRatedUf', 'compressorCapUf', 'fanCapRatedUf', 'fanCapUf'],
  },
  { code: 'strips', first: false, names: ['stripKw', 'stripA', 'stripV'] },
];
