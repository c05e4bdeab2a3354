import { t } from '@/components/words/words';
import { store } from '../../../open-store-once';
import { cameFromHere } from '../../../same-origin';

/** Takes a visit off the list or puts it back, if it still is at the revision the user saw. */
export async function PUT(request: Request, context: { params: Promise<{ id: string }> }): Promise<Response> {
  if (!cameFromHere(request)) return Response.json({ error: t('save.foreign') }, { status: 403 });
  const { id } = await context.params;
  const body = (await request.json().catch(() => ({}))) as {
    deleted?: unknown;
    baseRevision?: unknown;
  } | null;
  if (typeof body?.deleted !== 'boolean' || typeof body.baseRevision !== 'number') {
    return Response.json({ error: t('save.unreadable') }, { status: 400 });
  }
  const opened = await store();
  const mark = {
    id,
    baseRevision: body.baseRevision,
    savedBy: t('save.byThisOffice'),
    savedAt: new Date().toISOString(),
  };
  const done = await (body.deleted ? opened.deleteVisit(mark) : opened.restoreVisit(mark));
  if (done.ok) return Response.json({ revision: done.revision });
  if (done.kind === 'stale') return Response.json({ error: t('list.changedSince') }, { status: 409 });
  if (done.kind === 'gone') return Response.json({ error: t('notFound.title') }, { status: 404 });
  return Response.json(
    { error: done.issues.map(({ label, fix }) => `${label}: ${fix}`).join(' ') },
    { status: 422 },
  );
}
