'use client';

import { useDraftState, useDraftStore, useFieldBook, useVisitId } from '@/components/draft/draft-context';
import type { Refusal } from '@/components/draft/draft-store';
import { patternOf } from '@/components/draft/draft-tree';
import { longTexts } from '@/components/draft/long-texts';
import { flushDrafts } from '@/components/draft/use-keep-draft';
import { fieldId } from '@/components/form/field-id';
import { t } from '@/components/words/words';
import type { Issue } from '@/lib/visit/issue';

/** The office did not take the draft: why, what is too long, and the way on. */
export function RefusalNotice() {
  const save = useDraftState((s) => s.save);
  if (save.kind !== 'onDevice') return null;
  if (save.why === 'gone') return <Gone />;
  return save.why === 'refused' ? <Refused refusal={save.refusal} /> : null;
}

function Refused(props: { readonly refusal: Refusal }) {
  const { issues, sentence } = props.refusal;
  const draft = useDraftState((s) => s.draft);
  const book = useFieldBook();
  const isTooBig = issues.some((issue) => issue.path === '');
  return (
    <section role="alert" aria-labelledby="refused" className="note-danger mb-4">
      <h2 id="refused" className="text-lg">
        {t('refused.title')}
      </h2>
      <p>{t('refused.what')}</p>
      {sentence === undefined ? null : <p className="mt-1">{sentence}</p>}
      <ul className="mt-1">
        {issues.map((issue) => (
          <li key={`${issue.path} ${issue.code}`}>
            {LINKED[issue.path] === undefined ? (
              issueWords(issue)
            ) : (
              <FieldLink path={LINKED[issue.path] ?? ''} words={issueWords(issue)} />
            )}
          </li>
        ))}
        {(isTooBig ? longTexts(draft) : []).map(({ path, length }) => (
          <li key={path}>
            <FieldLink
              path={path}
              words={t('refused.long', {
                label: book[patternOf(path)]?.label ?? path,
                n: length.toLocaleString('en-US'),
              })}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Fields of the form behind what the store calls by names of its own. */
const LINKED: Readonly<Record<string, string>> = { savedBy: 'technician' };

function FieldLink(props: { readonly path: string; readonly words: string }) {
  const id = useVisitId();
  return (
    <a
      className="inline-flex min-h-12 items-center font-semibold text-danger"
      href={`/visits/${id}#${fieldId(props.path)}`}
    >
      {props.words}
    </a>
  );
}

function issueWords({ label, value, limit, fix }: Issue): string {
  return value === undefined || limit === undefined
    ? `${label}: ${fix}`
    : t('refused.issue', { label, value, limit, fix });
}

/** Nothing is lost while this device has it: one press sends it as it is. */
function Gone() {
  const store = useDraftStore();
  return (
    <section role="alert" aria-labelledby="gone" className="note-danger mb-4">
      <h2 id="gone" className="text-lg">
        {t('refused.goneTitle')}
      </h2>
      <p>{t('refused.goneWhat')}</p>
      <button
        type="button"
        className="press mt-2"
        onClick={() => {
          store.rebase(0);
          void flushDrafts();
        }}
      >
        {t('refused.sendNew')}
      </button>
    </section>
  );
}
