import { type LeftOut, leftOutChoices } from '@/components/appraisal/left-out';
import { readTyped } from '@/components/appraisal/read-typed';
import { fieldBook } from '@/components/draft/build-field-book';
import { issueSentence } from '@/components/form/issue-words';
import { t } from '@/components/words/words';
import type { Trace } from '@/lib/sheet/document-facts';
import { type Locale, localeOf } from '@/lib/sheet/languages';
import { visitHash } from '@/lib/store/visit-hash';
import type { Visit } from '@/lib/visit/visit';
import { draftOf } from './draft-of';
import { store } from './open-store-once';

/**
 * Answers a download made from a stored visit; says in a sentence why there is none.
 *
 * @param make the file's response, from the part of the visit that can be used, the choices that cannot, and the mark
 *   of the saved state that it is made from
 */
export async function answerStored(
  id: string,
  make: (visit: Visit, leftOut: readonly LeftOut[], trace: Trace) => Promise<Response> | Response,
): Promise<Response> {
  const stored = await (await store()).loadVisit(id);
  if (stored === undefined || stored.deleted) return plain(t('notFound.title'), 404);
  const draft = draftOf(stored.draft);
  const { visit, issues } = readTyped(draft, fieldBook());
  if (visit === undefined) {
    const needed = issues.map((issue) => issueSentence(issue, fieldBook()));
    return plain([t('results.none'), ...needed].join('\n'), 422);
  }
  try {
    const trace = { revision: stored.revision, hash: visitHash(visit) };
    return await make(visit, leftOutChoices(draft, issues, fieldBook()), trace);
  } catch (thrown) {
    console.error(`the answer to visit ${id} failed`, thrown);
    const detail = thrown instanceof Error ? thrown.message : String(thrown);
    return plain(t('answer.failure', { detail }), 500);
  }
}

/** A file to be saved under a name of letters that every system takes. */
export function fileResponse(
  content: string | Uint8Array<ArrayBuffer>,
  type: string,
  id: string,
  extension: string,
): Response {
  const name = `keepworth-${id.replace(/[^a-z0-9-]/g, '')}.${extension}`;
  return new Response(content, {
    headers: {
      'content-type': type,
      'content-disposition': `attachment; filename="${name}"`,
      'cache-control': 'no-store',
    },
  });
}

/** Data as a JSON file, laid out to be read. */
export function jsonFile(data: unknown, id: string, extension: string): Response {
  return fileResponse(JSON.stringify(data, undefined, 2), 'application/json; charset=utf-8', id, extension);
}

/** The paper asked for by the address; Letter unless A4 is named. */
export function paperOf(request: Request): 'letter' | 'a4' {
  return new URL(request.url).searchParams.get('paper') === 'a4' ? 'a4' : 'letter';
}

/** The language asked for by the address; English unless one that there is is named. */
export function languageOf(request: Request): Locale {
  return localeOf(new URL(request.url).searchParams.get('lang'));
}

export function plain(text: string, status: number): Response {
  return new Response(`${text}\n`, { status, headers: { 'content-type': 'text/plain; charset=utf-8' } });
}
