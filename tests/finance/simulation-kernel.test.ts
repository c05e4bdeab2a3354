import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type ComparisonModel,
  capitalTodayUsd,
  comparisonModel,
  outcomeOf,
} from '@/lib/finance/comparison-model';
import { usdOf } from '@/lib/finance/money';
import type { PricedChoice } from '@/lib/finance/priced-choice';
import { type KernelDraw, type KernelUnit, simulationKernel } from '@/lib/finance/simulation-kernel';
import { plannedYearOf } from '@/lib/finance/successor';
import { worldsOf } from '@/lib/finance/worlds';
import { anyInput } from './arbitraries';

function likelyKernelDraw({ likely }: ComparisonModel): KernelDraw {
  const { values } = likely;
  return {
    discountFrac: values.discountFracPerYear,
    inflationFrac: values.inflationFracPerYear,
    escalationFrac: values.electricityEscalationFracPerYear,
    shape: values.survivalShape,
    medianLifeYears: values.medianLifeYears,
    premiumFrac: values.outOfHoursPremiumFrac,
    upkeepUsd: values.upkeepUsdPerYear,
    smallRepairsOldUsd: values.smallRepairsOldUsdPerYear,
    smallRepairsNewUsd: values.smallRepairsNewUsdPerYear,
    valueLeftFrac: likely.valueLeftFrac,
  };
}

/** The likely total by the kernel, world by world. */
function byKernel(model: ComparisonModel, priced: PricedChoice): number {
  const { likely } = model;
  const { choice } = priced;
  const kernel = simulationKernel(model.basis.stayYears, model.basis.timing === 'midYear', 10);
  kernel.start(likelyKernelDraw(model));
  kernel.succeed(likely.replacementUsd, likely.energyUsd[model.fallback.scenarioId] ?? Number.NaN);
  const own = capitalTodayUsd(outcomeOf(model, priced, likely).flows, likely.values.discountFracPerYear);
  const plannedYear = plannedYearOf(choice, model.basis.stayYears) ?? 0;
  const totals = worldsOf(choice, likely, model.chances).map((world) => {
    const { ageYears, hazardRatio, energyUsd, bought } = world;
    const leavesUsd = bought ? usdOf(priced.netPrice) : 0;
    const unit: KernelUnit = { ageYears, hazardRatio, energyUsd, leavesUsd, plannedYear };
    return world.weightFrac * kernel.runningTodayUsd(unit);
  });
  return totals.reduce((sum, usd) => sum + usd, own);
}

test('identity: renewal in the kernel and recursion on the year and age give one total, for any visit', () => {
  fc.assert(
    fc.property(anyInput, (input) => {
      const model = comparisonModel(input);
      const off = model.choices.map((c) =>
        Math.abs(byKernel(model, c) - outcomeOf(model, c, model.likely).totalTodayUsd),
      );
      expect(off.length).toBeGreaterThan(0);
      // totals reach tens of thousands: a millionth of a cent is what is left of sixteen digits
      expect(Math.max(...off)).toBeLessThan(1e-6);
    }),
    { numRuns: 150 },
  );
});

test('property: a kernel can be started again and again', () => {
  const kernel = simulationKernel(12, false, 10);
  const draw: KernelDraw = {
    discountFrac: 0.05,
    inflationFrac: 0.025,
    escalationFrac: 0.025,
    shape: 3,
    medianLifeYears: 18,
    premiumFrac: 0.1,
    upkeepUsd: 150,
    smallRepairsOldUsd: 140,
    smallRepairsNewUsd: 40,
    valueLeftFrac: 1,
  };
  const unit: KernelUnit = { ageYears: 14, hazardRatio: 1.5, energyUsd: 1800, leavesUsd: 0, plannedYear: 0 };
  kernel.start(draw);
  kernel.succeed(9000, 1100);
  const first = kernel.runningTodayUsd(unit);
  kernel.succeed(20_000, 1100);
  expect(kernel.runningTodayUsd(unit)).toBeGreaterThan(first);
  kernel.start({ ...draw, shape: 2 });
  kernel.succeed(9000, 1100);
  expect(kernel.runningTodayUsd(unit)).not.toBe(first);
  kernel.start(draw);
  kernel.succeed(9000, 1100);
  expect(kernel.runningTodayUsd(unit)).toBe(first);
});
