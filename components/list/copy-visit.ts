import { localDate, newVisitId } from '@/components/draft/blank-visit';
import { type Draft, listAt, textAt, withValue } from '@/components/draft/draft-tree';
import { readLocalCopy, writeLocalCopy } from '@/components/draft/local-copy';
import { sendDraft } from '@/components/draft/send-draft';
import { dateWords } from '@/components/format/time-words';
import { keepsPages } from '@/components/offline/register-worker';
import { t } from '@/components/words/words';

/** What belongs to the day of the visit, not to the house. */
const OF_THE_DAY = ['runs', 'observations', 'suspectedCause', 'note'];

/**
 * A new visit made from another. Readings are of their day: taken over, each run says from which visit it comes.
 *
 * @param from  the draft copied; it is not changed
 * @param today date of the new visit
 * Check: tests/screens/copy-visit.test.ts
 */
export function copiedDraft(from: Draft, id: string, today: string, withReadings: boolean): Draft {
  const left = new Set(['chosen', ...(withReadings ? [] : OF_THE_DAY)]);
  const kept = Object.fromEntries(Object.entries(from).filter(([key]) => !left.has(key)));
  const copy: Draft = { ...kept, id, visitDate: today };
  if (!withReadings) return { ...copy, runs: [], observations: [] };
  const date = textAt(from, 'visitDate');
  const marked = listAt(copy, 'runs').map((run) => {
    const note = [t('list.copiedFrom', { date: dateWords(date) }), textAt(run, 'note')]
      .filter(Boolean)
      .join(' ');
    return withValue(run as Draft, 'note', note);
  });
  // The pictures stay with the visit they were taken at.
  const seen = listAt(copy, 'observations').map((one) => withValue(one as Draft, 'photoIds', undefined));
  return { ...copy, runs: marked, observations: seen };
}

export type Copied =
  | { readonly ok: true; readonly id: string }
  | { readonly ok: false; readonly words: string };

/** Copies a visit of the office, or without a signal this device's copy of it, and keeps the new one here at once. */
export async function copyVisit(id: string, withReadings: boolean): Promise<Copied> {
  const from = await draftOf(id);
  if (from === undefined) return { ok: false, words: t('list.noSignal') };
  const now = new Date();
  const newId = newVisitId(now);
  const draft = copiedDraft(from, newId, localDate(now), withReadings);
  const kept = writeLocalCopy(newId, { draft, baseRevision: 0, unsent: true, at: now.getTime() });
  const answer = await sendDraft(newId, 0, draft, false);
  if (answer.kind === 'saved') {
    writeLocalCopy(newId, { draft, baseRevision: answer.revision, unsent: false, at: now.getTime() });
    return { ok: true, id: newId };
  }
  return kept && keepsPages() ? { ok: true, id: newId } : { ok: false, words: t('list.noSignal') };
}

async function draftOf(id: string): Promise<Draft | undefined> {
  const copy = readLocalCopy(id);
  // What is unsent here is newer than what the office has.
  if (copy?.unsent === true) return copy.draft;
  try {
    const answer = await fetch(`/visits/${encodeURIComponent(id)}/draft`);
    if (answer.ok) return ((await answer.json()) as { draft: Draft }).draft;
  } catch {
    // Falls to this device's copy.
  }
  return copy?.draft;
}
