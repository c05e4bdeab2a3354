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
  metering: 'txv',
  nominalTons: 3,
  seer: 12,
  compressor: 'reciprocating',
  blower: 'psc',
  electricHeatKw: 15,
  airflowCfmPerTon: 370,
};

/** A worn-out compressor in a cold place, and people who mean to stay. */
export function endOfLife(): Visit {
  const { run } = synthesise(
    unit,
    { mode: 'heating', outdoorF: 37, returnF: 69, altitudeFt: 330, lineV: 238 },
    [{ fault: 'compressorValvesLeaking', level: 0.42 }],
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
      town: 'Wexcombe Notch',
      stateCode: 'VT',
      altitudeFt: 330,
      climate: { kind: 'city', city: 'burlington-vt' },
      stayYears: 15,
      floorAreaFt2: 1900,
      heatingSetpointF: 69,
      coolingSetpointF: 75,
    },
    unit: {
      kind: 'heatPump',
      nominalTons: 3,
      refrigerant: 'R-22',
      metering: 'txv',
      manufactureYear: 2004,
      ratings: { seerBtuPerWh: 12, hspfBtuPerWh: 8, heating47Btuh: 36_400 },
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
    tariff: { kind: 'flat', energyUsdPerKwh: 0.218, fixedUsdPerMonth: 19 },
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
          tax(0.06),
        ],
      },
      {
        id: 'new-heat-pump',
        kind: 'replace',
        name: 'New cold-climate heat pump',
        unitKind: 'heatPump',
        tier: 'variableSpeed',
        nominalTons: 3,
        ratings: {
          seer2BtuPerWh: 18,
          hspf2BtuPerWh: 9.5,
          heating47Btuh: 37_000,
          heating17Btuh: 30_500,
        },
        blower: 'ecm',
        priceLines: [
          equipment('Variable-speed heat pump, air handler, 15 kW heat kit', 6_980),
          labour('Two people, one day and a half', 24),
          part('Line set, stand, wiring', 560),
          permit(),
          tax(0.06),
        ],
        rebates: [
          {
            label: 'Utility heat pump rebate (invented)',
            amountUsd: 2_000,
            condition: 'HSPF2 of 8.5 or more; old unit recycled.',
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
