import { readTyped } from '@/components/appraisal/read-typed';
import { fieldBook } from '@/components/draft/build-field-book';
import { t } from '@/components/words/words';
import { jsonFile } from '../../../answer-stored';
import { draftOf } from '../../../draft-of';
import { store } from '../../../open-store-once';

/** The visit as a file for the command line; a draft that cannot be read yet is given as typed. */
export async function GET(
  _request: Request,
  context: { params: Promise<{ id: string }> },
): Promise<Response> {
  const { id } = await context.params;
  const stored = await (await store()).loadVisit(id);
  if (stored === undefined || stored.deleted) return new Response(t('notFound.title'), { status: 404 });
  const { visit } = readTyped(draftOf(stored.draft), fieldBook());
  return jsonFile(visit ?? stored.draft, id, 'visit.json');
}
