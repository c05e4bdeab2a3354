import type { Metadata } from 'next';
import { buildFieldBook } from '@/components/draft/build-field-book';
import { numberWords } from '@/components/shop/check-entry';
import { RulesEditor } from '@/components/shop/rules-editor';
import { ShopFrame } from '@/components/shop/shop-frame';
import { t } from '@/components/words/shop-words';
import { rulesOn } from '@/lib/finance/shop-rules/default-rules';
import { ruleKeys, ruleSteps, ShopRuleValues } from '@/lib/visit/shop-rules';
import { store } from '../../open-store-once';
import { type Search, textsOf } from '../address-texts';
import { loadShop } from '../load-shop';
import { todayHere } from '../today';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: t('shop.rules.title') };

/** When the company recommends what. */
export default async function RulesPage(props: { searchParams: Search }) {
  const { shop, revisions } = await loadShop();
  const today = todayHere();
  const book = buildFieldBook(ShopRuleValues);
  const inForce = rulesOn(shop.rules, today);
  const rows = ruleKeys.map((key) => {
    const value = inForce[key];
    const entry = book[key];
    const history = ruleSteps(shop.rules, key).map((step) => ({
      fromDate: step.fromDate,
      setBy: step.setBy,
      why: step.why,
      words:
        step.value === undefined || entry === undefined ? t('shop.noRule') : numberWords(step.value, entry),
    }));
    return { key, history, ...(value === undefined ? {} : { value }) };
  });
  const visits = await (await store()).listVisits();
  const texts = await textsOf(props.searchParams);
  const known = new Set<string>([...ruleKeys, 'try']);
  return (
    <ShopFrame here="rules" title={t('shop.rules.title')} what={t('shop.rules.what')}>
      {shop.rules.invented === true ? <p className="note-plain">{t('shop.rules.invented')}</p> : null}
      <RulesEditor
        rows={rows}
        book={book}
        revision={revisions.rules}
        today={today}
        visitIds={visits.map((visit) => visit.id)}
        address={Object.fromEntries(Object.entries(texts).filter(([key]) => known.has(key)))}
      />
    </ShopFrame>
  );
}
