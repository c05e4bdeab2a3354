'use client';

import { useAppraisal } from '@/components/appraisal/appraisal-context';
import { useDraftState, useDraftStore } from '@/components/draft/draft-context';
import { listAt, withValue } from '@/components/draft/draft-tree';
import { FieldError } from '@/components/form/field-message';
import { NumberField } from '@/components/form/number-field';
import { t } from '@/components/words/words';

const LIST = 'unit.electricHeatStages';

/** When the compressor rests, and how the electric heat is staged. */
export function HeatStages() {
  const store = useDraftStore();
  const count = useDraftState((s) => listAt(s.draft, LIST).length);
  const assumed = useAppraisal().answer?.energyInputs.assumed;
  return (
    <>
      <p className="text-soft">{t('backup.why')}</p>
      <div className="rows">
        <NumberField path="unit.cutOutF" echo={assumed?.['unit.cutOutF']} />
      </div>
      <FieldError path={LIST} />
      {Array.from({ length: count }, (_, i) => `${LIST}.${i}`).map((path, i) => (
        <fieldset key={path} className="mt-2 min-w-0 border-l-4 border-hair pl-3">
          <legend className="font-semibold">{t('backup.stage', { n: i + 1 })}</legend>
          <NumberField path={`${path}.sizeKw`} />
          <NumberField path={`${path}.lockOutAboveF`} hint={t('backup.lockOutHint')} />
          <button
            type="button"
            className="press press-plain px-1"
            onClick={() => store.change(t('backup.removed'), (draft) => withoutStage(draft, path, count))}
          >
            {t('backup.remove', { n: i + 1 })}
          </button>
        </fieldset>
      ))}
      <button
        type="button"
        className="press mt-2"
        onClick={() =>
          store.change(t('backup.added'), (draft) => withValue(draft, LIST, [...listAt(draft, LIST), {}]))
        }
      >
        {t('backup.add')}
      </button>
    </>
  );
}

/** An empty list of stages would be refused; the last one takes the list along. */
function withoutStage(draft: Parameters<typeof withValue>[0], path: string, count: number) {
  return withValue(draft, count === 1 ? LIST : path, undefined);
}
