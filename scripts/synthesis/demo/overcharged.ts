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
  refrigerant: 'R-32',
  metering: 'txv',
  nominalTons: 2.5,
  seer: 15,
  compressor: 'scroll',
  blower: 'ecm',
  nameplateSubcoolingFd: 10,
  airflowCfmPerTon: 385,
};

/** A two-year-old R-32 unit that somebody topped up by feel: the valve hides it, subcooling does not. */
export function overcharged(): Visit {
  const { run } = synthesise(
    unit,
    { mode: 'cooling', outdoorF: 90, returnF: 76, returnWetBulbF: 65, altitudeFt: 730, lineV: 240 },
    [{ fault: 'overcharge', level: 0.25 }],
    {
      id: 'as-found',
      label: 'as found',
      keep: [...usualReadings, 'returnWetBulbF', ...grilleReadings, 'outdoorUnitW'],
    },
  );
  return inventedVisit({
    id: 'overcharged',
    visitDate: '2026-07-09',
    technician: 'Idris Vantongeren',
    site: {
      customer: 'Philippa Quillon',
      street: '27 Tannery Row',
      town: 'Mossgate',
      stateCode: 'NC',
      altitudeFt: 730,
      climate: { kind: 'city', city: 'charlotte-nc' },
      stayYears: 7,
      floorAreaFt2: 1350,
      coolingSetpointF: 75,
      otherHeat: true,
    },
    unit: {
      kind: 'airConditioner',
      nominalTons: 2.5,
      refrigerant: 'R-32',
      metering: 'txv',
      manufactureYear: 2024,
      ratings: { seer2BtuPerWh: 14.3, eer2BtuPerWh: 11.7 },
      nameplateSubcoolingFd: 10,
      ratedLoadA: 12.4,
      ratedV: 230,
      blower: 'ecm',
    },
    runs: [run],
    observations: [{ id: 'refrigerantAddedBefore', note: 'Another firm added "a little" in May.' }],
    suspectedCause: { cause: 'overcharge', note: 'Subcooling twice the plate, superheat ordinary.' },
    tariff: { kind: 'flat', energyUsdPerKwh: 0.131, fixedUsdPerMonth: 14 },
    choices: [
      leave,
      {
        id: 'weigh-in',
        kind: 'repair',
        name: 'Recover and weigh in the right charge',
        actions: ['filterDrierAndRecharge'],
        addresses: 'overcharge',
        priceLines: [
          labour('Recover, fit drier, evacuate, weigh in', 2.5),
          part('Filter-drier', prices.drierUsd),
          refrigerant('R-32 (on top of what is recovered)', 0.5, prices.r32UsdPerLb),
          tax(0.0725),
        ],
      },
      {
        id: 'new-air-conditioner',
        kind: 'replace',
        name: 'New 2.5-ton air conditioner',
        unitKind: 'airConditioner',
        tier: 'singleSpeed',
        nominalTons: 2.5,
        ratings: { seer2BtuPerWh: 15.2, eer2BtuPerWh: 12 },
        priceLines: [
          equipment('Outdoor unit and indoor coil', 4_300),
          labour('Two people, one day', 14),
          part('Line set, pad, wiring', 410),
          permit(),
          tax(0.0725),
        ],
        financing: {
          kind: 'levelLoan',
          rateFracPerYear: 0.0949,
          termMonths: 60,
          lender: 'Millrace Credit Union (invented)',
        },
      },
    ],
  });
}
