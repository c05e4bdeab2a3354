import { answerStored, fileName } from '../../../answer-stored';

/** Everything the line found for this visit, as data. */
export async function GET(
  _request: Request,
  context: { params: Promise<{ id: string }> },
): Promise<Response> {
  const { id } = await context.params;
  const answer = await answerStored(id);
  if (answer instanceof Response) return answer;
  return new Response(JSON.stringify(answer.appraisal, undefined, 2), {
    headers: {
      'content-type': 'application/json; charset=utf-8',
      'content-disposition': `attachment; filename="${fileName(id, 'json')}"`,
      'cache-control': 'no-store',
    },
  });
}
