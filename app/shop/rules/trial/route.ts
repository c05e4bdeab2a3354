import type { Trial } from '@/components/shop/trial';
import { t } from '@/components/words/shop-words';
import { applyRules, type RuleFacts } from '@/lib/finance/shop-rules/apply-rules';
import { rulesOn } from '@/lib/finance/shop-rules/default-rules';
import { type Flip, tryRules } from '@/lib/finance/shop-rules/try-rules';
import financeWords from '@/lib/finance/wording/en.json';
import { ShopRuleValues } from '@/lib/visit/shop-rules';
import { say } from '@/lib/visit/wording';
import { cameFromHere } from '../../../same-origin';
import { dollarsAbout } from '../../dollars-about';
import { loadShop } from '../../load-shop';
import { type PastVisit, pastVisits } from '../../past-visits';
import { todayHere } from '../../today';

/** Tries thresholds on all stored visits against those in force today; nothing is kept. */
export async function POST(request: Request): Promise<Response> {
  if (!cameFromHere(request)) return Response.json({ error: t('save.foreign') }, { status: 403 });
  const read = ShopRuleValues.safeParse(await request.json().catch(() => undefined));
  if (!read.success) return Response.json({ error: t('shop.refused.unreadable') }, { status: 422 });
  const { shop } = await loadShop();
  return Response.json(trialOf(await pastVisits(), rulesOn(shop.rules, todayHere()), read.data));
}

function trialOf(past: readonly PastVisit[], before: ShopRuleValues, after: ShopRuleValues): Trial {
  const judged = past.flatMap(({ summary, facts }) =>
    facts === undefined ? [] : [{ summary, visitId: summary.id, facts: facts.rules }],
  );
  const tried = tryRules(judged, before, after);
  return {
    visits: tried.visits,
    leftOut: past.length - tried.visits,
    flips: tried.flips.flatMap((flip) => {
      const visit = judged.find((one) => one.visitId === flip.visitId);
      return visit === undefined ? [] : [flipRow(flip, visit, after)];
    }),
    before: dollarsAbout(tried.meanCostBeforeUsd),
    after: dollarsAbout(tried.meanCostAfterUsd),
  };
}

function flipRow(
  { visitId, fromId, toId, costsUsd }: Flip,
  { summary, facts }: { readonly summary: PastVisit['summary']; readonly facts: RuleFacts },
  rules: ShopRuleValues,
): Trial['flips'][number] {
  const nameOf = (id: string) => facts.comparison.choices.find((c) => c.id === id)?.name ?? id;
  const { heldBack, reason } = applyRules(facts, rules);
  // What holds the former advice back says more than what the new one has in its favour.
  const why = heldBack.find((held) => held.choiceId === fromId)?.why ?? reason;
  const amount = dollarsAbout(Math.abs(costsUsd));
  return {
    id: visitId,
    name: summary.title.customer ?? t('visit.unnamed'),
    ...(summary.title.visitDate === undefined ? {} : { date: summary.title.visitDate }),
    from: nameOf(fromId),
    to: nameOf(toId),
    costs: t(costsUsd >= 0 ? 'shop.rules.dearer' : 'shop.rules.cheaper', { amount }),
    why: say(financeWords, why),
  };
}
