import { t, tn } from '@/components/words/shop-words';
import { isFew } from '@/lib/finance/outcomes/success-rate';
import { fittedRule, type SimpleRule } from '@/lib/finance/shop-rules/try-rules';
import { dollarsAbout } from './dollars-about';
import { pastVisits } from './past-visits';

/** The simple rule that comes closest to the full analysis over past visits, and what following it costs. */
export async function fittedWords(): Promise<string[]> {
  const past = await pastVisits();
  const fitted = fittedRule(
    past.flatMap(({ summary, facts }) =>
      facts === undefined ? [] : [{ visitId: summary.id, facts: facts.rules }],
    ),
  );
  if (fitted === undefined) return [t('shop.wall.noFit')];
  return [
    ruleWords(fitted.rule),
    t('shop.wall.regret', { amount: dollarsAbout(fitted.meanRegretUsd) }),
    t('shop.wall.others', {
      age: dollarsAbout(fitted.ageTimesPriceRegretUsd),
      half: dollarsAbout(fitted.halfPriceRegretUsd),
    }),
    tn(isFew(fitted.visits) ? 'shop.wall.fewVisits' : 'shop.wall.visits', fitted.visits),
  ];
}

/** Beyond the oldest unit of the grid age sets no limit. */
const ANY_AGE_YEARS = 60;

function ruleWords({ oldestYears, largestShareFrac }: SimpleRule): string {
  const percent = Math.round(100 * largestShareFrac);
  if (percent === 0) return t('shop.wall.neverRepair');
  return oldestYears >= ANY_AGE_YEARS
    ? t('shop.wall.ruleAnyAge', { percent })
    : t('shop.wall.rule', { years: oldestYears, percent });
}
