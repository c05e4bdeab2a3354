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
  kind: 'airConditioner',
  refrigerant: 'R-410A',
  metering: 'fixedOrifice',
  nominalTons: 3.5,
  seer: 14,
  compressor: 'scroll',
  blower: 'psc',
  airflowCfmPerTon: 375,
};

/** A nine-year-old air conditioner that has leaked a good quarter of its charge at a flare. */
export function lowCharge(): Visit {
  const { run } = synthesise(
    unit,
    { mode: 'cooling', outdoorF: 97, returnF: 79, returnWetBulbF: 63, altitudeFt: 1100, lineV: 239 },
    [{ fault: 'lowCharge', level: 0.31 }],
    {
      id: 'as-found',
      label: 'as found',
      keep: [...usualReadings, 'returnWetBulbF', 'supplyWetBulbF', 'outdoorUnitW', ...grilleReadings],
    },
  );
  return inventedVisit({
    id: 'low-charge',
    visitDate: '2026-07-14',
    technician: 'Idris Vantongeren',
    site: {
      customer: 'The Pellworth household',
      street: '402 Saltbush Court',
      town: 'Copperfen Wells',
      stateCode: 'AZ',
      altitudeFt: 1100,
      climate: { kind: 'city', city: 'phoenix-az' },
      stayYears: 12,
      coolingSetpointF: 75,
      otherHeat: true,
    },
    unit: {
      kind: 'airConditioner',
      nominalTons: 3.5,
      refrigerant: 'R-410A',
      metering: 'fixedOrifice',
      manufactureYear: 2017,
      ratings: { seerBtuPerWh: 14, eerBtuPerWh: 11.8, cooling95Btuh: 42_000 },
      ratedLoadA: 17.9,
      ratedV: 230,
      blower: 'psc',
    },
    runs: [run],
    observations: [
      { id: 'oilStain', note: 'Oil at the liquid flare of the indoor coil.' },
      { id: 'neverKeepsUp', note: 'House reaches 80 °F by evening.' },
    ],
    suspectedCause: { cause: 'lowCharge', note: 'No subcooling, high superheat, oil at a flare.' },
    tariff: { kind: 'flat', energyUsdPerKwh: 0.172, fixedUsdPerMonth: 13 },
    choices: [
      leave,
      {
        id: 'leak-recharge',
        kind: 'repair',
        name: 'Mend the leak and recharge',
        actions: ['leakRepairAndRecharge'],
        addresses: 'lowCharge',
        priceLines: [
          labour('Remake flare, pressure test, evacuate, weigh in', 2.5),
          part('Flare nut, nitrogen, filter-drier', 96),
          refrigerant('R-410A', 2.25, prices.r410aUsdPerLb),
          tax(0.086),
        ],
      },
      {
        id: 'new-air-conditioner',
        kind: 'replace',
        name: 'New 3.5-ton air conditioner',
        unitKind: 'airConditioner',
        tier: 'singleSpeed',
        nominalTons: 3.5,
        ratings: { seer2BtuPerWh: 15.2, eer2BtuPerWh: 12 },
        priceLines: [
          equipment('Outdoor unit and indoor coil', 5_100),
          labour('Two people, one day', 16),
          part('Line set, pad, wiring', 460),
          permit(),
          tax(0.086),
        ],
        rebates: [
          {
            label: 'Utility cooling rebate (invented)',
            amountUsd: 300,
            condition: 'SEER2 of 15.2 or more.',
            firstDate: '2026-03-01',
            lastDate: '2026-10-31',
            paidAfterMonths: 2,
          },
        ],
        financing: {
          kind: 'levelLoan',
          rateFracPerYear: 0.0999,
          termMonths: 60,
          lender: 'Millrace Credit Union (invented)',
        },
      },
    ],
  });
}
