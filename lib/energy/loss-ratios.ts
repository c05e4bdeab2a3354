import type { Findings } from '../diagnostics/findings';

/** Ratios to the healthy unit; 1 = nothing lost. */
export type LossRatios = {
  readonly coolingCapacity: number;
  readonly coolingPower: number;
  readonly heatingCapacity: number;
  readonly heatingPower: number;
};

export const noLoss: LossRatios = {
  coolingCapacity: 1,
  coolingPower: 1,
  heatingCapacity: 1,
  heatingPower: 1,
};

/** Loss at both ends of its range: mild = most capacity and least power, severe = the reverse. */
export type LossEnds = {
  readonly mild: LossRatios;
  readonly likely: LossRatios;
  readonly severe: LossRatios;
};

/**
 * Both ends and the middle of the loss, as ratios to the healthy unit. A mode without a loss counts as healthy.
 *
 * @param loss  from the findings
 * Check: tests/energy/loss-ratios.test.ts
 */
export function lossEnds(loss: Findings['loss']): LossEnds {
  const { cooling, heating } = loss;
  const at = (capacity: 'low' | 'likely' | 'high', power: 'low' | 'likely' | 'high'): LossRatios => ({
    coolingCapacity: cooling?.capacityRatioToHealthy[capacity] ?? 1,
    coolingPower: cooling?.powerRatioToHealthy[power] ?? 1,
    heatingCapacity: heating?.capacityRatioToHealthy[capacity] ?? 1,
    heatingPower: heating?.powerRatioToHealthy[power] ?? 1,
  });
  return { mild: at('high', 'low'), likely: at('likely', 'likely'), severe: at('low', 'high') };
}

/**
 * Loss left after a share of the log loss is given back; 1 gives the healthy unit back exactly.
 *
 * @param ratios  loss as found
 * @param share   0..1
 * Check: tests/energy/loss-ratios.test.ts
 */
export function recovered(ratios: LossRatios, share: number): LossRatios {
  const left = 1 - share;
  return {
    coolingCapacity: ratios.coolingCapacity ** left,
    coolingPower: ratios.coolingPower ** left,
    heatingCapacity: ratios.heatingCapacity ** left,
    heatingPower: ratios.heatingPower ** left,
  };
}
