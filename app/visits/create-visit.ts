'use server';

import { randomUUID } from 'node:crypto';
import { redirect } from 'next/navigation';
import { t } from '@/components/words/words';
import { NEW_VISIT } from '@/lib/store/save-visit';
import { SCHEMA_VERSION } from '@/lib/visit/visit';
import { store } from '../open-store-once';
import { localDate } from './local-date';

/** Starts an empty visit of today and opens it. */
export async function createVisit(): Promise<void> {
  const now = new Date();
  const id = `visit-${localDate(now)}-${randomUUID().slice(0, 8)}`;
  const draft = {
    schemaVersion: SCHEMA_VERSION,
    id,
    visitDate: localDate(now),
    site: {},
    unit: {},
    runs: [],
    observations: [],
    assumptions: [],
    choices: [{ kind: 'leave', id: 'leave', name: t('option.choiceKind.leave'), priceLines: [] }],
  };
  const saved = await (await store()).saveVisit({
    id,
    draft,
    baseRevision: NEW_VISIT,
    savedBy: t('save.byThisOffice'),
    savedAt: now.toISOString(),
  });
  if (!saved.ok) throw new Error(`a new visit was not saved: ${saved.kind}`);
  redirect(`/visits/${id}`);
}
