import { t, tn } from '@/components/words/words';
import type { ImportResult } from '@/lib/store/import-all';

type Taken = Extract<ImportResult, { ok: true }>;

/** What an import came to, one line for each kind; visits left as they are here are named. */
export function importLines({ added, extended, unchanged, conflicts }: Taken): string[] {
  return [
    ...(added.length > 0 ? [tn('files.added', added.length)] : []),
    ...(extended.length > 0 ? [tn('files.extended', extended.length)] : []),
    ...(unchanged.length > 0 ? [tn('files.unchanged', unchanged.length)] : []),
    ...(conflicts.length > 0 ? [t('files.conflicts', { ids: conflicts.join(', ') })] : []),
    ...(added.length + extended.length + unchanged.length + conflicts.length === 0 ? [t('files.empty')] : []),
  ];
}
