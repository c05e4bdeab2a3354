import { z } from 'zod';
import { SavedAt, SavedBy, VisitId } from './save-mark';

/** Version of the export's shape; each bump has one pure migration and a test with a real old file. */
export const ARCHIVE_VERSION = 1;

const ArchivedRevision = z.strictObject({
  revision: z.number().int().min(1),
  savedAt: SavedAt,
  savedBy: SavedBy,
  deleted: z.boolean(),
  draft: z.unknown().refine((draft) => draft !== undefined),
});

const ArchivedVisit = z
  .strictObject({ id: VisitId, revisions: z.array(ArchivedRevision).min(1) })
  .refine((visit) => visit.revisions.every((r, i) => r.revision === i + 1), {
    path: ['revisions'],
    message: 'numbered 1, 2, 3 ... in order',
  });
export type ArchivedVisit = z.infer<typeof ArchivedVisit>;

/** Everything in the store, as JSON: every visit with every revision, oldest first. */
export const Archive = z
  .strictObject({
    archiveVersion: z.literal(ARCHIVE_VERSION),
    exportedAt: SavedAt,
    visits: z.array(ArchivedVisit),
  })
  .refine((archive) => new Set(archive.visits.map((v) => v.id)).size === archive.visits.length, {
    path: ['visits'],
    message: 'each visit once',
  });
export type Archive = z.infer<typeof Archive>;
