import type { Choice } from '../visit/choice';
import { usdOf } from './money';
import type { FallbackUnit, MoneyDraw } from './money-draw';
import type { PricedChoice } from './priced-choice';

/**
 * What replaces the unit under a choice: for "repair now, replace later" the replacement it names, if that has a
 * price; else, as everywhere, the fallback unit.
 *
 * @param choices   all priced choices
 * @param fallback  what replaces a failed unit where nothing else is said
 * Check: tests/finance/successor.test.ts
 */
export function successorOf(
  choice: Choice,
  choices: readonly PricedChoice[],
  fallback: FallbackUnit,
): FallbackUnit {
  if (choice.kind !== 'repairThenReplace' || choice.replaceWith === undefined) return fallback;
  const named = choices.find(
    (c) => c.choice.id === choice.replaceWith && c.choice.kind === 'replace' && c.price.gt(0),
  );
  return named === undefined ? fallback : { quotedUsd: usdOf(named.price), scenarioId: named.choice.id };
}

/**
 * Year at whose end the unit is replaced as planned; none when the stay ends first.
 *
 * @param stayYears  whole years
 * Check: tests/finance/successor.test.ts
 */
export function plannedYearOf(choice: Choice, stayYears: number): number | undefined {
  return choice.kind === 'repairThenReplace' && choice.replaceAfterYears < stayYears
    ? choice.replaceAfterYears
    : undefined;
}

/** The draw as it stands for a choice whose successor has a price of its own. Check: tests/finance/successor.test.ts */
export function drawFor(draw: MoneyDraw, successor: FallbackUnit): MoneyDraw {
  return successor.quotedUsd === undefined ? draw : { ...draw, replacementUsd: successor.quotedUsd };
}
