import { readFile } from 'node:fs/promises';
import path from 'node:path';

export const dynamic = 'force-dynamic';

/** The worker that lets the app go on without a signal; made with the build, absent while developing. */
export async function GET(): Promise<Response> {
  const file = path.join(process.cwd(), '.next', 'service-worker.js');
  const script = await readFile(/* turbopackIgnore: true */ file, 'utf8').catch(() => undefined);
  if (script === undefined) return new Response(null, { status: 404 });
  return new Response(script, {
    headers: { 'content-type': 'text/javascript; charset=utf-8', 'cache-control': 'no-cache' },
  });
}
