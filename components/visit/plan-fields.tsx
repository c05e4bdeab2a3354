'use client';

import { NumberField } from '@/components/form/number-field';
import { PickField } from '@/components/form/pick-field';
import { Stepper } from '@/components/form/stepper';
import { TextField } from '@/components/form/text-field';
import { t } from '@/components/words/words';
import { Fold } from './fold';

type Asked = { readonly path: string; readonly step?: number; readonly label?: string };

/** A number, at the table with buttons for less and more. */
function Ask(props: Asked & { readonly steps: boolean }) {
  const label = props.label === undefined ? {} : { label: props.label };
  if (props.steps && props.step !== undefined) {
    return <Stepper path={props.path} step={props.step} {...label} />;
  }
  return <NumberField path={props.path} {...label} />;
}

/** What a way to pay over time asks for; at the table only what one changes there is open. */
export function PlanFields(props: { readonly path: string; readonly kind: string; readonly steps: boolean }) {
  const { path, kind, steps } = props;
  const isPromotion = kind === 'promotional';
  const main: readonly Asked[] = isPromotion
    ? [
        { path: `${path}.promotionMonths`, step: 6 },
        { path: `${path}.rateFracPerYear`, step: 0.5, label: t('money.promotionRate') },
        { path: `${path}.termMonths`, step: 12, label: t('money.promotionTerm') },
      ]
    : [
        { path: `${path}.rateFracPerYear`, step: 0.5 },
        { path: `${path}.termMonths`, step: 12 },
      ];
  return (
    <>
      {main.map((asked) => (
        <Ask key={asked.path} {...asked} steps={steps} />
      ))}
      <Ask path={`${path}.downPaymentUsd`} step={100} steps={steps} />
      {isPromotion ? (
        <>
          {steps ? null : (
            <NumberField path={`${path}.monthlyPaymentUsd`} hint={t('money.promotionPaymentHint')} />
          )}
          <PickField path={`${path}.expectedEnding`} words="ending" />
          <p className="py-2 text-soft">{t('money.endingNote')}</p>
        </>
      ) : null}
      {steps ? null : (
        <Fold title={t('money.moreTerms')} aside={t('house.optional')}>
          <NumberField path={`${path}.feeUsd`} />
          <NumberField path={`${path}.dealerFeeFrac`} hint={t('money.dealerFeeHint')} />
          {isPromotion ? null : <TextField path={`${path}.firstPaymentDate`} date />}
          <TextField path={`${path}.lender`} />
        </Fold>
      )}
    </>
  );
}
