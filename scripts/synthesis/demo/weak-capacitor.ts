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

/** A nearly new R-454B unit at 5,400 ft: every pressure is right, but the compressor draws too many amps. */
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
    tariff: { kind: 'flat', energyUsdPerKwh: 0.151, fixedUsdPerMonth: 11 },
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
