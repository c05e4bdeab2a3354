import { notFound } from 'next/navigation';
import type { ReactNode } from 'react';
import { AppraisalHolder } from '@/components/appraisal/appraisal-context';
import { buildView } from '@/components/appraisal/build-view';
import { fieldBook } from '@/components/draft/build-field-book';
import { DraftHolder } from '@/components/draft/draft-context';
import { draftOf } from '../../draft-of';
import { store } from '../../open-store-once';

export const dynamic = 'force-dynamic';

/** One draft and its answer, held for all pages of the visit. */
export default async function VisitLayout(props: { children: ReactNode; params: Promise<{ id: string }> }) {
  const { id } = await props.params;
  const stored = await (await store()).loadVisit(id);
  if (stored === undefined || stored.deleted) notFound();
  const draft = draftOf(stored.draft);
  const book = fieldBook();
  return (
    <DraftHolder key={id} id={id} draft={draft} revision={stored.revision} book={book}>
      <AppraisalHolder first={buildView(draft, book)}>{props.children}</AppraisalHolder>
    </DraftHolder>
  );
}
