import { dateWords } from '@/components/format/time-words';
import { t } from '@/components/words/shop-words';
import type { Assumption } from '@/lib/visit/assumption';
import { assumptionsOn } from '@/lib/visit/shop-defaults';
import { loadShop } from './load-shop';

/** What a new visit of a date assumes by the shop's own settings; each says in its source who set it and when. */
export async function assumptionsFor(date: string): Promise<readonly Assumption[]> {
  const { shop } = await loadShop();
  return assumptionsOn(shop.defaults, date, ({ setBy, fromDate }, source) =>
    t('shop.defaults.setByShop', { who: setBy, date: dateWords(fromDate), source }),
  );
}
