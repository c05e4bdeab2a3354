import type { DraftValue } from '@/components/draft/draft-tree';

/** A price line without a price yet. */
export function blankLine(kind: string): DraftValue {
  return { kind, amount: '1' };
}
