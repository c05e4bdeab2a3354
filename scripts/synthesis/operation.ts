import { invariant } from '../../lib/math/invariant';
import { airSide, levelOf } from './airflow';
import type { Circuit, Operation, SimulatedUnit } from './circuit';
import { airFromHumidity, airFromWetBulb, barometerPsia } from './moist-air';
import type { Conditions, ImposedFault } from './unit-spec';

const DEFAULT_OUTDOOR_HUMIDITY_FRAC = { cooling: 0.5, heating: 0.7 } as const;
const WINTER_INDOOR_HUMIDITY_FRAC = 0.4;

/** What share of the surface a dirty indoor coil loses, over the airflow it loses. */
const INDOOR_FOULING_OVER_AIRFLOW = 0.6;

/** The unit's circuit in a mode. */
export function circuitOf(unit: SimulatedUnit, mode: Conditions['mode']): Circuit {
  const circuit = mode === 'cooling' ? unit.cooling : unit.heating;
  invariant(circuit !== undefined, 'an air conditioner has no heating mode');
  return circuit;
}

/** Conditions and faults as the circuit feels them. */
export function operationOf(
  unit: SimulatedUnit,
  conditions: Conditions,
  faults: readonly ImposedFault[],
): Operation {
  const circuit = circuitOf(unit, conditions.mode);
  const psia = barometerPsia(conditions.altitudeFt ?? 0);
  const level = (fault: ImposedFault['fault']): number => levelOf(faults, fault);
  const humidity = conditions.outdoorHumidityFrac ?? DEFAULT_OUTDOOR_HUMIDITY_FRAC[conditions.mode];
  return {
    outdoorAir: airFromHumidity(conditions.outdoorF, humidity, psia),
    returnAir:
      conditions.returnWetBulbF === undefined
        ? airFromHumidity(conditions.returnF, WINTER_INDOOR_HUMIDITY_FRAC, psia)
        : airFromWetBulb(conditions.returnF, conditions.returnWetBulbF, psia),
    indoorCfm: airSide(unit.spec, unit.indoorCfm, faults).cfm,
    outdoorCfm: unit.outdoorCfm * (1 - level('outdoorCoilFouled')),
    indoorCleanFrac: 1 - INDOOR_FOULING_OVER_AIRFLOW * level('dirtyIndoorCoil'),
    outdoorCleanFrac: 1 - level('outdoorCoilFouled'),
    chargeFrac: 1 - level('lowCharge') + level('overcharge'),
    blockedFrac: level('meteringRestriction'),
    liquidDropPsi: level('liquidLineRestriction') * circuit.ratedPressureDifferencePsi,
    airInRefrigerantPsi: level('nonCondensables') * unit.fluid.dewPsia(circuit.ratedUnknowns.condensingF),
    valveLeakFrac: level('compressorValvesLeaking'),
    reversingLeakFrac: level('reversingValveLeaking'),
    capDeficitFrac: level('runCapacitorWeak'),
  };
}
