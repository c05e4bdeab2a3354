import { useDraftStore, useDraftValue, useFieldEntry } from '@/components/draft/draft-context';
import { useIssueAt } from './use-field-issues';

/** What every field of the form needs: its entry in the schema's book, what was typed, its issue, its label. */
export function useField(path: string, ownLabel: string | undefined) {
  const entry = useFieldEntry(path);
  return {
    entry,
    store: useDraftStore(),
    value: useDraftValue(path),
    issue: useIssueAt(path),
    label: ownLabel ?? entry.label,
  };
}
