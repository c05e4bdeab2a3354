import type { Draft } from '@/components/draft/draft-tree';

/** A stored draft as the form's tree; whatever else was stored counts as an empty form. */
export function draftOf(stored: unknown): Draft {
  return typeof stored === 'object' && stored !== null && !Array.isArray(stored) ? (stored as Draft) : {};
}
