'use client';

import { useDraftState, useDraftStore } from '@/components/draft/draft-context';
import { textAt } from '@/components/draft/draft-tree';
import { fieldId } from '@/components/form/field-id';
import { FieldError } from '@/components/form/field-message';
import { NumberField } from '@/components/form/number-field';
import { Stepper } from '@/components/form/stepper';
import { TextField } from '@/components/form/text-field';
import { t, tCode } from '@/components/words/words';

/** How a choice is paid. A loan counts once its rate and term are there. */
export function FinancingFields(props: { readonly path: string; readonly steps?: boolean }) {
  const path = `${props.path}.financing`;
  const store = useDraftStore();
  const kind = useDraftState((s) => textAt(s.draft, `${path}.kind`));
  const open = useDraftState(
    (s) =>
      textAt(s.draft, `${path}.rateFracPerYear`).trim() === '' ||
      textAt(s.draft, `${path}.termMonths`).trim() === '',
  );
  const options = ['cash', 'levelLoan'];
  const current = kind === '' ? 'cash' : kind;
  return (
    <fieldset className="mt-4 min-w-0">
      <legend className="font-serif text-lg font-bold">{t('money.financing')}</legend>
      <FieldError path={path} />
      <div className="mt-1 flex flex-wrap gap-2">
        {options.map((option) => (
          <label
            key={option}
            className="press cursor-pointer font-normal text-ink has-checked:bg-plum has-checked:font-semibold has-checked:text-on-plum has-focus-visible:outline-3 has-focus-visible:outline-offset-2 has-focus-visible:outline-plum"
          >
            <input
              type="radio"
              className="sr-only"
              name={fieldId(`${path}.kind`)}
              checked={current === option}
              onChange={() => store.set(`${path}.kind`, option, t('money.financing'))}
            />
            {tCode(`option.financing.${option}`)}
          </label>
        ))}
      </div>
      {current === 'levelLoan' ? (
        <div className="rows mt-2">
          <Loan path={path} steps={props.steps === true} />
          {open ? <p className="py-2 text-soft">{t('money.loanOpen')}</p> : null}
        </div>
      ) : null}
    </fieldset>
  );
}

function Loan(props: { readonly path: string; readonly steps: boolean }) {
  const { path } = props;
  if (props.steps) {
    return (
      <>
        <Stepper path={`${path}.rateFracPerYear`} step={0.5} />
        <Stepper path={`${path}.termMonths`} step={12} />
        <Stepper path={`${path}.downPaymentUsd`} step={100} />
      </>
    );
  }
  return (
    <>
      <NumberField path={`${path}.rateFracPerYear`} />
      <NumberField path={`${path}.termMonths`} />
      <NumberField path={`${path}.downPaymentUsd`} />
      <NumberField path={`${path}.feeUsd`} />
      <TextField path={`${path}.lender`} />
    </>
  );
}
