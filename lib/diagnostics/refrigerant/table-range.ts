import type { RefrigerantName } from '../../visit/refrigerant-names';
import ranges from './data/table-ranges.json';
import type { Eos } from './helmholtz';
import { fFromK, PA_PER_PSI } from './ip-units';
import { saturationEndPa, saturationK, saturationPa } from './saturation';
import type { PropertyRange } from './table-format';

/**
 * Range of the property functions of one refrigerant, worked out from its equation of state.
 *
 * @param name  refrigerant
 * @param eos   its equation of state
 * @returns range [psia, F], pressures rounded inwards to 0.1 psi and temperature to whole degrees
 * Source: data/table-ranges.json
 * Check: tests/diagnostics/refrigerant/properties.test.ts
 */
export function propertyRange(name: RefrigerantName, eos: Eos): PropertyRange {
  const lowPsia = ranges.lowPsia.value;
  const highK: Partial<Record<RefrigerantName, number>> = ranges.highSaturationK.value;
  const fitEndK = highK[name];
  const highPa =
    fitEndK === undefined
      ? ranges.highFracOfCritical.value * saturationEndPa(eos)
      : saturationPa(eos, fitEndK, 'dew');
  const lowestBubbleF = fFromK(saturationK(eos, lowPsia * PA_PER_PSI, 'bubble'));
  return {
    lowPsia,
    highPsia: Math.floor((10 * highPa) / PA_PER_PSI) / 10,
    vapourHighF: ranges.vapourHighF.value[name],
    liquidLowF: Math.ceil(lowestBubbleF - ranges.liquidBelowLowestBubbleFd.value),
  };
}
