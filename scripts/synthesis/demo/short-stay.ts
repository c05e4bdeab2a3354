import type { Visit } from '../../../lib/visit/visit';
import { synthesise } from '../synthesise';
import type { UnitSpec } from '../unit-spec';
import {
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
  kind: 'airConditioner',
  refrigerant: 'R-410A',
  metering: 'txv',
  nominalTons: 3.5,
  seer: 13,
  compressor: 'scroll',
  blower: 'psc',
  airflowCfmPerTon: 360,
};

/** Owners who move in three years, and an outdoor coil matted with lint and cottonwood. */
export function shortStay(): Visit {
  const { run } = synthesise(
    unit,
    { mode: 'cooling', outdoorF: 92, returnF: 77, returnWetBulbF: 66, altitudeFt: 95, lineV: 236 },
    [{ fault: 'outdoorCoilFouled', level: 0.46 }],
    {
      id: 'as-found',
      label: 'as found',
      keep: [...usualReadings, 'returnWetBulbF', ...grilleReadings, 'outdoorUnitW'],
    },
  );
  return inventedVisit({
    id: 'short-stay',
    visitDate: '2026-08-20',
    technician: 'Sunniva Okparaebo',
    site: {
      customer: 'Rosalind Achterberg',
      street: '1216 Heron Bend',
      town: 'Port Amity',
      stateCode: 'TX',
      altitudeFt: 95,
      climate: { kind: 'city', city: 'houston-tx' },
      stayYears: 5,
      floorAreaFt2: 1850,
      coolingSetpointF: 75,
      otherHeat: true,
    },
    unit: {
      kind: 'airConditioner',
      nominalTons: 3.5,
      refrigerant: 'R-410A',
      metering: 'txv',
      manufactureYear: 2012,
      ratings: { seerBtuPerWh: 13, eerBtuPerWh: 11.2 },
      ratedLoadA: 19.2,
      ratedV: 230,
      blower: 'psc',
    },
    runs: [run],
    observations: [{ id: 'dirtyOutdoorCoil', note: 'Matted on three sides behind the dryer vent.' }],
    suspectedCause: {
      cause: 'outdoorCoilFouled',
      note: 'Condensing far above outdoor air with ordinary subcooling.',
    },
    tariff: { kind: 'flat', energyUsdPerKwh: 0.157, fixedUsdPerMonth: 10 },
    choices: [
      leave,
      {
        id: 'coil-wash',
        kind: 'repair',
        name: 'Wash the outdoor coil',
        actions: ['outdoorCoilCleaning'],
        addresses: 'outdoorCoilFouled',
        priceLines: [labour('Open, wash, rinse, comb', 1), part('Coil cleaner', 24), tax(0.0825)],
      },
      {
        id: 'new-air-conditioner',
        kind: 'replace',
        name: 'New 3.5-ton air conditioner',
        unitKind: 'airConditioner',
        tier: 'singleSpeed',
        nominalTons: 3.5,
        ratings: { seer2BtuPerWh: 14.3, eer2BtuPerWh: 11.7 },
        priceLines: [
          equipment('Outdoor unit and indoor coil', 4_950),
          labour('Two people, one day', 16),
          part('Line set, pad, wiring', 430),
          permit(),
          tax(0.0825),
        ],
        financing: {
          kind: 'levelLoan',
          rateFracPerYear: 0.1099,
          termMonths: 72,
          lender: 'Millrace Credit Union (invented)',
        },
      },
    ],
  });
}
