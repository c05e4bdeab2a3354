import { textAt } from '@/components/draft/draft-tree';
import { t } from '@/components/words/words';
import { NEW_VISIT } from '@/lib/store/save-visit';
import { draftOf } from '../../../draft-of';
import { store } from '../../../open-store-once';
import { cameFromHere } from '../../../same-origin';

type Context = { params: Promise<{ id: string }> };

/** The newest revision of the draft. */
export async function GET(_request: Request, context: Context): Promise<Response> {
  const { id } = await context.params;
  const stored = await (await store()).loadVisit(id);
  if (stored === undefined) return Response.json({ error: t('notFound.title') }, { status: 404 });
  return Response.json({ revision: stored.revision, savedAt: stored.savedAt, draft: stored.draft });
}

/** Saves a draft made from a revision; a newer revision is answered with its draft and nothing is overwritten. */
export async function PUT(request: Request, context: Context): Promise<Response> {
  if (!cameFromHere(request)) return Response.json({ error: t('save.foreign') }, { status: 403 });
  const { id } = await context.params;
  const body: unknown = await request.json().catch(() => undefined);
  if (!isSave(body)) return Response.json({ error: t('save.unreadable') }, { status: 400 });
  const draft = { ...draftOf(body.draft), id };
  const technician = textAt(draft, 'technician').trim().slice(0, 80);
  const saved = await (await store()).saveVisit({
    id,
    draft,
    baseRevision: body.baseRevision,
    savedBy: technician === '' ? t('save.byThisOffice') : technician,
    savedAt: new Date().toISOString(),
  });
  if (saved.ok) return Response.json({ revision: saved.revision });
  if (saved.kind === 'stale') {
    const { revision, savedAt, draft: theirs, deleted } = saved.current;
    return Response.json({ revision, savedAt, draft: theirs, deleted }, { status: 409 });
  }
  if (saved.kind === 'gone') return Response.json({ error: t('notFound.title') }, { status: 404 });
  return Response.json({ issues: saved.issues }, { status: 422 });
}

function isSave(body: unknown): body is { baseRevision: number; draft: unknown } {
  const { baseRevision, draft } = (body ?? {}) as { baseRevision?: unknown; draft?: unknown };
  return (
    typeof baseRevision === 'number' &&
    Number.isInteger(baseRevision) &&
    baseRevision >= NEW_VISIT &&
    typeof draft === 'object' &&
    draft !== null &&
    !Array.isArray(draft)
  );
}
