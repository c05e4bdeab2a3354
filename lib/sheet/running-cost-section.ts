import type { EnergyScenario } from '../energy/energy-result';
import { type Estimate, estimate } from '../math/estimate';
import { moneyAxis } from './axis';
import { climateWords } from './climate-words';
import { type Composing, leaveChoice, scenario } from './composing';
import { moneyRangeWords } from './money-words';
import { phrase, plainNumber } from './phrase';
import type { Sheet } from './sheet';

/**
 * What the unit costs to run as it stands, and the part of it that is due to the loss.
 * The total is the comparison's for leaving it; the part due to the loss is as found less healthy, end by end.
 */
export function runningCostSection(c: Composing): Sheet['pageOne']['runningCost'] {
  const { words } = c;
  const total = leaveChoice(c)?.yearlyEnergyUsd ?? scenario(c, 'asFound')?.costUsd;
  const fault = extraCost(scenario(c, 'asFound'), scenario(c, 'healthy'));
  const money = total === undefined ? undefined : moneyRangeWords(words, total);
  const part = faultWords(c, fault);
  return {
    title: phrase(words, 'cost.title'),
    sentences: [
      money === undefined ? phrase(words, 'cost.nowUnknown') : phrase(words, 'cost.now', money.ends),
      part.sentence,
    ],
    bar: {
      axis: moneyAxis(words, highestYearly(c, money?.usd), phrase(words, 'cost.axis')),
      total: money?.usd ?? { low: 0, likely: 0, high: 0 },
      ...(part.usd === undefined ? {} : { faultUsd: part.usd }),
      restWords: phrase(words, part.usd === undefined ? 'cost.barAll' : 'cost.barHealthy'),
      faultWords: phrase(words, 'cost.barFault'),
      rangeWords: phrase(words, 'cost.barRange'),
    },
    basis: phrase(words, c.visit.unit.kind === 'heatPump' ? 'cost.basis' : 'cost.basisCooling', {
      climate: climateWords(words, c.energy.climateName),
      price: plainNumber(words, c.energy.priceUsdPerKwh * 100, 1),
      priceBasis: phrase(words, `basis.${c.energy.priceBasis}`),
    }),
  };
}

/**
 * How much more one scenario costs a year than another, compared at the same loss (mild with mild, severe with severe).
 *
 * @returns low / likely / high [USD a year], negative when it costs less; undefined when a scenario is missing
 * Check: tests/sheet/running-cost-section.test.ts
 */
export function extraCost(
  more: EnergyScenario | undefined,
  less: EnergyScenario | undefined,
): Estimate | undefined {
  if (more === undefined || less === undefined) return undefined;
  const likely = more.likely.costUsd - less.likely.costUsd;
  const ends = [more.mild.costUsd - less.mild.costUsd, likely, more.severe.costUsd - less.severe.costUsd];
  return estimate(Math.min(...ends), likely, Math.max(...ends));
}

function faultWords(c: Composing, fault: Estimate | undefined): { sentence: string; usd?: number } {
  if (fault === undefined) return { sentence: phrase(c.words, 'cost.faultUnknown') };
  const money = moneyRangeWords(c.words, fault);
  if (money.usd.high <= 0) return { sentence: phrase(c.words, 'cost.faultNone') };
  if (money.usd.low > 0 && isLossMeasured(c)) {
    return { sentence: phrase(c.words, 'cost.fault', money.ends), usd: money.usd.likely };
  }
  const above = moneyRangeWords(c.words, {
    low: Math.max(0, fault.low),
    likely: Math.max(0, fault.likely),
    high: fault.high,
  });
  if (above.usd.likely === 0) return { sentence: phrase(c.words, 'cost.faultMaybe', above.ends) };
  return { sentence: phrase(c.words, 'cost.faultLikely', above.ends), usd: above.usd.likely };
}

function isLossMeasured(c: Composing): boolean {
  const { heating, cooling } = c.findings.loss;
  return [heating, cooling].some((loss) => loss !== undefined && loss.basis !== 'assumed');
}

/** All yearly amounts of the sheet share one axis, so that bars can be held against each other. */
function highestYearly(c: Composing, total: Estimate | undefined): number {
  const others = c.comparison.choices.map(
    (choice) => moneyRangeWords(c.words, choice.yearlyEnergyUsd).usd.high,
  );
  return Math.max(total?.high ?? 0, ...others);
}
