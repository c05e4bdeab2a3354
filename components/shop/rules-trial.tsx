'use client';

import { useCallback } from 'react';
import { dateWords } from '@/components/format/time-words';
import { ScrollBox } from '@/components/results/scroll-box';
import { t, tn } from '@/components/words/shop-words';
import type { ShopRuleValues } from '@/lib/visit/shop-rules';
import { PastProgress } from './past-progress';
import type { Trial } from './trial';
import { usePast } from './use-past';

/** Which recommendations the thresholds would have changed, and what that would have cost customers. */
export function RulesTrial(props: { readonly values: ShopRuleValues; readonly visitIds: readonly string[] }) {
  const { values, visitIds } = props;
  const ask = useCallback(async (): Promise<Trial> => {
    const answer = await fetch('/shop/rules/trial', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(values),
    });
    if (!answer.ok) throw new Error(String(answer.status));
    return (await answer.json()) as Trial;
  }, [values]);
  return (
    <div className="mt-4">
      <PastProgress state={usePast(visitIds, ask)}>{(trial) => <TrialResult trial={trial} />}</PastProgress>
    </div>
  );
}

function TrialResult({ trial }: { readonly trial: Trial }) {
  if (trial.visits === 0) return <p className="note-plain">{t('shop.rules.noVisits')}</p>;
  return (
    <>
      <p className="text-lg font-semibold">
        {trial.flips.length === 0
          ? tn('shop.rules.noFlips', trial.visits)
          : t('shop.rules.flips', { n: trial.flips.length, visits: trial.visits })}
      </p>
      <p>{t('shop.rules.meanCost', { before: trial.before, after: trial.after })}</p>
      {trial.leftOut === 0 ? null : <p className="text-soft">{tn('shop.rules.leftOut', trial.leftOut)}</p>}
      {trial.flips.length === 0 ? null : (
        <ScrollBox title={t('shop.rules.flipsTable')} className="mt-3">
          <table className="w-full min-w-180">
            <caption className="sr-only">{t('shop.rules.flipsTable')}</caption>
            <thead>
              <tr className="border-b-2 border-ink text-left">
                <th scope="col" className="p-2">
                  {t('shop.rules.visit')}
                </th>
                <th scope="col" className="p-2">
                  {t('shop.rules.from')}
                </th>
                <th scope="col" className="p-2">
                  {t('shop.rules.to')}
                </th>
                <th scope="col" className="p-2">
                  {t('shop.rules.customer')}
                </th>
              </tr>
            </thead>
            <tbody>
              {trial.flips.map((flip) => (
                <tr key={flip.id} className="border-b border-hair align-top">
                  <th scope="row" className="p-2 text-left">
                    <a className="inline-flex min-h-12 items-center" href={`/visits/${flip.id}/compare`}>
                      {flip.name}
                    </a>
                    {flip.date === undefined ? null : (
                      <span className="block font-normal text-soft">{dateWords(flip.date)}</span>
                    )}
                  </th>
                  <td className="p-2">{flip.from}</td>
                  <td className="p-2">
                    <span className="block font-semibold">{flip.to}</span>
                    <span className="block text-soft">{flip.why}</span>
                  </td>
                  <td className="p-2">{flip.costs}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollBox>
      )}
    </>
  );
}
