import type { Visit } from '../../../lib/visit/visit';
import { calibrateUnit } from '../calibrate';
import { synthesise } from '../synthesise';
import type { Conditions, UnitSpec } from '../unit-spec';
import {
  equipment,
  heatRiseReadings,
  inventedVisit,
  labour,
  leave,
  part,
  permit,
  staticReadings,
  tax,
  usualReadings,
} from './shop';

const spec: UnitSpec = {
  kind: 'heatPump',
  refrigerant: 'R-410A',
  metering: 'txv',
  nominalTons: 2.5,
  seer: 14,
  compressor: 'scroll',
  blower: 'psc',
  electricHeatKw: 7.5,
  externalStaticInWc: 0.48,
};

/** A sound heat pump short of indoor air: six registers were shut. Two runs, before and after opening them. */
export function closedRegisters(): Visit {
  const unit = calibrateUnit(spec);
  const conditions: Conditions = {
    mode: 'heating',
    outdoorF: 41,
    returnF: 70,
    altitudeFt: 150,
    lineV: 241,
  };
  const keep = [...usualReadings, ...heatRiseReadings, ...staticReadings, 'blowerW'] as const;
  const found = synthesise(
    unit,
    conditions,
    [
      { fault: 'closedRegisters', level: 0.3 },
      { fault: 'dirtyFilter', level: 0.08 },
    ],
    { id: 'as-found', label: 'as found', keep },
  );
  const opened = synthesise(unit, { ...conditions, outdoorF: 42 }, [{ fault: 'dirtyFilter', level: 0.05 }], {
    id: 'registers-opened',
    label: 'registers opened',
    keep,
  });
  return inventedVisit({
    id: 'closed-registers',
    visitDate: '2026-11-12',
    technician: 'Wren Castellane',
    site: {
      customer: 'Tobiah and Lin Esterhaze',
      street: '7 Old Ferry Rise',
      town: 'Gannet Cross',
      stateCode: 'MD',
      altitudeFt: 150,
      climate: { kind: 'city', city: 'baltimore-md' },
      stayYears: 9,
      floorAreaFt2: 1450,
      heatingSetpointF: 70,
      coolingSetpointF: 75,
    },
    unit: {
      kind: 'heatPump',
      nominalTons: 2.5,
      refrigerant: 'R-410A',
      metering: 'txv',
      manufactureYear: 2015,
      ratings: { seerBtuPerWh: 14, hspfBtuPerWh: 8.8 },
      ratedLoadA: 14.1,
      ratedV: 230,
      electricHeatKw: 7.5,
      blower: 'psc',
    },
    runs: [found.run, opened.run],
    observations: [
      { id: 'closedRegisters', note: 'Six of eleven shut to "push heat to the front rooms".' },
      { id: 'dirtyFilter', note: 'Grey, not blocked.' },
    ],
    suspectedCause: {
      cause: 'lowIndoorAirflow',
      note: 'Head falls and airflow returns as soon as the registers are open.',
    },
    tariff: { kind: 'flat', energyUsdPerKwh: 0.172, fixedUsdPerMonth: 9.5 },
    choices: [
      leave,
      {
        id: 'open-registers',
        kind: 'repair',
        name: 'Keep the registers open, new filter',
        actions: ['openRegisters'],
        addresses: 'lowIndoorAirflow',
        shownByRun: 'registers-opened',
        priceLines: [labour('Open, balance, explain', 0.5), part('Filter', 14), tax(0.06)],
      },
      {
        id: 'return-duct',
        kind: 'repair',
        name: 'Registers open, second return',
        actions: ['openRegisters', 'blowerService'],
        addresses: 'lowIndoorAirflow',
        priceLines: [
          labour('Cut in a second return, clean blower wheel, balance', 7),
          part('Grille, box, flexible duct, filter', 265),
          tax(0.06),
        ],
      },
      {
        id: 'new-heat-pump',
        kind: 'replace',
        name: 'New 2.5-ton heat pump and air handler',
        unitKind: 'heatPump',
        tier: 'singleSpeed',
        nominalTons: 2.5,
        ratings: { seer2BtuPerWh: 15.2, hspf2BtuPerWh: 8.1 },
        blower: 'ecm',
        priceLines: [
          equipment('Heat pump, air handler, heat kit', 5_600),
          labour('Two people, one day and a half', 22),
          part('Line set, pad, wiring', 490),
          permit(165),
          tax(0.06),
        ],
        financing: {
          kind: 'levelLoan',
          rateFracPerYear: 0.0799,
          termMonths: 84,
          lender: 'Millrace Credit Union (invented)',
        },
      },
    ],
  });
}
