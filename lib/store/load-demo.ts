import type { Kysely } from 'kysely';
import type { Issue } from '../visit/issue';
import { draftFromText, draftToText } from './draft-text';
import { markIssues, type SaveMark } from './save-mark';
import { claimRevision, insertRevision, NEW_VISIT } from './save-visit';
import type { Tables } from './tables';

export type DemoRequest = Omit<SaveMark, 'id'> & {
  readonly visits: readonly { readonly id: string; readonly draft: unknown }[];
};

export type DemoResult =
  /** `loaded` 0 when the demo had been loaded before, even if it was deleted since. */
  { readonly ok: true; readonly loaded: number } | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * Loads the invented visits, once in the life of a data folder. Two programs starting together load them once.
 * A visit of that id already there is left alone.
 *
 * Check: tests/store/load-demo.test.ts
 */
export async function loadDemo(db: Kysely<Tables>, request: DemoRequest): Promise<DemoResult> {
  const texts = request.visits.map(({ id, draft }) => ({
    mark: { id, savedBy: request.savedBy, savedAt: request.savedAt },
    text: draftToText(draft),
  }));
  const issues = texts.flatMap(({ mark, text }) => [...markIssues(mark), ...(text.ok ? [] : text.issues)]);
  if (issues.length > 0) return { ok: false, issues };
  return db.transaction().execute(async (tx): Promise<DemoResult> => {
    const first = await tx
      .insertInto('settings')
      .values({ key: 'demoLoadedAt', value: request.savedAt })
      .onConflict((conflict) => conflict.column('key').doNothing())
      .executeTakeFirst();
    if (first.numInsertedOrUpdatedRows !== 1n) return { ok: true, loaded: 0 };
    let loaded = 0;
    for (const { mark, text } of texts) {
      if (!text.ok) continue;
      const revision = await claimRevision(tx, mark.id, NEW_VISIT);
      if (revision === undefined) continue;
      await insertRevision(tx, mark, { revision, draft: draftFromText(text.value), deleted: false });
      loaded += 1;
    }
    return { ok: true, loaded };
  });
}
