import type { Outcomes, RateRow } from '@/components/shop/outcomes';
import { t, tCode, tn } from '@/components/words/shop-words';
import {
  type MeasuredRepair,
  promisesKept,
  type SuccessRate,
  successRates,
  verdictOf,
} from '@/lib/finance/outcomes/success-rate';
import type { Estimate } from '@/lib/math/estimate';
import { savingWords } from '@/lib/sheet/money-words';
import { wordsOf } from '@/lib/sheet/phrase';
import { resolveAssumption } from '@/lib/visit/assumption';
import { shopAssumptionOn } from '@/lib/visit/shop-defaults';
import { dollarsAbout } from '../dollars-about';
import { loadShop } from '../load-shop';
import { type PastVisit, pastVisits } from '../past-visits';
import { todayHere } from '../today';

export const dynamic = 'force-dynamic';

const REPAIR_SUCCESS = 'repairSuccessFrac';

/** Promised against measured after repairs, and how often repairs work. */
export async function GET(): Promise<Response> {
  const past = await pastVisits();
  const { shop } = await loadShop();
  const now =
    shopAssumptionOn(shop.defaults, REPAIR_SUCCESS, todayHere())?.values ??
    resolveAssumption([], REPAIR_SUCCESS);
  return Response.json(outcomesOf(past, now), { headers: { 'cache-control': 'no-store' } });
}

function outcomesOf(past: readonly PastVisit[], now: Estimate): Outcomes {
  const found = past.flatMap(({ summary, facts }) =>
    facts?.repair === undefined ? [] : [{ summary, repair: { visitId: summary.id, ...facts.repair } }],
  );
  const repairs = found.map((one) => one.repair);
  const { all, byCause } = successRates(repairs);
  const kept = promisesKept(repairs);
  return {
    repairs: found.map(({ summary, repair }) => ({
      id: summary.id,
      name: summary.title.customer ?? t('visit.unnamed'),
      ...(summary.title.visitDate === undefined ? {} : { date: summary.title.visitDate }),
      repair: repair.repairName ?? t('shop.outcomes.unnamed'),
      cause: causeWords(repair),
      promised:
        repair.promisedUsd === undefined
          ? t('shop.outcomes.noPromise')
          : savingWords(wordsOf('en'), repair.promisedUsd),
      measured: savingWords(wordsOf('en'), repair.measuredUsd),
      verdict: tCode(`shop.outcomes.verdict.${verdictOf(repair)}`),
    })),
    summary:
      kept === undefined
        ? []
        : [
            tn('shop.outcomes.both', kept.count),
            t('shop.outcomes.means', {
              promised: dollarsAbout(kept.meanPromisedUsd),
              measured: dollarsAbout(kept.meanMeasuredUsd),
              inside: kept.insideCount,
              n: kept.count,
            }),
          ],
    rates: [...byCause.map(rateRow), ...(all === undefined ? [] : [rateRow(all)])],
    ...(all === undefined ? {} : { offer: offerOf(all, now) }),
  };
}

function causeWords({ cause }: MeasuredRepair): string {
  return cause === undefined ? t('shop.outcomes.noCause') : tCode(`option.cause.${cause}`);
}

function rateRow(rate: SuccessRate): RateRow {
  return {
    cause: rate.cause === undefined ? t('shop.outcomes.allCauses') : tCode(`option.cause.${rate.cause}`),
    counted: t('shop.outcomes.counted', { worked: rate.worked, judged: rate.judged }),
    rate: percentRange(rate.frac),
    few: rate.few,
  };
}

/** In whole percent: a count of repairs supports no more. */
function offerOf({ frac, judged, worked }: SuccessRate, now: Estimate): NonNullable<Outcomes['offer']> {
  const whole = (x: number) => Math.round(100 * x) / 100;
  const offer = { low: whole(frac.low), likely: whole(frac.likely), high: whole(frac.high) };
  return {
    ...offer,
    words: percentRange(offer),
    now: percentRange(now),
    source: t('shop.outcomes.source', { worked, judged }),
  };
}

function percentRange({ low, likely, high }: Estimate): string {
  const percent = (x: number) => Math.round(100 * x);
  return t('shop.outcomes.rate', { likely: percent(likely), low: percent(low), high: percent(high) });
}
