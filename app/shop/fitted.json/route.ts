import { fittedWords } from '../fitted-words';

export const dynamic = 'force-dynamic';

/** The fitted simple rule in words. */
export async function GET(): Promise<Response> {
  return Response.json({ sentences: await fittedWords() }, { headers: { 'cache-control': 'no-store' } });
}
