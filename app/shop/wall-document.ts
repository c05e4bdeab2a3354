import { readTyped } from '@/components/appraisal/read-typed';
import { fieldBook } from '@/components/draft/build-field-book';
import { t } from '@/components/words/shop-words';
import { appraise } from '@/lib/appraise/appraise';
import { wallTable } from '@/lib/finance/shop-rules/wall-table';
import type { PlainDocument } from '@/lib/sheet/plain-document';
import { composeWallTable, wallTableOf } from '@/lib/sheet/wall-table';
import type { VisitSummary } from '@/lib/store/revision';
import { resolveAssumption } from '@/lib/visit/assumption';
import type { Visit } from '@/lib/visit/visit';
import { draftOf } from '../draft-of';
import { store } from '../open-store-once';

/** The visit that the wall table is made like: the one asked for, else the newest. */
export function visitForWall(visits: readonly VisitSummary[], asked: string | undefined) {
  return visits.find((visit) => visit.id === asked) ?? visits[0];
}

/** The wall table for a house, climate and tariff like a visit's; `undefined` while the visit cannot be read. */
export async function wallDocument(id: string): Promise<PlainDocument | undefined> {
  const stored = await (await store()).loadVisit(id);
  if (stored === undefined || stored.deleted) return undefined;
  const { visit } = readTyped(draftOf(stored.draft), fieldBook());
  if (visit === undefined) return undefined;
  const appraisal = appraise(visit);
  const made = composeWallTable(wallTableOf(appraisal, wallTable(appraisal), 'en'));
  return {
    ...made,
    facts: [...made.facts, countedIn(visit)],
  };
}

/** What a table of prices hides: a repair that may fail is worth less. */
function countedIn({ assumptions }: Visit): PlainDocument['facts'][number] {
  const percent = Math.round(100 * resolveAssumption(assumptions, 'repairSuccessFrac').likely);
  return { label: t('shop.wall.counted'), text: t('shop.wall.countedMeans', { percent }) };
}
