'use client';

import { localDate } from '@/components/draft/blank-visit';
import { useDraftState, useDraftStore } from '@/components/draft/draft-context';
import { listAt, textAt, withValue } from '@/components/draft/draft-tree';
import { fieldId } from '@/components/form/field-id';
import { TextField } from '@/components/form/text-field';
import { t, tCode } from '@/components/words/words';

/** What the customer decided: one of the choices, the day, and who said so. */
export function ChosenPick() {
  const store = useDraftStore();
  const choices = useDraftState((s) => listAt(s.draft, 'choices'));
  const chosen = useDraftState((s) => textAt(s.draft, 'chosen.choiceId'));
  const id = fieldId('chosen.choiceId');
  const isGone = chosen !== '' && !choices.some((choice) => textAt(choice, 'id') === chosen);
  const pick = (choiceId: string) =>
    store.change(t('chosen.title'), (draft) => {
      if (choiceId === '') return withValue(draft, 'chosen', undefined);
      const date = textAt(draft, 'chosen.date');
      const dated = date === '' ? withValue(draft, 'chosen.date', localDate(new Date())) : draft;
      return withValue(dated, 'chosen.choiceId', choiceId);
    });
  return (
    <section aria-labelledby="chosen" className="panel no-print">
      <h2 id="chosen" className="text-2xl">
        {t('chosen.title')}
      </h2>
      <p className="text-soft">{t('chosen.note')}</p>
      <div className="py-2">
        <label htmlFor={id} className="block font-medium">
          {t('chosen.which')}
        </label>
        <select
          id={id}
          className="box mt-1 w-full sm:w-auto sm:min-w-80"
          value={chosen}
          onChange={(event) => pick(event.target.value)}
        >
          <option value="">{t('chosen.notYet')}</option>
          {choices.map((choice) => {
            const name = textAt(choice, 'name').trim();
            return (
              <option key={textAt(choice, 'id')} value={textAt(choice, 'id')}>
                {name === '' ? tCode(`option.choiceKind.${textAt(choice, 'kind')}`) : name}
              </option>
            );
          })}
          {isGone ? <option value={chosen}>{t('chosen.gone')}</option> : null}
        </select>
      </div>
      {chosen === '' ? null : (
        <div className="flex flex-wrap gap-x-4">
          <div className="min-w-48">
            <TextField path="chosen.date" date />
          </div>
          <div className="min-w-48 flex-1 sm:max-w-80">
            <TextField path="chosen.by" />
          </div>
        </div>
      )}
    </section>
  );
}
