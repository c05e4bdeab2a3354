import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { t } from '@/components/words/words';

const names = ['visit.schema.json', 'appraisal.schema.json'];

/** JSON Schemas of the files that Keepworth gives out. */
export async function GET(
  _request: Request,
  context: { params: Promise<{ name: string }> },
): Promise<Response> {
  const { name } = await context.params;
  if (!names.includes(name)) return new Response(t('notFound.title'), { status: 404 });
  const text = await readFile(path.join(process.cwd(), 'docs', name), 'utf8');
  return new Response(text, { headers: { 'content-type': 'application/schema+json; charset=utf-8' } });
}
