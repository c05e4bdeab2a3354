'use client';

import { useEffect, useRef } from 'react';
import { useFieldBook } from '@/components/draft/draft-context';
import { t, tn } from '@/components/words/words';
import { fieldId } from './field-id';
import { issueSentence } from './issue-words';
import { useIssues } from './use-field-issues';

/** Everything that could not be used, on top, each line leading to its field. */
export function ErrorSummary() {
  const { issues, attempted } = useIssues();
  const book = useFieldBook();
  const box = useRef<HTMLDivElement>(null);
  const asked = useRef(false);
  useEffect(() => {
    if (attempted && !asked.current && issues.length > 0) {
      asked.current = true;
      box.current?.focus();
    }
  }, [attempted, issues.length]);
  useErrorTitle(issues.length > 0);
  if (issues.length === 0) return null;
  return (
    <section ref={box} tabIndex={-1} className="note-danger mb-4" aria-labelledby="error-summary">
      <h2 id="error-summary" className="text-lg">
        {tn('issue.summary', issues.length)}
      </h2>
      <p>{t('issue.restCounts')}</p>
      <ul className="mt-1">
        {issues.map((issue) => (
          <li key={`${issue.path} ${issue.code}`}>
            <a
              className="inline-flex min-h-12 items-center font-semibold text-danger"
              href={`#${fieldId(issue.path)}`}
            >
              {place(issue.path)}
              {issueSentence(issue, book)}
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Which of several runs or choices a field belongs to. */
function place(path: string): string {
  const [list, at] = path.split('.');
  const n = Number(at) + 1;
  if (list === 'runs') return `${t('issue.inRun', { n })} `;
  if (list === 'choices') return `${t('issue.inChoice', { n })} `;
  return '';
}

function useErrorTitle(hasErrors: boolean): void {
  useEffect(() => {
    const bare = document.title.replace(t('issue.titlePrefix'), '');
    document.title = hasErrors ? `${t('issue.titlePrefix')}${bare}` : bare;
  }, [hasErrors]);
}
