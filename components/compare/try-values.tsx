'use client';

import type { TriedRate } from '@/components/appraisal/tried-rates';
import { useDraftState } from '@/components/draft/draft-context';
import { listAt, textAt } from '@/components/draft/draft-tree';
import { Stepper } from '@/components/form/stepper';
import { Titled } from '@/components/results/titled';
import { FinancingFields } from '@/components/visit/financing-fields';
import { Fold } from '@/components/visit/fold';
import { LaterFields } from '@/components/visit/later-fields';
import { PriceLines, RebateLines } from '@/components/visit/price-lines';
import { t, tCode, tn } from '@/components/words/words';
import { RateStepper } from './rate-stepper';
import { useProposal } from './use-proposal';

/** Everything one may change at the table; the numbers follow at once. The customer's view leaves the price lines out. */
export function TryValues(props: { readonly rates: readonly TriedRate[]; readonly forCustomer: boolean }) {
  const choices = useDraftState((s) => listAt(s.draft, 'choices'));
  const tariff = useDraftState((s) => textAt(s.draft, 'tariff.kind'));
  return (
    <Titled
      title={t('compare.try')}
      level={2}
      className="panel no-print min-w-0 xl:col-start-2 xl:row-span-2 xl:row-start-1 xl:sticky xl:top-0 xl:max-h-[calc(100dvh-5.5rem)] xl:self-start xl:overflow-y-auto xl:pb-6"
    >
      <p className="text-soft">{t('compare.tryNote')}</p>
      <ResetRow />
      <div className="rows">
        <Stepper path="site.stayYears" step={1} start={10} label={t('compare.stay')} />
        {tariff === '' || tariff === 'flat' ? (
          <Stepper path="tariff.energyUsdPerKwh" step={0.01} start={0.16} />
        ) : null}
        {props.rates.map((rate) => (
          <RateStepper key={rate.key} rate={rate} />
        ))}
      </div>
      {choices.map((choice, i) => {
        const kind = textAt(choice, 'kind');
        if (kind === 'leave') return null;
        const path = `choices.${i}`;
        return (
          <Fold
            key={textAt(choice, 'id')}
            title={
              textAt(choice, 'name').trim() === ''
                ? tCode(`option.choiceKind.${kind}`)
                : textAt(choice, 'name')
            }
            aside={tCode(`option.choiceKind.${kind}`)}
          >
            {kind === 'repairThenReplace' ? <LaterFields path={path} steps /> : null}
            {props.forCustomer ? null : (
              <>
                <PriceLines path={path} steps />
                <RebateLines path={path} steps />
              </>
            )}
            <FinancingFields path={path} steps />
          </Fold>
        );
      })}
    </Titled>
  );
}

/** How far one has gone from the proposal, and one tap back; the row keeps its height. */
function ResetRow() {
  const { changed, reset } = useProposal();
  return (
    <div className="flex min-h-14 flex-wrap items-center justify-between gap-2">
      <span role="status">{changed === 0 ? t('try.same') : tn('try.changed', changed)}</span>
      {changed === 0 ? null : (
        <button type="button" className="press" onClick={reset}>
          {t('try.reset')}
        </button>
      )}
    </div>
  );
}
