import type { AssumptionKey } from '@/lib/visit/assumption-keys';

/** Assumptions by what an owner looks for; every one stands in exactly one group. */
export const DEFAULT_GROUPS: readonly {
  readonly id: 'life' | 'instruments' | 'money' | 'house';
  readonly keys: readonly AssumptionKey[];
}[] = [
  {
    id: 'life',
    keys: [
      'medianLifeYears',
      'survivalShape',
      'ageYears',
      'repairSuccessFrac',
      'ailingHazardRatio',
      'hotDischargeHazardRatio',
      'newCompressorHazardRatio',
      'outOfHoursPremiumFrac',
      'daysWithoutPerFailure',
    ],
  },
  {
    id: 'instruments',
    keys: [
      'gaugeErrorFrac',
      'clampErrorFd',
      'airErrorFd',
      'ampsErrorFrac',
      'airflowErrorFrac',
      'shellLossFrac',
      'powerFactorFrac',
      'outdoorFanShareFrac',
      'liquidSubcoolingFd',
      'healthyAirflowCfmPerTon',
      'grilleFreeAreaFrac',
    ],
  },
  {
    id: 'money',
    keys: [
      'stayYears',
      'discountFracPerYear',
      'inflationFracPerYear',
      'electricityEscalationFracPerYear',
      'electricityUsdPerKwh',
      'upkeepUsdPerYear',
      'smallRepairsOldUsdPerYear',
      'smallRepairsNewUsdPerYear',
      'replacementUsdPerTon',
    ],
  },
  {
    id: 'house',
    keys: [
      'heatingBalanceF',
      'coolingBalanceF',
      'sizingFactorFrac',
      'heatLossPerTon',
      'heatLossPerFloor',
      'coolingPerFloor',
      'cyclicRatio',
      'frostRatio',
    ],
  },
];
