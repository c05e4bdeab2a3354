'use client';

import { useDraftState } from '@/components/draft/draft-context';
import { listAt, textAt } from '@/components/draft/draft-tree';
import { Stepper } from '@/components/form/stepper';
import { Titled } from '@/components/results/titled';
import { FinancingFields } from '@/components/visit/financing-fields';
import { Fold } from '@/components/visit/fold';
import { PriceLines, RebateLines } from '@/components/visit/price-lines';
import { t, tCode } from '@/components/words/words';

/** Everything one may change at the table; the numbers follow at once. */
export function TryValues() {
  const choices = useDraftState((s) => listAt(s.draft, 'choices'));
  return (
    <Titled
      title={t('compare.try')}
      level={2}
      className="panel no-print min-w-0 xl:col-start-2 xl:row-span-2 xl:row-start-1 xl:sticky xl:top-0 xl:max-h-[calc(100dvh-5.5rem)] xl:self-start xl:overflow-y-auto xl:pb-6"
    >
      <p className="text-soft">{t('compare.tryNote')}</p>
      <div className="rows">
        <Stepper path="site.stayYears" step={1} start={10} label={t('compare.stay')} />
        <Stepper path="tariff.energyUsdPerKwh" step={0.01} start={0.16} />
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
            <PriceLines path={path} />
            <RebateLines path={path} />
            <FinancingFields path={path} steps />
          </Fold>
        );
      })}
    </Titled>
  );
}
