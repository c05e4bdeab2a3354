import type { Kysely } from 'kysely';
import type { Json } from './json';
import type { Tables } from './tables';

/** What a revision came to, kept so that a list need not work it out again. The store does not look inside. */
export type Digest = { readonly id: string; readonly revision: number; readonly digest: Json };

/**
 * Digests of the newest revisions, as far as they were made by this maker.
 *
 * @param maker version of whatever makes them; another maker's count as none
 * Check: tests/store/digests.test.ts
 */
export async function listDigests(db: Kysely<Tables>, maker: string): Promise<Digest[]> {
  const rows = await db
    .selectFrom('digests')
    .innerJoin('visits', (join) =>
      join.onRef('visits.id', '=', 'digests.visit_id').onRef('visits.head_revision', '=', 'digests.revision'),
    )
    .select(['digests.visit_id', 'digests.revision', 'digests.digest'])
    .where('digests.maker', '=', maker)
    .execute();
  return rows.map(({ visit_id, revision, digest }) => ({
    id: visit_id,
    revision,
    digest: JSON.parse(digest) as Json,
  }));
}

/**
 * Keeps the digest of a revision in place of the visit's older ones; it can always be made again.
 *
 * Check: tests/store/digests.test.ts
 */
export async function keepDigest(
  db: Kysely<Tables>,
  { id, revision, digest }: Digest,
  maker: string,
): Promise<void> {
  const row = { visit_id: id, revision, maker, digest: JSON.stringify(digest) };
  await db
    .insertInto('digests')
    .values(row)
    .onConflict((conflict) =>
      conflict
        .column('visit_id')
        .doUpdateSet({ revision, maker, digest: row.digest })
        .where('digests.revision', '<=', revision),
    )
    .execute();
}
