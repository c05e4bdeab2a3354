/** What a before-and-after table lists, as a technician reads it: gauges, refrigerant, air, power, parts. */
export const READ_IN_ORDER: readonly string[] = [
  'suctionPsig',
  'dischargePsig',
  'suctionSuperheatFd',
  'liquidSubcoolingFd',
  'condensingOverOutdoorFd',
  'condensingOverReturnFd',
  'evaporatingBelowReturnFd',
  'evaporatingBelowOutdoorFd',
  'compressionRatio',
  'dischargeLineF',
  'isentropicEfficiencyFrac',
  'airSplitFd',
  'airRiseFd',
  'airflowCfm',
  'totalExternalStaticInWc',
  'filterDropInWc',
  'coilDropInWc',
  'outdoorUnitW',
  'compressorA',
  'refrigerantCapacityBtuh',
  'compressorCapacitorDeviationFrac',
  'fanCapacitorDeviationFrac',
  'stripAmpsRatio',
];

/** Of these, what tells no cause by its change: bare gauges, and parts that are measured for themselves. */
export const TELLING_NO_CAUSE: ReadonlySet<string> = new Set([
  'suctionPsig',
  'dischargePsig',
  'filterDropInWc',
  'coilDropInWc',
  'compressorA',
  'compressorCapacitorDeviationFrac',
  'fanCapacitorDeviationFrac',
  'stripAmpsRatio',
]);
