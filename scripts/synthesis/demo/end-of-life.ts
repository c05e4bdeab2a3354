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
  prices,
  refrigerant,
  tax,
  usualReadings,
} from './shop';

const unit: UnitSpec = {
  kind: 'heatPump',
  refrigerant: 'R-22',
  metering: 'fixedOrifice',
  nominalTons: 3,
  seer: 10,
  compressor: 'reciprocating',
  blower: 'psc',
  electricHeatKw: 15,
  airflowCfmPerTon: 370,
};

/** A worn-out compressor in a cold place, and people who mean to stay. */
export function endOfLife(): Visit {
  const { run } = synthesise(
    unit,
    { mode: 'heating', outdoorF: 38, returnF: 69, altitudeFt: 660, lineV: 238 },
    [{ fault: 'compressorValvesLeaking', level: 0.32 }],
    {
      id: 'as-found',
      label: 'as found',
      keep: [...usualReadings, ...grilleReadings, 'outdoorUnitW', 'stripKw', 'stripA', 'stripV'],
    },
  );
  return inventedVisit({
    id: 'end-of-life',
    visitDate: '2026-10-28',
    technician: 'Idris Vantongeren',
    site: {
      customer: 'Casimir and June Holloway-Tran',
      street: '59 Limekiln Road',
      town: 'Wexcombe Prairie',
      stateCode: 'IL',
      altitudeFt: 660,
      climate: { kind: 'city', city: 'chicago-ohare-il' },
      stayYears: 15,
      floorAreaFt2: 1750,
      heatingSetpointF: 69,
      coolingSetpointF: 75,
    },
    unit: {
      kind: 'heatPump',
      nominalTons: 3,
      refrigerant: 'R-22',
      metering: 'fixedOrifice',
      manufactureYear: 2006,
      ratings: { seerBtuPerWh: 10, hspfBtuPerWh: 7 },
      ratedLoadA: 18.2,
      ratedV: 230,
      electricHeatKw: 15,
      blower: 'psc',
    },
    runs: [run],
    observations: [
      { id: 'noisyCompressor', note: 'Rattles at stop, warm shell.' },
      { id: 'neverKeepsUp', note: 'Auxiliary heat on below 45 °F.' },
    ],
    suspectedCause: {
      cause: 'compressorValvesLeaking',
      note: 'High suction, low head, pumps down no further than 55 psig.',
    },
    tariff: { kind: 'flat', energyUsdPerKwh: 0.164, fixedUsdPerMonth: 14 },
    choices: [
      leave,
      {
        id: 'new-compressor',
        kind: 'repair',
        name: 'New compressor',
        actions: ['compressor'],
        addresses: 'compressorValvesLeaking',
        priceLines: [
          labour('Recover, exchange, flush, evacuate, weigh in', 8),
          part('Compressor, start kit, suction and liquid driers', 1_480),
          refrigerant('R-22 (reclaimed)', 3, prices.r22UsdPerLb),
          tax(0.07),
        ],
      },
      {
        id: 'new-heat-pump',
        kind: 'replace',
        name: 'New 3-ton heat pump and air handler',
        unitKind: 'heatPump',
        tier: 'singleSpeed',
        nominalTons: 3,
        ratings: { seer2BtuPerWh: 15.2, hspf2BtuPerWh: 8.1 },
        blower: 'ecm',
        priceLines: [
          equipment('Heat pump, air handler, 15 kW heat kit', 6_200),
          labour('Two people, one day and a half', 24),
          part('Line set, stand, wiring', 560),
          permit(),
          tax(0.07),
        ],
        rebates: [
          {
            label: 'Utility heat pump rebate (invented)',
            amountUsd: 1_000,
            condition: 'HSPF2 of 8.1 or more; old unit recycled.',
            firstDate: '2026-06-01',
            lastDate: '2027-05-31',
            paidAfterMonths: 2,
          },
        ],
        financing: {
          kind: 'levelLoan',
          rateFracPerYear: 0.0849,
          termMonths: 84,
          downPaymentUsd: 1_500,
          lender: 'Millrace Credit Union (invented)',
        },
      },
    ],
  });
}
