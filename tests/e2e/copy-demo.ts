import { inject } from 'vitest';
import type { Draft } from '@/components/draft/draft-tree';
import { openStore } from '@/lib/store/open-store';

/** A copy of a demo visit under an id of its own, so that the demo stays as it is. */
export async function copyOfDemo(
  from: string,
  id: string,
  change: (draft: Draft) => Draft = (draft) => draft,
): Promise<void> {
  const store = await openStore(inject('dataFolder'));
  const demo = await store.loadVisit(from);
  const draft = { ...change(demo?.draft as Draft), id };
  await store.saveVisit({ id, draft, baseRevision: 0, savedBy: 'test', savedAt: '2026-11-25T09:00:00Z' });
  await store.close();
}
