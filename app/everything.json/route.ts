import { t, tn } from '@/components/words/words';
import { NEW_VISIT } from '@/lib/store/save-visit';
import type { Issue } from '@/lib/visit/issue';
import { readVisit } from '@/lib/visit/read-visit';
import { jsonFile } from '../answer-stored';
import { store } from '../open-store-once';
import { cameFromHere } from '../same-origin';
import { importLines } from './import-lines';

export const dynamic = 'force-dynamic';

/** Every visit with every version, deleted ones too. */
export async function GET(): Promise<Response> {
  const now = new Date().toISOString();
  return jsonFile(await (await store()).exportAll(now), `everything-${now.slice(0, 10)}`, 'json');
}

/** Takes over such a file, or the file of one visit; all of it or nothing, and never over what is here. */
export async function PUT(request: Request): Promise<Response> {
  if (!cameFromHere(request)) return said([t('save.foreign')], 403);
  const data: unknown = await request.json().catch(() => undefined);
  return isVisitFile(data) ? takeVisit(data) : takeEverything(data);
}

async function takeEverything(data: unknown): Promise<Response> {
  const done = await (await store()).importAll(data);
  return done.ok ? said(importLines(done), 200) : said(issueLines(done.issues), 422);
}

/** One visit is checked as strictly as the command line does; one that is here already in other words is refused. */
async function takeVisit(data: unknown): Promise<Response> {
  const read = readVisit(data);
  if (!read.ok) return said(issueLines(read.issues), 422);
  const { id } = read.value;
  const done = await (await store()).saveVisit({
    id,
    draft: data,
    baseRevision: NEW_VISIT,
    savedBy: read.value.technician ?? t('save.byThisOffice'),
    savedAt: new Date().toISOString(),
  });
  if (done.ok) return said([tn('files.added', 1)], 200);
  if (done.kind === 'refused') return said(issueLines(done.issues), 422);
  return said([t('files.visitIsHere', { id })], 409);
}

function isVisitFile(data: unknown): boolean {
  return typeof data === 'object' && data !== null && 'schemaVersion' in data;
}

function issueLines(issues: readonly Issue[]): string[] {
  return issues
    .slice(0, 20)
    .map(({ label, fix, path }) => `${label}${path === '' ? '' : ` (${path})`}: ${fix}`);
}

function said(lines: readonly string[], status: number): Response {
  return Response.json({ lines }, { status });
}
