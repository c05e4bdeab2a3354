import type { Kysely } from 'kysely';
import type { Issue } from '../visit/issue';
import { draftFromText, draftToText } from './draft-text';
import type { Json } from './json';
import { SavedAt, SavedBy } from './save-mark';
import type { Tables } from './tables';

/** One state of a part of the shop's own settings; the store does not look inside. */
export type ShopRecord = {
  /** Name of the part, for example "prices". */
  readonly part: string;
  /** 1, 2, 3 ... without gaps. */
  readonly revision: number;
  readonly savedAt: string;
  readonly savedBy: string;
  readonly data: Json;
};

export type ShopSave = Omit<ShopRecord, 'revision' | 'data'> & {
  readonly data: unknown;
  /** The revision it was made from; 0 when there was none. */
  readonly baseRevision: number;
};

export type ShopSaved =
  | { readonly ok: true; readonly revision: number }
  /** Somebody saved in between; nothing was changed. */
  | { readonly ok: false; readonly kind: 'stale' }
  | { readonly ok: false; readonly kind: 'refused'; readonly issues: readonly Issue[] };

/**
 * Newest state of a part of the shop.
 *
 * Check: tests/store/shop-record.test.ts
 */
export async function loadShop(db: Kysely<Tables>, part: string): Promise<ShopRecord | undefined> {
  const row = await db
    .selectFrom('shop')
    .selectAll()
    .where('part', '=', part)
    .orderBy('revision', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row === undefined
    ? undefined
    : {
        part,
        revision: row.revision,
        savedAt: row.saved_at,
        savedBy: row.saved_by,
        data: draftFromText(row.data),
      };
}

/**
 * Saves the next state of a part, if the base revision is still the latest one; older ones stay.
 *
 * Check: tests/store/shop-record.test.ts
 */
export async function saveShop(db: Kysely<Tables>, save: ShopSave): Promise<ShopSaved> {
  const text = draftToText(save.data);
  if (!text.ok) return { ok: false, kind: 'refused', issues: text.issues };
  const issues = [
    ...(SavedBy.safeParse(save.savedBy).success ? [] : [slip('savedBy', save.savedBy)]),
    ...(SavedAt.safeParse(save.savedAt).success ? [] : [slip('savedAt', save.savedAt)]),
  ];
  if (issues.length > 0) return { ok: false, kind: 'refused', issues };
  const revision = save.baseRevision + 1;
  return db.transaction().execute(async (tx): Promise<ShopSaved> => {
    // A write first, so that the lock is held before anything is read: of two savers with one base one gets the number.
    const made = await tx
      .insertInto('shop')
      .values({
        part: save.part,
        revision,
        data: text.value,
        saved_at: save.savedAt,
        saved_by: save.savedBy.trim(),
      })
      .onConflict((conflict) => conflict.columns(['part', 'revision']).doNothing())
      .executeTakeFirst();
    if (made.numInsertedOrUpdatedRows !== 1n) return { ok: false, kind: 'stale' };
    const base = await tx
      .selectFrom('shop')
      .select('revision')
      .where('part', '=', save.part)
      .where('revision', '=', save.baseRevision)
      .executeTakeFirst();
    if (save.baseRevision === 0 || base !== undefined) return { ok: true, revision };
    // A base that never was would leave a gap in the numbering.
    await tx.deleteFrom('shop').where('part', '=', save.part).where('revision', '=', revision).execute();
    return { ok: false, kind: 'stale' };
  });
}

function slip(path: 'savedBy' | 'savedAt', value: string): Issue {
  return path === 'savedBy'
    ? {
        code: 'outOfRange',
        path,
        label: 'Set by',
        value,
        limit: '1 to 80 characters',
        fix: 'Enter the name of whoever sets it.',
      }
    : {
        code: 'outOfRange',
        path,
        label: 'Saved at',
        value,
        limit: 'an instant like 2026-11-25T09:30:00Z',
        fix: 'Check the clock of this device.',
      };
}
