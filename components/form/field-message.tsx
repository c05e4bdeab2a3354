'use client';

import { useFieldBook } from '@/components/draft/draft-context';
import { t } from '@/components/words/words';
import { fieldId } from './field-id';
import { issueSentence } from './issue-words';
import { useIssueAt } from './use-field-issues';

/** Id of a field's error, for `aria-describedby`. */
export const errorId = (path: string) => `${fieldId(path)}-error`;

/** What is wrong with a field, beside it. */
export function FieldError(props: { readonly path: string }) {
  const issue = useIssueAt(props.path);
  const book = useFieldBook();
  if (issue === undefined) return null;
  return (
    <p id={errorId(props.path)} className="mt-1 font-semibold text-danger">
      <span className="sr-only">{t('issue.error')} </span>
      {issueSentence(issue, book)}
    </p>
  );
}
