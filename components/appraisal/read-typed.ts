import type { Draft } from '@/components/draft/draft-tree';
import type { FieldBook } from '@/components/draft/field-book';
import { type DraftData, dataFromDraft, formPath } from '@/components/draft/typed-data';
import { tCode } from '@/components/words/words';
import { type DraftReading, readDraft } from '@/lib/visit/read-visit';

/** Reads a draft as far as it can be used; issues point to the rows of the form. */
export function readTyped(draft: Draft, book: FieldBook): DraftReading {
  const made: DraftData = dataFromDraft(draft, book, (kind) => tCode(`option.lineKind.${kind}`));
  const reading = readDraft(made.data);
  return {
    visit: reading.visit,
    issues: reading.issues.map((issue) => ({ ...issue, path: formPath(issue.path, made.rows) })),
  };
}
