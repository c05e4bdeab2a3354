import type { Visit } from '../../../lib/visit/visit';
import { synthesise } from '../synthesise';
import type { UnitSpec } from '../unit-spec';
import { equipment, inventedVisit, labour, leave, part, permit, prices, refrigerant, tax } from './shop';

const unit: UnitSpec = {
  kind: 'airConditioner',
  refrigerant: 'R-410A',
  metering: 'fixedOrifice',
  nominalTons: 2.5,
  seer: 13,
  compressor: 'scroll',
  blower: 'psc',
};

/** Two pressures and an amp reading before a storm broke: enough to be worried, not enough to know. */
export function fewReadings(): Visit {
  const { run } = synthesise(
    unit,
    { mode: 'cooling', outdoorF: 87, returnF: 77, returnWetBulbF: 65, altitudeFt: 20 },
    [{ fault: 'lowCharge', level: 0.17 }],
    { id: 'as-found', label: 'before the storm', keep: ['suctionPsig', 'dischargePsig', 'compressorA'] },
  );
  return inventedVisit({
    id: 'few-readings',
    visitDate: '2026-07-22',
    technician: 'Wren Castellane',
    site: {
      customer: 'Evander Brightmoor',
      street: '5 Tidewrack Street',
      town: 'Saltmarsh Landing',
      stateCode: 'FL',
      climate: { kind: 'city', city: 'tampa-fl' },
      coolingSetpointF: 76,
      otherHeat: true,
    },
    unit: {
      kind: 'airConditioner',
      nominalTons: 2.5,
      refrigerant: 'R-410A',
    },
    runs: [run],
    observations: [{ id: 'neverKeepsUp', note: 'Owner says it runs all day.' }],
    choices: [
      leave,
      {
        id: 'leak-recharge',
        kind: 'repair',
        name: 'Find and mend a leak, recharge',
        actions: ['leakRepairAndRecharge'],
        addresses: 'lowCharge',
        priceLines: [
          labour('Leak search, repair, evacuate, weigh in', 4),
          part('Supplies and filter-drier', 110),
          refrigerant('R-410A', 2, prices.r410aUsdPerLb),
          tax(0.075),
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
          equipment('Outdoor unit and indoor coil', 4_350),
          labour('Two people, one day', 15),
          part('Line set, pad, wiring', 430),
          permit(),
          tax(0.075),
        ],
      },
    ],
  });
}
