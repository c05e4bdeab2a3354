'use server';

import { redirect } from 'next/navigation';
import { blankVisit, localDate, newVisitId } from '@/components/draft/blank-visit';
import { t } from '@/components/words/words';
import { NEW_VISIT } from '@/lib/store/save-visit';
import { store } from '../open-store-once';
import { assumptionsFor } from '../shop/assumptions-for';

/** Starts an empty visit of today and opens it: for a page whose scripts have not arrived, or that may not store. */
export async function createVisit(): Promise<void> {
  const now = new Date();
  const id = newVisitId(now);
  const saved = await (await store()).saveVisit({
    id,
    draft: blankVisit(id, localDate(now), await assumptionsFor(localDate(now))),
    baseRevision: NEW_VISIT,
    savedBy: t('save.byThisOffice'),
    savedAt: now.toISOString(),
  });
  if (!saved.ok) throw new Error(`a new visit was not saved: ${saved.kind}`);
  redirect(`/visits/${id}`);
}
