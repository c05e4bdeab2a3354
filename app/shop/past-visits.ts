import { setImmediate as breathe } from 'node:timers/promises';
import { readTyped } from '@/components/appraisal/read-typed';
import { fieldBook } from '@/components/draft/build-field-book';
import { MODEL_VERSION } from '@/lib/appraise/model-version';
import { type PastFacts, pastFacts } from '@/lib/appraise/past-visit';
import type { VisitSummary } from '@/lib/store/revision';
import { draftOf } from '../draft-of';
import { store } from '../open-store-once';

/** A stored visit, and what rules and outcomes need of it; without facts where nothing can be compared yet. */
export type PastVisit = { readonly summary: VisitSummary; readonly facts: PastFacts | undefined };

/** Worked out once for each revision; they can always be made again. Kept on the process, as the store is. */
const held = globalThis as { keepworthPast?: Map<string, PastFacts | 'none'> };

/** What past visits came to, all of them; others are answered in between. */
export async function pastVisits(): Promise<PastVisit[]> {
  const visits = await (await store()).listVisits();
  const past: PastVisit[] = [];
  for (const summary of visits) past.push({ summary, facts: await factsOf(summary.id, summary.revision) });
  return past;
}

/** Works out a few visits, so that a page can tell how far it is. */
export async function preparePast(ids: readonly string[]): Promise<void> {
  const visits = await (await store()).listVisits();
  for (const { id, revision } of visits.filter((visit) => ids.includes(visit.id)))
    await factsOf(id, revision);
}

async function factsOf(id: string, revision: number): Promise<PastFacts | undefined> {
  held.keepworthPast ??= new Map();
  const key = `${id} ${revision} ${MODEL_VERSION}`;
  const known = held.keepworthPast.get(key);
  if (known !== undefined) return known === 'none' ? undefined : known;
  await breathe();
  const facts = await workedOut(id, revision);
  held.keepworthPast.set(key, facts ?? 'none');
  return facts;
}

async function workedOut(id: string, revision: number): Promise<PastFacts | undefined> {
  const stored = await (await store()).loadRevision(id, revision);
  if (stored === undefined) return undefined;
  const { visit } = readTyped(draftOf(stored.draft), fieldBook());
  if (visit === undefined) return undefined;
  try {
    return pastFacts(visit);
  } catch (thrown) {
    console.error(`looking back on visit ${id} failed`, thrown);
    return undefined;
  }
}
