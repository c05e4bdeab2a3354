import type { Visit } from '../../../lib/visit/visit';
import { synthesise } from '../synthesise';
import type { UnitSpec } from '../unit-spec';
import { inventedBills } from './bills';
import {
  capacitorReadings,
  equipment,
  grilleReadings,
  inventedVisit,
  labour,
  leave,
  part,
  permit,
  tax,
  usualReadings,
} from './shop';

const unit: UnitSpec = {
  kind: 'heatPump',
  refrigerant: 'R-454B',
  metering: 'txv',
  nominalTons: 3,
  seer: 15,
  compressor: 'scroll',
  blower: 'ecm',
  electricHeatKw: 10,
  nameplateSubcoolingFd: 9,
  compressorCapUf: 45,
  airflowCfmPerTon: 420,
};

/** The year since the unit was put in. */
const bills = inventedBills(
  {
    baseKwhPerDay: 18.5,
    heatingKwhPerDayF: 1.55,
    heatingBelowF: 60,
    coolingKwhPerDayF: 1.3,
    coolingAboveF: 66,
    usdPerKwh: 0.146,
    fixedUsd: 11,
  },
  '2025-07-11',
  [
    { readOn: '2025-08-12', meanOutdoorF: 75 },
    { readOn: '2025-09-11', meanOutdoorF: 70 },
    { readOn: '2025-10-10', meanOutdoorF: 61 },
    { readOn: '2025-11-11', meanOutdoorF: 50 },
    { readOn: '2025-12-11', meanOutdoorF: 39 },
    { readOn: '2026-01-13', meanOutdoorF: 31 },
    { readOn: '2026-02-11', meanOutdoorF: 29 },
    { readOn: '2026-03-12', meanOutdoorF: 37 },
    { readOn: '2026-04-13', meanOutdoorF: 45 },
    { readOn: '2026-05-12', meanOutdoorF: 54 },
    { readOn: '2026-06-11', meanOutdoorF: 63 },
    { readOn: '2026-07-13', meanOutdoorF: 73 },
  ],
);

/** A nearly new R-454B unit at 5,400 ft: every pressure is right, but the compressor draws too many amps. A year of
 * bills and a time-of-use tariff set the house and its price. */
export function weakCapacitor(): Visit {
  const { run } = synthesise(
    unit,
    { mode: 'cooling', outdoorF: 91, returnF: 76, returnWetBulbF: 60, altitudeFt: 5400, lineV: 238 },
    [{ fault: 'runCapacitorWeak', level: 0.22 }],
    {
      id: 'as-found',
      label: 'as found',
      keep: [
        ...usualReadings,
        'returnWetBulbF',
        ...grilleReadings,
        ...capacitorReadings,
        'outdoorUnitW',
        'powerFactorFrac',
      ],
    },
  );
  return inventedVisit({
    id: 'weak-capacitor',
    visitDate: '2026-07-28',
    technician: 'Wren Castellane',
    site: {
      customer: 'Bartholomew Nwosu-Pike',
      street: '88 Sagecrest Way',
      town: 'Tern Mesa',
      stateCode: 'CO',
      altitudeFt: 5400,
      climate: { kind: 'city', city: 'denver-co' },
      stayYears: 12,
      floorAreaFt2: 1800,
      heatingSetpointF: 69,
      coolingSetpointF: 75,
      builtYear: 1996,
      heatingComfort: 'keepsUp',
      coolingComfort: 'keepsUp',
    },
    unit: {
      kind: 'heatPump',
      nominalTons: 3,
      refrigerant: 'R-454B',
      metering: 'txv',
      manufactureYear: 2025,
      ratings: { seer2BtuPerWh: 14.3, hspf2BtuPerWh: 7.8 },
      nameplateSubcoolingFd: 9,
      ratedLoadA: 14.7,
      ratedV: 230,
      electricHeatKw: 10,
      blower: 'ecm',
    },
    runs: [run],
    observations: [{ id: 'breakerTrips', note: 'Twice this month, at start.' }],
    suspectedCause: { cause: 'runCapacitorWeak', note: 'Pressures in order, amps high, 35 of 45 µF.' },
    tariff: {
      kind: 'timeOfUse',
      periods: [
        {
          label: 'Summer peak',
          months: [6, 7, 8, 9],
          days: 'weekdays',
          fromHour: 15,
          toHour: 19,
          energyUsdPerKwh: 0.312,
        },
        {
          label: 'Summer shoulder',
          months: [6, 7, 8, 9],
          days: 'weekdays',
          fromHour: 13,
          toHour: 15,
          energyUsdPerKwh: 0.204,
        },
        {
          label: 'Winter peak',
          months: [1, 2, 3, 4, 5, 10, 11, 12],
          days: 'weekdays',
          fromHour: 15,
          toHour: 19,
          energyUsdPerKwh: 0.196,
        },
      ],
      otherUsdPerKwh: 0.127,
      fixedUsdPerMonth: 11,
    },
    bills,
    choices: [
      leave,
      {
        id: 'run-capacitor',
        kind: 'repair',
        name: 'New run capacitor',
        actions: ['runCapacitor'],
        addresses: 'runCapacitorWeak',
        priceLines: [
          labour('Exchange, check start and running amps', 1),
          part('Run capacitor 45/5 µF', 38),
          tax(0.08),
        ],
      },
      {
        id: 'new-heat-pump',
        kind: 'replace',
        name: 'New 3-ton variable-speed heat pump',
        unitKind: 'heatPump',
        tier: 'variableSpeed',
        nominalTons: 3,
        ratings: { seer2BtuPerWh: 18, hspf2BtuPerWh: 9 },
        blower: 'ecm',
        priceLines: [
          equipment('Heat pump, air handler, heat kit', 8_900),
          labour('Two people, one day and a half', 24),
          part('Line set, pad, wiring', 560),
          permit(),
          tax(0.08),
        ],
        financing: {
          kind: 'levelLoan',
          rateFracPerYear: 0.0699,
          termMonths: 120,
          lender: 'Harbour Green Fund (invented)',
        },
      },
    ],
  });
}
