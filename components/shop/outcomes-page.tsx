'use client';

import { dateWords } from '@/components/format/time-words';
import { ScrollBox } from '@/components/results/scroll-box';
import { Titled } from '@/components/results/titled';
import { t } from '@/components/words/shop-words';
import type { Outcomes } from './outcomes';
import { PastProgress } from './past-progress';
import { PutInForce } from './put-in-force';
import { usePast } from './use-past';

async function ask(): Promise<Outcomes> {
  const answer = await fetch('/shop/outcomes.json');
  if (!answer.ok) throw new Error(String(answer.status));
  return (await answer.json()) as Outcomes;
}

/** Promised against measured after repairs, how often repairs work, and that rate as the shop's new default. */
export function OutcomesPage(props: { readonly visitIds: readonly string[]; readonly revision: number }) {
  return (
    <PastProgress state={usePast(props.visitIds, ask)}>
      {(outcomes) =>
        outcomes.repairs.length === 0 ? (
          <div className="panel">
            <p className="text-lg">{t('shop.outcomes.none')}</p>
            <p className="mt-2">{t('shop.outcomes.noneHow')}</p>
          </div>
        ) : (
          <>
            <Repairs outcomes={outcomes} />
            <Rates outcomes={outcomes} />
            <Offer outcomes={outcomes} revision={props.revision} />
          </>
        )
      }
    </PastProgress>
  );
}

function Repairs({ outcomes }: { readonly outcomes: Outcomes }) {
  return (
    <Titled title={t('shop.outcomes.repairs')} level={2} className="panel min-w-0">
      {outcomes.summary.map((sentence, i) => (
        <p key={sentence} className={i === 0 ? 'text-lg font-semibold' : ''}>
          {sentence}
        </p>
      ))}
      <ScrollBox title={t('shop.outcomes.repairs')} className="mt-3">
        <table className="w-full min-w-180">
          <caption className="sr-only">{t('shop.outcomes.repairs')}</caption>
          <thead>
            <tr className="border-b-2 border-ink text-left align-bottom">
              {(['visit', 'repair', 'promised', 'measured', 'verdict'] as const).map((column) => (
                <th key={column} scope="col" className="p-2">
                  {t(`shop.outcomes.column.${column}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {outcomes.repairs.map((one) => (
              <tr key={one.id} className="border-b border-hair align-top">
                <th scope="row" className="p-2 text-left">
                  <a className="inline-flex min-h-12 items-center" href={`/visits/${one.id}`}>
                    {one.name}
                  </a>
                  {one.date === undefined ? null : (
                    <span className="block font-normal text-soft">{dateWords(one.date)}</span>
                  )}
                </th>
                <td className="p-2">
                  <span className="block">{one.repair}</span>
                  <span className="block text-soft">{one.cause}</span>
                </td>
                <td className="p-2">{one.promised}</td>
                <td className="p-2">{one.measured}</td>
                <td className="p-2 font-semibold">{one.verdict}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </Titled>
  );
}

function Rates({ outcomes }: { readonly outcomes: Outcomes }) {
  return (
    <Titled title={t('shop.outcomes.rates')} level={2} className="panel mt-8 min-w-0">
      <p>{t('shop.outcomes.ratesWhat')}</p>
      {outcomes.rates.length === 0 ? (
        <p className="note-plain mt-3">{t('shop.outcomes.noRates')}</p>
      ) : (
        <ul className="rows mt-2">
          {outcomes.rates.map((rate) => (
            <li key={rate.cause} className="py-2">
              <span className="font-semibold">{rate.cause}:</span> {rate.counted} {rate.rate}
              {rate.few ? <span className="block text-soft">{t('shop.outcomes.few')}</span> : null}
            </li>
          ))}
        </ul>
      )}
      <p className="mt-2 text-soft">{t('shop.outcomes.ratesSource')}</p>
    </Titled>
  );
}

function Offer(props: { readonly outcomes: Outcomes; readonly revision: number }) {
  const { offer } = props.outcomes;
  if (offer === undefined) return null;
  const { low, likely, high, source } = offer;
  return (
    <Titled title={t('shop.outcomes.offer')} level={2} className="panel mt-8">
      <p>{t('shop.outcomes.offerNow', { now: offer.now })}</p>
      <p className="font-semibold">{t('shop.outcomes.offerNew', { rate: offer.words })}</p>
      <p className="text-soft">{t('shop.outcomes.offerLimits')}</p>
      <PutInForce
        id="offer"
        revision={props.revision}
        button={t('shop.outcomes.save')}
        make={(mark) => ({
          kind: 'assumption',
          assumption: { ...mark, key: 'repairSuccessFrac', values: { low, likely, high, source } },
        })}
      />
    </Titled>
  );
}
