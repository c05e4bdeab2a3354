import type { Visit } from '../../../lib/visit/visit';
import { synthesise } from '../synthesise';
import type { UnitSpec } from '../unit-spec';
import {
  capacitorReadings,
  equipment,
  grilleReadings,
  inventedVisit,
  labour,
  leave,
  part,
  permit,
  staticReadings,
  usualReadings,
} from './shop';

const unit: UnitSpec = {
  kind: 'heatPump',
  refrigerant: 'R-410A',
  metering: 'txv',
  nominalTons: 3,
  seer: 15,
  compressor: 'scroll',
  blower: 'ecm',
  electricHeatKw: 10,
  nameplateSubcoolingFd: 10,
  airflowCfmPerTon: 395,
};

/** Nothing wrong: the honest answer is to leave it alone. */
export function healthyUnitVisit(): Visit {
  const { run } = synthesise(
    unit,
    { mode: 'cooling', outdoorF: 86, returnF: 76, returnWetBulbF: 63.5, altitudeFt: 20, lineV: 242 },
    [],
    {
      id: 'yearly-check',
      label: 'yearly check',
      keep: [
        ...usualReadings,
        'returnWetBulbF',
        ...grilleReadings,
        ...staticReadings,
        ...capacitorReadings,
        'outdoorUnitW',
        'blowerW',
      ],
    },
  );
  return inventedVisit({
    id: 'healthy',
    visitDate: '2026-08-11',
    technician: 'Sunniva Okparaebo',
    site: {
      customer: 'Marguerite Aldwinkle',
      street: '3310 Ferncliff Terrace',
      town: 'Alder Quay',
      stateCode: 'OR',
      altitudeFt: 20,
      climate: { kind: 'city', city: 'portland-or' },
      stayYears: 10,
      floorAreaFt2: 1700,
      heatingSetpointF: 68,
      coolingSetpointF: 75,
    },
    unit: {
      kind: 'heatPump',
      nominalTons: 3,
      refrigerant: 'R-410A',
      metering: 'txv',
      manufactureYear: 2019,
      ratings: { seerBtuPerWh: 15, eerBtuPerWh: 12.3, hspfBtuPerWh: 8.8 },
      nameplateSubcoolingFd: 10,
      ratedLoadA: 15.3,
      ratedV: 230,
      electricHeatKw: 10,
      blower: 'ecm',
    },
    runs: [run],
    observations: [],
    suspectedCause: { cause: 'none', note: 'Yearly check; the owner asked whether to replace it.' },
    tariff: { kind: 'flat', energyUsdPerKwh: 0.138, fixedUsdPerMonth: 12 },
    choices: [
      leave,
      {
        id: 'new-single-stage',
        kind: 'replace',
        name: 'New 3-ton single-stage heat pump',
        unitKind: 'heatPump',
        tier: 'singleSpeed',
        nominalTons: 3,
        ratings: { seer2BtuPerWh: 15.2, hspf2BtuPerWh: 8.1 },
        blower: 'ecm',
        priceLines: [
          equipment('Heat pump, air handler, heat kit', 5_900),
          labour('Two people, one day and a half', 24),
          part('Line set, pad, wiring', 540),
          permit(185),
        ],
      },
      {
        id: 'new-two-stage',
        kind: 'replace',
        name: 'New 3-ton two-stage heat pump',
        unitKind: 'heatPump',
        tier: 'twoSpeed',
        nominalTons: 3,
        ratings: { seer2BtuPerWh: 17, hspf2BtuPerWh: 8.5 },
        blower: 'ecm',
        priceLines: [
          equipment('Heat pump, air handler, heat kit', 7_400),
          labour('Two people, one day and a half', 24),
          part('Line set, pad, wiring', 540),
          permit(185),
        ],
        rebates: [
          {
            label: 'Energy trust rebate (invented)',
            amountUsd: 700,
            condition: 'HSPF2 of 8.1 or more.',
            firstDate: '2026-01-01',
            lastDate: '2026-12-31',
            paidAfterMonths: 2,
          },
        ],
        financing: {
          kind: 'levelLoan',
          rateFracPerYear: 0.0749,
          termMonths: 120,
          lender: 'Harbour Green Fund (invented)',
        },
      },
    ],
  });
}
