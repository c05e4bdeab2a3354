import type { Visit } from '../../../lib/visit/visit';
import { synthesise } from '../synthesise';
import type { UnitSpec } from '../unit-spec';
import {
  equipment,
  heatRiseReadings,
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
  electricHeatKw: 10,
};

/** An old R-22 heat pump whose heating orifice is nearly blocked: hot discharge line, starved outdoor coil. */
export function restrictedOrifice(): Visit {
  const { run } = synthesise(
    unit,
    { mode: 'heating', outdoorF: 46, returnF: 69, altitudeFt: 1250, lineV: 237 },
    [{ fault: 'meteringRestriction', level: 0.27 }],
    {
      id: 'as-found',
      label: 'as found',
      keep: [...usualReadings, 'liquidBeforeMeteringF', ...heatRiseReadings, 'stripKw', 'stripA', 'stripV'],
    },
  );
  return inventedVisit({
    id: 'restricted-orifice',
    visitDate: '2026-11-05',
    technician: 'Wren Castellane',
    site: {
      customer: 'Odette Farrowby',
      street: '18 Quillwood Lane',
      town: 'Brindle Hollow',
      stateCode: 'AR',
      altitudeFt: 1250,
      climate: { kind: 'city', city: 'fayetteville-ar' },
      stayYears: 9,
      floorAreaFt2: 1650,
      heatingSetpointF: 69,
      coolingSetpointF: 76,
    },
    unit: {
      kind: 'heatPump',
      nominalTons: 3,
      refrigerant: 'R-22',
      metering: 'fixedOrifice',
      manufactureYear: 2005,
      ratings: { seerBtuPerWh: 10, hspfBtuPerWh: 7.6, heating47Btuh: 37_000 },
      ratedLoadA: 18.6,
      ratedV: 230,
      electricHeatKw: 10,
      blower: 'psc',
    },
    runs: [run],
    observations: [
      { id: 'noFilterDrier', note: 'No drier in the liquid line, indoors or out.' },
      { id: 'refrigerantAddedBefore', note: 'Tag from 2019: 1 lb added.' },
      { id: 'neverKeepsUp', note: 'Slow to warm; auxiliary heat comes on even on mild mornings.' },
    ],
    suspectedCause: {
      cause: 'meteringRestriction',
      note: 'Liquid reaches the outdoor orifice warm, suction is starved, discharge line is hot.',
    },
    tariff: { kind: 'flat', energyUsdPerKwh: 0.149, fixedUsdPerMonth: 15 },
    choices: [
      leave,
      {
        id: 'drier-recharge',
        kind: 'repair',
        name: 'New drier and fresh charge',
        actions: ['filterDrierAndRecharge'],
        priceLines: [
          labour('Recover, fit drier, evacuate, weigh in', 3),
          part('Bi-flow filter-drier and supplies', prices.drierUsd),
          refrigerant('R-22 (reclaimed, on top of what is recovered)', 1, prices.r22UsdPerLb),
          tax(0.0825),
        ],
        note: 'Helps if the dirt sits in the line; leaves the orifice as it is.',
      },
      {
        id: 'orifice-drier',
        kind: 'repair',
        name: 'Clean the orifice, new drier',
        actions: ['meteringOrificeCleaning', 'filterDrierAndRecharge'],
        addresses: 'meteringRestriction',
        priceLines: [
          labour('Recover, clean orifice, fit drier, evacuate, weigh in', 4),
          part('Orifice and seals', prices.pistonUsd),
          part('Bi-flow filter-drier and supplies', prices.drierUsd),
          refrigerant('R-22 (reclaimed, on top of what is recovered)', 1, prices.r22UsdPerLb),
          tax(0.0825),
        ],
      },
      {
        id: 'new-heat-pump',
        kind: 'replace',
        name: 'New 3-ton heat pump and air handler',
        unitKind: 'heatPump',
        tier: 'singleSpeed',
        nominalTons: 3,
        ratings: { seer2BtuPerWh: 15.2, hspf2BtuPerWh: 7.8 },
        blower: 'ecm',
        priceLines: [
          equipment('Heat pump, air handler, 10 kW heat kit', 5_950),
          labour('Two people, one day and a half', 24),
          part('Line set, pad, wiring', 520),
          permit(),
          tax(0.0825),
        ],
        rebates: [
          {
            label: 'Electric co-op heat pump rebate (invented)',
            amountUsd: 500,
            condition: 'Replaces an older heat pump; claim within 90 days.',
            firstDate: '2026-01-01',
            lastDate: '2026-12-31',
            paidAfterMonths: 3,
          },
        ],
        financing: {
          kind: 'levelLoan',
          rateFracPerYear: 0.0899,
          termMonths: 84,
          downPaymentUsd: 1_000,
          feeUsd: 95,
          lender: 'Millrace Credit Union (invented)',
        },
      },
    ],
  });
}
