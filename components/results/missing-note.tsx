'use client';

import { useFieldBook } from '@/components/draft/draft-context';
import { fieldId } from '@/components/form/field-id';
import { issueSentence } from '@/components/form/issue-words';
import { useIssues } from '@/components/form/use-field-issues';
import { t } from '@/components/words/words';

/** What the first answer still needs, each line leading to its field. */
export function MissingNote() {
  const { all } = useIssues();
  const book = useFieldBook();
  const needed = all.filter((issue) => issue.path.startsWith('unit.') || issue.path === 'visitDate');
  return (
    <div className="note-plain">
      <p className="font-semibold">{t('results.none')}</p>
      <ul>
        {needed.map((issue) => (
          <li key={issue.path}>
            <a className="inline-flex min-h-12 items-center" href={`#${fieldId(issue.path)}`}>
              {issueSentence(issue, book)}
            </a>
          </li>
        ))}
      </ul>
      <p>{t('results.noneRest')}</p>
    </div>
  );
}
