import { setImmediate as breathe } from 'node:timers/promises';
import { fieldBook } from '@/components/draft/build-field-book';
import type { VisitDigest } from '@/components/list/digest';
import { visitDigest } from '@/components/list/visit-digest';
import { MODEL_VERSION } from '@/lib/appraise/model-version';
import { draftOf } from './draft-of';
import { store } from './open-store-once';

/** What made them: numbers move with the model, words with the language. */
const MAKER = `${MODEL_VERSION} en`;

/** Digests known already, by "id revision". */
export async function knownDigests(): Promise<ReadonlyMap<string, VisitDigest>> {
  const list = await (await store()).listDigests(MAKER);
  return new Map(
    list.map(({ id, revision, digest }) => [`${id} ${revision}`, digest as unknown as VisitDigest]),
  );
}

/** Works out the digests of a few visits, one after the other, and keeps them; others are answered in between. */
export async function makeDigests(ids: readonly string[]): Promise<Readonly<Record<string, VisitDigest>>> {
  const made: Record<string, VisitDigest> = {};
  for (const id of ids) {
    await breathe();
    const stored = await (await store()).loadVisit(id);
    if (stored === undefined) continue;
    const digest = visitDigest(draftOf(stored.draft), fieldBook());
    made[id] = digest;
    await (await store()).keepDigest({ id, revision: stored.revision, digest: { ...digest } }, MAKER);
  }
  return made;
}
