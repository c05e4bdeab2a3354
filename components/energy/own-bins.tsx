'use client';

import { useAppraisal } from '@/components/appraisal/appraisal-context';
import { useDraftState, useDraftStore } from '@/components/draft/draft-context';
import { listAt, textAt, valueAt, withValue } from '@/components/draft/draft-tree';
import { FieldError } from '@/components/form/field-message';
import { ListField } from '@/components/form/pick-field';
import { t, tn } from '@/components/words/words';
import { PasteTable } from './paste-table';

/** The weather as the user's own table: hours of a year at each temperature. */
export function OwnBins(props: {
  readonly cities: readonly { readonly key: string; readonly name: string }[];
}) {
  const store = useDraftStore();
  const count = useDraftState((s) => listAt(s.draft, 'site.climate.bins').length);
  const start = useDraftState((s) => binText(s.draft));
  const notes = useAppraisal().answer?.energyInputs.climateNotes ?? [];
  return (
    <div className="mt-2 border-l-4 border-hair pl-3">
      <PasteTable
        label={t('climate.paste')}
        hint={t('climate.pasteHint')}
        example={t('climate.pasteExample')}
        start={start}
        read={async (text) => {
          const { binsFromTable } = await import('./read-tables');
          const { bins, ...result } = binsFromTable(text);
          if (bins.length === 0) return result;
          store.change(t('climate.own'), (draft) => {
            const city = valueAt(draft, 'site.climate.calendarCity') ?? valueAt(draft, 'site.climate.city');
            return withValue(draft, 'site.climate', {
              kind: 'own',
              bins: bins.map((bin) => ({ ...bin })),
              ...(city === undefined ? {} : { calendarCity: city }),
            });
          });
          return result;
        }}
      />
      {count === 0 ? (
        <p className="note-plain">{t('climate.notYet')}</p>
      ) : (
        <>
          <p className="font-medium">{tn('climate.bins', count)}</p>
          {notes.map((note) => (
            <p key={note} className="note-doubt mt-2">
              {note}
            </p>
          ))}
          <ListField
            path="site.climate.calendarCity"
            options={props.cities.map(({ key, name }) => ({ value: key, words: name }))}
            unknown
          />
          <p className="text-soft">{t('climate.calendarHint')}</p>
        </>
      )}
      <FieldError path="site.climate.bins" />
    </div>
  );
}

/** The bins as the table they came from, so that they can be put right in place. */
function binText(draft: Parameters<typeof listAt>[0]): string {
  const bins = listAt(draft, 'site.climate.bins');
  if (bins.length === 0) return '';
  const rows = bins.map((bin) => `${textAt(bin, 'outdoorF')}, ${textAt(bin, 'yearHours')}`);
  return [t('climate.header'), ...rows].join('\n');
}
