import type { Kysely, Transaction } from 'kysely';
import type { Issue } from '../visit/issue';
import { ARCHIVE_VERSION, Archive, type ArchivedVisit } from './archive';
import { draftToText } from './draft-text';
import { archivedVisits } from './export-all';
import type { Json } from './json';
import { insertRevision } from './save-visit';
import type { Tables } from './tables';

export type ImportResult =
  | {
      readonly ok: true;
      /** Visits that were not here. */
      readonly added: readonly string[];
      /** Visits here whose history the file continues: the later revisions were added. */
      readonly extended: readonly string[];
      /** Visits here that already hold all the file has. */
      readonly unchanged: readonly string[];
      /** Visits whose history here and in the file went different ways: left as they are here. */
      readonly conflicts: readonly string[];
    }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * Takes over everything of an export; all of it or, when the file is faulty, nothing. Never overwrites.
 *
 * @param data an export as parsed JSON
 * Check: tests/store/archive.test.ts
 */
export async function importAll(db: Kysely<Tables>, data: unknown): Promise<ImportResult> {
  const read = readArchive(data);
  if (!read.ok) return read;
  return db.transaction().execute(async (tx): Promise<ImportResult> => {
    const groups = {
      added: [] as string[],
      extended: [] as string[],
      unchanged: [] as string[],
      conflicts: [] as string[],
    };
    for (const visit of read.value.visits) groups[await importVisit(tx, visit)].push(visit.id);
    return { ok: true, ...groups };
  });
}

async function importVisit(
  tx: Transaction<Tables>,
  theirs: ArchivedVisit,
): Promise<'added' | 'extended' | 'unchanged' | 'conflicts'> {
  const head = theirs.revisions.length;
  // A write first, so that the lock is held before anything is read (see claimRevision).
  await tx
    .insertInto('visits')
    .values({ id: theirs.id, head_revision: head })
    .onConflict((conflict) => conflict.column('id').doNothing())
    .execute();
  const rows = await tx
    .selectFrom('revisions')
    .selectAll()
    .where('visit_id', '=', theirs.id)
    .orderBy('revision')
    .execute();
  const ours = archivedVisits(rows)[0]?.revisions ?? [];
  const shared = Math.min(ours.length, head);
  if (JSON.stringify(ours.slice(0, shared)) !== JSON.stringify(theirs.revisions.slice(0, shared))) {
    return 'conflicts';
  }
  if (ours.length >= head) return 'unchanged';
  for (const { revision, savedBy, savedAt, deleted, draft } of theirs.revisions.slice(shared)) {
    await insertRevision(
      tx,
      { id: theirs.id, savedBy, savedAt },
      { revision, draft: draft as Json, deleted },
    );
  }
  await tx.updateTable('visits').set({ head_revision: head }).where('id', '=', theirs.id).execute();
  return ours.length === 0 ? 'added' : 'extended';
}

function readArchive(data: unknown): { ok: true; value: Archive } | { ok: false; issues: readonly Issue[] } {
  const parsed = Archive.safeParse(data);
  if (!parsed.success) {
    const version = (data as { archiveVersion?: unknown } | null | undefined)?.archiveVersion;
    if (version !== ARCHIVE_VERSION) {
      return {
        ok: false,
        issues: [
          {
            code: version === undefined ? 'notReadable' : 'wrongVersion',
            path: 'archiveVersion',
            label: 'Export file',
            ...(version === undefined ? {} : { value: String(version) }),
            limit: `version ${ARCHIVE_VERSION}`,
            fix: 'Choose a file made by "Export everything" of this version. Nothing was changed.',
          },
        ],
      };
    }
    return {
      ok: false,
      issues: parsed.error.issues.slice(0, 20).map((issue) => ({
        code: 'notReadable',
        path: issue.path.join('.'),
        label: 'Export file',
        limit: issue.message,
        fix: 'The file was changed or cut off: export it again. Nothing was changed.',
      })),
    };
  }
  const issues = parsed.data.visits.flatMap((visit) =>
    visit.revisions.flatMap(({ draft }) => {
      const text = draftToText(draft);
      return text.ok ? [] : text.issues.map((issue) => ({ ...issue, label: `Visit ${visit.id}` }));
    }),
  );
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: parsed.data };
}
