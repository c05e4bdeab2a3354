import { z } from 'zod';
import type { Issue } from '../visit/issue';

/** Who saves which visit, when. The clock is the caller's. */
export type SaveMark = { readonly id: string; readonly savedBy: string; readonly savedAt: string };

export const VisitId = z.string().regex(/^[a-z0-9-]{1,60}$/);
export const SavedBy = z.string().trim().min(1).max(80);
export const SavedAt = z.iso.datetime();

const CHECKS = [
  {
    key: 'id',
    schema: VisitId,
    label: 'Visit',
    limit: '1 to 60 of a-z, 0-9 and "-"',
    fix: 'Open the visit from the list again.',
  },
  {
    key: 'savedBy',
    schema: SavedBy,
    label: 'Saved by',
    limit: '1 to 80 characters',
    fix: 'Enter the name of whoever saves.',
  },
  {
    key: 'savedAt',
    schema: SavedAt,
    label: 'Saved at',
    limit: 'an instant like 2026-11-25T09:30:00Z',
    fix: 'Check the clock of this device.',
  },
] as const;

/** What is wrong with a mark; empty when nothing is. */
export function markIssues(mark: SaveMark): Issue[] {
  return CHECKS.filter(({ key, schema }) => !schema.safeParse(mark[key]).success).map(
    ({ key, label, limit, fix }) => ({
      code: 'outOfRange' as const,
      path: key,
      label,
      value: String(mark[key]),
      limit,
      fix,
    }),
  );
}
