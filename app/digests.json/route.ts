import { makeDigests } from '../visit-digests';

/** One answer must not keep the others waiting for long. */
const MOST = 5;

/** Results of a few visits, for a list that does not have them yet. */
export async function GET(request: Request): Promise<Response> {
  const ids = new URL(request.url).searchParams.getAll('id').slice(0, MOST);
  return Response.json(await makeDigests(ids), { headers: { 'cache-control': 'no-store' } });
}
