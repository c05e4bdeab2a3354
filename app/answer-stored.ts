import { answerDraft, type DraftAnswer, readTyped } from '@/components/appraisal/build-view';
import { fieldBook } from '@/components/draft/build-field-book';
import { issueSentence } from '@/components/form/issue-words';
import { t } from '@/components/words/words';
import { draftOf } from './draft-of';
import { store } from './open-store-once';

/** The answer to a stored visit, or the response that says why there is none. */
export async function answerStored(id: string): Promise<DraftAnswer | Response> {
  const stored = await (await store()).loadVisit(id);
  if (stored === undefined || stored.deleted) return plain(t('notFound.title'), 404);
  const reading = readTyped(draftOf(stored.draft), fieldBook());
  const answer = answerDraft(reading);
  if (answer !== undefined) return answer;
  const needed = reading.issues.map((issue) => issueSentence(issue, fieldBook()));
  return plain([t('results.none'), ...needed].join('\n'), 422);
}

/** Name of a downloaded file, of letters that every system takes. */
export function fileName(id: string, extension: string): string {
  return `keepworth-${id.replace(/[^a-z0-9-]/g, '')}.${extension}`;
}

function plain(text: string, status: number): Response {
  return new Response(`${text}\n`, { status, headers: { 'content-type': 'text/plain; charset=utf-8' } });
}
