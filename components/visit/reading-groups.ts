/** Readings in the order in which gauges and clamps are put on. Order: ours, to be asked of technicians. */
export type ReadingGroup = {
  readonly code: 'air' | 'gauges' | 'pipes' | 'power';
  readonly names: readonly string[];
};

/** With these a first answer is possible; further ways of measuring are in components/measure. */
export const READING_GROUPS: readonly ReadingGroup[] = [
  { code: 'gauges', names: ['suctionPsig', 'dischargePsig', 'liquidPsig'] },
  { code: 'pipes', names: ['suctionLineF', 'liquidLineF', 'dischargeLineF', 'liquidBeforeMeteringF'] },
  {
    code: 'air',
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
];
